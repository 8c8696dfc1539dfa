#pragma once
// The whole window on the records of DeskRecords, for tests of the board.

#include "app/desktop/MainWindow.h"
#include "app/desktop/models/BoardModel.h"
#include "app/desktop/widgets/Table.h"
#include "tests/support/DeskRecords.h"

namespace loopwright {

class DeskWindow
{
protected:
    /// Opens the window, at the place that was left.
    void openWindow(const QJsonObject &place = {})
    {
        m_window = std::make_unique<MainWindow>(m_records->workplace());
        m_window->restore(place);
        m_window->resize(1300, 750);
        m_window->show();
        m_window->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
    }
    template<class Widget>
    Widget *named(const QString &name) const
    {
        return m_window->findChild<Widget *>(name);
    }
    Table *table() const { return named<Table>("orders"); }
    /// Those that the board shows, from the top.
    QStringList orders() const
    {
        QStringList numbers;
        for (int row = 0; row < table()->model()->rowCount(); ++row)
            numbers << table()->model()->index(row, boardColumn(u"order")).data().toString();
        return numbers;
    }

    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace loopwright
