#include "app/cli/commands/CircuitShow.h"

#include "app/actions/Circuits.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Layout.h"
#include "core/base/PaperTime.h"

namespace loopwright {

namespace {

QString ordersText(const CircuitView &view)
{
    ColumnLayout table({"order", "type", "due", "state", "pair", "customer", "premises"});
    for (const OrderView &one : view.orders)
        table.add({one.order.number, plainWord(toText(one.order.type)),
                   one.order.dueDate.toString(Qt::ISODate),
                   one.status == OrderStatus::Open ? plainWord(toText(one.decision.outcome))
                                                   : toText(one.status),
                   one.order.pair, one.order.customer, one.order.premises});
    return table.text();
}

QString valueText(const CircuitReading *reading)
{
    return reading ? shortNumber(reading->value, 6) +
                         (reading->state == ReadingState::NotMet      ? " (not met)"
                          : reading->state == ReadingState::NearLimit ? " (near the limit)"
                                                                      : "")
                   : QString("-");
}

/// The turn-up's figures beside the newest.
QString figuresText(const CircuitView &view)
{
    if (view.figures.empty())
        return "\nNothing was measured yet.\n";
    ColumnLayout table({"figure", ">at turn-up", ">newest", "unit", "read", "limit"});
    for (const CircuitFigure &figure : view.figures)
        table.add({figure.name.english(), valueText(figure.of(view.turnUp)),
                   valueText(&figure.newest()), figure.unit, paperTime(figure.newest().at),
                   figure.limitText.english()});
    return '\n' + table.text();
}

QString neighboursText(const CircuitView &view)
{
    if (view.neighbours.empty())
        return {};
    ColumnLayout table({"pair", "circuit", "order", "why"});
    for (const BoardRow &row : view.neighbours)
        table.add({row.pair, row.circuit, row.order,
                   row.hazard ? "HAZARD open. " + row.reason : row.reason});
    return "\nIn trouble in cable " + view.cable + ", nearest first\n" + table.text();
}

QString lifeText(const CircuitView &view)
{
    ColumnLayout table({"when", "order", "", "what"});
    for (const LifeEntry &entry : view.life)
        table.add({paperTime(entry.at), entry.order, entry.result == LifeResult::Badly ? "!" : "",
                   entry.text});
    return '\n' + table.text();
}

class ShowCircuit : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The circuit", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto view, showCircuit(*records, m_number));
        return Answer::of(view.toJson(), heading("Circuit " + view.circuit) + ordersText(view) +
                                             figuresText(view) + neighboursText(view) +
                                             lifeText(view));
    }

private:
    QString m_number;
};

} // namespace

std::unique_ptr<Command> makeCircuitShow()
{
    return std::make_unique<ShowCircuit>();
}

} // namespace loopwright
