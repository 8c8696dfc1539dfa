#pragma once
// The papers of daily work: the settings card that stays with the terminal equipment, the
// installer's list of a day's jobs, and the page that hands on a job that is not accepted.

#include "app/print/Sheet.h"
#include "core/acceptance/Handoff.h"
#include "core/acceptance/JobLine.h"
#include "core/certificate/MakeCertificate.h"

namespace loopwright {

/// Variant, numbers and identifiers in large digits, for the customer.
Sheet settingsCard(const ServiceOrder &order, const QString &officeName, Paper paper);

/// One job of the list; for installers, not for customers.
struct DayJob
{
    QString appointment; ///< "09:00-11:00"; may be empty
    QString order, customer, premises, contact, circuit, office, pair;
    QString accessNotes, terminalLocation, remarks;
    QString service; ///< in words
    std::vector<StationState> line;
    QString next; ///< nextSentence()
};
Sheet dayList(const QString &installer, QDate day, const std::vector<DayJob> &jobs, Paper paper);

Sheet handoffPage(const Handoff &handoff, Paper paper);

} // namespace loopwright
