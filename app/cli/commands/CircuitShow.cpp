#include "app/cli/commands/CircuitShow.h"

#include "app/actions/Orders.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

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
        QJsonArray orders;
        ColumnLayout table({"order", "type", "due", "customer", "premises"});
        for (const ServiceOrder &order : view.orders) {
            orders.append(order.toJson());
            table.add({order.number, toText(order.type), order.dueDate.toString(Qt::ISODate),
                       order.customer, order.premises});
        }
        QJsonArray events;
        for (const Event &event : view.events)
            events.append(event.toJson());
        return Answer::of(
            QJsonObject{{"circuit", view.circuit}, {"orders", orders}, {"events", events}},
            heading("Circuit " + view.circuit) + table.text() + "\n" + eventsText(view.events));
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
