#include "app/desktop/ActionPalette.h"

#include "app/desktop/LettersMatch.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/Table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMainWindow>
#include <QStackedLayout>

#include <algorithm>

namespace loopwright {

namespace {

/// An action that is only meant together with its menu comes after all that are meant by name.
constexpr int behindNames = 1000;

std::optional<int> nearness(const CataloguedAction &action, const QString &asked)
{
    if (const auto byName = lettersMatch(action.name, asked))
        return byName;
    const auto byBoth = lettersMatch(action.where + ' ' + action.name, asked);
    return byBoth ? std::optional(behindNames + *byBoth) : std::nullopt;
}

} // namespace

ActionPalette::ActionPalette(std::vector<CataloguedAction> actions, QWidget *window)
    : QDialog(window)
    , m_all(std::move(actions))
    , m_before(window->focusWidget())
    , m_asked(new QLineEdit)
    , m_model(new TextTable({tr("Action"), tr("Where"), tr("Key")}, -1, {}, this))
    , m_table(new Table(QStringLiteral("palette.actions"), tr("Actions")))
    , m_none(new EmptyState)
    , m_faces(new QStackedLayout)
    , m_told(new SignLine)
{
    setObjectName(QStringLiteral("palette"));
    setWindowTitle(tr("Find an action"));
    setAttribute(Qt::WA_DeleteOnClose);
    m_asked->setObjectName(QStringLiteral("palette.asked"));
    m_asked->setAccessibleName(tr("Name of an action"));
    m_asked->setPlaceholderText(tr("Some letters of what is to be done, or its initials"));
    m_asked->installEventFilter(this);
    m_told->setObjectName(QStringLiteral("palette.told"));
    m_none->say(tr("Nothing is called so."), tr("Fewer letters find more."));
    m_table->setModel(m_model);
    m_table->horizontalHeader()->hide();
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setColumnEms({21, 12, 9});
    m_faces->addWidget(m_table);
    m_faces->addWidget(m_none);
    auto *column = new QVBoxLayout(this);
    column->addWidget(m_asked);
    column->addLayout(m_faces, 1);
    column->addWidget(m_told);
    whenThemed(this, [this, column] {
        column->setContentsMargins(em(0.8), em(0.8), em(0.8), em(0.5));
        column->setSpacing(em(0.5));
        place();
    });
    connect(m_asked, &QLineEdit::textChanged, this, &ActionPalette::find);
    connect(m_asked, &QLineEdit::returnPressed, this, &ActionPalette::runChosen);
    connect(m_table, &Table::opened, this, &ActionPalette::runChosen);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &ActionPalette::showChosen);
    find({});
}

/// At the top of the window and inside it.
void ActionPalette::place()
{
    const QWidget *window = parentWidget();
    resize(sizeWithin(*window, 46, 27));
    move(window->mapToGlobal(QPoint((window->width() - width()) / 2, em(2))));
}

void ActionPalette::find(const QString &asked)
{
    std::vector<std::pair<int, std::size_t>> near;
    for (std::size_t i = 0; i < m_all.size(); ++i)
        if (const auto how = nearness(m_all[i], asked))
            near.emplace_back(*how, i);
    std::ranges::sort(near); // equally near: in the order of the window
    m_found.clear();
    std::vector<TextRow> rows;
    for (const auto &[how, i] : near) {
        const CataloguedAction &each = m_all[i];
        m_found.push_back(i);
        rows.push_back({.cells = {each.name, each.on ? each.where : each.whyOff, each.key},
                        .quiet = !each.on});
    }
    m_model->show(std::move(rows));
    m_faces->setCurrentWidget(m_found.empty() ? static_cast<QWidget *>(m_none) : m_table);
    if (!m_found.empty())
        m_table->setCurrentIndex(m_model->index(0, 0));
    showChosen();
}

const CataloguedAction *ActionPalette::chosen() const
{
    const int row = m_table->currentIndex().row();
    return row >= 0 && std::size_t(row) < m_found.size() ? &m_all[m_found[std::size_t(row)]]
                                                         : nullptr;
}

/// A screen reader is at the line that is typed in: it hears the chosen one there.
void ActionPalette::showChosen()
{
    const CataloguedAction *action = chosen();
    m_told->show(Status::None, {});
    m_asked->setAccessibleDescription(
        action ? QStringList{action->name, action->where, action->key, action->whyOff}
                     .filter(QRegularExpression(QStringLiteral(".")))
                     .join(QStringLiteral(", "))
               : m_none->title());
}

void ActionPalette::runChosen()
{
    const CataloguedAction *action = chosen();
    if (!action)
        return;
    if (!action->on)
        return m_told->tell(Status::Note, action->whyOff);
    const CataloguedAction meant = *action;
    QWidget *window = parentWidget();
    accept();
    // Later: the window has the keyboard again, as if the action's own key had been pressed.
    QMetaObject::invokeMethod(
        window, [meant] { meant.run(); }, Qt::QueuedConnection);
}

void ActionPalette::done(int result)
{
    QDialog::done(result);
    parentWidget()->activateWindow();
    if (m_before)
        m_before->setFocus();
}

/// The keys that walk in the list work while one types.
bool ActionPalette::eventFilter(QObject *object, QEvent *event)
{
    if (object != m_asked || event->type() != QEvent::KeyPress)
        return QDialog::eventFilter(object, event);
    switch (static_cast<QKeyEvent *>(event)->key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
        QCoreApplication::sendEvent(m_table, event);
        return true;
    default:
        return QDialog::eventFilter(object, event);
    }
}

void findAction(QMainWindow *window, const QWidget *screen)
{
    auto *palette = new ActionPalette(actionsOf(*window, screen), window);
    palette->open();
}

} // namespace loopwright
