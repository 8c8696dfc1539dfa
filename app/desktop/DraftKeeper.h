#pragma once
// What is typed and not confirmed goes to the records as a draft. If they do not take it, another
// program having them locked or the disk being full, it is kept here, set aside in a file beside
// them in case the program ends, and tried again until they do. One per window.

#include "app/actions/Drafts.h"

#include <QObject>
#include <QTimer>

namespace loopwright {

class DraftKeeper : public QObject
{
    Q_OBJECT
public:
    static constexpr int tryAgainMs = 1000;

    /// `records` live as long. What an earlier window could not keep is taken up.
    explicit DraftKeeper(Records &records);
    ~DraftKeeper() override;

    /// Whatever happens, it is not lost while the window is open. An empty content drops the draft.
    void keep(const QString &order, const QString &part, const QJsonObject &content);
    /// Part to content, as they were kept last.
    Result<QMap<QString, QJsonObject>> ofOrder(const QString &order) const;
    /// Waits for the records a while. False if something lies nowhere but in memory.
    bool settle();

signals:
    void waiting(const QString &sentence); ///< as often as it was tried in vain
    void caughtUp();                       ///< everything is in the records again

private:
    void tryNow(int patienceMs);
    std::vector<Draft> pending() const;

    Records &m_records;
    QMap<QPair<QString, QString>, QJsonObject> m_pending; ///< by order and part
    bool m_waits = false;                                 ///< it was tried in vain
    bool m_isAside = true;                                ///< nothing lies in memory alone
    QTimer m_timer;
};

} // namespace loopwright
