#pragma once
// What tells the end of a run below every page: it stays until it is dismissed or the run is
// opened. One line for each run.

#include <QFrame>
#include <QMap>
#include <QStringList>

class QVBoxLayout;

namespace loopwright {

class RunNotices : public QFrame
{
    Q_OBJECT
public:
    explicit RunNotices(QWidget *parent = nullptr);

    /// The orders whose runs are over. Lines that stay are not touched; hidden where there is none.
    void show(const QStringList &orders);
    QStringList orders() const { return m_lines.keys(); }

signals:
    void openWished(const QString &order);
    void dismissed(const QString &order);

private:
    QWidget *makeLine(const QString &order);

    QVBoxLayout *m_column;
    QMap<QString, QWidget *> m_lines; ///< by order
};

} // namespace loopwright
