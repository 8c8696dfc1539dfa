#pragma once
// Files in: choose or drop a CSV file of orders, offices, installers or instruments. The import
// runs beside the window and can be stopped; then nothing was changed, or of a long file on a
// server the portions that are in, which it tells. Each refused or held row is listed with row,
// column, code and reason, and the refused ones can be written out again. If the header is not
// ours, a dialog asks what its columns stand for, once for each header.

#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"
#include "app/desktop/screens/ImportKinds.h"

#include <QCheckBox>
#include <QComboBox>

class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;

namespace loopwright {

class SignLine;
class Table;
class TextTable;

class ImportScreen : public Screen
{
    Q_OBJECT
public:
    explicit ImportScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("import"); }
    QString title() const override { return tr("Import"); }
    void refresh() override {}
    /// Of a file.
    void open(const QString &path) override { choose(path); }
    void takeFocus() override;
    QJsonObject place() const override;
    void restore(const QJsonObject &place) override;

    /// Chooses the file and what it holds, by its header; the import begins with start().
    void choose(const QString &path);
    void start();

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    QWidget *makeChoice();
    QWidget *makePath();
    QWidget *makeKind();
    void makeControls();
    QWidget *makeReport();
    void browse();
    void lookAtFile();
    void lookAtColumns();
    void askColumns(bool thenStart);
    void showColumns();
    void keepMap(const ColumnMap &map);
    const ImportKind &kind() const;
    void setRunning(bool running);
    void showReport(const Result<ImportReport> &report);
    void saveRejects();

    Asker m_worker;
    TextTable *m_findings;
    QByteArray m_rejects;
    QString m_imported;               ///< the file that the report is about
    std::optional<ImportHead> m_head; ///< of the file that is chosen
    std::optional<ColumnMap> m_map;   ///< by which it is read
    /// What columns stood for, the newest last: "header" (its digest), "kind", "map".
    QJsonArray m_maps;

    QLineEdit *m_path = nullptr;
    QComboBox *m_kind = nullptr;
    QCheckBox *m_update = nullptr;
    QCheckBox *m_whole = nullptr;
    QPushButton *m_browse = nullptr;
    QPushButton *m_columns = nullptr; ///< where the header is not ours
    QLabel *m_columnsSay = nullptr;
    QPushButton *m_help = nullptr; ///< which columns are ours
    QPushButton *m_start = nullptr;
    QPushButton *m_cancel = nullptr;
    QPushButton *m_save = nullptr;
    QProgressBar *m_progress = nullptr;
    SignLine *m_summary = nullptr;
    QLabel *m_counts = nullptr;
    Table *m_table = nullptr;
};

} // namespace loopwright
