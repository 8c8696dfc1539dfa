#include "app/desktop/screens/RowActions.h"

#include "app/actions/Register.h"
#include "app/desktop/DesktopContext.h"
#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/Theme.h"
#include "app/desktop/screens/AskDialog.h"
#include "app/desktop/screens/RowPapers.h"
#include "app/desktop/vans/ConflictsDialog.h"
#include "app/desktop/vans/TakeAlongDialog.h"
#include "app/desktop/widgets/FlowLayout.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/WorkBar.h"

#include <QAction>
#include <QLocale>
#include <QMenu>
#include <QPointer>
#include <QPrinter>

#include <algorithm>

namespace loopwright {

struct DeedRow
{
    const char *key;
    const char *name;
    int shortcut;
    Deed (*make)(const DeedGround &ground);
    /// Reads what else it asks with, beside the window's thread; null: nothing.
    Result<DeedGround> (*complete)(Records &records, DeedGround ground) = nullptr;
};

namespace {

constexpr DeedRow deedTable[] = {
    {"assign", QT_TRANSLATE_NOOP("RowActions", "&Assign…"), int(Qt::CTRL) | Qt::Key_T, assigning,
     withOthersThere},
    {"redate", QT_TRANSLATE_NOOP("RowActions", "Another &day…"), int(Qt::CTRL) | Qt::Key_D,
     redating},
    {"hold", QT_TRANSLATE_NOOP("RowActions", "&Hold…"), int(Qt::CTRL) | Qt::Key_H, holding},
    {"resume", QT_TRANSLATE_NOOP("RowActions", "&Resume"),
     int(Qt::CTRL) | int(Qt::SHIFT) | Qt::Key_H, resuming},
    {"desk", QT_TRANSLATE_NOOP("RowActions", "Des&k work…"), int(Qt::CTRL) | Qt::Key_K, deskWork,
     withRelated},
    {"print", QT_TRANSLATE_NOOP("RowActions", "&Print…"), int(Qt::CTRL) | Qt::Key_P, savingPapers},
    {"cancel_order", QT_TRANSLATE_NOOP("RowActions", "Ca&ncel order…"), 0, cancelling},
};

/// "3 orders: O-1001, O-1002, O-1003"
QString aboutRows(const DeedGround &ground)
{
    const QStringList orders = ground.orders();
    if (orders.size() == 1)
        return RowActions::tr("Order %1, %2").arg(orders.front(), ground.rows.front().customer);
    return RowActions::tr("%1 orders: %2")
        .arg(QLocale().toString(orders.size()), firstOrders(orders));
}

} // namespace

RowActions::RowActions(DesktopContext &workplace, QWidget *screen)
    : m_workplace(workplace)
    , m_screen(screen)
    , m_asker(workplace.longWork())
    , m_looker(workplace.questions())
    , m_menu(new QMenu(this))
    , m_count(new QLabel)
    , m_told(new SignLine)
{
    setObjectName(QStringLiteral("rows"));
    setAccessibleName(tr("Selected orders"));
    m_menu->setObjectName(QStringLiteral("rows.menu"));
    m_count->setObjectName(QStringLiteral("rows.count"));
    m_count->setTextFormat(Qt::PlainText);
    m_told->setObjectName(QStringLiteral("rows.told"));
    auto *line = new QWidget;
    m_buttons = new FlowLayout(line);
    m_buttons->setContentsMargins(0, 0, 0, 0);
    m_buttons->addWidget(m_count);
    for (const DeedRow &row : deedTable)
        addEntry(QString::fromLatin1(row.key), tr(row.name),
                 row.shortcut ? QKeySequence(row.shortcut) : QKeySequence(),
                 [this, &row] { begin(row); });
    addVanEntries();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_told);
    column->addWidget(line);
    whenThemed(this, [this, column] {
        column->setSpacing(em(0.4));
        m_buttons->setSpacing(em(0.5));
        m_count->setMinimumWidth(em(9));
        m_count->setMinimumHeight(em(1.9));
    });
    m_told->hide();
    hide();
}

