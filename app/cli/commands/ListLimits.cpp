#include "app/cli/commands/ListLimits.h"

#include "app/actions/ShippedLimits.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class ListLimits : public Command
{
public:
    void declare(Options &) override {}

    Result<Answer> run(CommandContext &) override
    {
        const auto limits = shippedLimits();
        if (!limits)
            return failure(limits.error());
        TextTable table({"limit", ">value", "unit", "source"});
        for (const Limit &limit : limits->all())
            table.add({limit.name, shortNumber(limit.value, 6), limit.unit, limit.source});
        return Answer::of(
            limits->toJson(),
            QString("Limit set %1, valid from %2\n\n")
                    .arg(limits->version(), limits->validFrom().toString(Qt::ISODate)) +
                table.text());
    }
};

} // namespace

std::unique_ptr<Command> makeListLimits()
{
    return std::make_unique<ListLimits>();
}

} // namespace loopwright
