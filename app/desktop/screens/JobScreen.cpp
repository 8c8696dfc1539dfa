#include "app/desktop/screens/JobScreen.h"

#include "app/desktop/Theme.h"
#include "app/desktop/job/AttemptList.h"
#include "app/desktop/job/ContextLine.h"
#include "app/desktop/job/JobHead.h"
#include "app/desktop/job/PanelTable.h"
#include "app/desktop/job/VisitState.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/JobLine.h"

#include <QApplication>
#include <QShortcut>
#include <QTimer>

#include <algorithm>

namespace loopwright {

JobScreen::JobScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_desk(workplace)
    , m_faces(new QStackedLayout(this))
    , m_empty(new EmptyState)
    , m_head(new JobHead(m_desk))
    , m_scroll(new QScrollArea)
{
    auto *page = new QWidget;
    auto *layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_head);
    layout->addWidget(m_scroll, 1);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setObjectName("page");
    m_empty->say(tr("No job is open"), tr("Choose one on the board, or type its number there."));
    m_empty->addButton(
        makeButton(tr("To the board"), "job.board", [this] { emit openScreen("board", {}); }));
    m_faces->addWidget(m_empty);
    m_faces->addWidget(page);

    connect(&m_desk, &JobSession::changed, this, [this] {
        showOrder();
        emit recordsChanged();
    });
    connect(&m_desk, &JobSession::contextChanged, this, &JobScreen::showContext);
    connect(&m_desk, &JobSession::said, this, [this](const QString &sentence) {
        m_head->say(Status::None, {});
        emit said(sentence);
    });
    connect(&m_desk, &JobSession::troubled, this,
            [this](const QString &sentence) { m_head->say(Status::Failed, sentence); });
    connect(&m_desk, &JobSession::orderFormWished, this, [this] { emit editOrder(m_number); });
    connect(&m_desk, &JobSession::evidenceWished, this, &JobScreen::showFact);
    // Later: the page that asked for it goes away.
    connect(&m_desk, &JobSession::jobWished, this, &JobScreen::openOrder, Qt::QueuedConnection);
    connect(m_head, &JobHead::nextWished, this, &JobScreen::goNext);
    connect(m_head, &JobHead::stationWished, this, &JobScreen::goTo);
    connect(m_head, &JobHead::circuitWished, this, &JobScreen::openCircuit);
    connect(qApp, &QApplication::focusChanged, this,
            [this](QWidget *, QWidget *now) { follow(now); });
    makeKeys();
}

void JobScreen::makeKeys()
{
    auto *next = new QShortcut(QKeySequence(Qt::Key_F2), this);
    next->setContext(Qt::WidgetWithChildrenShortcut);
    connect(next, &QShortcut::activated, this, &JobScreen::goNext);
    auto *line = new QShortcut(QKeySequence(Qt::Key_F7), this);
    line->setContext(Qt::WidgetWithChildrenShortcut);
    connect(line, &QShortcut::activated, this, &JobScreen::goNextLine);
    int place = 0;
    for (const auto &[station, word] : EnumCodes<Station>::table) {
        auto *key = new QShortcut(QKeySequence(Qt::ALT | Qt::Key(Qt::Key_1 + place++)), this);
        key->setContext(Qt::WidgetWithChildrenShortcut);
        connect(key, &QShortcut::activated, this, [this, station = station] { goTo(station); });
    }
}

QString JobScreen::title() const
{
    return m_number.isEmpty() ? tr("Job") : tr("Job %1").arg(m_number);
}

void JobScreen::open(const QString &number)
{
    if (number == m_number && m_desk.isOpen()) {
        refresh();
        return;
    }
    // What is being typed is kept as a draft of the job that it belongs to.
    if (QWidget *now = QApplication::focusWidget(); now && isAncestorOf(now))
        now->clearFocus();
    m_number = number;
    m_head->say(Status::None, {});
    if (const auto opened = m_desk.open(number); !opened) {
        showTrouble(opened.error());
        return;
    }
    build();
    emit titleChanged();
}

void JobScreen::refresh()
{
    if (!m_desk.isOpen())
        return;
    if (const auto reloaded = m_desk.reload(); !reloaded)
        m_head->say(Status::Failed, tr("The order cannot be read anew: %1. What is shown is older.")
                                        .arg(reloaded.error().text()));
    showOrder();
}

void JobScreen::takeFocus()
{
    if (m_desk.isOpen())
        (m_head->next()->isHidden() ? m_head->circuit() : m_head->next())->setFocus();
    else
        m_empty->setFocus();
}

void JobScreen::showTrouble(const Error &error)
{
    m_empty->say(tr("Job %1 cannot be opened").arg(m_number), error.text());
    m_faces->setCurrentIndex(0);
    emit titleChanged();
}

