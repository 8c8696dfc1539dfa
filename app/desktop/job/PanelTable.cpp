#include "app/desktop/job/PanelTable.h"

#include "app/desktop/job/panels/Panels.h"

namespace loopwright {

namespace {

bool onSite(const OrderView &view)
{
    return view.input.scope != OrderScope::Nothing && view.input.scope != OrderScope::RecordOnly;
}
bool onBasicRate(const OrderView &view)
{
    return onSite(view) && view.order.kind == LineKind::Bri;
}
bool onAnalog(const OrderView &view)
{
    return onSite(view) && view.order.kind == LineKind::Analog;
}
bool withData(const OrderView &view)
{
    return onBasicRate(view) && view.order.bServices().testFlag(Service::Data);
}
bool always(const OrderView &)
{
    return true;
}

constexpr PanelInfo table[] = {
    {"visit",
     QT_TRANSLATE_NOOP("StationPanel", "Visit"),
     Station::Order,
     "",
     {FactKind::Visit},
     false,
     onSite,
     makeArrivalPanel},
    {"settings",
     QT_TRANSLATE_NOOP("StationPanel", "Settings to program"),
     Station::Identifiers,
     "identifiers",
     {},
     false,
     always,
     makeSettingsPanel},
    {"makeup",
     QT_TRANSLATE_NOOP("StationPanel", "Loop: make-up and prediction"),
     Station::Loop,
     "loop",
     {},
     false,
     onSite,
     makeMakeupPanel},
    {"safety",
     QT_TRANSLATE_NOOP("StationPanel", "Safety card"),
     Station::Safety,
     "safety",
     {FactKind::Safety, FactKind::HazardClosed},
     false,
     onSite,
     makeSafetyPanel},
    {"pair",
     QT_TRANSLATE_NOOP("StationPanel", "Loop: measured on the pair"),
     Station::Loop,
     "loop",
     {FactKind::Loop},
     true,
     onSite,
     makePairPanel},
    {"turnup",
     QT_TRANSLATE_NOOP("StationPanel", "Turn-up"),
     Station::TurnUp,
     "layer1 layer2 layer3",
     {FactKind::Layer},
     true,
     onBasicRate,
     makeTurnUpPanel},
    {"analog",
     QT_TRANSLATE_NOOP("StationPanel", "The line at the customer's interface"),
     Station::TurnUp,
     "loop_current loss_1004 noise power_influence balance polarity dial_tone ringing slope "
     "insulation foreign_voltage on_hook_voltage ringing_voltage",
     {FactKind::Analog},
     true,
     onAnalog,
     makeAnalogPanel},
    {"calls",
     QT_TRANSLATE_NOOP("StationPanel", "Calls"),
     Station::Calls,
     "calls readback",
     {FactKind::Call},
     true,
     onSite,
     makeCallsPanel},
    {"error_test",
     QT_TRANSLATE_NOOP("StationPanel", "Error test"),
     Station::ErrorTest,
     "detector run",
     {FactKind::Detector, FactKind::Run},
     true,
     withData,
     makeErrorTestPanel},
    {"remarks",
     QT_TRANSLATE_NOOP("StationPanel", "Instrument, changes, notes"),
     Station::Acceptance,
     "instrument",
     {FactKind::SelfTest, FactKind::Changed, FactKind::Cleared, FactKind::MadeWith,
      FactKind::Referred, FactKind::Desk, FactKind::Note},
     false,
     always,
     makeRemarksPanel},
    {"acceptance",
     QT_TRANSLATE_NOOP("StationPanel", "Acceptance"),
     Station::Acceptance,
     "",
     {FactKind::Exception, FactKind::Void},
     false,
     always,
     makeAcceptancePanel},
    {"certificate",
     QT_TRANSLATE_NOOP("StationPanel", "Certificate"),
     Station::Certificate,
     "",
     {},
     false,
     always,
     makeCertificatePanel},
    {"leaving",
     QT_TRANSLATE_NOOP("StationPanel", "Leaving"),
     Station::Certificate,
     "",
     {},
     false,
     onSite,
     makeLeavingPanel},
};

} // namespace

std::span<const PanelInfo> allPanels()
{
    return table;
}

} // namespace loopwright
