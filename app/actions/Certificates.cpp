#include "app/actions/Certificates.h"

#include "app/actions/Issuing.h"

namespace loopwright {

Result<IssuedCertificate> issueCertificate(Records &records, const IssueRequest &request)
{
    auto transaction = Transaction::begin(records.database());
    if (!transaction)
        return failure(transaction.error());
    const auto about = certifying(records, request.order);
    if (!about)
        return failure(about.error());
    auto made = makeIssue(records, *transaction, *about, request.paper, request.signatures);
    if (!made)
        return failure(made.error());
    if (request.deliver)
        LOOPWRIGHT_TRY(request.deliver(made->paper.pdf));
    LOOPWRIGHT_TRY(transaction->commit(made->event));
    return std::move(made->issued);
}

Result<CertificateContent> previewCertificate(Records &records, const QString &order,
                                              const Signatures &signatures)
{
    const auto about = certifying(records, order);
    if (!about)
        return failure(about.error());
    LOOPWRIGHT_TRY(checkMayIssue(*about));
    auto content = contentNow(records, *about, signatures);
    if (!content)
        return content;
    auto stands = standingCertificate(records, order, *content);
    if (!stands)
        return failure(stands.error());
    return stands->has_value() ? std::move(**stands) : std::move(*content);
}

QJsonObject IssuedCertificate::toJson() const
{
    return {{"certificate", number}, {"digest", digest}, {"code", code},
            {"pages", pages},        {"copy", copy},     {"order", content.order}};
}

} // namespace loopwright
