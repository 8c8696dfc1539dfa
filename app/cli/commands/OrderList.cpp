#include "app/cli/commands/OrderList.h"

#include "app/cli/BoardOptions.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class ListOrders : public Command
{
public:
    void declare(Options &options) override { m_options.declare(options); }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto filter, m_options.filter());
        LOOPWRIGHT_ASSIGN(auto found, boardRows(*records, filter));
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

    BoardOptions m_options;
};

} // namespace

std::unique_ptr<Command> makeOrderList()
{
    return std::make_unique<ListOrders>();
}

} // namespace loopwright
