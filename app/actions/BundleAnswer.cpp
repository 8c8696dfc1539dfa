#include "app/actions/BundleAnswer.h"

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

QJsonValue orNull(const QString &text)
{
    return text.isEmpty() ? QJsonValue() : QJsonValue(text);
}

} // namespace

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

Result<void> takeOrders(
    TakenBundle &taken, const BundleFile &file,
    const std::function<Result<JoinedOrder>(const BundledOrder &, const QString &place)> &take)
{
    bool isNews = taken.begun;
    for (const BundledOrder &entry : file.bundle.orders) {
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

Result<std::vector<TakenBundle>>
eachBundle(const std::vector<BundleInput> &files,
           const std::function<Result<void>(const BundleInput &, TakenBundle &taken)> &take)
{
    std::vector<TakenBundle> all;
    for (const BundleInput &input : files) {
        TakenBundle &taken = all.emplace_back();
        const auto done = take(input, taken);
        if (!done)
            return failure(std::ranges::any_of(all, &TakenBundle::begun)
                               ? stoppedIn(input.name, done.error())
                               : done.error());
    }
    return all;
}

} // namespace loopwright
