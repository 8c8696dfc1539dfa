#include "app/actions/BundleAnswer.h"

#include "app/actions/Events.h"
#include "app/actions/Refusals.h"

#include <algorithm>

namespace loopwright {

namespace {

QString wordOf(BundleVerdict verdict, const char *taken)
{
    switch (verdict) {
    case BundleVerdict::Taken:
        return taken;
    case BundleVerdict::AlreadyThere:
        return "already_there";
    case BundleVerdict::Refused:
        break;
    }
    return "refused";
}

/// Its last step alone changed nothing.
Error stoppedIn(const QString &file, Error error)
{
    error.message.remove("; nothing was changed");
    error.message = QString("It stopped in the middle of %1: %2. What came before is in; the same "
                            "command takes in the rest.")
                        .arg(file, error.message);
    return error;
}

/// Orders are in whole or not at all.
tl::unexpected<Error> stoppedByWish(const std::vector<TakenBundle> &all, bool begun)
{
    if (!begun)
        return failure(ErrorCode::Refused, "It was stopped; nothing was changed.");
    qsizetype in = 0;
    for (const TakenBundle &file : all)
        in += std::ranges::count(file.orders, BundleVerdict::Taken, &JoinedOrder::verdict);
    if (in == 0)
        return failure(ErrorCode::Refused, "It was stopped before an order was taken in; the same "
                                           "files again take them in.");
    return failure(ErrorCode::Refused,
                   QString("It was stopped. Orders taken in: %1. They stay, and the same files "
                           "again take in the rest.")
                       .arg(in));
}

QJsonValue orNull(const QString &text)
{
    return text.isEmpty() ? QJsonValue() : QJsonValue(text);
}

} // namespace

void JoinedOrder::tellFirst(const Findings &warnings)
{
    findings.insert(findings.begin(), warnings.begin(), warnings.end());
}

QJsonObject JoinedOrder::toJson() const
{
    QJsonArray told;
    for (const Finding &finding : findings)
        told << QJsonObject{{"code", finding.code},
                            {"severity", severityName(finding.severity)},
                            {"reason", finding.reason.english()}};
    return {{"order", order},
            {"verdict", wordOf(verdict, "joined")},
            {"code", orNull(code)},
            {"reason", orNull(reason)},
            {"added", QJsonArray::fromStringList(added)},
            {"already_there", QJsonArray::fromStringList(alreadyThere)},
            {"certificates", QJsonArray::fromStringList(certificates)},
            {"conflicts", QJsonArray::fromStringList(conflicts)},
            {"findings", told}};
}

bool TakenBundle::refuses() const
{
    return verdict == BundleVerdict::Refused ||
           std::ranges::any_of(orders, [](const JoinedOrder &order) {
               return order.verdict == BundleVerdict::Refused;
           });
}

QJsonObject TakenBundle::toJson(const char *taken) const
{
    QJsonArray list;
    for (const JoinedOrder &order : orders)
        list << order.toJson();
    return {{"file", file},
            {"verdict", wordOf(verdict, taken)},
            {"code", orNull(code)},
            {"reason", orNull(reason)},
            {"bundle", orNull(bundle)},
            {"station", orNull(station)},
            {"orders", list}};
}

JoinedOrder refusedOrder(const QString &order, const Error &error)
{
    static const QStringList codes = {"broken_chain", "forked", "earlier_missing", "unknown_order",
                                      "number_in_use"};
    JoinedOrder refused;
    refused.order = order;
    refused.verdict = BundleVerdict::Refused;
    refused.code = codes.contains(error.place) ? error.place : QString("damaged");
    refused.reason = codes.contains(error.place) ? error.message : error.text();
    return refused;
}

TakenBundle refusedBundle(const QString &file, const QString &code, const QString &reason)
{
    TakenBundle taken;
    taken.file = file;
    taken.verdict = BundleVerdict::Refused;
    taken.code = code;
    taken.reason = reason;
    return taken;
}

tl::expected<BundleFile, TakenBundle> readBundleInput(const BundleInput &input, BundleKind kind)
{
    auto read = readBundle(input.bytes, input.name);
    if (!read)
        return tl::unexpected(
            refusedBundle(input.name, read.error().code, read.error().error.message));
    if (read->bundle.kind != kind)
        return tl::unexpected(refusedBundle(
            input.name, "wrong_kind",
            kind == BundleKind::Out ? "This is work that a van brings back; the office receives it."
                                    : "This is what an office hands out; the van opens it."));
    return std::move(*read);
}

BundleSteps::BundleSteps(const std::vector<BundleInput> &files, Progress progress)
    : m_progress(std::move(progress))
{
    for (const BundleInput &file : files)
        m_total += file.bytes.size();
}

void BundleSteps::begin(const BundleInput &file)
{
    m_before += m_size;
    m_size = file.bytes.size();
}

bool BundleSteps::goesOn(std::size_t order, std::size_t orders)
{
    const double part = double(order) / double(std::max<std::size_t>(orders, 1));
    m_stopped =
        m_stopped || (m_progress && !m_progress(m_before + qint64(part * double(m_size)), m_total));
    return !m_stopped;
}

Result<void> noteWhole(Records &records, const KnownBundle &bundle)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_TRY(StationStore::addBundle(transaction, bundle));
    return transaction.commit(
        registerEvent(records, "bundle_gone_through", {{"bundle", bundle.id}}));
}

Result<void> takeOrders(
    TakenBundle &taken, const BundleFile &file, BundleSteps &steps,
    const std::function<Result<JoinedOrder>(const BundledOrder &, const QString &place)> &take)
{
    bool isNews = taken.begun;
    for (std::size_t i = 0; i < file.bundle.orders.size(); ++i) {
        if (!steps.goesOn(i, file.bundle.orders.size()))
            return {};
        const BundledOrder &entry = file.bundle.orders[i];
        auto joined = take(entry, taken.file + '.' + entry.number);
        if (!joined && !Refusals::isOfOne(joined.error().code))
            return failure(joined.error());
        taken.orders.push_back(joined ? std::move(*joined)
                                      : refusedOrder(entry.number, joined.error()));
        const BundleVerdict verdict = taken.orders.back().verdict;
        taken.begun = taken.begun || verdict == BundleVerdict::Taken;
        isNews = isNews || verdict != BundleVerdict::AlreadyThere;
    }
    if (!isNews)
        taken.verdict = BundleVerdict::AlreadyThere;
    return {};
}

Result<std::vector<TakenBundle>> eachBundle(
    const std::vector<BundleInput> &files, const Progress &progress,
    const std::function<Result<void>(const BundleInput &, TakenBundle &taken, BundleSteps &steps)>
        &take)
{
    BundleSteps steps(files, progress);
    std::vector<TakenBundle> all;
    for (const BundleInput &input : files) {
        TakenBundle &taken = all.emplace_back();
        steps.begin(input);
        const auto done = steps.goesOn(0, 1) ? take(input, taken, steps) : Result<void>();
        const bool begun = std::ranges::any_of(all, &TakenBundle::begun);
        if (!done)
            return failure(begun ? stoppedIn(input.name, done.error()) : done.error());
        if (steps.isStopped())
            return stoppedByWish(all, begun);
    }
    return all;
}

} // namespace loopwright
