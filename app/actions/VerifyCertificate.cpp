#include "app/actions/VerifyCertificate.h"

#include "app/print/CoverSheet.h"
#include "core/certificate/CertificateNumber.h"
#include "db/CertificateStore.h"
#include "db/DecisionStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/OrderStore.h"

#include <QRegularExpression>

#include <algorithm>
#include <zlib.h>

namespace loopwright {

namespace {

constexpr qsizetype mostUnpacked = 4'000'000; ///< of one stream; a certificate's are far smaller

/// What can be unpacked of zlib data; damaged or foreign data gives what came before the damage.
QByteArray unpacked(const QByteArray &packed)
{
    QByteArray text(std::min(mostUnpacked, packed.size() * 40 + 1000), '\0');
    z_stream stream{};
    if (inflateInit(&stream) != Z_OK)
        return {};
    stream.next_in = reinterpret_cast<Bytef *>(const_cast<char *>(packed.data()));
    stream.avail_in = uInt(packed.size());
    stream.next_out = reinterpret_cast<Bytef *>(text.data());
    stream.avail_out = uInt(text.size());
    inflate(&stream, Z_FINISH);
    text.truncate(text.size() - qsizetype(stream.avail_out));
    inflateEnd(&stream);
    return text;
}

/// All that stands in a PDF as text, unpacked or not, so that a number is found wherever it stands.
QByteArray readableBytes(const QByteArray &pdf)
{
    static const QRegularExpression hexadecimal(
        "<([0-9a-fA-F]{16,4000})>"); // titles are written so
    QByteArray all = pdf;
    auto texts = hexadecimal.globalMatch(QString::fromLatin1(pdf));
    while (texts.hasNext())
        all += QByteArray::fromHex(texts.next().captured(1).toLatin1()) + '\n';
    all.replace('\0', QByteArray()); // UTF-16 titles read like ASCII then
    for (qsizetype at = pdf.indexOf("stream"); at >= 0; at = pdf.indexOf("stream", at + 6)) {
        qsizetype from = at + 6;
        while (from < pdf.size() && (pdf[from] == '\r' || pdf[from] == '\n'))
            ++from;
        const qsizetype to = pdf.indexOf("endstream", from);
        if (to < 0)
            break;
        all += unpacked(pdf.mid(from, to - from));
        at = to + 3;
    }
    return all;
}

Result<std::optional<StoredCertificate>> certificateNamedIn(const Database &database,
                                                            const QByteArray &pdf)
{
    static const QRegularExpression shape(R"(\d\d-\d{3}-\d{5}-\d\d)");
    auto found = shape.globalMatch(QString::fromLatin1(readableBytes(pdf)));
    QStringList tried;
    while (found.hasNext()) {
        const QString number = found.next().captured();
        if (tried.contains(number))
            continue;
        tried << number;
        auto certificate = CertificateStore(database).find(number);
        if (!certificate || *certificate)
            return certificate;
    }
    return std::optional<StoredCertificate>();
}

/// The counted fact that was voided after all; empty where none was.
Result<QString> voidedEvidence(const Database &database, const StoredCertificate &certificate)
{
    LOOPWRIGHT_ASSIGN(const auto decision, DecisionStore(database).find(certificate.decision));
    if (!decision)
        return QString();
    LOOPWRIGHT_ASSIGN(const auto result, parseJsonObject(decision->result, "decision"));
    for (const QJsonValue &criterion : result.value("criteria").toArray())
        for (const QJsonValue &id : criterion.toObject().value("evidence").toArray()) {
            LOOPWRIGHT_ASSIGN(const auto voiding, FactStore(database).voidOf(id.toString()));
            if (voiding)
                return voiding->as<VoidFact>()->because;
        }
    return QString();
}

Result<std::vector<Event>> laterEvents(const Database &database,
                                       const StoredCertificate &certificate, const QString &circuit)
{
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofCircuit(circuit));
    const auto issue =
        std::find_if(events.begin(), events.end(), [&certificate](const Event &event) {
            return event.kind == "certificate_issued" &&
                   event.detail.value("certificate") == certificate.number;
        });
    return issue == events.end() ? std::vector<Event>()
                                 : std::vector<Event>(issue + 1, events.end());
}

Result<CertificateCheck> standing(Records &records, const StoredCertificate &certificate)
{
    const Database &database = records.database();
    CertificateCheck check{
        CertificateVerdict::Genuine, certificate.number, certificate.order, {}, {}};
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database).get(certificate.order));
    LOOPWRIGHT_ASSIGN(auto later, laterEvents(database, certificate, stored.order.circuit));
    check.later = std::move(later);
    const auto all = CertificateStore(database).ofOrder(certificate.order);
    const auto voided = voidedEvidence(database, certificate);
    if (!all)
        return failure(all.error());
    if (!voided)
        return failure(voided.error());
    if (digestOf(certificate.content) != certificate.digest) {
        check.verdict = CertificateVerdict::Altered;
        check.reason = "The content that the records keep of this certificate was altered; verify "
                       "the history.";
    } else if (all->back().number != certificate.number) {
        check.verdict = CertificateVerdict::Superseded;
        check.reason =
            QString("Certificate %1 was issued for the order after it.").arg(all->back().number);
    } else if (!voided->isEmpty()) {
        check.verdict = CertificateVerdict::Superseded;
        check.reason = QString("Evidence that it counts was voided: %1").arg(*voided);
    } else {
        check.reason = "It is the certificate that was issued, unaltered.";
    }
    return check;
}

CertificateCheck unknown(const QString &reason)
{
    return {CertificateVerdict::Unknown, {}, {}, reason, {}};
}

} // namespace

Result<CertificateCheck> verifyCertificateFile(Records &records, const QByteArray &pdf)
{
    LOOPWRIGHT_ASSIGN(const auto number,
                      CertificateStore(records.database()).numberOfFile(sha256Hex(pdf)));
    if (number) {
        LOOPWRIGHT_ASSIGN(const auto certificate,
                          CertificateStore(records.database()).find(*number));
        if (certificate)
            return standing(records, *certificate);
    }
    if (isCoverPdf(pdf))
        return unknown("This is the cover of a set and no certificate; verify the files of the "
                       "certificates that it names.");
    LOOPWRIGHT_ASSIGN(const auto named, certificateNamedIn(records.database(), pdf));
    if (!named)
        return unknown("The records know no certificate with this file's number, or the file is no "
                       "certificate.");
    return CertificateCheck{
        CertificateVerdict::Altered,
        named->number,
        named->order,
        QString("The file is not the one that was issued as %1.").arg(named->number),
        {}};
}

Result<CertificateCheck> verifyCertificateNumber(Records &records, const QString &number,
                                                 const QString &code)
{
    const auto parsed = CertificateNumber::parse(number);
    if (!parsed)
        return unknown(parsed.error().text());
    LOOPWRIGHT_ASSIGN(const auto certificate,
                      CertificateStore(records.database()).find(parsed->text()));
    if (!certificate)
        return unknown(QString("The records know no certificate %1.").arg(parsed->text()));
    if (!codeMatches(code, certificate->digest))
        return CertificateCheck{
            CertificateVerdict::Altered,
            certificate->number,
            certificate->order,
            QString("The code does not belong to certificate %1.").arg(certificate->number),
            {}};
    return standing(records, *certificate);
}

QJsonObject CertificateCheck::toJson() const
{
    QJsonArray events;
    for (const Event &event : later)
        events << event.content();
    return {{"verdict", toText(verdict)},
            {"certificate", certificate},
            {"order", order},
            {"reason", reason},
            {"later", events}};
}

} // namespace loopwright
