#include "app/cli/commands/Export.h"

#include "app/actions/ExportRecords.h"
#include "app/cli/Files.h"

namespace loopwright {

namespace {

class ExportAll : public Command
{
public:
    void declare(Options &options) override
    {
        // Not always given: `export view` has one of its own.
        options.text("--out", m_export.folder, "The folder that the files go to");
        options.flag("--internal", m_export.internal,
                     "With the unpublished numbers of the offices");
        options.flag("--spreadsheet", m_export.spreadsheet,
                     "Make the cells safe for a spreadsheet, which would take some for formulas");
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (m_export.folder.isEmpty())
            return failure(ErrorCode::Usage, "is missing", "--out");
        LOOPWRIGHT_TRY(checkNotStandardStream(m_export.folder, "the files go to a folder"));
        LOOPWRIGHT_ASSIGN(const auto records, m_export.internal ? context.recordsThatKeepRefusals()
                                                                : context.records());
        m_export.progress = context.progress("writing");
        LOOPWRIGHT_ASSIGN(const auto files, exportRecords(*records, m_export));
        return Answer::of(
            QJsonObject{{"folder", m_export.folder}, {"files", QJsonArray::fromStringList(files)}},
            QString("%1 files are in %2; manifest.json tells their sums\n")
                .arg(files.size())
                .arg(m_export.folder));
    }

private:
    RecordsExport m_export;
};

} // namespace

std::unique_ptr<Command> makeExport()
{
    return std::make_unique<ExportAll>();
}

} // namespace loopwright
