#pragma once
// One order as a page that reads from top to bottom in the order of the work: the installer's home.

#include "app/desktop/Screen.h"
#include "app/desktop/job/JobSession.h"

#include <QScrollArea>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace loopwright {

class EmptyState;
class JobHead;
class StationPanel;

class JobScreen : public Screen
{
    Q_OBJECT
public:
    explicit JobScreen(DesktopContext &workplace, QWidget *parent = nullptr);
    ~JobScreen() override;

    QString key() const override { return QStringLiteral("job"); }
    QString title() const override;
    void refresh() override;
    void open(const QString &number) override;
    void takeFocus() override;
    void showPart(const QString &part) override;
    QJsonObject place() const override { return {{"order", m_number}}; }
    void restore(const QJsonObject &place) override;

    StationPanel *panel(const QString &key) const;
    /// Puts the keyboard at the entry of the next step. F2.
    void goNext();
    void goTo(Station station);
    /// Opens the next order that is open at the same premises. F7.
    void goNextLine();
    /// Shows or hides the help of the part that has the keyboard, else of the one that comes next.
    /// Shift+F1.
    void toggleHelp();

private:
    void makeKeys();
    void build();
    void showOrder();
    void showFolds();
    void showNone();
    void showTrouble(const Error &error);
    void showFact(const QString &id);
    void follow(QWidget *now);
    void scrollTo(QWidget *now);
    void go(StationPanel *panel, const QString &need);
    void goOn(const QString &need);
    StationPanel *panelOf(const Step &step) const;
    QString lastPart() const;
    const Step *toDoAfter(std::ptrdiff_t place) const;
    std::ptrdiff_t focused() const;

    JobSession m_desk;
    QStackedLayout *m_faces;
    EmptyState *m_empty;
    JobHead *m_head;
    QScrollArea *m_scroll;
    QVBoxLayout *m_column = nullptr;
    std::vector<StationPanel *> m_panels;
    QStringList m_needs; ///< that the panels were built for
    QString m_number;
};

} // namespace loopwright
