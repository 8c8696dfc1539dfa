#pragma once
// Bundles are taken in: in a van what the office handed out is opened, in the office what vans
// bring back is received; the file itself says which. One file after the other, each order whole or
// not at all.

#include "app/actions/VanDesk.h"
#include "app/desktop/vans/VanDialog.h"

#include <optional>

class QLineEdit;

namespace loopwright {

class TakeInDialog : public VanDialog
{
    Q_OBJECT
public:
    TakeInDialog(DesktopContext &workplace, const QStringList &paths, QWidget *window);

signals:
    void settleWished(); ///< stations say something otherwise

protected:
    void confirm() override;

private:
    struct Bundle
    {
        BundleInput input;
        BundleOutline outline;
    };
    struct TakenIn
    {
        std::vector<TakenBundle> files;
        std::optional<Error> broke; ///< why it ended; the files before are taken in
        bool stopped = false;       ///< somebody wished it
    };
    static Result<TakenIn> takeIn(Records &records, const std::vector<Bundle> &bundles,
                                  const QString &newIssuer, const Progress &progress);
    QWidget *makeIssuerField();
    void read(const QStringList &paths);
    void showBefore(const Result<std::vector<Bundle>> &bundles);
    void showAfter(const TakenIn &taken);

    std::vector<Bundle> m_bundles;
    QPushButton *m_settle;
    QLineEdit *m_issuer; ///< of a new key
    QWidget *m_issuerField;
};

} // namespace loopwright
