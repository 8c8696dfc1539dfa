#include "core/identifiers/SpidRepair.h"

#include "core/identifiers/SpellingTrouble.h"

namespace loopwright {

namespace {

struct Candidate
{
    SpidFault explains;
    std::string digits;
};

QString typedText(std::string_view utf8)
{
    return QString::fromUtf8(utf8.data(), qsizetype(utf8.size()));
}

SpidFault faultOf(SpellingTroubleKind kind)
{
    switch (kind) {
    case SpellingTroubleKind::Scientific:
        return SpidFault::Scientific;
    case SpellingTroubleKind::Decimal:
        return SpidFault::Decimal;
    case SpellingTroubleKind::Apostrophe:
        return SpidFault::Apostrophe;
    case SpellingTroubleKind::Rounded:
        return SpidFault::Rounded;
    }
    return SpidFault::Decimal;
}

// Whether a look for spelling troubles is worth its time.
bool mayBeMisspelt(const SpidJudge &judge)
{
    const std::string_view typed = judge.typed();
    return !judge.spid().onlyDigits || judge.spid().count > 15 || typed.ends_with(".0") ||
           typed.ends_with(".00");
}

// A SPID of a 5ESS begins with 01; as a number it loses the 0.
bool mayHaveLostZero(const SpidJudge &judge)
{
    return judge.spid().onlyDigits && judge.digits().starts_with('1') &&
           judge.length() < judge.variant().maxDigits;
}

// The SPID field holds a number that a DN field would take, the DN field does not.
bool mayBeExchanged(const SpidJudge &judge)
{
    return judge.dn().count > 0 && judge.dn().onlyDigits && comparableDn(judge.dn()).empty() &&
           !comparableDn(judge.spid()).empty();
}

bool isOk(const SpidJudge &judge)
{
    return !judge.spid().isBlank() && judge.worst() == Severity::Note;
}

std::vector<Candidate> candidatesFor(const SpidJudge &judge,
                                     const std::optional<SpellingTrouble> &trouble)
{
    std::vector<Candidate> candidates;
    if (trouble && !trouble->restored.isEmpty())
        candidates.push_back({faultOf(trouble->kind), trouble->restored.toStdString()});
    else if (!judge.spid().onlyDigits)
        if (const auto meant = respelt(typedText(judge.typed())))
            candidates.push_back({SpidFault::Character, *meant});
    if (mayHaveLostZero(judge))
        candidates.push_back({SpidFault::LostZero, std::string(1, '0').append(judge.digits())});
    if (!judge.variant().soleEnding.isEmpty() && judge.spid().onlyDigits) {
        std::string whole(judge.digits());
        whole += judge.variant().soleEnding.toStdString();
        // Without the DN nobody knows that it is the end that is missing.
        if (SpidJudge(judge.variant(), whole, judge.typedDn()).comparedWithDn())
            candidates.push_back({SpidFault::LostEnding, std::move(whole)});
    }
    if (mayBeExchanged(judge)) {
        std::string other(judge.dn().view());
        const SpidJudge swapped(judge.variant(), other, judge.typed());
        if (isOk(swapped) && swapped.comparedWithDn())
            candidates.push_back({SpidFault::Exchanged, std::move(other)});
    }
    return candidates;
}

// The only candidate that is ok; nothing if there are several different ones.
std::optional<Candidate> onlyRepair(const SpidJudge &judge, std::vector<Candidate> candidates)
{
    std::optional<Candidate> found;
    for (Candidate &candidate : candidates) {
        if (!isOk(SpidJudge(judge.variant(), candidate.digits, judge.typedDn())))
            continue;
        if (found && found->digits != candidate.digits)
            return std::nullopt;
        if (!found)
            found = std::move(candidate);
    }
    return found;
}

void explain(std::vector<SpidFaultFound> &faults, SpidFault what, Severity severity)
{
    faults.assign(1, {what, severity, 0, 0});
}

} // namespace

bool needsDiagnosis(const SpidJudge &judge)
{
    return !judge.faults().empty() || (judge.variant().hasSpid() && mayBeMisspelt(judge));
}

SpidDiagnosis diagnose(const SpidJudge &judge)
{
    SpidDiagnosis result{{judge.faults().begin(), judge.faults().end()}, {}};
    if (!judge.variant().hasSpid() || judge.spid().isBlank())
        return result;
    std::optional<SpellingTrouble> trouble;
    if (mayBeMisspelt(judge))
        trouble = spellingTroubleOf(typedText(judge.typed()));
    const Severity worst = judge.worst();
    if (worst > Severity::Note)
        if (auto repair = onlyRepair(judge, candidatesFor(judge, trouble))) {
            result.repair = std::move(repair->digits);
            if (repair->explains != SpidFault::Character) {
                explain(result.faults, repair->explains, worst);
                return result;
            }
        }
    if (trouble && !judge.spid().onlyDigits)
        explain(result.faults, faultOf(trouble->kind), worst);
    else if (trouble)
        result.faults.push_back({faultOf(trouble->kind), Severity::Note, 0, 0});
    std::stable_sort(result.faults.begin(), result.faults.end(),
                     [](const auto &a, const auto &b) { return a.severity > b.severity; });
    return result;
}

} // namespace loopwright
