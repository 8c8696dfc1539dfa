#include "app/desktop/Screens.h"

#include "app/desktop/screens/AuditScreen.h"
#include "app/desktop/screens/BoardScreen.h"
#include "app/desktop/screens/BulkScreen.h"
#include "app/desktop/screens/CertificateScreen.h"
#include "app/desktop/screens/CircuitScreen.h"
#include "app/desktop/screens/HandoffScreen.h"
#include "app/desktop/screens/HazardScreen.h"
#include "app/desktop/screens/IdentifierScreen.h"
#include "app/desktop/screens/ImportScreen.h"
#include "app/desktop/screens/JobScreen.h"
#include "app/desktop/screens/LoopsScreen.h"
#include "app/desktop/screens/OrderScreen.h"
#include "app/desktop/screens/RegisterScreen.h"
#include "app/desktop/screens/ReportScreen.h"

namespace loopwright {

namespace {

template<class S>
Screen *make(DesktopContext &workplace)
{
    return new S(workplace);
}

#define TEXT(text) QT_TRANSLATE_NOOP("Screens", text)

constexpr ScreenEntry entries[] = {
    {"board", TEXT("Board"), TEXT("Every order, where it stands and why"), GlyphShape::Board,
     &make<BoardScreen>},
    {"job", TEXT("Job"), TEXT("One order from its first step to the certificate"), GlyphShape::Job,
     &make<JobScreen>},
    {"circuit", TEXT("Circuit"), TEXT("One circuit with its whole history"), GlyphShape::Circuit,
     &make<CircuitScreen>},
    {"order", TEXT("Order form"), TEXT("Add an order, or change one"), GlyphShape::Form,
     &make<OrderScreen>},
    {"identifiers", TEXT("Identifiers"), TEXT("Check SPIDs, look up causes"),
     GlyphShape::Identifiers, &make<IdentifierScreen>},
    {"audit", TEXT("Audit"), TEXT("Numbers, SPIDs and pairs that are held twice"),
     GlyphShape::Audit, &make<AuditScreen>},
    {"import", TEXT("Import"), TEXT("Orders, offices, people and instruments from a file"),
     GlyphShape::Import, &make<ImportScreen>},
    {"register", TEXT("Register"), TEXT("Offices, people, instruments, limits"),
     GlyphShape::Register, &make<RegisterScreen>},
    {"certificate", TEXT("Certificates"),
     TEXT("Whether a certificate is genuine, and still stands"), GlyphShape::Certificate,
     &make<CertificateScreen>},
    {"hazards", TEXT("Hazards"), TEXT("Dangerous voltages that were read, and how each was closed"),
     GlyphShape::Doubtful, &make<HazardScreen>},
    {"loops", TEXT("Loops"),
     TEXT("Which loops of an office carry basic rate, and what would mend others"),
     GlyphShape::Loops, &make<LoopsScreen>},
    {"reports", TEXT("Reports"),
     TEXT("First visits, failing criteria, ages, exceptions, calibration, troubles"),
     GlyphShape::Reports, &make<ReportScreen>},
    {"bulk", TEXT("Bulk change"), TEXT("All lines of an office at once"), GlyphShape::Register,
     &make<BulkScreen>, "register"},
    {"handoff", TEXT("Hand on"), TEXT("A job that is not accepted, to read aloud or print"),
     GlyphShape::Job, &make<HandoffScreen>, "job"},
};

#undef TEXT

} // namespace

std::span<const ScreenEntry> allScreens()
{
    return entries;
}

} // namespace loopwright
