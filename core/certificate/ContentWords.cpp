// The sentences of a certificate that follow from its content.

#include "core/certificate/CertificateContent.h"

#include <algorithm>

namespace loopwright {

const Signature *signatureOf(const Signatures &signatures, const QString &role)
{
    const auto found = std::ranges::find(signatures, role, &Signature::role);
    return found == signatures.end() ? nullptr : &*found;
}

QString inOneLine(const std::vector<CertificateLine> &lines)
{
    QStringList parts;
    for (const CertificateLine &line : lines)
        parts << line.name + ": " + line.value;
    return parts.join("; ");
}

QString CertificateContent::runsSentence() const
{
    if (!runNeeded)
        return {};
    const QString made = runs.size() == 1 ? QString("1 run was made")
                                          : QString("%1 runs were made").arg(runs.size());
    const auto failed = std::count_if(runs.begin(), runs.end(), [](const auto &run) {
        return run.outcome == RunOutcome::Failed;
    });
    const auto struckOut =
        std::count_if(runs.begin(), runs.end(), [](const auto &run) { return run.struckOut; });
    QStringList parts{made};
    if (failed > 0)
        parts << QString(runs.size() == 1 ? "it failed" : "%1 of them failed")
                     .replace("%1", QString::number(failed));
    if (struckOut > 0)
        parts << QString("%1 of them struck out").arg(struckOut);
    return parts.join(", ");
}

QString CertificateContent::verdict() const
{
    return outcome == OrderOutcome::AcceptedWithException ? "Accepted by exception" : "Accepted";
}

QString CertificateContent::verdictSentence() const
{
    qsizetype asked = 0, met = 0, marginal = 0, failed = 0, notShown = 0;
    for (const CertificateCriterion &criterion : criteria) {
        asked += criterion.outcome != CriterionOutcome::NotNeeded;
        met += criterion.outcome == CriterionOutcome::Met;
        marginal += criterion.outcome == CriterionOutcome::Met && criterion.grade == u"marginal";
        failed += criterion.outcome == CriterionOutcome::NotMet;
        notShown += criterion.outcome == CriterionOutcome::Missing;
    }
    QString text = met == asked ? QString("Each of the %1 points that this line was checked for is "
                                          "met")
                                      .arg(asked)
                                : QString("Of the %1 points that this line was checked for, %2 %3 "
                                          "met")
                                      .arg(asked)
                                      .arg(met)
                                      .arg(met == 1 ? "is" : "are");
    if (failed > 0)
        text += QString(", %1 %2 not").arg(failed).arg(failed == 1 ? "is" : "are");
    if (notShown > 0)
        text += QString(", %1 %2 not shown").arg(notShown).arg(notShown == 1 ? "was" : "were");
    if (marginal > 0)
        text += QString("; %1 of those met %2 near the limit")
                    .arg(marginal)
                    .arg(marginal == 1 ? "is" : "are");
    if (outcome == OrderOutcome::AcceptedWithException)
        text += failed + notShown == 1
                    ? ". It was accepted by exception: who authorised that, and why, stands in the "
                      "box"
                    : ". They were accepted by exception: who authorised that, and why, stands in "
                      "the box";
    return text + '.';
}

} // namespace loopwright
