#include "app/actions/History.h"

#include "app/actions/InFile.h"
#include "app/actions/KeptHead.h"
#include "app/actions/Keys.h"
#include "app/actions/Maintenance.h"
#include "app/print/PdfFile.h"
#include "core/base/Json.h"
#include "db/Backup.h"
#include "db/CertificateStore.h"
#include "db/EventStore.h"
#include "db/HistoryCheck.h"
#include "db/KeyStore.h"
#include "db/OrderStore.h"

namespace loopwright {

Result<std::vector<Event>> orderHistory(Records &records, const QString &orderNumber)
{
    LOOPWRIGHT_TRY(OrderStore(records.database()).get(orderNumber));
    return EventStore(records.database()).ofOrder(orderNumber);
}

Result<SignedHead> logHead(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(records.database()).logHead());
    LOOPWRIGHT_ASSIGN(const auto signer, signerAtHand(records));
    return signer ? signedHead(head, *signer) : SignedHead{head, {}, {}};
}

namespace {

Result<Witnesses> witnessesOfCertificate(const QByteArray &pdf, const QString &name)
{
    const PdfContents contents = readPdf(pdf);
    const QByteArray attached = contents.attachment("head.json");
    if (attached.isEmpty())
        return failure(ErrorCode::BadInput, "bears no head of a log", name);
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(attached, name));
    LOOPWRIGHT_ASSIGN(auto head, SignedHead::fromJson(object, name));
    if (head.signature.isEmpty())
        return failure(ErrorCode::BadInput,
                       "is no witness: the head of the log in it lost its signature", name);
    Witnesses found;
    found.heads.push_back(std::move(head));
    if (auto claims = SignedClaims::parse(contents.attachment("claims.txt"), name))
        found.certificates.push_back(std::move(*claims));
    return found;
}

/// What is signed, by whom, and whether the signature fits a key that the records know.
struct Signed
{
    QString what;
    QByteArray text;
    QString key;
    QByteArray signature;
};

/// The key's words; nothing if the records do not know it or nobody signed. What bears the name of
/// a known key and does not fit it is told as broken.
Result<std::optional<QString>> whoSigned(const Database &database, const Signed &what,
                                         HistoryVerdict &verdict)
{
    LOOPWRIGHT_ASSIGN(const auto key, KeyStore(database).find(what.key));
    const bool fits = key && isSignedBy(key->bytes, what.text, what.signature);
    if (key && !fits)
        verdict.broken.push_back(
            {"log", 0, "the signature does not fit what is witnessed: " + what.what});
    verdict.witnessed.push_back({what.what, fits ? key->words() : QString()});
    return fits ? std::optional(key->words()) : std::nullopt;
}

Result<void> compareWitnesses(const Database &database, const Witnesses &witnesses,
                              HistoryVerdict &verdict)
{
    for (const SignedHead &each : witnesses.heads)
        LOOPWRIGHT_TRY(whoSigned(
            database,
            {QString("event %1 of the log of %2").arg(each.head.position).arg(each.head.station),
             each.head.text(), each.key, each.signature},
            verdict));
    for (const auto &[claims, signature] : witnesses.certificates) {
        const QString what = "certificate " + claims.number;
        LOOPWRIGHT_ASSIGN(
            const auto signer,
            whoSigned(database, {what, claims.text(), claims.key, signature}, verdict));
        LOOPWRIGHT_ASSIGN(const auto there, CertificateStore(database).find(claims.number));
        if (signer && !there)
            verdict.broken.push_back(
                {"log", 0, QString("%1 was given by %2, and is not in it").arg(what, *signer)});
    }
    return {};
}

} // namespace

Result<Witnesses> witnessesOf(const QString &path)
{
    const QString file = isBackup(path) ? headBesideBackup(path) : path;
    LOOPWRIGHT_ASSIGN(const auto bytes, readFile(file, largestCertificate));
    return witnessesIn(bytes, fileNameOf(file));
}

Result<Witnesses> witnessesIn(const QByteArray &file, const QString &name)
{
    if (file.startsWith("%PDF"))
        return witnessesOfCertificate(file, name);
    LOOPWRIGHT_ASSIGN(const auto value, parseJson(file, name));
    const QJsonArray list = value.isArray() ? value.toArray() : QJsonArray{value};
    Witnesses found;
    for (qsizetype i = 0; i < list.size(); ++i) {
        LOOPWRIGHT_ASSIGN(
            const auto head,
            SignedHead::fromJson(list[i].toObject(),
                                 value.isArray() ? QString("%1[%2]").arg(name).arg(i) : name));
        found.heads.push_back(head);
    }
    if (found.heads.empty())
        return failure(ErrorCode::BadInput, "holds no head of a log", name);
    return found;
}

Result<HistoryVerdict> verifyHistory(Records &records, const Progress &progress,
                                     Witnesses witnesses)
{
    const Database &database = records.database();
    LOOPWRIGHT_ASSIGN(const auto kept, keptHead(records));
    if (kept)
        witnesses.heads.push_back(*kept);
    std::vector<LogHead> heads;
    for (const SignedHead &each : witnesses.heads)
        heads.push_back(each.head);
    LOOPWRIGHT_ASSIGN(const auto found, checkHistory(database, progress, heads));
    HistoryVerdict verdict;
    verdict.events = found.events;
    LOOPWRIGHT_TRY(compareWitnesses(database, witnesses, verdict));
    for (const HistoryFault &fault : found.faults)
        verdict.broken.push_back({fault.subject, fault.event, fault.what});
    return verdict;
}

QJsonObject HistoryVerdict::toJson() const
{
    QJsonArray links, seen;
    for (const BrokenLink &link : broken)
        links << QJsonObject{{"subject", link.subject}, {"event", link.event}, {"what", link.what}};
    for (const Witnessed &each : witnessed)
        seen << QJsonObject{{"what", each.what}, {"signed_by", each.signedBy}};
    return {{"verdict", broken.empty() ? "whole" : "broken"},
            {"events", events},
            {"broken", links},
            {"witnessed", seen}};
}

} // namespace loopwright
