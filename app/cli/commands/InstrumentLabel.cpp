#include "app/cli/commands/InstrumentLabel.h"

#include "app/actions/InstrumentLabels.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class LabelInstrument : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("instrument", m_label.key, "Its key, as the facts name it", Given::Always);
        options.text("--serial", m_label.serial, "Serial number on its label", Given::Always);
        options.text("--kind", m_label.kind, "What it is, e.g. loss set", Given::Always);
        options.text("--calibrated-on", m_label.calibratedOn, "Day of calibration, YYYY-MM-DD");
        options.text("--calibration-due", m_label.calibrationDue,
                     "Last day on which it holds, or not_required", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        const auto labelled = labelInstrument(*records, m_label);
        if (!labelled)
            return failure(atOption(labelled.error()));
        LabelledLines lines;
        lines.add("Instrument", labelled->key + ", as labelled until the office confirms it")
            .add("Kind", labelled->kind)
            .add("Serial", labelled->serial)
            .add("Calibrated", m_label.calibratedOn)
            .add("Due", m_label.calibrationDue);
        return Answer::of(labelled->toJson(), lines.text());
    }

private:
    /// "calibrated_on" as the option that was given: "--calibrated-on".
    static Error atOption(Error error)
    {
        if (!error.place.isEmpty() && error.place != u"instrument")
            error.place = "--" + error.place.replace(u'_', u'-');
        return error;
    }

    InstrumentLabel m_label;
};

} // namespace

std::unique_ptr<Command> makeInstrumentLabel()
{
    return std::make_unique<LabelInstrument>();
}

} // namespace loopwright
