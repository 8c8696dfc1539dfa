#include "app/desktop/screens/ReportScreen.h"

#include "app/actions/ReportFiles.h"
#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/Theme.h"
#include "app/desktop/form/FieldSpec.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/BarDelegate.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/FlowLayout.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/Table.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QFileDialog>
#include <QLineEdit>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

/// More orders than these are found by the command line, or by a narrower report.
constexpr int mostOrders = 1000;

QString named(const char *text)
{
    return QCoreApplication::translate("Reports", text);
}

QStringList headerOf(const std::vector<ReportColumn> &columns)
{
    QStringList header;
    for (const ReportColumn &column : columns)
        header << named(column.name);
    return header;
}

QString shownCell(const ReportColumn &column, const QString &text)
{
    switch (column.form) {
    case ReportForm::Count:
    case ReportForm::Share:
    case ReportForm::Days:
        return localizedFigure(text);
    case ReportForm::Yes:
        return localizedWord(text);
    case ReportForm::Day:
        if (const QString day = dayText(QDate::fromString(text, Qt::ISODate)); !day.isEmpty())
            return day;
        break;
    case ReportForm::Words:
        break;
    }
    const bool ours =
        text == u"none" || QLatin1StringView(column.key) == QLatin1StringView("criterion");
    return ours ? localizedWord(text) : text;
}

QStringList cellsOf(const std::vector<ReportColumn> &columns, const QJsonObject &values)
{
    QStringList cells;
    for (const ReportColumn &column : columns)
        cells << shownCell(column, cellText(column, values));
    return cells;
}

std::vector<double> widthsOf(const std::vector<ReportColumn> &columns)
{
    std::vector<double> ems;
    ems.reserve(columns.size());
    for (const ReportColumn &column : columns)
        ems.push_back(QLatin1StringView(column.key) == QLatin1StringView("customer") ? 14
                      : isText(column.form)                                          ? 10
                                                                                     : 8);
    return ems;
}

template<class Word>
QComboBox *makeChoice(const QString &objectName, const QString &spoken)
{
    auto *choice = new QComboBox;
    choice->setObjectName(objectName);
    choice->setAccessibleName(spoken);
    choice->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    for (const QString &word : allWords<Word>())
        choice->addItem(word, word);
    return choice;
}

template<class Word>
Word chosen(const QComboBox *choice)
{
    return fromText<Word>(choice->currentData().toString()).value_or(Word{});
}

/// Shows rows under another header than before.
TextTable *replaceModel(Table *table, TextTable *old, TextTable *model)
{
    const QItemSelectionModel *selection = table->selectionModel();
    table->setModel(model);
    delete selection;
    delete old;
    return model;
}

} // namespace

ReportScreen::ReportScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_asker(workplace.questions())
    , m_orderAsker(workplace.questions())
    , m_writer(workplace.longWork())
    , m_kind(makeChoice<ReportKind>(QStringLiteral("reports.kind"), tr("Report")))
    , m_per(makeChoice<ReportPer>(QStringLiteral("reports.per"), tr("Counted by")))
    , m_from(new FieldMark(tr("&From"), new QLineEdit))
    , m_to(new FieldMark(tr("&To"), new QLineEdit))
    , m_save(makeButton(tr("Save as…"), QStringLiteral("reports.save"), [this] { askPath(); }))
    , m_says(makeMuted({}))
    , m_sum(new SignLine)
    , m_empty(new EmptyState)
    , m_figures(new Table(QStringLiteral("reports.figures"), tr("Figures")))
    , m_behind(makeHeading({}))
    , m_orderTable(new Table(QStringLiteral("reports.orders"), tr("Orders behind the figure")))
{
    m_sum->setObjectName(QStringLiteral("reports.sum"));
    m_behind->setObjectName(QStringLiteral("reports.behind"));
    m_empty->setObjectName(QStringLiteral("reports.empty"));
    auto *below = new QWidget;
    auto *orders = new QVBoxLayout(below);
    orders->setContentsMargins(0, 0, 0, 0);
    orders->addWidget(m_behind);
    orders->addWidget(m_orderTable, 1);
    auto *splitter = new QSplitter(Qt::Vertical);
    splitter->addWidget(m_figures);
    splitter->addWidget(below);
    splitter->setChildrenCollapsible(false);
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(makeHeading(tr("Reports"), 1.5));
    layout->addWidget(makeChoices());
    layout->addWidget(m_says);
    layout->addWidget(m_sum);
    layout->addWidget(m_empty, 1);
    layout->addWidget(splitter, 1);
    m_empty->hide();
    connectAll();
    choose();
}

