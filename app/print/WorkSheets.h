#pragma once
// The papers of daily work: the settings card that stays with the terminal equipment, the
// installer's list of a day's jobs, and the slips that stay behind.

#include "app/print/Document.h"
#include "core/certificate/Slips.h"

namespace loopwright {

/// What the card says; texts that a person typed are covered already.
struct CardContent
{
    QString order, customer, premises, circuit, office, service;
    LineKind kind = LineKind::Bri;
    QString variantName;
    std::vector<CertificateLine> settings;
    std::vector<CertificateTerminal> terminals;
    Moment made;
    QString certificate = {}; ///< number of the one issued; empty if none was
};
/// Variant, numbers and identifiers in large digits, for the customer.
doc::Document settingsCard(const CardContent &card);

/// One job of the list; for installers, not for customers.
struct DayJob
{
    QString appointment; ///< "09:00-11:00"; may be empty
    QString crew;        ///< what the work takes: two people, a bucket truck; may be empty
    QString order, customer, premises, contact, circuit, office, pair;
    QString accessNotes, terminalLocation, remarks;
    QString trouble;     ///< the symptom, and what a test from the desk showed; of a repair
    QString service;     ///< in words
    QStringList numbers; ///< "1: 217-555-0143, SPID 21755501430101, TEI automatic"
    QDate due;
    QStringList hazards;    ///< open ones, of its pair or another at the premises: which, volts
    bool waits = false;     ///< it was handed on, and nothing was done on it since
    bool needsVisit = true; ///< else only paper is left
    QString next;           ///< what the plan asks for, and what the decision waits for
};
/// Only what needs a visit, by premises and appointment; what needs paper alone stands in one block
/// at the end. A character that no font has stands as its number. `log`: where the log stands,
/// which whoever holds the list witnesses; may be empty.
doc::Document dayList(const QString &installer, QDate day, const std::vector<DayJob> &jobs,
                      const QString &log = {});

/// For the customer of a line that was not accepted.
doc::Document leaveBehindDocument(const LeaveBehindSlip &slip);
/// For the desk that an accepted order is closed with.
doc::Document closeOutDocument(const CloseOutSlip &slip);

} // namespace loopwright
