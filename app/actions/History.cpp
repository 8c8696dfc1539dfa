#include "app/actions/History.h"

#include "app/print/PdfFile.h"
#include "core/base/Json.h"
#include "db/EventStore.h"
#include "db/HistoryCheck.h"
#include "db/OrderStore.h"

namespace loopwright {

Result<std::vector<Event>> orderHistory(Records &records, const QString &orderNumber)
{
    LOOPWRIGHT_TRY(OrderStore(records.database()).get(orderNumber));
    return EventStore(records.database()).ofOrder(orderNumber);
}

Result<LogHead> logHead(Records &records)
{
    return EventStore(records.database()).logHead();
}

namespace {

Result<std::vector<LogHead>> headsOfCertificate(const QByteArray &pdf, const QString &name)
{
    std::vector<LogHead> heads;
    for (const QByteArray &attachment : readPdf(pdf).attachments) {
        const auto object = parseJsonObject(attachment, name);
        const auto head = object ? LogHead::fromJson(*object, name) : failure(object.error());
        if (head)
            heads.push_back(*head);
    }
    if (heads.empty())
        return failure(ErrorCode::BadInput, "bears no head of a log", name);
    return heads;
}

} // namespace

Result<std::vector<LogHead>> headsIn(const QByteArray &file, const QString &name)
{
    if (file.startsWith("%PDF"))
        return headsOfCertificate(file, name);
    LOOPWRIGHT_ASSIGN(const auto value, parseJson(file, name));
    const QJsonArray list = value.isArray() ? value.toArray() : QJsonArray{value};
    std::vector<LogHead> heads;
    for (qsizetype i = 0; i < list.size(); ++i) {
        LOOPWRIGHT_ASSIGN(
            const auto head,
            LogHead::fromJson(list[i].toObject(),
                              value.isArray() ? QString("%1[%2]").arg(name).arg(i) : name));
        heads.push_back(head);
    }
    if (heads.empty())
        return failure(ErrorCode::BadInput, "holds no head of a log", name);
    return heads;
}

Result<HistoryVerdict> verifyHistory(Records &records, const Progress &progress,
                                     const std::vector<LogHead> &heads)
{
    LOOPWRIGHT_ASSIGN(const auto found, checkHistory(records.database(), progress, heads));
    HistoryVerdict verdict;
    verdict.events = found.events;
    for (const HistoryFault &fault : found.faults)
        verdict.broken.push_back({fault.subject, fault.event, fault.what});
    return verdict;
}

QJsonObject HistoryVerdict::toJson() const
{
    QJsonArray list;
    for (const BrokenLink &link : broken)
        list << QJsonObject{{"subject", link.subject}, {"event", link.event}, {"what", link.what}};
    return {{"verdict", broken.empty() ? "whole" : "broken"}, {"events", events}, {"broken", list}};
}

} // namespace loopwright
