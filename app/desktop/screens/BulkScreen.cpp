#include "app/desktop/screens/BulkScreen.h"

#include "app/actions/OutFile.h"
#include "app/actions/Register.h"
#include "app/actions/SheetFile.h"
#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QLocale>
#include <QProgressBar>
#include <QTabWidget>

namespace loopwright {

namespace {

/// More rows than anybody reads; the command line lists them all.
constexpr std::size_t mostRowsShown = 5000;

QString orEmptyWords(const QString &value)
{
    return value.isEmpty() ? BulkScreen::tr("none") : value;
}

QString columnWords(const QString &column)
{
    const QStringList parts = column.split(u'_');
    if (parts.size() == 2 && parts[0] == u"dn")
        return BulkScreen::tr("Number %1").arg(parts[1]);
    if (parts.size() == 2 && parts[0] == u"spid")
        return BulkScreen::tr("SPID %1").arg(parts[1]);
    if (column == u"head_number")
        return BulkScreen::tr("Head number");
    return column == u"protocol_variant" ? BulkScreen::tr("Protocol variant") : column;
}

QString countsOf(const BulkReport &report)
{
    const auto orders = QLocale().toString(qint64(report.orders));
    const auto circuits = QLocale().toString(qint64(report.circuits));
    return BulkScreen::tr("orders: %1, circuits: %2").arg(orders, circuits);
}

QString sentenceOf(const BulkReport &report)
{
    const OfficeChange &change = report.change;
    const QString what = change.kind == OfficeChangeKind::AreaCode
                             ? BulkScreen::tr("Area code %1 of office %2 became %3")
                                   .arg(change.from, change.office, change.to)
                             : BulkScreen::tr("Office %1 went from %2 to %3")
                                   .arg(change.office, change.from, change.to);
    return what + QStringLiteral(" (") + countsOf(report) + QStringLiteral(").");
}

} // namespace

BulkScreen::BulkScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_worker(workplace.longWork())
    , m_changes(new TextTable({tr("Circuit"), tr("Order"), tr("What"), tr("Old"), tr("New")}, -1,
                              {0, 1, 3, 4}, this))
    , m_cannot(new TextTable({tr("Circuit"), tr("Order"), tr("What"), tr("Stays"), tr("Because")},
                             2, {0, 1, 3}, this))
{
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(makeHeading(tr("Bulk change"), 1.5));
    layout->addWidget(makeQuestion());
    layout->addWidget(makeReport(), 1);
    showQuestion();
    setRunning(false);
}

void BulkScreen::refresh()
{
    const auto known = offices(records());
    if (!known) {
        emit said(localized(known.error()));
        return;
    }
    const QString chosen = m_office->currentData().toString();
    const bool none = m_office->count() == 0;
    const QSignalBlocker quiet(m_office);
    m_office->clear();
    for (const ServingOffice &office : *known)
        m_office->addItem(officeName(office), office.key);
    m_office->setCurrentIndex(std::max(0, m_office->findData(chosen)));
    m_preview->setEnabled(m_office->count() > 0 && !m_worker.isBusy());
    if (!m_done.isEmpty()) { // unless it was taken back
        const auto last = lastBulk(records());
        if (last && (!*last || (*last)->id != m_done))
            forget();
    }
    if (m_office->count() == 0)
        m_summary->show(Status::None, tr("There is no serving office yet: import one first."));
    else if (none)
        forget();
}

void BulkScreen::takeFocus()
{
    (m_from->isVisible() ? static_cast<QWidget *>(m_from) : m_variant)->setFocus();
}

void BulkScreen::open(const QString &office)
{
    refresh();
    if (const int index = m_office->findData(office); index >= 0)
        m_office->setCurrentIndex(index);
}

void BulkScreen::showQuestion()
{
    const bool split = m_kind->currentData() == toText(OfficeChangeKind::AreaCode);
    m_split->setVisible(split);
    m_conversion->setVisible(!split);
    if (m_summary)
        forget();
}

void BulkScreen::forget()
{
    m_done.clear();
    m_apply->setEnabled(false);
    m_cards->hide();
    m_tabs->hide();
    m_summary->show(
        Status::None,
        tr("First it is shown what would become of each line, old and new, and what cannot be. "
           "Open orders and lines in service are changed together, all or none; a supervisor does "
           "it, and it can be taken back as long as nothing was built on it."));
}

OfficeChange BulkScreen::asked() const
{
    OfficeChange change;
    change.kind = fromText<OfficeChangeKind>(m_kind->currentData().toString())
                      .value_or(OfficeChangeKind::AreaCode);
    change.office = m_office->currentData().toString();
    if (change.kind == OfficeChangeKind::AreaCode) {
        change.from = m_from->text().trimmed();
        change.to = m_to->text().trimmed();
        change.spids = m_spids->isChecked();
    } else {
        change.to = m_variant->currentData().toString();
    }
    return change;
}

void BulkScreen::preview()
{
    if (m_worker.isBusy() || m_office->count() == 0)
        return;
    setRunning(true);
    m_worker.ask<BulkReport>(
        [change = asked()](Records &records, const Progress &progress) {
            return previewBulk(records, change, progress);
        },
        [this](const Result<BulkReport> &report) { show(report); });
}

void BulkScreen::apply()
{
    if (m_worker.isBusy())
        return;
    setRunning(true);
    m_worker.ask<BulkReport>(
        [change = asked()](Records &records, const Progress &progress) {
            return applyBulk(records, change, progress);
        },
        [this](const Result<BulkReport> &report) {
            show(report);
            if (report && !report->id.isEmpty())
                tellDone(*report);
        });
}

void BulkScreen::setRunning(bool running)
{
    for (QWidget *control : std::initializer_list<QWidget *>{m_kind, m_office, m_from, m_to,
                                                             m_spids, m_variant, m_cards})
        control->setEnabled(!running);
    m_preview->setEnabled(!running && m_office->count() > 0);
    m_stop->setVisible(running);
    m_progress->setVisible(running);
    m_progress->setRange(0, 0);
    if (running) {
        m_apply->setEnabled(false);
        m_stop->setFocus();
    }
}

void BulkScreen::show(const Result<BulkReport> &report)
{
    setRunning(false);
    if (!report) {
        m_tabs->hide();
        m_summary->tell(Status::Failed, localizedSentence(report.error().message));
        return;
    }
    const bool any = report->orders > 0 || report->officeToo;
    m_done = report->id;
    m_apply->setEnabled(any && !report->applied);
    m_cards->setVisible(report->applied && report->orders > 0);
    QStringList said{report->applied ? sentenceOf(*report)
                     : any           ? tr("Would be changed: %1.").arg(countsOf(*report))
                                     : tr("No line of this office is concerned.")};
    if (!report->cannot.empty())
        said << tr("What cannot be is named with its reason.");
    if (report->officeToo && !report->applied)
        said << tr("New orders of the office would take the new variant.");
    if (const qsizetype count = report->certificates; count > 0 && !report->applied)
        said << (count == 1 ? tr("1 certificate will stand no longer.")
                            : tr("%1 certificates will stand no longer.")
                                  .arg(QLocale().toString(qint64(count))));
    if (const qsizetype count = report->out; count > 0)
        said << (count == 1 ? tr("1 order is with a van, which will not know of it until it is "
                                 "home.")
                            : tr("%1 orders are with vans, which will not know of it until they "
                                 "are home.")
                                  .arg(QLocale().toString(qint64(count))));
    if (!report->doubt.isEmpty())
        said << localized(report->doubt);
    const Status sign = !report->cannot.empty() || !report->doubt.isEmpty() ? Status::Doubtful
                        : report->applied                                   ? Status::Done
                                                                            : Status::None;
    if (report->applied && !report->id.isEmpty())
        m_summary->show(sign, said.join(u' ')); // the notice with the way back tells it
    else
        m_summary->tell(sign, said.join(u' '));
    showRows(*report);
    // Not to what changes a whole office: a second Enter must not do it unasked.
    (m_tabs->isHidden() ? static_cast<QWidget *>(m_preview) : m_tabs->currentWidget())->setFocus();
}

void BulkScreen::showRows(const BulkReport &report)
{
    const auto rowsOf = [](const auto &list, Status sign, const auto &last) {
        std::vector<TextRow> rows;
        for (std::size_t i = 0; i < std::min(list.size(), mostRowsShown); ++i)
            rows.push_back({{list[i].circuit, list[i].order, columnWords(list[i].value.what),
                             orEmptyWords(list[i].value.old), last(list[i])},
                            sign,
                            list[i].order,
                            false});
        return rows;
    };
    m_changes->show(rowsOf(report.changes, Status::None,
                           [](const BulkLine &line) { return orEmptyWords(line.value.now); }));
    m_cannot->show(rowsOf(report.cannot, Status::Doubtful,
                          [](const BulkKept &line) { return localized(line.value.because); }));
    const auto nameTab = [this](int tab, const QString &name, std::size_t count) {
        m_tabs->setTabText(tab, count > mostRowsShown
                                    ? tr("%1 (%2, the first %3 are shown)")
                                          .arg(name, QLocale().toString(qint64(count)))
                                          .arg(mostRowsShown)
                                    : tr("%1 (%2)").arg(name).arg(count));
    };
    nameTab(0, tr("Changes"), report.changes.size());
    nameTab(1, tr("Cannot be"), report.cannot.size());
    m_tabs->setCurrentIndex(report.changes.empty() && !report.cannot.empty() ? 1 : 0);
    m_tabs->setVisible(!report.changes.empty() || !report.cannot.empty());
}

void BulkScreen::tellDone(const BulkReport &report)
{
    DoneStep step;
    step.sentence = sentenceOf(report);
    if (!report.cannot.empty())
        step.remark = tr("Values that stay: %1.").arg(report.cannot.size());
    step.takeBack = [id = report.id](Records &records) -> Result<void> {
        LOOPWRIGHT_TRY(undoBulk(records, id));
        return {};
    };
    emit recordsChanged();
    emit stepDone(step);
}

void BulkScreen::saveCards()
{
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save the settings cards"),
                                     QStringLiteral("settings-cards.pdf"), tr("PDF files (*.pdf)"));
    if (path.isEmpty() || m_worker.isBusy())
        return;
    setRunning(true);
    m_worker.ask<OrderPapers>(
        [path, paper = localPaper()](Records &records,
                                     const Progress &progress) -> Result<OrderPapers> {
            LOOPWRIGHT_TRY(checkOut(path, FileKind::Pdf));
            LOOPWRIGHT_ASSIGN(auto cards, cardsOfLastBulk(records, paper, {}, progress));
            LOOPWRIGHT_TRY(writeSheet(cards.sheet, path, records.now(), progress));
            return cards;
        },
        [this, path](const Result<OrderPapers> &cards) {
            setRunning(false);
            if (!cards) {
                m_summary->tell(Status::Failed, localized(cards.error()));
                return;
            }
            m_summary->tell(
                cards->without.isEmpty() ? Status::Done : Status::Doubtful,
                tr("Settings cards saved: %1, in %2.").arg(cards->papers).arg(path) +
                    (cards->without.isEmpty()
                         ? QString()
                         : ' ' +
                               tr("Without: %1.").arg(cards->without.join(QStringLiteral("; ")))));
        });
}

} // namespace loopwright
