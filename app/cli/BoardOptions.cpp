#include "app/cli/BoardOptions.h"

#include "core/acceptance/Criteria.h"

#include <limits>

namespace loopwright {

namespace {

const QString hazardWord = QStringLiteral("hazard");

/// An option of one word or text that fills a filter of the board.
struct FacetOption
{
    BoardFacet facet;
    const char *option;
    QStringList (*words)(); ///< null: any text
    const char *help;
};

QStringList outcomeWords()
{
    return allWords<OrderOutcome>() << hazardWord;
}

constexpr FacetOption facetRows[] = {
    {BoardFacet::Stage, "--stage", allWords<Stage>, "Only orders that stand at this station"},
    {BoardFacet::Outcome, "--outcome", outcomeWords,
     "Only orders of which decide says this; hazard: one is open on them"},
    {BoardFacet::Criterion, "--criterion", criterionKeys,
     "Only orders whose first open criterion it is"},
    {BoardFacet::Office, "--office", nullptr, "Only orders of this serving office"},
    {BoardFacet::Installer, "--installer", nullptr, "Only orders of this installer"},
    {BoardFacet::WaitingOn, "--waiting-on", allWords<WaitingOn>,
     "Only orders that were handed on and wait on this"}};

/// One of the filters that are only on or off.
struct FlagOption
{
    BoardFacet facet;
    const char *option, *help;
};
constexpr FlagOption flagRows[] = {
    {BoardFacet::Open, "--open", "Only orders that are neither completed nor cancelled"},
    {BoardFacet::Paper, "--paper-outstanding",
     "Only orders that are accepted and whose certificate is not issued"},
    {BoardFacet::Away, "--out", "Only orders that a van has"},
    {BoardFacet::Conflict, "--conflicts",
     "Only orders of which stations say otherwise, and nobody has settled it"}};

} // namespace

void BoardOptions::declare(Options &options, const char *outFlag)
{
    static_assert(std::size(facetRows) == facetOptions && std::size(flagRows) == flagOptions);
    for (std::size_t i = 0; i < facetOptions; ++i) {
        const FacetOption &row = facetRows[i];
        if (row.words)
            options.word(row.option, m_values[i], row.words(), row.help);
        else
            options.text(row.option, m_values[i], row.help);
    }
    for (std::size_t i = 0; i < flagOptions; ++i)
        options.flag(flagRows[i].facet == BoardFacet::Away ? outFlag : flagRows[i].option,
                     m_flags[i], flagRows[i].help);
    options.flag("--late", m_late,
                 "Only open orders that were due before today and are not accepted");
    options.flag("--at-risk", m_atRisk,
                 "Only orders that are due today or within two working days and are not accepted");
    options.flag("--missed", m_missed,
                 "Only orders whose first date has passed and that were given another one or are "
                 "not completed");
    options.date("--due-from", m_filter.dueFrom, "Only orders that are due on this day or later");
    options.date("--due-before", m_filter.dueBefore, "Only orders that are due before this day");
    options.text("--text", m_filter.text, "Only orders with these words in a number or name");
    options.word("--sort", m_sort, allWords<BoardSort>(),
                 "By what; open hazards first and by due date unless said");
    options.text("--after", m_filter.after, "Only what follows this order");
    options.integer("--limit", m_limit, 0, std::numeric_limits<int>::max(),
                    "This many rows at most");
}

Result<BoardFilter> BoardOptions::filter() const
{
    if (m_late && m_atRisk)
        return failure(ErrorCode::Usage, "does not go with --late", "--at-risk");
    if (m_missed && (m_late || m_atRisk))
        return failure(ErrorCode::Usage, "does not go with --late or --at-risk", "--missed");
    BoardFilter filter = m_filter;
    const QString on = QStringLiteral("1");
    for (std::size_t i = 0; i < facetOptions; ++i) {
        if (m_values[i] == hazardWord && facetRows[i].facet == BoardFacet::Outcome)
            filter.facets.insert(BoardFacet::Hazard, on);
        else if (!m_values[i].isEmpty())
            filter.facets.insert(facetRows[i].facet, m_values[i]);
    }
    for (std::size_t i = 0; i < flagOptions; ++i)
        if (m_flags[i])
            filter.facets.insert(flagRows[i].facet, on);
    if (m_late)
        filter.due = DueFilter::Late;
    if (m_atRisk)
        filter.due = DueFilter::AtRisk;
    if (m_missed)
        filter.due = DueFilter::Missed;
    filter.sort = fromText<BoardSort>(m_sort).value_or(BoardSort::Urgency);
    filter.limit = int(m_limit);
    return filter;
}

} // namespace loopwright
