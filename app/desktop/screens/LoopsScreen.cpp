#include "app/desktop/screens/LoopsScreen.h"

#include "app/actions/Register.h"
#include "app/desktop/Language.h"
#include "app/desktop/Lengths.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"

#include <QCollator>
#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QProgressBar>

#include <algorithm>

namespace loopwright {

namespace {

struct Column
{
    const char *head;
    double em;
    QString (*text)(const OfficeLoop &loop);
    /// What it is sorted by where that is no text.
    double (*number)(const OfficeLoop &loop) = nullptr;
};

#define TEXT(text) QT_TRANSLATE_NOOP("LoopsScreen", text)

QString mendText(const OfficeLoop &loop)
{
    if (loop.mends.empty())
        return {};
    const Remedy &best = loop.mends.front();
    return LoopsScreen::tr("%1: then %2 dB, %3")
        .arg(withLengths(localized(best.text), inMetres()), localizedFigure(best.lossAfterDb, 1),
             suitabilityName(best.verdictAfter));
}

QString rounded(double value, int decimals = 0)
{
    return localizedFigure(value, decimals);
}

QString lengthOf(double feet)
{
    return rounded(inMetres() ? feet * metresPerFoot : feet);
}

constexpr Column columns[] = {
    {TEXT("Verdict"), 8,
     [](const OfficeLoop &loop) { return suitabilityName(loop.judged.verdict); },
     [](const OfficeLoop &loop) { return double(loop.judged.verdict); }},
    {TEXT("Pair"), 8, [](const OfficeLoop &loop) { return loop.pair; }},
    {TEXT("Circuit"), 8, [](const OfficeLoop &loop) { return loop.circuit; }},
    {TEXT("Order"), 8, [](const OfficeLoop &loop) { return loop.order; }},
    {TEXT("Line"), 6, [](const OfficeLoop &loop) { return kindName(loop.kind); }},
    {TEXT("Loss, dB"), 6,
     [](const OfficeLoop &loop) { return rounded(loop.judged.insertionLossDb, 1); },
     [](const OfficeLoop &loop) { return loop.judged.insertionLossDb; }},
    {TEXT("Loss hot, dB"), 6,
     [](const OfficeLoop &loop) { return rounded(loop.judged.hotLossDb, 1); },
     [](const OfficeLoop &loop) { return loop.judged.hotLossDb; }},
    {TEXT("Resistance, Ω"), 8,
     [](const OfficeLoop &loop) { return rounded(loop.judged.dcResistanceOhm); },
     [](const OfficeLoop &loop) { return loop.judged.dcResistanceOhm; }},
    {TEXT("Length, %1"), 7,
     [](const OfficeLoop &loop) { return lengthOf(loop.judged.workingLengthFt); },
     [](const OfficeLoop &loop) { return loop.judged.workingLengthFt; }},
    {TEXT("Taps, %1"), 6, [](const OfficeLoop &loop) { return lengthOf(loop.judged.bridgedTapFt); },
     [](const OfficeLoop &loop) { return loop.judged.bridgedTapFt; }},
    {TEXT("Coils"), 5,
     [](const OfficeLoop &loop) { return QString::number(loop.judged.loadCoils); },
     [](const OfficeLoop &loop) { return double(loop.judged.loadCoils); }},
    {TEXT("Would mend it"), 14, mendText},
};

#undef TEXT

/// What is compared is made once for each loop: an office has many.
std::vector<OfficeLoop> sorted(std::vector<OfficeLoop> loops, const Column &by, bool descending)
{
    QCollator names;
    names.setNumericMode(true); // 1-9 before 1-10
    struct Key
    {
        double number;
        QCollatorSortKey text;
        std::size_t at;
    };
    std::vector<Key> keys;
    for (std::size_t i = 0; i < loops.size(); ++i)
        keys.push_back({by.number ? by.number(loops[i]) : 0,
                        names.sortKey(by.number ? QString() : by.text(loops[i])), i});
    std::ranges::stable_sort(keys, [descending](const Key &a, const Key &b) {
        const Key &first = descending ? b : a, &second = descending ? a : b;
        return first.number != second.number ? first.number < second.number
                                             : first.text < second.text;
    });
    std::vector<OfficeLoop> list;
    list.reserve(keys.size());
    for (const Key &key : keys)
        list.push_back(std::move(loops[key.at]));
    return list;
}

QStringList heads()
{
    QStringList all;
    for (const Column &column : columns)
        all << LoopsScreen::tr(column.head).replace("%1", inMetres() ? "m" : "ft");
    return all;
}

std::vector<double> widths()
{
    std::vector<double> all;
    for (const Column &column : columns)
        all.push_back(column.em);
    return all;
}

} // namespace

LoopsScreen::LoopsScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_worker(workplace.longWork())
    , m_model(new TextTable(heads(), 0, {1, 2, 3, 5, 6, 7, 8, 9, 10}, this))
    , m_office(new QComboBox)
    , m_start(makeButton(tr("Judge its loops"), QStringLiteral("loops.start"), [this] { start(); }))
    , m_stop(makeButton(tr("Stop"), QStringLiteral("loops.stop"), [this] { m_worker.stop(); }))
    , m_save(makeButton(tr("Save as CSV…"), QStringLiteral("loops.save"), [this] { save(); }))
    , m_progress(makeProgress(QStringLiteral("loops.progress"), tr("Progress"), m_worker))
    , m_summary(new SignLine)
    , m_table(new Table(QStringLiteral("loops.list"), tr("Loops of the office")))
    , m_chosen(new SignLine)
    , m_empty(new EmptyState)
{
    m_office->setObjectName(QStringLiteral("loops.office"));
    m_office->setAccessibleName(tr("Serving office"));
    m_office->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_summary->setObjectName(QStringLiteral("loops.summary"));
    m_chosen->setObjectName(QStringLiteral("loops.chosen"));
    m_table->setModel(m_model);
    m_table->setColumnEms(widths());
    m_table->horizontalHeader()->setSortIndicatorShown(true);
    m_table->horizontalHeader()->setSectionsClickable(true);
    arrange();
    connectAll();
    m_table->hide();
    m_chosen->hide();
    m_empty->hide();
    setRunning(false);
}

void LoopsScreen::arrange()
{
    auto *head = new QHBoxLayout;
    head->addWidget(m_office);
    head->addWidget(m_start);
    head->addWidget(m_stop);
    head->addWidget(m_progress, 1);
    head->addStretch(0);
    head->addWidget(m_save);
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(makeHeading(tr("Loops of an office"), 1.5));
    layout->addWidget(m_summary);
    layout->addLayout(head);
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_chosen);
    layout->addStretch(0);
    layout->setAlignment(Qt::AlignTop);
    whenThemed(this, [this, head] {
        head->setSpacing(em(0.6));
        m_start->setMinimumHeight(em(2.3));
        m_office->setMinimumHeight(em(2.3));
    });
    m_summary->show(Status::None,
                    tr("Judges every pair that an order holds, working or planned, by the newest "
                       "make-up that was recorded of it: whether it carries basic rate, and which "
                       "tap or coil to take out where it does not."));
}

