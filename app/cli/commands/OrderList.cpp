#include "app/cli/commands/OrderList.h"

#include "app/actions/Board.h"
#include "app/cli/Layout.h"

#include <limits>

namespace loopwright {

namespace {

const QString hazardWord = QStringLiteral("hazard");

class ListOrders : public Command
{
public:
    void declare(Options &options) override
    {
        options.word("--stage", m_stage, allWords<Stage>(),
                     "Only orders that stand at this station");
        options.text("--office", m_filter.office, "Only orders of this serving office");
        options.text("--installer", m_filter.installer, "Only orders of this installer");
        options.word("--outcome", m_outcome, allWords<OrderOutcome>() << hazardWord,
                     "Only orders of which decide says this; hazard: one is open on them");
        options.date("--due-before", m_filter.dueBefore,
                     "Only orders that are due before this day");
        options.text("--text", m_filter.text, "Only orders with these words in a number or name");
        options.integer("--limit", m_limit, 0, std::numeric_limits<int>::max(),
                        "This many rows at most");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        m_filter.stage = fromText<Stage>(m_stage);
        m_filter.outcome = fromText<OrderOutcome>(m_outcome);
        m_filter.hazard = m_outcome == hazardWord;
        m_filter.limit = int(m_limit);
        LOOPWRIGHT_ASSIGN(auto found, boardRows(*records, m_filter));
        const auto rows = std::make_shared<std::vector<BoardRow>>(std::move(found));
        Answer answer;
        answer.json = Answer::jsonArray(qsizetype(rows->size()), [rows](qsizetype i) {
            return QJsonValue((*rows)[std::size_t(i)].toJson());
        });
        answer.text = [rows](QIODevice &out) { out.write(text(*rows).toUtf8()); };
        return answer;
    }

private:
    static QString text(const std::vector<BoardRow> &rows)
    {
        if (rows.empty())
            return "no orders\n";
        ColumnLayout table(
            {"order", "due", "stage", "outcome", "circuit", "office", "installer", "customer"});
        for (const BoardRow &row : rows)
            table.add({row.order, row.due.toString(Qt::ISODate), toText(row.stage),
                       toText(row.outcome), row.circuit, row.office, row.installer, row.customer});
        return table.text() + QString("%1 orders\n").arg(rows.size());
    }

    BoardFilter m_filter;
    QString m_stage, m_outcome;
    qint64 m_limit = -1;
};

} // namespace

std::unique_ptr<Command> makeOrderList()
{
    return std::make_unique<ListOrders>();
}

} // namespace loopwright
