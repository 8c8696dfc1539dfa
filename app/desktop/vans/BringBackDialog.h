#pragma once
// In a van: what was done goes back to the office, into a file.

#include "app/actions/BringBack.h"
#include "app/actions/VanDesk.h"
#include "app/desktop/vans/VanDialog.h"

class QCheckBox;

namespace loopwright {

class FileChoice;

class BringBackDialog : public VanDialog
{
    Q_OBJECT
public:
    BringBackDialog(DesktopContext &workplace, QWidget *window);

protected:
    void confirm() override;

private:
    void showBefore();
    void showReady();
    void showAfter(const Result<BroughtBack> &brought);

    QStringList m_orders; ///< that the office handed out
    QCheckBox *m_keep;
    FileChoice *m_file;
};

} // namespace loopwright
