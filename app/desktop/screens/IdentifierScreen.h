#pragma once
// A desk to check identifiers at: a list that is pasted, typed or dropped gets its verdicts as a
// table with repairs, which can be saved as CSV; one SPID is drawn in its parts; a cause value is
// looked up.

#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"
#include "app/desktop/identifiers/IdentifierReport.h"

#include <QTimer>

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace loopwright {

class ChipRow;
class SignLine;
class SpidCard;
class Table;
class TextTable;

class IdentifierScreen : public Screen
{
    Q_OBJECT
public:
    explicit IdentifierScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("identifiers"); }
    QString title() const override { return tr("Identifiers"); }
    void refresh() override {}
    void takeFocus() override;

    /// Checks the list in a file; the file is not shown as text.
    void openFile(const QString &path);

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    QWidget *makeListCard();
    QWidget *makeReport();
    IdentifierInput input() const;
    void check();
    void showReport(const Result<IdentifierReport> &report);
    void showRows();
    void letGoOfFile();
    void save();
    void lookAtRow(int row);

    Asker m_checker;
    Asker m_saver;
    QTimer m_typing;
    QString m_fileName;     ///< empty: the list is what is typed
    QByteArray m_fileBytes; ///< of the file
    IdentifierReport m_report;
    std::vector<std::size_t> m_shown; ///< rows of the report that the table shows

    QPlainTextEdit *m_text = nullptr;
    QLabel *m_file = nullptr;
    QPushButton *m_letGo = nullptr;
    QPushButton *m_save = nullptr;
    SpidCard *m_one = nullptr;
    SignLine *m_summary = nullptr;
    ChipRow *m_verdicts = nullptr;
    TextTable *m_model;
    Table *m_table = nullptr;
};

} // namespace loopwright
