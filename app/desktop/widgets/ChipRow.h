#pragma once
// A row of filters with their counts: choosing one shows the rows that its count names, choosing it
// again lets go. The chosen one is filled, bold and ticked. Left and right go from one to the next.

#include <QAbstractButton>
#include <QList>
#include <QWidget>

class QLabel;

namespace loopwright {

struct Chip
{
    QString key;
    QString name;
};

class ChipRow : public QWidget
{
    Q_OBJECT
public:
    /// `title` names the row: "Stage". Its chips have the object names "chip.<row>.<key>".
    ChipRow(const QString &row, const QString &title, const QList<Chip> &chips,
            QWidget *parent = nullptr);

    /// What is counted, for a screen reader; "order" and "orders" at first.
    void setCounted(const QString &one, const QString &many);
    /// The key of the chosen chip; empty where none is.
    QString chosen() const { return m_chosen; }
    void choose(const QString &key);
    /// Counts by key; a key that is not there counts 0.
    void setCounts(const QMap<QString, int> &counts);
    int count(const QString &key) const;

signals:
    void changed(const QString &key);

protected:
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    QString m_chosen;
    QString m_one, m_many;
    QList<QAbstractButton *> m_buttons;
    QStringList m_keys;
};

} // namespace loopwright
