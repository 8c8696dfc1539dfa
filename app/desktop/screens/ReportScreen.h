#pragma once
// Figures over all orders, counted by office, installer, cable, variant or month. The figure that
// is chosen has its orders below it, and Enter there opens one. A report can be saved as CSV,
// picture or PDF.

#include "app/actions/Reports.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace loopwright {

class EmptyState;
class FieldMark;
class SignLine;
class Table;
class TextTable;

class ReportScreen : public Screen
{
    Q_OBJECT
public:
    explicit ReportScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("reports"); }
    QString title() const override { return tr("Reports"); }
    void refresh() override;
    void takeFocus() override;
    QJsonObject place() const override;
    void restore(const QJsonObject &place) override;

    /// Writes what is shown, in the form that the name ends with.
    void saveAs(const QString &path);

private:
    QWidget *makeChoices();
    void connectAll();
    /// Nothing where a day is not written as one; it is said there.
    std::optional<ReportQuery> query() const;
    std::optional<QDate> dayOf(FieldMark *mark) const;
    void choose();
    void showReport(const Result<Report> &report);
    void fillFigures();
    void askOrders(int row);
    void showOrders(const QString &figure, const Result<std::vector<ReportOrder>> &orders);
    void askPath();

    Asker m_asker, m_orderAsker, m_writer;
    Report m_report;
    QJsonObject m_asked; ///< what was chosen last, as place() tells it
    std::vector<ReportOrder> m_orders;
    QComboBox *m_kind, *m_per;
    FieldMark *m_from, *m_to;
    QPushButton *m_save;
    QLabel *m_says;
    SignLine *m_sum;
    EmptyState *m_empty;
    Table *m_figures;
    TextTable *m_figureRows = nullptr; ///< of the report that is shown: its columns are its own
    QLabel *m_behind;
    Table *m_orderTable;
    TextTable *m_orderRows = nullptr;
};

} // namespace loopwright
