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
        answer.text = [rows, today](QIODevice &out) { out.write(text(*rows, today).toUtf8()); };
        return answer;
    }

private:
    static QString whyText(const BoardRow &row, QDate today)
    {
        const auto days = row.hazardDays(today);
        if (!days)
            return row.reason;
        const QString since = *days == 0   ? "open since today"
                              : *days == 1 ? "open for 1 day"
                                           : QString("open for %1 days").arg(*days);
        return since + ": " + row.reason;
    }
    static QString withText(const BoardRow &row)
    {
        QStringList stations;
        for (const OutAt &each : row.out)
            stations << each.station;
        return stations.join(", ");
    }
    static QString text(const std::vector<BoardRow> &rows, QDate today)
    {
        if (rows.empty())
            return "no orders\n";
        ColumnLayout table({"order", "due", "stage", "outcome", "circuit", "office", "installer",
                            "customer", "with", "why"});
        for (const BoardRow &row : rows)
            table.add({row.order, row.due.toString(Qt::ISODate), toText(row.stage),
                       toText(row.outcome), row.circuit, row.office, row.installer, row.customer,
                       withText(row), whyText(row, today)});
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