QWidget *ReportScreen::makeChoices()
{
    for (int i = 0; i < m_kind->count(); ++i)
        m_kind->setItemText(
            i, named(describe(
                         fromText<ReportKind>(m_kind->itemText(i)).value_or(ReportKind::FirstVisit))
                         .name));
    const QStringList pers{tr("by office"), tr("by installer"), tr("by cable"), tr("by variant"),
                           tr("by month")};
    for (int i = 0; i < m_per->count(); ++i)
        m_per->setItemText(i, pers.value(i));
    for (const FieldMark *mark : {m_from, m_to})
        static_cast<QLineEdit *>(mark->field())->setPlaceholderText(tr("YYYY-MM-DD"));
    m_from->field()->setObjectName(QStringLiteral("reports.from"));
    m_to->field()->setObjectName(QStringLiteral("reports.to"));
    auto *choices = new QWidget;
    auto *row = new FlowLayout(choices);
    row->setContentsMargins(0, 0, 0, 0);
    for (QWidget *widget : std::initializer_list<QWidget *>{new FieldMark(tr("&Report"), m_kind),
                                                            new FieldMark(tr("&Counted"), m_per),
                                                            m_from, m_to, m_save})
        row->addWidget(widget);
    for (FieldMark *mark : choices->findChildren<FieldMark *>())
        mark->setTight(true);
    whenThemed(choices, [this, row] {
        row->setSpacing(em(0.8));
        for (const FieldMark *mark : {m_from, m_to})
            mark->field()->setFixedWidth(em(9));
    });
    return choices;
}

void ReportScreen::connectAll()
{
    connect(m_kind, &QComboBox::activated, this, [this] {
        const ReportPer usual = describe(chosen<ReportKind>(m_kind)).per;
        m_per->setCurrentIndex(m_per->findData(toText(usual)));
        choose();
    });
    connect(m_per, &QComboBox::activated, this, &ReportScreen::choose);
    for (const FieldMark *mark : {m_from, m_to})
        connect(static_cast<QLineEdit *>(mark->field()), &QLineEdit::editingFinished, this,
                &ReportScreen::choose);
    connect(m_figures, &Table::opened, this, [this] { m_orderTable->setFocus(); });
    connect(m_orderTable, &Table::opened, this, [this](const QModelIndex &index) {
        emit openOrder(m_orders[std::size_t(index.row())].order);
    });
}

std::optional<QDate> ReportScreen::dayOf(FieldMark *mark) const
{
    const QString text = static_cast<QLineEdit *>(mark->field())->text().trimmed();
    const QDate day = QDate::fromString(dateText(text), Qt::ISODate);
    const bool wrong = !text.isEmpty() && !day.isValid();
    mark->setHint(wrong ? tr("a day as 2026-03-31") : QString(),
                  wrong ? Status::Failed : Status::None);
    return wrong ? std::nullopt : std::optional(day);
}

std::optional<ReportQuery> ReportScreen::query() const
{
    const auto from = dayOf(m_from), to = dayOf(m_to);
    if (!from || !to)
        return std::nullopt;
    return ReportQuery{chosen<ReportKind>(m_kind), chosen<ReportPer>(m_per), *from, *to};
}

void ReportScreen::choose()
{
    if (const QJsonObject now = place(); std::exchange(m_asked, now) == now)
        return; // a field was left as it was
    m_says->setText(named(describe(chosen<ReportKind>(m_kind)).says));
    if (isVisible())
        refresh();
    emit placeChanged();
}

void ReportScreen::refresh()
{
    const auto asked = query();
    if (!asked)
        return;
    m_asker.supersede();
    m_asker.ask<Report>(
        [asked = *asked](Records &records, const Progress &) { return makeReport(records, asked); },
        [this](const Result<Report> &report) { showReport(report); });
}

void ReportScreen::takeFocus()
{
    if (m_figures->isVisible())
        m_figures->setFocus();
    else
        m_kind->setFocus();
}

void ReportScreen::showReport(const Result<Report> &report)
{
    m_save->setEnabled(report.has_value());
    m_report = report ? *report : Report();
    m_sum->tellIfNew(report ? Status::None : Status::Failed,
                     report ? localized(m_report.sum) : localized(report.error()));
    const bool any = !m_report.rows.empty();
    m_empty->setVisible(report && !any);
    m_empty->say(tr("Nothing to count"),
                 tr("No order of the records belongs to this report on these days."));
    m_figures->parentWidget()->setVisible(any);
    fillFigures();
}

