#include "app/cli/Commands.h"

#include "app/cli/commands/Accept.h"
#include "app/cli/commands/AnalyseBound.h"
#include "app/cli/commands/AnalyseCapture.h"
#include "app/cli/commands/AnalyseSeconds.h"
#include "app/cli/commands/Audit.h"
#include "app/cli/commands/Backup.h"
#include "app/cli/commands/Bulk.h"
#include "app/cli/commands/Card.h"
#include "app/cli/commands/CertificateIssue.h"
#include "app/cli/commands/CertificateVerify.h"
#include "app/cli/commands/CheckCause.h"
#include "app/cli/commands/CheckIdentifiers.h"
#include "app/cli/commands/CheckSpid.h"
#include "app/cli/commands/CircuitExport.h"
#include "app/cli/commands/CircuitShow.h"
#include "app/cli/commands/Day.h"
#include "app/cli/commands/Decide.h"
#include "app/cli/commands/Export.h"
#include "app/cli/commands/ExportView.h"
#include "app/cli/commands/Fill.h"
#include "app/cli/commands/Handoff.h"
#include "app/cli/commands/HazardList.h"
#include "app/cli/commands/Help.h"
#include "app/cli/commands/HelpSchema.h"
#include "app/cli/commands/History.h"
#include "app/cli/commands/Import.h"
#include "app/cli/commands/InstrumentLabel.h"
#include "app/cli/commands/Keys.h"
#include "app/cli/commands/Limits.h"
#include "app/cli/commands/LoopCurve.h"
#include "app/cli/commands/OrderCancel.h"
#include "app/cli/commands/OrderCheckCompletion.h"
#include "app/cli/commands/OrderComplete.h"
#include "app/cli/commands/OrderList.h"
#include "app/cli/commands/OrderPlans.h"
#include "app/cli/commands/OrderPut.h"
#include "app/cli/commands/OrderShow.h"
#include "app/cli/commands/PairSpare.h"
#include "app/cli/commands/PersonPin.h"
#include "app/cli/commands/QualifyLoop.h"
#include "app/cli/commands/QualifyOffice.h"
#include "app/cli/commands/Record.h"
#include "app/cli/commands/RegisterLists.h"
#include "app/cli/commands/Report.h"
#include "app/cli/commands/Strip.h"
#include "app/cli/commands/Troubles.h"
#include "app/cli/commands/VanConflicts.h"
#include "app/cli/commands/Vans.h"
#include "app/cli/commands/Variants.h"
#include "app/cli/commands/Void.h"

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
    {"qualify office", "Say of every pair of an office with a make-up whether it is fit, and what would mend it", Effect::Reads, makeQualifyOffice},
    {"loop curve", "Tell or draw the loss of a make-up over frequency", Effect::Paints, makeLoopCurve},
    {"strip", "Draw a run second by second", Effect::Paints, makeStrip},
    {"variants", "List the protocol variants", Effect::Reads, makeVariants},
    {"limits show", "Show the limits with their sources", Effect::Reads, makeLimitsShow},
    {"limits add", "Add a limit set of the office's own", Effect::Changes, makeLimitsAdd},
    // the register
    {"office import", "Take serving offices in from CSV", Effect::Changes, makeOfficeImport},
    {"issuer import", "Say from CSV who issues the certificates", Effect::Changes, makeIssuerImport},
    {"office list", "List the serving offices", Effect::Reads, makeOfficeList},
    {"installer import", "Take people in from CSV", Effect::Changes, makeInstallerImport},
    {"installer list", "List the people", Effect::Reads, makeInstallerList},
    {"person pin", "Set, change or remove the PIN of a person", Effect::Changes, makePersonPin},
    {"instrument import", "Take instruments and calibrations in from CSV", Effect::Changes, makeInstrumentImport},
    {"instrument label", "Enter an instrument from its label, until the office confirms it", Effect::Changes, makeInstrumentLabel},
    {"instrument list", "List the instruments", Effect::Reads, makeInstrumentList},
    // orders
    {"order import", "Take orders in from CSV", Effect::Changes, makeOrderImport},
    {"order put", "Take one order in, or change it", Effect::Changes, makeOrderPut},
    {"order assign", "Say who goes where, and on which day", Effect::Changes, makeOrderAssign},
    {"order set", "Change columns of an order, or of many from CSV", Effect::Changes, makeOrderSet},
    {"order hold", "Let orders wait on somebody", Effect::Changes, makeOrderHold},
    {"order resume", "End the waiting of orders", Effect::Changes, makeOrderResume},
    {"order list", "Show the board", Effect::Reads, makeOrderList},
    {"order show", "Show an order with evidence, decision and events", Effect::Reads, makeOrderShow},
    {"order check-completion", "Say whether a completion number is the order's", Effect::Reads, makeOrderCheckCompletion},
    {"order complete", "Complete an accepted order", Effect::Changes, makeOrderComplete},
    {"order cancel", "Cancel an order", Effect::Changes, makeOrderCancel},
    {"bulk area_code", "Split the area code of an office's lines: see what would be, or do it", Effect::ChangesAndPaints, makeBulkAreaCode},
    {"bulk variant", "Convert the lines of an office's switch: see what would be, or do it", Effect::ChangesAndPaints, makeBulkVariant},
    {"bulk undo", "Take the last bulk change back, if nothing was built on it", Effect::Changes, makeBulkUndo},
    {"bulk cards", "Print the settings cards of all whom the last bulk change concerns", Effect::Paints, makeBulkCards},
    {"trouble open", "Open a trouble of a circuit in service", Effect::Changes, makeTroubleOpen},
    {"trouble close", "Close a trouble: what was found, what cleared it, the cause", Effect::Changes, makeTroubleClose},
    {"trouble list", "List the troubles", Effect::Reads, makeTroubleList},
    {"hazard list", "Show every dangerous voltage that was read, and how it was closed", Effect::Reads, makeHazardList},
    {"pair spare", "List pairs of an order's cable that nobody has, the best first", Effect::Reads, makePairSpare},
    {"report", "Count over all orders: first visits, criteria, ages, exceptions, calibration, troubles", Effect::Paints, makeReportCommand},
    {"circuit show", "Show all orders of a circuit and its events", Effect::Reads, makeCircuitShow},
    {"circuit export", "Write a circuit's whole file for whoever takes it over", Effect::Paints, makeCircuitExport},
    {"audit", "Compute anew what is derived; look for identifiers in error or held twice", Effect::Reads, makeAudit},
    // evidence and acceptance
    {"record", "Record the facts of a job", Effect::Changes, makeRecord},
    {"void", "Record that a fact no longer counts", Effect::Changes, makeVoid},
    {"decide", "Decide an order criterion by criterion", Effect::Changes, makeDecide},
    {"accept", "Accept an order with exception", Effect::Changes, makeAccept},
    {"handoff", "Hand a job on: the page, and the record of to whom", Effect::ChangesAndPaints, makeHandoffCommand},
    {"day", "Make the list of an installer's jobs of a day", Effect::Paints, makeDay},
    {"card", "Print the settings card, or the slip that stays behind", Effect::Paints, makeCard},
    {"certificate issue", "Issue the certificate of an order", Effect::ChangesAndPaints, makeCertificateIssue},
    {"certificate verify", "Say whether a certificate is genuine", Effect::Reads, makeCertificateVerify},
    // vans and office
    {"van add", "Make a van known, and endorse its key", Effect::Changes, makeVanAdd},
    {"van lost", "Believe nothing more that a van signs", Effect::Changes, makeVanLost},
    {"van take", "Hand orders out to a van", Effect::Changes, makeVanTake},
    {"van open", "In the van: open what the office handed out", Effect::Changes, makeVanOpen},
    {"van bring", "In the van: bring back what was done", Effect::Changes, makeVanBring},
    {"van receive", "Take in what vans brought back", Effect::Changes, makeVanReceive},
    {"van list", "List the orders that vans took along", Effect::Reads, makeVanList},
    {"van recall", "Orders did not go along after all", Effect::Changes, makeVanRecall},
    {"van known", "List the stations that are known", Effect::Reads, makeVanKnown},
    {"van conflicts", "Show what stations say otherwise, both sides", Effect::Reads, makeVanConflicts},
    {"van settle", "Settle what stations say otherwise", Effect::Changes, makeVanSettle},
    // keeping the records
    {"history", "Show what was done, verify all that is stored, or tell the head of the log", Effect::Reads, makeHistory},
    {"key show", "Show the keys that sign, and where their secret halves lie", Effect::Reads, makeKeyShow},
    {"key export", "Write the public keys for whoever checks certificates", Effect::Reads, makeKeyExport},
    {"key renew", "Make a new key for the station, and for the issuer if it must be", Effect::Changes, makeKeyRenew},
    {"backup", "Copy the records and verify the copy", Effect::Reads, makeBackup},
    {"restore", "Put a backup in the place of the records", Effect::Changes, makeRestore},
    {"export", "Write all records as the files of the imports, and every table as CSV", Effect::Reads, makeExport},
    {"export view", "Write what the board shows as CSV", Effect::Reads, makeExportView},
    {"fill", "Invent records for trials in an empty database", Effect::Changes, makeFill},
    // what it is all about
    {"help station", "Say what each station of a job is for, and what to do when it fails", Effect::Reads, makeHelpStation},
    {"help glossary", "Explain the words that the programs show", Effect::Reads, makeHelpGlossary},
    {"help columns", "List the columns of the files that are read, with a sample of each", Effect::Reads, makeHelpColumns},
    {"help schema", "Print the JSON Schema of what a command answers under --json", Effect::Reads, makeHelpSchema},
};
// clang-format on

constexpr std::pair<const char *, const char *> groups[] = {
    {"check", "Check identifiers and causes"},
    {"analyse", "Evaluate error-rate runs"},
    {"qualify", "Judge loops"},
    {"loop", "Look at loops"},
    {"limits", "The limits by which is decided"},
    {"office", "Serving offices"},
    {"issuer", "Who issues the certificates"},
    {"installer", "Installers, dispatchers and supervisors"},
    {"person", "Keep what a person needs to act"},
    {"instrument", "Test sets and meters"},
    {"order", "Orders, from the file to completion"},
    {"bulk", "All lines of an office at once"},
    {"trouble", "Troubles of circuits in service"},
    {"hazard", "Dangerous voltages"},
    {"pair", "Pairs of a cable"},
    {"circuit", "Circuits"},
    {"certificate", "Certificates"},
    {"van", "Vans that work apart, and what they bring back"},
    {"key", "The keys that sign certificates and heads of the log"},
    {"help", "Explain stations, words, files and answers"},
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
