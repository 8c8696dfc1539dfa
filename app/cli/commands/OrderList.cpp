#include "app/cli/commands/OrderList.h"

#include "app/actions/Board.h"
#include "app/cli/Layout.h"
#include "core/acceptance/Criteria.h"

#include <array>
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

constexpr FacetOption facetOptions[] = {
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
constexpr FlagOption flagOptions[] = {
    {BoardFacet::Open, "--open", "Only orders that are neither completed nor cancelled"},
    {BoardFacet::Paper, "--paper-outstanding",
     "Only orders that are accepted and whose certificate is not issued"}};

class ListOrders : public Command
{
public:
    void declare(Options &options) override
    {
        for (std::size_t i = 0; i < std::size(facetOptions); ++i) {
            const FacetOption &row = facetOptions[i];
            if (row.words)
                options.word(row.option, m_values[i], row.words(), row.help);
            else
                options.text(row.option, m_values[i], row.help);
        }
        for (std::size_t i = 0; i < std::size(flagOptions); ++i)
            options.flag(flagOptions[i].option, m_flags[i], flagOptions[i].help);
        options.flag("--late", m_late,
                     "Only open orders that were due before today and are not accepted");
        options.flag("--at-risk", m_atRisk,
                     "Only orders that are due today or within two working days and are not "
                     "accepted");
        options.date("--due-from", m_filter.dueFrom,
                     "Only orders that are due on this day or later");
        options.date("--due-before", m_filter.dueBefore,
                     "Only orders that are due before this day");
        options.text("--text", m_filter.text, "Only orders with these words in a number or name");
        options.word("--sort", m_sort, allWords<BoardSort>(),
                     "By what; open hazards first and by due date unless said");
        options.text("--after", m_filter.after, "Only what follows this order");
        options.integer("--limit", m_limit, 0, std::numeric_limits<int>::max(),
                        "This many rows at most");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        if (m_late && m_atRisk)
            return failure(ErrorCode::Usage, "does not go with --late", "--at-risk");
        fillFilter();
        LOOPWRIGHT_ASSIGN(auto found, boardRows(*records, m_filter));
        const auto rows = std::make_shared<std::vector<BoardRow>>(std::move(found));
        const QDate today = records->now().localDate();
        Answer answer;
        answer.json = Answer::jsonArray(qsizetype(rows->size()), [rows, today](qsizetype i) {
            return QJsonValue((*rows)[std::size_t(i)].toJson(today));
        });
        answer.text = [rows](QIODevice &out) { out.write(text(*rows).toUtf8()); };
        return answer;
    }

private:
    void fillFilter()
    {
        const QString on = QStringLiteral("1");
        for (std::size_t i = 0; i < std::size(facetOptions); ++i) {
            if (m_values[i] == hazardWord && facetOptions[i].facet == BoardFacet::Outcome)
                m_filter.facets.insert(BoardFacet::Hazard, on);
            else if (!m_values[i].isEmpty())
                m_filter.facets.insert(facetOptions[i].facet, m_values[i]);
        }
        for (std::size_t i = 0; i < std::size(flagOptions); ++i)
            if (m_flags[i])
                m_filter.facets.insert(flagOptions[i].facet, on);
        if (m_late)
            m_filter.due = DueFilter::Late;
        if (m_atRisk)
            m_filter.due = DueFilter::AtRisk;
        m_filter.sort = fromText<BoardSort>(m_sort).value_or(BoardSort::Urgency);
        m_filter.limit = int(m_limit);
    }

    static QString text(const std::vector<BoardRow> &rows)
    {
        if (rows.empty())
            return "no orders\n";
        ColumnLayout table({"order", "due", "stage", "outcome", "circuit", "office", "installer",
                            "customer", "why"});
        for (const BoardRow &row : rows)
            table.add({row.order, row.due.toString(Qt::ISODate), toText(row.stage),
                       toText(row.outcome), row.circuit, row.office, row.installer, row.customer,
                       row.reason});
        return table.text() + QString("%1 orders\n").arg(rows.size());
    }

    BoardFilter m_filter;
    std::array<QString, std::size(facetOptions)> m_values;
    std::array<bool, std::size(flagOptions)> m_flags{};
    bool m_late = false, m_atRisk = false;
    QString m_sort;
    qint64 m_limit = -1;
};

} // namespace

std::unique_ptr<Command> makeOrderList()
{
    return std::make_unique<ListOrders>();
}

} // namespace loopwright
