#pragma once
// What the rows of PanelTable.cpp are made of: the panels that are no entry of steps, the editors
// of the groups that need more than a form for each step, and what stands above some entries.

#include "app/desktop/job/StepEditor.h"
#include "app/desktop/job/StepPanel.h"

namespace loopwright {

StationPanel *makeSettingsPanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeAcceptancePanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeCertificatePanel(const PanelInfo &info, JobSession &desk);
StationPanel *makeStepPanel(const PanelInfo &info, JobSession &desk);

std::vector<StepEditor *> makeupEditors(JobSession &desk, const QString &panel);
std::vector<StepEditor *> safetyEditors(JobSession &desk, const QString &panel);
std::vector<StepEditor *> instrumentEditors(JobSession &desk, const QString &panel);
std::vector<StepEditor *> analogEditors(JobSession &desk, const QString &panel);
std::vector<StepEditor *> errorTestEditors(JobSession &desk, const QString &panel);

QWidget *linesHere(JobSession &desk, const QString &panel);      ///< other lines at the premises
QWidget *cautionsBlock(JobSession &desk, const QString &panel);  ///< before the pair is touched
QWidget *pairCompared(JobSession &desk, const QString &panel);   ///< with the make-up on record
QWidget *voicePredicted(JobSession &desk, const QString &panel); ///< from the make-up on record

std::pair<Status, QString> visitStanding(JobSession &desk);
std::pair<Status, QString> instrumentStanding(JobSession &desk);
std::pair<Status, QString> leavingStanding(JobSession &desk);

} // namespace loopwright
