#include "app/desktop/vans/TakeInDialog.h"

#include "app/actions/InFile.h"
#include "app/actions/OpenBundles.h"
#include "app/actions/ReceiveBundles.h"
#include "app/desktop/Language.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"

#include <QLineEdit>
#include <QLocale>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

/// Within a sentence.
QString senderText(const BundleOutline &outline)
{
    return outline.kind == BundleKind::Out
               ? TakeInDialog::tr("the office (station %1)").arg(outline.station)
               : outline.station;
}

SignItem itemOf(const BundleOutline &outline)
{
    SignItem item{outline.file, Status::Note, outline.file, {}};
    if (!outline.code.isEmpty()) {
        item.status = Status::Failed;
        item.text = TakeInDialog::tr("No bundle, or a damaged one: %1")
                        .arg(localizedSentence(outline.reason));
        return item;
    }
    const QString what =
        outline.kind == BundleKind::Out
            ? TakeInDialog::tr("For a van, from %1. %2.")
            : (outline.keep ? TakeInDialog::tr("Brought back by %1, which keeps the orders. %2.")
                            : TakeInDialog::tr("Brought back by %1. %2."));
    item.text = what.arg(senderText(outline), ordersText(outline.orders));
    if (outline.parts > 1)
        item.text += ' ' + TakeInDialog::tr("Part %1 of %2.").arg(outline.part).arg(outline.parts);
    return item;
}

QString newText(const JoinedOrder &order)
{
    const qsizetype count = order.added.size();
    if (count == 0)
        return order.isNew ? TakeInDialog::tr("New here") : TakeInDialog::tr("No new entries");
    const QString entries = count == 1
                                ? TakeInDialog::tr("1 new entry")
                                : TakeInDialog::tr("%1 new entries").arg(QLocale().toString(count));
    return order.isNew ? TakeInDialog::tr("New here, %1").arg(entries) : entries;
}

/// Hazards first, before how much came in.
void addWarnings(const JoinedOrder &order, SignItem &item)
{
    QStringList before, after;
    for (const Finding &finding : order.findings)
        (finding.code == u"hazard_open" ? before : after) << localized(finding.reason);
    item.text = (before + QStringList{item.text} + after).join(' ');
    if (!order.findings.empty())
        item.status = Status::Doubtful;
}

SignItem itemOf(const JoinedOrder &order)
{
    SignItem item{order.order, Status::Done, order.order, {}};
    if (order.verdict == BundleVerdict::Refused) {
        item.status = Status::Failed;
        item.text = TakeInDialog::tr("Refused: %1").arg(localizedSentence(order.reason));
        return item;
    }
    if (order.verdict == BundleVerdict::AlreadyThere) {
        item.status = Status::NotNeeded;
        item.text = TakeInDialog::tr("Was there already.");
        addWarnings(order, item);
        return item;
    }
    QStringList said{newText(order)};
    if (!order.certificates.isEmpty())
        said << TakeInDialog::tr("certificate %1").arg(order.certificates.join(", "));
    if (!order.conflicts.isEmpty())
        said << TakeInDialog::tr("to be settled: %1")
                    .arg(QLocale().toString(order.conflicts.size()));
    item.text = said.join(QStringLiteral(", ")) + '.';
    if (!order.conflicts.isEmpty())
        item.status = Status::Doubtful;
    addWarnings(order, item);
    return item;
}

SignItem itemOf(const TakenBundle &file, const BundleOutline &outline)
{
    switch (file.verdict) {
    case BundleVerdict::Refused:
        return {file.file, Status::Failed, file.file,
                TakeInDialog::tr("Refused: %1").arg(localizedSentence(file.reason))};
    case BundleVerdict::AlreadyThere:
        return {file.file, Status::NotNeeded, file.file,
                TakeInDialog::tr("From %1. Was there already.").arg(senderText(outline))};
    case BundleVerdict::Taken:
        break;
    }
    return {file.file, file.refuses() ? Status::Doubtful : Status::Done, file.file,
            TakeInDialog::tr("From %1. Taken in.").arg(senderText(outline))};
}

bool hasConflicts(const TakenBundle &file)
{
    return std::ranges::any_of(file.orders,
                               [](const JoinedOrder &order) { return !order.conflicts.isEmpty(); });
}

} // namespace

TakeInDialog::TakeInDialog(DesktopContext &workplace, const QStringList &paths, QWidget *window)
    : VanDialog(QStringLiteral("take_in"), tr("Take in"), tr("Take in"), workplace, window)
    , m_settle(makeButton(tr("Settle…"), QStringLiteral("take_in.settle"), [this] {
        accept();
        emit settleWished();
    }))
{
    addButton(m_settle);
    m_settle->hide();
    m_issuerField = makeIssuerField();
    asked()->addWidget(m_issuerField);
    m_issuerField->hide();
    read(paths);
}

