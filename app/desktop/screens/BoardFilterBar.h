#pragma once
// The filters above the board, each with its counts: a count is the number of orders that choosing
// it will show. A filter is one row of the table in BoardFilterBar.cpp.

#include "app/actions/Board.h"
#include "app/actions/FoundKinds.h"

#include <QJsonObject>
#include <QWidget>

#include <vector>

class QComboBox;
class QPushButton;

namespace loopwright {

class ChipRow;
struct FilterRow;

class BoardFilterBar : public QWidget
{
    Q_OBJECT
public:
    explicit BoardFilterBar(QWidget *parent = nullptr);

    /// Puts what is chosen here into a filter, and leaves the rest of it.
    void writeTo(BoardFilter &filter) const;
    /// What is chosen, by the names of the filters, to be remembered; and to choose it again.
    QJsonObject chosen() const;
    void choose(const QJsonObject &chosen);
    /// Today's desk: what is open.
    static QJsonObject atFirst();
    void showCounts(const BoardCounts &counts);
    /// Circuits and people that the search names, each a button that leads there.
    void showFound(const FoundKinds &found);
    /// The button that lets go of everything, the search too.
    void setClearVisible(bool visible);

signals:
    void changed();
    void clearWanted();
    void circuitWanted(const QString &circuit);
    void installerWanted(const QString &key);

private:
    struct Control
    {
        const FilterRow *row;
        ChipRow *chips = nullptr;
        QComboBox *choice = nullptr; ///< its values; no data: any
    };
    void addControls();
    void makeFound();
    ChipRow *makeChips(const FilterRow &row);
    QComboBox *makeChoice(const FilterRow &row);
    void showChoice(const Control &control, const QMap<QString, int> &counts);

    std::vector<Control> m_controls;
    ChipRow *m_due;
    struct Found
    {
        QPushButton *button; ///< hidden where it leads nowhere
        QString key = {};    ///< of a circuit, or of a person
        bool isPerson = false;
    };
    std::vector<Found> m_found;
    QPushButton *m_clear;
    QMap<QString, QString> m_installerNames;
};

} // namespace loopwright