void ReportScreen::fillFigures()
{
    const int before = std::max(m_figures->currentIndex().row(), 0);
    const std::vector<ReportColumn> columns = m_report.columns();
    std::set<int> digits;
    for (std::size_t i = 0; i < columns.size(); ++i)
        if (!isText(columns[i].form))
            digits.insert(int(i));
    auto *model = new TextTable(headerOf(columns) << tr("Drawn"), -1, std::move(digits), this);
    const std::vector<double> bars = drawnLengths(m_report);
    std::vector<TextRow> rows;
    for (std::size_t i = 0; i < m_report.rows.size(); ++i)
        rows.push_back(
            {cellsOf(columns, m_report.rows[i].values) << tr("%1 %").arg(qRound(100 * bars[i])),
             Status::None,
             {},
             false,
             bars[i]});
    model->show(std::move(rows));
    m_figureRows = replaceModel(m_figures, m_figureRows, model);
    std::vector<double> ems = widthsOf(columns);
    ems.push_back(16);
    m_figures->setColumnEms(ems);
    for (std::size_t i = 0; i <= columns.size(); ++i)
        m_figures->setItemDelegateForColumn(int(i), nullptr);
    delete m_figures->findChild<BarDelegate *>();
    m_figures->setItemDelegateForColumn(int(columns.size()), new BarDelegate(m_figures));
    connect(m_figures->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &now) { askOrders(now.row()); });
    if (!m_report.rows.empty())
        m_figures->setCurrentIndex(
            model->index(std::min(before, int(m_report.rows.size()) - 1), 0));
}

void ReportScreen::askOrders(int row)
{
    if (row < 0 || row >= int(m_report.rows.size()))
        return;
    const ReportRow &figure = m_report.rows[std::size_t(row)];
    QStringList words = cellsOf(m_report.columns(), figure.values).first(2);
    if (!figure.behind.detail)
        words.removeLast();
    m_orderAsker.supersede();
    m_orderAsker.ask<std::vector<ReportOrder>>(
        [asked = m_report.query, behind = figure.behind](Records &records, const Progress &) {
            return ordersBehind(records, asked, behind, mostOrders + 1);
        },
        [this, words](const Result<std::vector<ReportOrder>> &orders) {
            showOrders(words.join(QStringLiteral(", ")), orders);
        });
}

void ReportScreen::showOrders(const QString &figure, const Result<std::vector<ReportOrder>> &orders)
{
    m_orders = orders ? *orders : std::vector<ReportOrder>();
    const bool more = int(m_orders.size()) > mostOrders;
    if (more)
        m_orders.resize(mostOrders);
    m_behind->setText(!orders ? localized(orders.error())
                      : more  ? tr("Orders behind %1: the first %2").arg(figure).arg(mostOrders)
                      : m_orders.empty() ? tr("No order is behind %1").arg(figure)
                                         : tr("Orders behind %1").arg(figure));
    const std::vector<ReportColumn> columns = columnsBehind(m_report.query.kind);
    auto *model = new TextTable(headerOf(columns), -1, {0, 1}, this);
    std::vector<TextRow> rows;
    for (const ReportOrder &order : m_orders)
        rows.push_back(
            {cellsOf(columns, toJson(order, m_report.query.kind)), Status::None, order.order});
    model->show(std::move(rows));
    m_orderRows = replaceModel(m_orderTable, m_orderRows, model);
    m_orderTable->setColumnEms(widthsOf(columns));
    m_orderTable->setVisible(!m_orders.empty());
    if (!m_orders.empty())
        m_orderTable->setCurrentIndex(model->index(0, 0));
}

void ReportScreen::askPath()
{
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save the report"), toText(m_report.query.kind) + QStringLiteral(".pdf"),
        tr("PDF files (*.pdf);;Pictures (*.svg);;CSV files (*.csv)"));
    if (!path.isEmpty())
        saveAs(path);
}

void ReportScreen::saveAs(const QString &path)
{
    m_writer.ask<bool>(
        [report = m_report, path, paper = localPaper()](Records &records,
                                                        const Progress &) -> Result<bool> {
            // A table that is made here is opened in a spreadsheet.
            LOOPWRIGHT_TRY(writeReport(records, report, path, {}, paper, true));
            return true;
        },
        [this, path](const Result<bool> &written) {
            emit said(written ? tr("The report is in %1.").arg(path) : localized(written.error()));
        });
}

QJsonObject ReportScreen::place() const
{
    return {{"kind", m_kind->currentData().toString()},
            {"per", m_per->currentData().toString()},
            {"from", static_cast<QLineEdit *>(m_from->field())->text()},
            {"to", static_cast<QLineEdit *>(m_to->field())->text()}};
}

void ReportScreen::restore(const QJsonObject &place)
{
    for (const auto &[choice, key] : {std::pair(m_kind, "kind"), std::pair(m_per, "per")})
        if (const int at = choice->findData(place.value(QLatin1StringView(key)).toString());
            at >= 0)
            choice->setCurrentIndex(at);
    static_cast<QLineEdit *>(m_from->field())->setText(place.value("from").toString());
    static_cast<QLineEdit *>(m_to->field())->setText(place.value("to").toString());
    choose();
}

} // namespace loopwright
