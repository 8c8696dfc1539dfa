#include "app/desktop/screens/BoardsButton.h"

#include "app/desktop/widgets/PageElements.h"

#include <QInputDialog>
#include <QMenu>

namespace loopwright {

namespace {

QString nameIn(const QJsonValue &board)
{
    return board["name"].toString();
}

QJsonObject stateIn(const QJsonValue &board)
{
    return board["state"].toObject();
}

} // namespace

BoardsButton::BoardsButton(QWidget *parent)
    : QPushButton(parent)
{
    setObjectName(QStringLiteral("boards"));
    setToolTip(tr("Boards kept under names; columns and sort"));
    auto *menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("boards.menu"));
    connect(menu, &QMenu::aboutToShow, this, &BoardsButton::fillMenu);
    setMenu(menu);
    changed();
}

void BoardsButton::setBoards(const QJsonArray &boards, const QString &current)
{
    m_boards = {};
    for (const QJsonValue &each : boards) // as they stand in a file that anybody can edit
        if (!nameIn(each).isEmpty())
            m_boards << each;
    m_current = placeOf(current) < 0 ? QString() : current;
    changed();
}

void BoardsButton::setState(const QJsonObject &state)
{
    m_state = state;
    changed();
}

void BoardsButton::changed()
{
    const qsizetype place = placeOf(m_current);
    QString name = tr("Boards");
    if (place >= 0)
        name = stateIn(m_boards[place]) == m_state ? m_current : tr("%1, changed").arg(m_current);
    setText(QString(name).replace(u'&', QStringLiteral("&&")));
    setAccessibleName(place < 0 ? tr("Boards") : tr("Board: %1").arg(name));
}

qsizetype BoardsButton::placeOf(const QString &name) const
{
    for (qsizetype i = 0; i < m_boards.size(); ++i)
        if (!name.isEmpty() && nameIn(m_boards[i]) == name)
            return i;
    return -1;
}

void BoardsButton::fillMenu()
{
    menu()->clear();
    for (const QJsonValue &board : std::as_const(m_boards)) {
        const QString name = nameIn(board);
        QAction *action = menu()->addAction(QString(name).replace(u'&', QStringLiteral("&&")));
        action->setObjectName("boards.go." + name);
        action->setCheckable(true);
        action->setChecked(name == m_current);
        connect(action, &QAction::triggered, this, [this, name] { choose(name); });
    }
    menu()->addSeparator();
    const bool on = !m_current.isEmpty();
    addAction(QStringLiteral("keep"), tr("&Keep this board under a name…"), &BoardsButton::keep,
              true);
    addAction(QStringLiteral("keep_change"),
              on ? tr("Keep the &change of “%1”").arg(m_current) : tr("Keep the &change"),
              &BoardsButton::keepChange, on && stateIn(m_boards[placeOf(m_current)]) != m_state);
    addAction(QStringLiteral("rename"), tr("&Rename…"), &BoardsButton::rename, on);
    addAction(QStringLiteral("delete"), tr("&Delete"), &BoardsButton::remove, on);
    menu()->addSeparator();
    for (QMenu *further : std::as_const(m_further))
        menu()->addMenu(further);
    menu()->addSeparator();
    menu()->addActions(m_deeds);
}

void BoardsButton::addAction(const QString &name, const QString &text, void (BoardsButton::*run)(),
                             bool possible)
{
    QAction *action = menu()->addAction(text);
    action->setObjectName("boards." + name);
    action->setEnabled(possible);
    connect(action, &QAction::triggered, this, run);
}

void BoardsButton::choose(const QString &name)
{
    m_current = name;
    emit boardChosen(stateIn(m_boards[placeOf(name)]));
    changed();
    emit boardsChanged();
}

QString BoardsButton::askName(const QString &title, const QString &name)
{
    QInputDialog dialog(this);
    dialog.setObjectName(QStringLiteral("boards.name"));
    dialog.setWindowTitle(title);
    dialog.setLabelText(tr("Name of the board:"));
    keepPlain(dialog);
    dialog.setTextValue(name);
    while (dialog.exec() == QDialog::Accepted) {
        const QString given = dialog.textValue().simplified();
        if (given == name || placeOf(given) < 0)
            return given;
        dialog.setLabelText(tr("“%1” is there already. Another name:").arg(given));
    }
    return {};
}

void BoardsButton::put(const QString &name, const QJsonObject &state)
{
    const QJsonObject board{{"name", name}, {"state", state}};
    if (const qsizetype place = placeOf(name); place >= 0)
        m_boards[place] = board;
    else
        m_boards << board;
    m_current = name;
    changed();
    emit boardsChanged();
}

void BoardsButton::keep()
{
    if (const QString name = askName(tr("Keep this board"), {}); !name.isEmpty())
        put(name, m_state);
}

void BoardsButton::keepChange()
{
    put(m_current, m_state);
}

void BoardsButton::rename()
{
    const QString name = askName(tr("Rename “%1”").arg(m_current), m_current);
    if (name.isEmpty() || name == m_current)
        return;
    const QJsonObject state = stateIn(m_boards[placeOf(m_current)]);
    m_boards.removeAt(placeOf(m_current));
    put(name, state);
}

void BoardsButton::remove()
{
    m_boards.removeAt(placeOf(m_current));
    m_current.clear();
    changed();
    emit boardsChanged();
}

} // namespace loopwright
