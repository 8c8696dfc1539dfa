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
    }

    Result<Answer> run(CommandContext &context) override
    {
        const auto bytes = readFile(m_file);
        if (!bytes)
            return failure(bytes.error());
        const auto records = context.records();
        if (!records)
            return failure(records.error());
        const auto report = recordFile(**records, *bytes, fileNameOf(m_file));
        if (!report)
            return failure(report.error());
        QString text;
        for (const QString &id : report->added)
            text += id + "\n";
        for (const QString &id : report->alreadyThere)
            text += id + " was there already\n";
        Answer answer = Answer::of(report->toJson(), text);
        answer.tell(report->told, fileNameOf(m_file));
        return answer;
    }

private:
    QString m_file;
};

} // namespace

std::unique_ptr<Command> makeRecord()
{
    return std::make_unique<RecordFacts>();
}

} // namespace loopwright
