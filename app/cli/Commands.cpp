#include "app/cli/Commands.h"

#include "app/cli/commands/AcceptOrder.h"
#include "app/cli/commands/AnalyseBound.h"
#include "app/cli/commands/AnalyseCapture.h"
#include "app/cli/commands/AnalyseSeconds.h"
#include "app/cli/commands/AuditIdentifiers.h"
#include "app/cli/commands/CancelOrder.h"
#include "app/cli/commands/CheckCause.h"
#include "app/cli/commands/CheckIdentifiers.h"
#include "app/cli/commands/CheckSpid.h"
#include "app/cli/commands/CompleteOrder.h"
#include "app/cli/commands/DecideOrder.h"
#include "app/cli/commands/ExportTables.h"
#include "app/cli/commands/FillRecords.h"
#include "app/cli/commands/HandOn.h"
#include "app/cli/commands/ImportFiles.h"
#include "app/cli/commands/IssueCertificate.h"
#include "app/cli/commands/KeepBackup.h"
#include "app/cli/commands/Limits.h"
#include "app/cli/commands/ListOrders.h"
#include "app/cli/commands/ListRegister.h"
#include "app/cli/commands/ListVariants.h"
#include "app/cli/commands/LoopCurve.h"
#include "app/cli/commands/PrintCard.h"
#include "app/cli/commands/PrintDay.h"
#include "app/cli/commands/PutOrder.h"
#include "app/cli/commands/QualifyLoop.h"
#include "app/cli/commands/RecordFacts.h"
#include "app/cli/commands/ShowCircuit.h"
#include "app/cli/commands/ShowHistory.h"
#include "app/cli/commands/ShowOrder.h"
#include "app/cli/commands/StripPicture.h"
#include "app/cli/commands/VerifyCertificate.h"
#include "app/cli/commands/VoidFact.h"

namespace loopwright {

namespace {

// clang-format off
constexpr CommandEntry commands[] = {
    // at the desk, without records
    {"check identifiers", "Check a list of SPIDs row by row", Effect::Reads, makeCheckIdentifiers},
    {"check spid", "Check one SPID and take it apart", Effect::Reads, makeCheckSpid},
    {"check cause", "Say what a Q.850 cause means and what to check first", Effect::Reads, makeCheckCause},
    {"analyse seconds", "Evaluate a run second by second", Effect::Reads, makeAnalyseSeconds},
    {"analyse bound", "Say what a count of bit errors proves", Effect::Reads, makeAnalyseBound},
    {"analyse capture", "Compare a captured B channel with the test pattern", Effect::Reads, makeAnalyseCapture},
    {"qualify loop", "Say whether a make-up is fit for a basic-rate line", Effect::Reads, makeQualifyLoop},
    {"loop curve", "Tell or draw the loss of a make-up over frequency", Effect::Paints, makeLoopCurve},
    {"strip", "Draw a run second by second", Effect::Paints, makeStripPicture},
    {"variants", "List the protocol variants", Effect::Reads, makeListVariants},
    {"limits show", "Show the limits with their sources", Effect::Reads, makeShowLimits},
    {"limits add", "Add a limit set of the office's own", Effect::Changes, makeAddLimits},
    // the register
    {"office import", "Take serving offices in from CSV", Effect::Changes, makeImportOffices},
    {"office list", "List the serving offices", Effect::Reads, makeListOffices},
    {"installer import", "Take people in from CSV", Effect::Changes, makeImportInstallers},
    {"installer list", "List the people", Effect::Reads, makeListInstallers},
    {"instrument import", "Take instruments and calibrations in from CSV", Effect::Changes, makeImportInstruments},
    {"instrument list", "List the instruments", Effect::Reads, makeListInstruments},
    // orders
    {"order import", "Take orders in from CSV", Effect::Changes, makeImportOrders},
    {"order put", "Take one order in, or change it", Effect::Changes, makePutOrder},
    {"order list", "Show the board", Effect::Reads, makeListOrders},
    {"order show", "Show an order with evidence, decision and events", Effect::Reads, makeShowOrder},
    {"order complete", "Complete an accepted order", Effect::Changes, makeCompleteOrder},
    {"order cancel", "Cancel an order", Effect::Changes, makeCancelOrder},
    {"circuit show", "Show all orders of a circuit and its events", Effect::Reads, makeShowCircuit},
    {"audit", "Look for identifiers in error or held twice", Effect::Reads, makeAuditIdentifiers},
    // evidence and acceptance
    {"record", "Record the facts of a job", Effect::Changes, makeRecordFacts},
    {"void", "Record that a fact no longer counts", Effect::Changes, makeVoidFact},
    {"decide", "Decide an order criterion by criterion", Effect::Changes, makeDecideOrder},
    {"accept", "Accept an order with exception", Effect::Changes, makeAcceptOrder},
    {"handoff", "Make the page that hands on a job", Effect::Paints, makeHandOn},
    {"day", "Make the list of an installer's jobs of a day", Effect::Paints, makePrintDay},
    {"card", "Print the settings for the terminal equipment", Effect::Paints, makePrintCard},
    {"certificate issue", "Issue the certificate of an order", Effect::ChangesAndPaints, makeIssueCertificate},
    {"certificate verify", "Say whether a certificate is genuine", Effect::Reads, makeVerifyCertificate},
    // keeping the records
    {"history", "Show what was done, or verify every chain", Effect::Reads, makeShowHistory},
    {"backup", "Copy the records and verify the copy", Effect::Reads, makeBackup},
    {"restore", "Put a backup in the place of the records", Effect::Changes, makeRestore},
    {"export", "Write every table as CSV", Effect::Reads, makeExportTables},
    {"fill", "Invent records for trials in an empty database", Effect::Changes, makeFillRecords},
};
// clang-format on

constexpr std::pair<const char *, const char *> groups[] = {
    {"check", "Check identifiers and causes"},
    {"analyse", "Evaluate error-rate runs"},
    {"qualify", "Judge loops"},
    {"loop", "Look at loops"},
    {"limits", "The limits by which is decided"},
    {"office", "Serving offices"},
    {"installer", "Installers, dispatchers and supervisors"},
    {"instrument", "Test sets and meters"},
    {"order", "Orders, from the file to completion"},
    {"circuit", "Circuits"},
    {"certificate", "Certificates"},
};

} // namespace

std::span<const CommandEntry> allCommands()
{
    return commands;
}

QString groupSummary(const QString &firstWord)
{
    for (const auto &[word, summary] : groups)
        if (firstWord == QLatin1StringView(word))
            return QString(summary);
    return {};
}

} // namespace loopwright
