#pragma once
// Certificates for tests, made from jobs that are decided; and the programs that read a PDF back.

#include "core/acceptance/Judge.h"
#include "core/certificate/CertificateNumber.h"
#include "core/certificate/CertificateProof.h"
#include "core/certificate/MakeCertificate.h"
#include "core/certificate/SettingsLines.h"
#include "tests/support/Jobs.h"

#include <QProcess>

namespace loopwright::certificates {

inline Moment moment(const char *text)
{
    return *Moment::parse(QString::fromLatin1(text));
}

inline Issuer issuer()
{
    return {"Prairie Telephone Cooperative", "4 North Hill, Prairie, IL 62700", "217-555-0170",
            "217-555-0172", "every day, 7:00 to 22:00"};
}

inline CertificateSources sources(const OrderFields &fields, const QList<QJsonObject> &facts)
{
    const DecisionInput input = jobs::input(fields, facts);
    CertificateSources sources;
    sources.number = CertificateNumber{2026, "K7M4QP", 42}.text();
    sources.issuedAt = moment("2026-03-04T15:20:00-06:00");
    sources.input = input;
    sources.limits = jobs::limits();
    sources.issuer = issuer();
    sources.office = {"NORTH", "North Hill", "ni2", "4 North Hill", "217-555-0170", "217-555-0171"};
    sources.decision = decide(input, jobs::limits());
    sources.instruments = {jobs::instrument()};
    sources.people = {{"K7", "Pat Example", Role::Installer},
                      {"S1", "Robin Sample", Role::Supervisor}};
    return sources;
}

inline CertificateContent content(const CertificateSources &sources, const NumberGuard &guard = {})
{
    const auto made = makeCertificate(sources, guard);
    if (!made)
        qFatal("%s", qPrintable(made.error().text()));
    return *made;
}

/// With keys and signatures that are none, but have their form: what is printed is the same.
inline CertificateProof proof(const CertificateContent &content)
{
    const QByteArray signature(86, 'A');
    const PublicKey station{"K7M4QP", QByteArray(32, 's'), fingerprintOf(QByteArray(32, 'i')),
                            signature};
    const LogHead head{"K7M4QP", 41, QString(64, u'd'), content.issuedAt};
    return {{CertificateClaims::of(content, station.fingerprint()), signature},
            {station},
            {head, station.fingerprint(), signature}};
}

inline CertificateContent bri()
{
    return content(sources(jobs::briFields(), jobs::briFacts()));
}

inline CertificateContent analog()
{
    return content(sources(jobs::analogFields(), jobs::analogFacts()));
}

/// A supervisor's exception, as the program stores it.
inline Fact exception(int n, const DecisionInput &input, const QStringList &criteria,
                      const QString &because)
{
    Fact fact;
    fact.id = jobs::uuid(n);
    fact.at = moment("2026-03-04T14:00:00-06:00");
    fact.order = "A-1001";
    fact.body = ExceptionFact{criteria, because, "S1", idsOf(input.facts)};
    return fact;
}

struct Output
{
    int status = -1;
    QByteArray text;
};

/// Runs a program of the test tools and waits for it.
inline Output run(const QString &program, const QStringList &arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000))
        return {-1, (program + " did not finish").toUtf8()};
    return {process.exitCode(), process.readAllStandardOutput() + process.readAllStandardError()};
}

} // namespace loopwright::certificates
