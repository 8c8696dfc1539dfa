#include "app/actions/Certificates.h"

#include "app/actions/Acting.h"
#include "app/actions/Issuing.h"
#include "app/actions/VerifyCertificate.h"

namespace loopwright {

Result<IssuedCertificate> issueCertificate(Records &records, const IssueRequest &request)
{
    LOOPWRIGHT_TRY(allow(records, Act::IssueCertificate, request.order));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto about, certifying(records, request.order));
    LOOPWRIGHT_ASSIGN(auto made,
                      makeIssue(records, transaction, about, request.paper, request.signatures));
    if (request.mayDeliver)
        LOOPWRIGHT_TRY(request.mayDeliver());
    LOOPWRIGHT_TRY(commitIssues(records, std::move(transaction), {&made}));
    if (request.deliver)
        if (const auto done = request.deliver(made.paper); !done)
            return failure(paperMissing({made.issued.number}, done.error()));
    papersWritten(records, {&made});
    tellStanding(records, made.issued);
    return std::move(made.issued);
}

Result<CertificateContent> previewCertificate(Records &records, const QString &order,
                                              const Signatures &signatures)
{
    LOOPWRIGHT_ASSIGN(const auto about, certifying(records, order));
    LOOPWRIGHT_TRY(checkMayIssue(records, about));
    LOOPWRIGHT_ASSIGN(auto content, contentNow(records, about, signatures));
    LOOPWRIGHT_ASSIGN(auto stands, standingCertificate(records, order, content));
    return stands.has_value() ? std::move(*stands) : std::move(content);
}

} // namespace loopwright
