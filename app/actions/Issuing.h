#pragma once
// One certificate within a transaction, for the actions that issue one or several: everything but
// handing the file over and the commit.

#include "app/actions/IssuedCertificate.h"
#include "app/actions/Records.h"
#include "app/print/CertificateDocument.h"
#include "core/acceptance/Judge.h"
#include "core/certificate/MakeCertificate.h"
#include "core/history/Event.h"
#include "db/OrderStore.h"

namespace loopwright {

/// What an order is certified from.
struct Certifying
{
    StoredOrder stored;
    DecisionInput input;
    Decision decision;
};
Result<Certifying> certifying(Records &records, const QString &order);

/// Keeps the unpublished numbers of the serving office out of what goes to a customer.
Result<NumberGuard> guardOf(const Database &database, const QString &office);

/// What papers for a customer are made from: the order with its decision, the register, when each
/// fact was recorded.
Result<CertificateSources> sourcesOf(Records &records, const Certifying &about);

/// What the certificate says now, without its number.
Result<CertificateContent> contentNow(Records &records, const Certifying &about,
                                      const Signatures &signatures);

/// The newest certificate of the order if it still says what would be said now.
Result<std::optional<CertificateContent>>
standingCertificate(Records &records, const QString &order, const CertificateContent &now);

/// Refused, with the reason in one sentence, if the order can have no certificate now: neither a
/// new one nor a copy of the one that stands.
Result<void> checkMayIssue(Records &records, const Certifying &about);

/// A certificate that stands is issued as a copy; or, if somebody signs who did not before, as a
/// further issue that bears the signature; or, if the paper of its newest issue is due and the same
/// is asked for, that one is made again byte for byte.
struct MadeIssue
{
    IssuedCertificate issued;
    CertificatePaper paper;
    std::optional<Event> event; ///< to be committed; none where only the paper is made again
};
Result<MadeIssue> makeIssue(Records &records, Transaction &transaction, const Certifying &about,
                            Paper paper, const Signatures &signatures);

// First the records, then the paper: what a full disk or a killed program costs is a paper, which
// can be made again, and never a number that is on paper and nowhere else.

/// Ends the transaction. The papers are due from then on; nothing is to be recorded if no issue is
/// new.
Result<void> commitIssues(Records &records, Transaction transaction,
                          const std::vector<const MadeIssue *> &issues);
/// They are no longer due.
void papersWritten(Records &records, const std::vector<const MadeIssue *> &issues);
/// DiskTrouble: only the paper is missing.
Error paperMissing(const QStringList &numbers, const Error &why);

} // namespace loopwright
