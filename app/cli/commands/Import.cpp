#include "app/cli/commands/Import.h"

#include "app/actions/Import.h"
#include "app/actions/OutFile.h"
#include "app/cli/Files.h"
#include "app/cli/MapFile.h"

namespace loopwright {

namespace {

QString text(const ImportReport &report)
{
    QString text = QString("%1 rows taken in").arg(report.accepted);
    if (report.held > 0)
        text += QString(", %1 of them held until their identifiers are mended").arg(report.held);
    return text + QString("; %1 refused, %2 unchanged\n").arg(report.refused).arg(report.unchanged);
}

} // namespace

void ImportFile::declare(Options &options)
{
    options.text(m_from, m_file, "CSV, header row first",
                 m_from[0] == '-' ? Given::IfWanted : Given::Always);
    options.text("--rejects", m_rejects, "Where the refused rows go, each with its reason");
    options.flag(
        "--all-or-nothing", m_options.allOrNothing,
        "One refused row refuses the whole file; on a server nobody else writes until it is done");
    if (m_changesOnly)
        return;
    options.flag("--update", m_options.update, "A row that is there with other values changes it");
    options.texts("--ignore", m_options.ignoredColumns,
                  "An unknown column that may stand in the file");
    options.text("--map", m_map, mapHelp);
}

Result<Answer> ImportFile::run(CommandContext &context)
{
    LOOPWRIGHT_ASSIGN(m_options.map, readMapFile(m_map, m_file));
    LOOPWRIGHT_ASSIGN(const auto bytes, readFile(m_file));
    LOOPWRIGHT_TRY(checkNotInput(m_rejects, m_file));
    LOOPWRIGHT_TRY(checkOut(m_rejects, FileKind::Csv));
    LOOPWRIGHT_ASSIGN(const auto records, context.records());
    m_options.fileName = fileNameOf(m_file);
    m_options.progress = context.progress("importing");
    LOOPWRIGHT_ASSIGN(const auto report, m_import(*records, bytes, m_options));
    Answer answer = Answer::of(report.toJson(), text(report), report.clean());
    answer.refusedWhole = report.refusedWhole;
    answer.tell(report.findings, m_options.fileName);
    keepRejects(report, answer);
    return answer;
}

/// The good rows are in by now, whatever the disk says of this file; what it cannot hold is
/// reported, and standard error has named each row already.
void ImportFile::keepRejects(const ImportReport &report, Answer &answer) const
{
    if (m_rejects.isEmpty())
        return;
    if (const auto written = writeOut(m_rejects, FileKind::Csv, report.rejects); !written) {
        answer.yes = false;
        answer.lack("the refused rows could not be kept: " + written.error().text());
    }
}

std::unique_ptr<Command> makeOrderImport()
{
    return std::make_unique<ImportFile>(importOrders);
}

std::unique_ptr<Command> makeOfficeImport()
{
    return std::make_unique<ImportFile>(importOffices);
}

std::unique_ptr<Command> makeIssuerImport()
{
    return std::make_unique<ImportFile>(importIssuer);
}

std::unique_ptr<Command> makeInstallerImport()
{
    return std::make_unique<ImportFile>(importInstallers);
}

std::unique_ptr<Command> makeInstrumentImport()
{
    return std::make_unique<ImportFile>(importInstruments);
}

} // namespace loopwright