void LoopsScreen::connectAll()
{
    connect(m_table, &Table::opened, this,
            [this](const QModelIndex &index) { emit openOrder(m_model->row(index.row()).key); });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &now) { showChosen(now.row()); });
    connect(m_table->horizontalHeader(), &QHeaderView::sectionClicked, this, &LoopsScreen::sortBy);
}

void LoopsScreen::refresh()
{
    const auto known = offices(records());
    if (!known) {
        m_summary->tellIfNew(Status::Failed, localized(known.error()));
        return;
    }
    const QString chosen = m_office->currentData().toString();
    m_office->clear();
    for (const ServingOffice &office : *known)
        m_office->addItem(officeName(office), office.key);
    if (const int at = m_office->findData(chosen); at >= 0)
        m_office->setCurrentIndex(at);
    m_start->setEnabled(!known->isEmpty() && !m_worker.isBusy());
    m_empty->setVisible(known->isEmpty());
    if (known->isEmpty())
        m_empty->say(tr("No office is registered yet"),
                     tr("Offices come from a file: Import, then a CSV with the columns office, "
                        "name and protocol_variant."));
}

void LoopsScreen::takeFocus()
{
    if (m_model->rowCount() > 0)
        m_table->setFocus();
    else
        m_office->setFocus();
}

void LoopsScreen::setRunning(bool running)
{
    m_start->setEnabled(!running && m_office->count() > 0);
    m_save->setEnabled(!running && !m_loops.empty());
    m_stop->setVisible(running);
    m_progress->setVisible(running);
    m_progress->setRange(0, 0);
    if (running)
        m_stop->setFocus();
}

void LoopsScreen::start()
{
    const QString office = m_office->currentData().toString();
    if (office.isEmpty() || m_worker.isBusy())
        return;
    m_judged = office;
    setRunning(true);
    m_worker.ask<Judged>(
        [office](Records &records, const Progress &progress) -> Result<Judged> {
            Judged judged;
            LOOPWRIGHT_ASSIGN(judged.count, qualifyOffice(
                                                records, office,
                                                [&judged](const OfficeLoop &loop) {
                                                    judged.loops.push_back(loop);
                                                    return Result<void>();
                                                },
                                                progress));
            return judged;
        },
        [this](Result<Judged> judged) { showJudged(std::move(judged)); });
}

