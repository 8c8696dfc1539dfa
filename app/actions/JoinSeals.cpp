#include "app/actions/JoinSeals.h"

#include "core/certificate/CertificateNumber.h"
#include "db/CertificateStore.h"
#include "db/MetaStore.h"
#include "db/StationStore.h"

#include <QMultiHash>

namespace loopwright {

namespace {

tl::unexpected<Error> notTheVans(const QString &why)
{
    return failure(ErrorCode::Refused, why, "broken_chain");
}

tl::unexpected<Error> untold(const char *row)
{
    return notTheVans(QString("No event of the van tells of a %1 that it brings.").arg(row));
}

/// What the events of a chain say that they wrote.
class ToldSeals
{
public:
    void note(const Event &event)
    {
        for (const Seal &seal : event.seals())
            m_ids.insert({seal.row, seal.digest}, seal.id);
    }
    bool hasContent(const QString &row, const QByteArray &content) const
    {
        return m_ids.contains({row, sha256Hex(content)});
    }
    bool has(const Seal &seal) const { return m_ids.contains({seal.row, seal.digest}, seal.id); }

private:
    QMultiHash<QPair<QString, QString>, QString> m_ids; ///< by kind of row and digest
};

class SealCheck
{
public:
    SealCheck(const Database &database, const std::vector<Event> &known, const Joining &joining)
        : m_database(database)
        , m_joining(joining)
        , m_entry(joining.entry)
    {
        // By whichever order of the circuit: what two of them wrote at once the first one seals.
        for (const Event &event : known)
            m_sealed.note(event);
        for (const ForeignEvent &each : joining.entry.events)
            m_sealed.note(each.event);
    }

    Result<void> run() const;

private:
    Result<void> content(const char *row, const QByteArray &content) const;
    Result<void> certificate(const BundledCertificate &certificate,
                             const QStringList &others) const;
    Result<QStringList> tagsOfOthers() const;
    Result<void> number(const QString &number, const QStringList &others) const;
    Result<void> orderOf(const BundledCertificate &certificate) const;
    Result<void> issues(const BundledCertificate &certificate) const;

    const Database &m_database;
    const Joining &m_joining;
    const BundledOrder &m_entry;
    ToldSeals m_sealed;
};

Result<void> SealCheck::content(const char *row, const QByteArray &content) const
{
    if (m_sealed.hasContent(row, content))
        return {};
    return untold(row);
}

/// Those of these records and of other vans. One that nobody has here is believed to be an earlier
/// one of the van, which may have been restored more than once.
Result<QStringList> SealCheck::tagsOfOthers() const
{
    LOOPWRIGHT_ASSIGN(const auto own, MetaStore(m_database).station());
    LOOPWRIGHT_ASSIGN(const auto all, StationStore(m_database).all());
    QStringList others{own};
    for (const PeerStation &each : all)
        if (!m_joining.tags.contains(each.tag))
            others << each.tag;
    return others;
}

/// Numbers of other stations are theirs to give out: one that is taken they can give no more.
Result<void> SealCheck::number(const QString &number, const QStringList &others) const
{
    const auto parsed = CertificateNumber::parse(number);
    if (!parsed || parsed->text() != number) // not as typed, but as it is stored
        return notTheVans(QString("It brings a certificate with the number \"%1\", which is none.")
                              .arg(number.left(40)));
    if (!others.contains(parsed->station))
        return {};
    return notTheVans(
        QString("It brings certificate %1, whose number is that of another station. If "
                "the van was restored, add it under the name that it had.")
            .arg(number));
}

Result<void> SealCheck::orderOf(const BundledCertificate &certificate) const
{
    LOOPWRIGHT_ASSIGN(const auto before, CertificateStore(m_database).find(certificate.number));
    // Another content under one number is told as such: the number was given out twice.
    if (!before || before->order == m_entry.number ||
        before->digest != sha256Hex(certificate.content))
        return {};
    return notTheVans(QString("It brings certificate %1 for order %2, and here it is that of order "
                              "%3.")
                          .arg(certificate.number, m_entry.number, before->order));
}

/// A file counts as an issue by its digest alone, so that one is never taken on trust.
Result<void> SealCheck::issues(const BundledCertificate &certificate) const
{
    for (std::size_t i = 0; i < certificate.issues.size(); ++i) {
        const QString id = QString("%1/%2").arg(certificate.number).arg(i + 1);
        if (!m_sealed.has({"certificate_issue", id, certificate.issues[i].fileSha256}))
            return notTheVans(
                QString("No event of the van tells of issue %1 of certificate %2 that "
                        "it brings.")
                    .arg(i + 1)
                    .arg(certificate.number));
    }
    return {};
}

Result<void> SealCheck::certificate(const BundledCertificate &certificate,
                                    const QStringList &others) const
{
    LOOPWRIGHT_TRY(number(certificate.number, others));
    LOOPWRIGHT_TRY(orderOf(certificate));
    if (!m_sealed.has({"certificate", certificate.number, sha256Hex(certificate.content)}))
        return untold("certificate");
    return issues(certificate);
}

Result<void> SealCheck::run() const
{
    for (const BundledFact &fact : m_entry.facts) {
        LOOPWRIGHT_TRY(content("fact", fact.content));
        if (fact.station != m_joining.van.tag)
            return notTheVans("It brings a fact as the work of another station.");
    }
    for (const BundledDecision &decision : m_entry.decisions) {
        LOOPWRIGHT_TRY(content("decision", decision.result));
        LOOPWRIGHT_TRY(content("decision_input", decision.input));
    }
    if (m_entry.certificates.empty())
        return {};
    LOOPWRIGHT_ASSIGN(const auto others, tagsOfOthers());
    for (const BundledCertificate &each : m_entry.certificates)
        LOOPWRIGHT_TRY(certificate(each, others));
    return {};
}

} // namespace

Result<void> checkSeals(const Database &database, const std::vector<Event> &known,
                        const Joining &joining)
{
    return SealCheck(database, known, joining).run();
}

} // namespace loopwright
