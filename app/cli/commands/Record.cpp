#include "app/cli/commands/Record.h"

#include "app/actions/Evidence.h"
#include "app/cli/Files.h"

namespace loopwright {

namespace {

class RecordFacts : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file, "A job record in JSON", Given::Always);
        options.text("--corrects", m_corrects,
                     "Id of a fact that was recorded wrongly and that it takes the place of");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto bytes, readFile(m_file));
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto report,
                          recordFile(*records, bytes, fileNameOf(m_file), m_corrects));
        QString text;
        for (const QString &id : report.added)
            text += id + "\n";
        for (const QString &id : report.alreadyThere)
            text += id + " was there already\n";
        Answer answer = Answer::of(report.toJson(), text);
        answer.tell(Findings(report.told.begin(), report.told.end()), fileNameOf(m_file));
        return answer;
    }

private:
    QString m_file, m_corrects;
};

} // namespace

std::unique_ptr<Command> makeRecord()
{
    return std::make_unique<RecordFacts>();
}

} // namespace loopwright