QWidget *TakeInDialog::makeIssuerField()
{
    m_issuer = new QLineEdit;
    m_issuer->setObjectName(QStringLiteral("take_in.issuer"));
    auto *field = new FieldMark(tr("New key of the issuer, as the office reads it out"), m_issuer);
    auto *holder = new QWidget;
    auto *column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(makeText(tr("This is of an issuer with another key than the one that these "
                                  "records work for. Call the office, and enter the key that you "
                                  "hear; nobody else can say that it is the right one.")));
    column->addWidget(field);
    return holder;
}

void TakeInDialog::read(const QStringList &paths)
{
    setReady(false);
    tell(Status::None, tr("The files are read…"));
    asker().ask<std::vector<Bundle>>(
        [paths](Records &records, const Progress &) -> Result<std::vector<Bundle>> {
            std::vector<Bundle> bundles;
            for (const QString &path : paths) {
                LOOPWRIGHT_ASSIGN(auto bytes, readFile(path));
                BundleInput input{fileNameOf(path), std::move(bytes)};
                LOOPWRIGHT_ASSIGN(auto outline, outlineOf(records, input));
                bundles.push_back({std::move(input), std::move(outline)});
            }
            return bundles;
        },
        [this](const Result<std::vector<Bundle>> &bundles) { showBefore(bundles); });
}

void TakeInDialog::showBefore(const Result<std::vector<Bundle>> &bundles)
{
    if (!bundles)
        return tell(Status::Failed, localized(bundles.error()));
    std::vector<SignItem> items;
    QStringList orders;
    for (const Bundle &each : *bundles) {
        items.push_back(itemOf(each.outline));
        orders << each.outline.orders;
        if (each.outline.code.isEmpty())
            m_bundles.push_back(each);
    }
    setItems(std::move(items));
    setReady(!m_bundles.empty());
    goToConfirm();
    orders.removeDuplicates();
    m_issuerField->setVisible(std::ranges::any_of(
        m_bundles, [](const Bundle &each) { return !each.outline.otherIssuer.isEmpty(); }));
    if (m_issuerField->isVisibleTo(this))
        m_issuer->setFocus();
    if (m_bundles.empty())
        tell(Status::Failed, tr("There is nothing to take in."));
    else
        tell(Status::Note,
             tr("About to be taken in: %1. Signatures are checked first; nothing that "
                "is here gets lost.")
                 .arg(ordersText(orders)));
}

Result<TakeInDialog::TakenIn> TakeInDialog::takeIn(Records &records,
                                                   const std::vector<Bundle> &bundles,
                                                   const QString &newIssuer,
                                                   const Progress &progress)
{
    qint64 all = 0, before = 0; // octets
    for (const Bundle &each : bundles)
        all += each.input.bytes.size();
    TakenIn taken;
    const Progress within = [&](qint64 done, qint64) {
        taken.stopped = !progress(before + done, all);
        return !taken.stopped;
    };
    for (const Bundle &each : bundles) {
        auto done = each.outline.kind == BundleKind::Out
                        ? openBundles(records, {each.input}, newIssuer, within)
                        : receiveBundles(records, {each.input}, within);
        if (!done) {
            taken.broke = done.error();
            return taken;
        }
        taken.files.push_back(std::move(done->front()));
        before += each.input.bytes.size();
    }
    return taken;
}

void TakeInDialog::confirm()
{
    setWorking(true);
    tell(Status::None, {});
    asker().ask<TakenIn>(
        [bundles = m_bundles, issuer = m_issuer->text()](Records &records,
                                                         const Progress &progress) {
            return takeIn(records, bundles, issuer, progress);
        },
        [this](const Result<TakenIn> &taken) {
            emit recordsChanged();
            if (taken)
                return showAfter(*taken);
            setWorking(false);
            tell(Status::Failed, localized(taken.error()));
        });
}

void TakeInDialog::showAfter(const TakenIn &taken)
{
    std::vector<SignItem> items;
    bool refused = false, conflicts = false, warns = false;
    for (std::size_t i = 0; i < taken.files.size(); ++i) {
        const TakenBundle &file = taken.files[i];
        items.push_back(itemOf(file, m_bundles[i].outline));
        for (const JoinedOrder &order : file.orders) {
            items.push_back(itemOf(order));
            warns = warns || !order.findings.empty();
        }
        refused = refused || file.refuses();
        conflicts = conflicts || hasConflicts(file);
    }
    m_settle->setVisible(conflicts);
    if (taken.broke) {
        const QString why = localized(*taken.broke);
        const QString file = m_bundles[taken.files.size()].outline.file;
        return finish(taken.stopped ? Status::Doubtful : Status::Failed,
                      items.empty() ? why : tr("What is listed is taken in. %1: %2").arg(file, why),
                      std::move(items));
    }
    if (refused)
        return finish(Status::Failed, tr("Not everything was taken in."), std::move(items));
    if (conflicts)
        return finish(Status::Doubtful, tr("Taken in. Something is to be settled."),
                      std::move(items));
    if (warns)
        return finish(
            Status::Doubtful,
            tr("Everything was taken in. Read what is marked before anybody works on it."),
            std::move(items));
    finish(Status::Done, tr("Everything was taken in."), std::move(items));
}

} // namespace loopwright
