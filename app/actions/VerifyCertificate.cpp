#include "app/actions/VerifyCertificate.h"

#include "app/print/CoverSheet.h"
#include "app/print/PdfFile.h"
#include "core/certificate/CertificateNumber.h"
#include "db/CertificateStore.h"
#include "db/DecisionStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/OrderStore.h"

#include <QRegularExpression>

#include <algorithm>

namespace loopwright {

namespace {

/// All that names a certificate in a PDF: its title, its record, and its bytes as they are. They
/// hold the title too, so that it is found even if a damaged file cannot be read; a damaged title
/// leaves the record.
QString namingText(const QByteArray &pdf, const PdfContents &contents)
{
    QString text = QString::fromLatin1(pdf) + '\n' + contents.title + '\n' + contents.subject;
    for (const QByteArray &attachment : contents.attachments)
        text += '\n' + QString::fromUtf8(attachment);
    return text;
}

Result<std::optional<StoredCertificate>> certificateNamedIn(const Database &database,
                                                            const QString &text)
{
    static const QRegularExpression shape(R"(\d\d-\d{3}-\d{5}-\d\d)");
    auto found = shape.globalMatch(text);
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

/// The counted fact that was voided after all; empty if none was.
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
    const PdfContents contents = readPdf(pdf);
    if (isCover(contents))
        return unknown("This is the cover of a set and no certificate; verify the files of the "
                       "certificates that it names.");
    LOOPWRIGHT_ASSIGN(const auto named,
                      certificateNamedIn(records.database(), namingText(pdf, contents)));
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
        events << event.toJson();
    return {{"verdict", toText(verdict)},
            {"certificate", certificate},
            {"order", order},
            {"reason", reason},
            {"later", events}};
}

} // namespace loopwright