void LoopsScreen::showJudged(Result<Judged> judged)
{
    m_loops = judged ? std::move(judged->loops) : std::vector<OfficeLoop>();
    setRunning(false);
    m_table->setVisible(!m_loops.empty());
    if (!judged)
        m_summary->tell(Status::Failed, localized(judged.error()));
    else
        m_summary->tell(judged->count.notSuitable > 0 ? Status::Failed
                        : judged->count.marginal > 0  ? Status::Doubtful
                        : m_loops.empty()             ? Status::None
                                                      : Status::Done,
                        summaryOf(judged->count));
    showRows();
    if (m_loops.empty())
        m_start->setFocus();
    else
        m_table->setFocus();
}

QString LoopsScreen::summaryOf(const OfficeLoopCount &count) const
{
    if (count.loops() == 0 && count.withoutMakeup == 0)
        return tr("No order holds a pair of %1.").arg(m_judged);
    const auto number = [](qint64 each) { return QString::number(each); };
    const QString loops = count.loops() == 1
                              ? tr("1 loop of %1: %2 suitable, %3 marginal, %4 not suitable.")
                                    .arg(m_judged, number(count.suitable), number(count.marginal),
                                         number(count.notSuitable))
                              : tr("%1 loops of %2: %3 suitable, %4 marginal, %5 not suitable.")
                                    .arg(number(count.loops()), m_judged, number(count.suitable),
                                         number(count.marginal), number(count.notSuitable));
    if (count.withoutMakeup == 0)
        return loops;
    return loops + ' ' +
           (count.withoutMakeup == 1
                ? tr("Of 1 pair no make-up is recorded.")
                : tr("Of %1 pairs no make-up is recorded.").arg(count.withoutMakeup));
}

void LoopsScreen::sortBy(int column)
{
    m_descending = column == m_sortColumn && !m_descending;
    m_sortColumn = column;
    showRows();
}

void LoopsScreen::showRows()
{
    m_loops = sorted(std::move(m_loops), columns[m_sortColumn], m_descending);
    std::vector<TextRow> rows;
    for (const OfficeLoop &loop : m_loops) {
        TextRow row{{}, suitabilitySign(loop.judged.verdict), loop.order};
        for (const Column &column : columns)
            row.cells << column.text(loop);
        rows.push_back(std::move(row));
    }
    m_model->show(std::move(rows));
    m_table->horizontalHeader()->setSortIndicator(m_sortColumn, m_descending ? Qt::DescendingOrder
                                                                             : Qt::AscendingOrder);
    if (!m_loops.empty())
        m_table->setCurrentIndex(m_model->index(0, 0));
    showChosen(m_loops.empty() ? -1 : 0);
}

void LoopsScreen::showChosen(int row)
{
    const bool any = row >= 0 && row < int(m_loops.size());
    m_chosen->setVisible(any);
    if (!any)
        return;
    const OfficeLoop &loop = m_loops[std::size_t(row)];
    QStringList sentences{withLengths(reasonSentences(loop.judged.reasons), inMetres())};
    if (const QString mend = mendText(loop); !mend.isEmpty())
        sentences << tr("Would help: %1.").arg(mend);
    m_chosen->show(suitabilitySign(loop.judged.verdict),
                   tr("Pair %1. %2").arg(loop.pair, sentences.join(u' ')));
}

void LoopsScreen::save()
{
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save the loops"), QString("loops-%1.csv").arg(m_judged), tr("CSV files (*.csv)"));
    if (path.isEmpty())
        return;
    saveAs(path);
}

/// What is shown, as it was judged: the records may have gone on since.
void LoopsScreen::saveAs(const QString &path)
{
    setRunning(true);
    m_worker.ask<qsizetype>(
        [loops = m_loops, path](Records &, const Progress &) -> Result<qsizetype> {
            LOOPWRIGHT_TRY(writeOfficeLoops(loops, path, true));
            return qsizetype(loops.size());
        },
        [this, path](const Result<qsizetype> &count) {
            setRunning(false);
            emit said(!count        ? localized(count.error())
                      : *count == 1 ? tr("1 loop is in %1.").arg(path)
                                    : tr("%1 loops are in %2.").arg(*count).arg(path));
        });
}

} // namespace loopwright