void JobScreen::build()
{
    m_panels.clear();
    auto *page = new QWidget;
    m_column = new QVBoxLayout(page);
    whenThemed(page, [column = m_column] {
        column->setContentsMargins(em(1), em(1), em(1), em(1));
        column->setSpacing(em(1));
    });
    for (const PanelInfo &info : allPanels()) {
        if (!info.applies(m_desk.view()))
            continue;
        StationPanel *panel = info.make(info, m_desk);
        connect(panel, &StationPanel::recorded, this,
                [this] { m_head->next()->setFocus(Qt::OtherFocusReason); });
        m_column->addWidget(panel);
        m_panels.push_back(panel);
    }
    m_column->addStretch(1);
    m_scroll->setWidget(page); // the area deletes the page before it
    m_faces->setCurrentIndex(1);
    showOrder();
}

void JobScreen::showOrder()
{
    m_head->showOrder();
    for (StationPanel *panel : m_panels)
        panel->showOrder();
    showStop();
}

/// Another installer may be on another visit.
void JobScreen::showContext()
{
    m_head->context()->showOrder();
    for (StationPanel *panel : m_panels)
        panel->showNeed();
    showStop();
}

void JobScreen::showStop()
{
    const auto safety =
        safetyOfVisit(m_desk.view(), m_desk.installer(), m_desk.limits(), m_desk.now());
    QString stop;
    if (safety && safety->outcome == SafetyOutcome::Hazard)
        stop =
            tr("Stopped: %1 %2 When the source is found and cleared, make a new safety card; then "
               "this opens again.")
                .arg(safety->hazards.front().reason + '.', safety->hazards.front().toDo);
    for (StationPanel *panel : m_panels)
        panel->setStopped(panel->info().measures ? stop : QString());
    m_head->setStopped(stop);
}

StationPanel *JobScreen::panel(const QString &key) const
{
    const auto found = std::ranges::find_if(
        m_panels, [&key](const StationPanel *each) { return each->key() == key; });
    return found == m_panels.end() ? nullptr : *found;
}

void JobScreen::goNext()
{
    if (!m_desk.isOpen())
        return;
    std::vector<std::pair<StationPanel *, QString>> open; // where something is to be entered
    for (StationPanel *each : m_panels)
        for (const CriterionResult &criterion : m_desk.decision().criteria)
            if (criterion.open() && each->serves(criterion.key)) {
                open.emplace_back(each, criterion.key);
                break;
            }
    if (open.empty())
        return go(panel(m_desk.decision().firstOpen() ? "acceptance" : "certificate"), {});
    // The first one is what the sentence asks for; from there F2 goes on to the next open part.
    const QWidget *now = QApplication::focusWidget();
    const auto here = std::ranges::find_if(
        open, [now](const auto &each) { return now && each.first->isAncestorOf(now); });
    const bool onward = here != open.end() && here + 1 != open.end();
    const auto &[target, criterion] = onward ? *(here + 1) : open.front();
    go(target, criterion);
}

void JobScreen::goNextLine()
{
    if (!m_desk.isOpen())
        return;
    const auto &others = m_desk.view().alsoHere; // by due date, then number: F7 goes round
    if (others.empty())
        return m_head->say(Status::NotNeeded, tr("No other order is open at these premises."));
    const auto mine = std::pair(m_desk.order().dueDate, m_desk.order().number);
    const auto after = std::ranges::find_if(
        others, [&mine](const BoardRow &row) { return std::pair(row.due, row.order) > mine; });
    // A copy: what the page shows goes away with the page.
    const QString number = after == others.end() ? others.front().order : after->order;
    emit openOrder(number);
}

void JobScreen::goTo(Station station)
{
    for (StationPanel *each : m_panels)
        if (each->info().station == station)
            return go(each, {});
    m_head->say(Status::NotNeeded,
                tr("%1 is not needed for this order.").arg(stationName(station)));
}

void JobScreen::go(StationPanel *panel, const QString &criterion)
{
    if (!panel)
        return;
    QWidget *entry = panel->entry(criterion);
    if (entry && entry->isEnabled())
        entry->setFocus(Qt::ShortcutFocusReason);
    m_scroll->ensureWidgetVisible(panel, 0, 0);
    follow(entry);
}

void JobScreen::showFact(const QString &id)
{
    for (StationPanel *each : m_panels)
        if (each->attempts()->goTo(id)) {
            m_scroll->ensureWidgetVisible(each->attempts());
            return;
        }
}

void JobScreen::follow(QWidget *now)
{
    if (!now || !m_scroll->widget() || !m_scroll->widget()->isAncestorOf(now))
        return;
    // Once more when the page has taken its new form: what opens by the same key lies below.
    QTimer::singleShot(0, now, [this, now] {
        if (now->hasFocus())
            scrollTo(now);
    });
    scrollTo(now);
}

void JobScreen::scrollTo(QWidget *now)
{
    if (!m_scroll->widget() || !m_scroll->widget()->isAncestorOf(now))
        return;
    // The whole field with its label and its hint, not only the editor.
    QWidget *shown = now->parentWidget() && now->height() < em(4) ? now->parentWidget() : now;
    m_scroll->ensureWidgetVisible(shown->height() < m_scroll->viewport()->height() ? shown : now, 0,
                                  em(2));
}

} // namespace loopwright
