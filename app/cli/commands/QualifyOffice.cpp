#include "app/cli/commands/QualifyOffice.h"

#include "app/actions/OfficeLoops.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class QualifyOffice : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("office", m_office, "The serving office", Given::Always);
        options.text("--out", m_out, "CSV that the loops go to, with what would mend each",
                     Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(const auto count, writeOfficeLoops(*records, m_office, m_out,
                                                             context.progress("qualifying")));
        QJsonObject json = count.toJson();
        json.insert("file", m_out);
        LabelledLines lines;
        lines.add("Loops", QString::number(count.loops()))
            .add("Suitable", QString::number(count.suitable))
            .add("Marginal", QString::number(count.marginal))
            .add("Not suitable", QString::number(count.notSuitable))
            .add("No make-up", QString::number(count.withoutMakeup))
            .add("Written to", m_out);
        return Answer::of(json, lines.text());
    }

private:
    QString m_office, m_out;
};

} // namespace

std::unique_ptr<Command> makeQualifyOffice()
{
    return std::make_unique<QualifyOffice>();
}

} // namespace loopwright
