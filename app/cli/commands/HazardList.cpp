#include "app/cli/commands/HazardList.h"

#include "app/actions/HazardRegister.h"
#include "app/cli/Layout.h"
#include "core/base/PaperTime.h"

namespace loopwright {

namespace {

class HazardList : public Command
{
public:
    void declare(Options &options) override
    {
        options.flag("--open", m_openOnly, "Only those that are not closed by a clear card");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(const auto hazards, hazardRegister(*records, m_openOnly,
                                                             context.progress("reading hazards")));
        QJsonArray json;
        QString text;
        for (const RegisteredHazard &hazard : hazards) {
            json << hazard.toJson();
            text += textOf(hazard) + '\n';
        }
        if (hazards.empty())
            text = m_openOnly ? "no hazard is open\n" : "no hazard was read\n";
        return Answer::of(json, text);
    }

private:
    /// "power company, reference P-7, by Kim Carver, 4 March 2026, 08:40 (UTC-06:00)"
    static QString toldText(const RegisteredHazard &hazard)
    {
        QStringList parts{hazard.told};
        if (!hazard.toldReference.isEmpty())
            parts << "reference " + hazard.toldReference;
        if (!hazard.toldBy.isEmpty())
            parts << "by " + hazard.toldBy;
        if (hazard.toldAt)
            parts << paperTime(*hazard.toldAt);
        return parts.join(", ");
    }
    static QString textOf(const RegisteredHazard &hazard)
    {
        LabelledLines lines;
        lines.add(hazard.isOpen ? "HAZARD" : "closed", hazard.volts.join("; "))
            .add("Pair", hazard.pair + ", " + hazard.office)
            .add("Place", QStringList{hazard.place, hazard.wet}.join(' ').trimmed())
            .add("Premises", hazard.premises + ", " + hazard.customer)
            .add("Order", hazard.order + ", circuit " + hazard.circuit)
            .add("Read", paperTime(hazard.readAt) + ", by " + hazard.readBy)
            .add("Told", toldText(hazard))
            .add("State", hazard.state);
        return lines.text();
    }

    bool m_openOnly = false;
};

} // namespace

std::unique_ptr<Command> makeHazardList()
{
    return std::make_unique<HazardList>();
}

} // namespace loopwright
