#pragma once
// The filters above the board, each with its counts: a count is the number of orders that choosing
// it will show.

#include "app/actions/Board.h"

#include <QWidget>

class QComboBox;
class QPushButton;

namespace loopwright {

class ChipRow;

class BoardFilterBar : public QWidget
{
    Q_OBJECT
public:
    explicit BoardFilterBar(QWidget *parent = nullptr);

    /// Puts what is chosen here into a filter, and leaves the rest of it.
    void writeTo(BoardFilter &filter) const;
    bool isOn() const;
    void clear();
    /// What is chosen, by the names of the filters, to be remembered; and to choose it again.
    QJsonObject chosen() const;
    void choose(const QJsonObject &chosen);
    void showCounts(const BoardCounts &counts);
    /// The button that lets go of everything, the search too.
    void setClearVisible(bool visible);

signals:
    void changed();
    void clearWanted();

private:
    QComboBox *makeCombo(const QString &name, const QString &spoken);
    void showCombo(QComboBox *combo, const QString &all, const QMap<QString, int> &counts);

    ChipRow *m_stages;
    ChipRow *m_outcome;
    ChipRow *m_due;
    QComboBox *m_offices;
    QComboBox *m_installers;
    QPushButton *m_clear;
};

} // namespace loopwright