QAction *RowActions::addEntry(const QString &key, const QString &text, const QKeySequence &shortcut,
                              std::function<void()> run)
{
    QAction *action = m_menu->addAction(text);
    action->setObjectName("rows." + key);
    action->setShortcut(shortcut);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    setWhyOff(action, tr("No order is selected."));
    connect(action, &QAction::triggered, this, std::move(run));
    m_screen->addAction(action);
    QPushButton *button = makeButton(text, "rows.button." + key, [action] { action->trigger(); });
    button->setText(QString(text).remove(u'&'));
    button->setFocusPolicy(Qt::TabFocus); // a click leaves the keyboard at the rows
    button->setToolTip(shortcut.toString(QKeySequence::NativeText));
    m_buttons->addWidget(button);
    connect(action, &QAction::changed, button,
            [action, button] { button->setVisible(action->isEnabled()); });
    return action;
}

void RowActions::addVanEntries()
{
    addEntry(QStringLiteral("take_along"), tr("Take a&long…"), QKeySequence(Qt::CTRL | Qt::Key_L),
             [this] { takeAlong(); });
    m_settle = addEntry(QStringLiteral("settle"), tr("&Settle between stations…"), {},
                        [this] { settle(); });
    setWhyOff(m_settle, tr("No station says otherwise of what is selected."));
    m_cancel = m_menu->findChild<QAction *>(QStringLiteral("rows.cancel_order"));
    setWhyOff(m_cancel, tr("None of the selected orders is open."));
}

void RowActions::takeAlong()
{
    if (m_rows.empty())
        return;
    m_told->hide();
    auto *dialog = new TakeAlongDialog(m_workplace, m_rows, window());
    connect(dialog, &VanDialog::recordsChanged, this, &RowActions::recordsChanged);
    dialog->open();
}

void RowActions::settle()
{
    const QString order = m_rows.size() == 1 ? m_rows.front().order : QString();
    connect(showConflicts(m_workplace, order, window()), &ConflictsDialog::recordsChanged, this,
            &RowActions::recordsChanged);
}

void RowActions::setRows(std::vector<BoardRow> rows, bool first)
{
    const auto number = &BoardRow::order;
    if (!std::ranges::equal(rows, m_rows, {}, number, number))
        m_told->hide(); // it was said of others
    m_rows = std::move(rows);
    const QString count = QLocale().toString(m_rows.size());
    m_count->setText(first                ? tr("The first %1 orders selected").arg(count)
                     : m_rows.size() == 1 ? tr("Order %1").arg(m_rows.front().order)
                                          : tr("%1 orders selected").arg(count));
    for (QAction *action : m_menu->actions())
        action->setEnabled(!m_rows.empty());
    m_settle->setEnabled(
        std::ranges::any_of(m_rows, [](const BoardRow &row) { return row.conflicts > 0; }));
    m_cancel->setEnabled(std::ranges::any_of(
        m_rows, [](const BoardRow &row) { return row.status == OrderStatus::Open; }));
    setVisible(!m_rows.empty());
}

DeedGround RowActions::ground() const
{
    Records &records = m_workplace.records();
    const auto known = people(records).value_or(QList<Person>());
    return {m_rows, known, nameOf(known, records.by()), records.now()};
}

void RowActions::begin(const DeedRow &row)
{
    if (m_rows.empty() || m_asker.isBusy())
        return;
    m_looker.supersede(); // of a dialog that is gone, or this key twice
    m_told->hide();
    const DeedGround now = ground();
    if (!row.complete)
        return open(row, now);
    m_looker.ask<DeedGround>(
        [complete = row.complete, now](Records &records, const Progress &) {
            return complete(records, now);
        },
        [this, &row, now](const Result<DeedGround> &whole) { open(row, whole.value_or(now)); });
}

void RowActions::keepList(AskDialog *dialog, const DeedList &list)
{
    const auto read = [this, dialog, list, shown = std::make_shared<QString>()] {
        const QString typed = dialog->form()->field(list.by)->typed();
        if (typed == *shown)
            return;
        *shown = typed;
        m_looker.supersede();
        m_looker.ask<std::vector<KeyedOption>>(
            [list, typed](Records &records, const Progress &) {
                return list.options(records, typed);
            },
            [asked = QPointer<AskDialog>(dialog),
             field = list.field](const Result<std::vector<KeyedOption>> &options) {
                if (options && asked)
                    asked->form()->field(field)->setOptions(*options);
            });
    };
    connect(dialog->form(), &Form::edited, dialog, read);
    read();
}

