#pragma once
// Makers of the panels that are small enough to need no header of their own; PanelTable.cpp lists
// them.

#include "app/desktop/job/StationPanel.h"

namespace loopwright {

StationPanel *makeArrivalPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeSettingsPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeMakeupPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeSafetyPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makePairPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeTurnUpPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeAnalogPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeCallsPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeErrorTestPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeRemarksPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeAcceptancePanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeCertificatePanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeLeavingPanel(const PanelInfo &info, JobSession &desk);

} // namespace loopwright
