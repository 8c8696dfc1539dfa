#include "app/cli/commands/Export.h"

#include "app/actions/Maintenance.h"
#include "app/cli/Files.h"

namespace loopwright {

namespace {

class ExportTables : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("--out", m_folder, "The folder that the files go to", Given::Always);
        options.flag("--internal", m_internal, "With the unpublished numbers of the offices");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_TRY(checkNotStandardStream(m_folder, "the tables go to a folder"));
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto files, exportTables(*records, m_folder, m_internal,
                                                         context.progress("writing")));
        return Answer::of(
            QJsonObject{{"folder", m_folder}, {"files", QJsonArray::fromStringList(files)}},
            files.join("\n") + "\n");
    }

private:
    QString m_folder;
    bool m_internal = false;
};

} // namespace

std::unique_ptr<Command> makeExport()
{
    return std::make_unique<ExportTables>();
}

} // namespace loopwright
