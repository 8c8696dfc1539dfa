#pragma once
// The register of hazards: every dangerous voltage that was read, where, who was told, and how it
// was closed; those that are open stand first. Enter opens the job that read it.

#include "app/actions/HazardRegister.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"

class QCheckBox;

namespace loopwright {

class SignLine;
class Table;
class TextTable;

class HazardScreen : public Screen
{
    Q_OBJECT
public:
    explicit HazardScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("hazards"); }
    QString title() const override { return tr("Hazards"); }
    void refresh() override;
    void takeFocus() override;

private:
    void showHazards(const Result<std::vector<RegisteredHazard>> &hazards);
    void showChosen(int row);

    Asker m_asker;
    std::vector<RegisteredHazard> m_hazards;
    TextTable *m_model;
    QCheckBox *m_openOnly;
    SignLine *m_summary;
    Table *m_table;
    SignLine *m_chosen; ///< of the hazard that is chosen, whole where its columns are too narrow
};

} // namespace loopwright
