#pragma once
// Makers of the panels that are small enough to need no header of their own; PanelTable.cpp lists
// them.

#include "app/desktop/job/StationPanel.h"

namespace loopwright {

StationPanel *makeArrivalPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeSettingsPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeMakeupPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeSafetyPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makePairPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeTurnUpPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeAnalogPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeCallsPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeErrorTestPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeRemarksPanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeAcceptancePanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeCertificatePanel(const PanelInfo &info, JobDesk &desk);
StationPanel *makeLeavingPanel(const PanelInfo &info, JobDesk &desk);

} // namespace loopwright
