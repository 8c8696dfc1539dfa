#pragma once
// The boards that are kept under names: a button with a menu that keeps what is chosen now as a
// board, goes to one, renames it, deletes it.

#include <QJsonArray>
#include <QJsonObject>
#include <QPushButton>

namespace loopwright {

class BoardsButton : public QPushButton
{
    Q_OBJECT
public:
    explicit BoardsButton(QWidget *parent = nullptr);

    /// Each a "name", and the "state" that it stands for.
    QJsonArray boards() const { return m_boards; }
    /// The board that one is on; empty if none.
    QString current() const { return m_current; }
    void setBoards(const QJsonArray &boards, const QString &current);
    /// What is chosen now: what is kept, and whether the board is still as it was kept.
    void setState(const QJsonObject &state);
    /// A further menu below the boards.
    void addMenu(QMenu *menu) { m_further << menu; }
    /// And what can be done with the whole board, below them.
    void addDeed(QAction *deed) { m_deeds << deed; }

signals:
    void boardChosen(const QJsonObject &state);
    void boardsChanged();

private:
    void fillMenu();
    void addAction(const QString &name, const QString &text, void (BoardsButton::*run)(),
                   bool possible);
    void choose(const QString &name);
    void keep();
    void keepChange();
    void rename();
    void remove();
    void put(const QString &name, const QJsonObject &state);
    void changed();
    /// Empty if it was not given.
    QString askName(const QString &title, const QString &name);
    qsizetype placeOf(const QString &name) const;

    QJsonArray m_boards;
    QString m_current;
    QJsonObject m_state;
    QList<QMenu *> m_further;
    QList<QAction *> m_deeds;
};

} // namespace loopwright