void RowActions::open(const DeedRow &row, const DeedGround &ground)
{
    const Deed deed = row.make(ground);
    if (deed.fields.empty())
        return carryOut(deed, {}, nullptr);
    auto *dialog = new AskDialog(
        QString::fromLatin1(row.key), deed, aboutRows(ground),
        [&workplace = m_workplace] { return workplace.records().now(); }, window());
    connect(dialog, &AskDialog::confirmed, this,
            [this, deed, dialog](const QJsonObject &values) { carryOut(deed, values, dialog); });
    if (deed.list)
        keepList(dialog, *deed.list);
    if (deed.prints) {
        dialog->addButton(makeButton(tr("Print…"), dialog->objectName() + ".print",
                                     [this, ground, dialog] { print(ground, dialog); }));
        dialog->addWorkBar(
            new WorkBar(dialog->objectName() + ".work", tr("Progress of the papers"), m_asker));
    }
    dialog->open();
}

void RowActions::print(const DeedGround &ground, AskDialog *dialog)
{
    if (!dialog->form()->check())
        return;
    const std::shared_ptr<QPrinter> printer = choosePrinter(dialog, localPaper());
    if (printer)
        printOn(printer, ground, dialog->form()->values(), dialog);
}

void RowActions::printOn(const std::shared_ptr<QPrinter> &printer, const DeedGround &ground,
                         const QJsonObject &values, AskDialog *dialog)
{
    if (dialog)
        dialog->setBusy(true);
    m_asker.ask<OrderPapers>(
        [request = papersRequest(ground, values, paperOf(*printer)),
         printer](Records &records, const Progress &progress) -> Result<OrderPapers> {
            LOOPWRIGHT_ASSIGN(auto papers, papersOf(records, request, progress));
            LOOPWRIGHT_TRY(loopwright::printOn(*printer, papers.sheet, progress));
            return papers;
        },
        [this, values, asked = QPointer<AskDialog>(dialog)](const Result<OrderPapers> &papers) {
            if (!papers)
                return refuse(papers.error(), asked);
            if (asked)
                asked->accept();
            emit done({papersSentence(*papers, values, {}), papersLacking(*papers), {}});
            emit recordsChanged();
        });
}

void RowActions::carryOut(const Deed &deed, const QJsonObject &values, AskDialog *dialog)
{
    if (dialog)
        dialog->setBusy(true);
    QString asked = QString::fromUtf8(canonicalJson(values));
    for (const BoardRow &row : m_rows)
        asked += ' ' + row.order;
    m_asker.ask<DeedReport>(
        [carryOut = deed.carryOut, values,
         again = m_outAgain.isAgain(asked)](Records &records, const Progress &progress) {
            const ChangingOut changing(records, again);
            return carryOut(records, values, progress);
        },
        [this, deed, values, asked,
         open = QPointer<AskDialog>(dialog)](const Result<DeedReport> &report) {
            if (!report)
                return refuse(report.error(), open, asked);
            if (open)
                open->accept();
            showDone(deed, values, *report);
        });
}

void RowActions::showDone(const Deed &deed, const QJsonObject &values, const DeedReport &report)
{
    const QString same = report.unchanged.join(QStringLiteral(", "));
    if (report.changed.isEmpty()) {
        emit said(tr("Nothing to change: %1.").arg(same));
        return;
    }
    QStringList remarks{report.remark};
    if (!same.isEmpty())
        remarks << tr("So already: %1.").arg(same);
    emit done({deed.sentence ? deed.sentence(report.changed, values) : report.sentence,
               remarks.join(u' ').trimmed(), report.takeBack});
    emit recordsChanged();
}

void RowActions::refuse(const Error &error, AskDialog *dialog, const QString &asked)
{
    const bool out = error.code == ErrorCode::OrderOut;
    const QString said = out ? m_outAgain.refused(error, asked) : localizedSentence(error.message);
    if (dialog)
        return dialog->refuse(said);
    m_told->tell(Status::Failed, said);
}

} // namespace loopwright
