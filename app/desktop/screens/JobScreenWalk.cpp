// How one gets about on the page of a job: its keys, the next entry, a station, a fact.
#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/AttemptList.h"
#include "app/desktop/job/JobHead.h"
#include "app/desktop/job/StationPanel.h"
#include "app/desktop/screens/JobScreen.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/JobLine.h"

#include <QApplication>
#include <QTimer>

#include <algorithm>

namespace loopwright {

void JobScreen::makeKeys()
{
    addKey(this,
           {QStringLiteral("job.next"),
            tr("To the entry of the next step"),
            {QKeySequence(Qt::Key_F2)}},
           [this] { goNext(); });
    addKey(this,
           {QStringLiteral("job.next_line"),
            tr("To the next line at the same premises"),
            {QKeySequence(Qt::Key_F7)}},
           [this] { goNextLine(); });
    addKey(this,
           {QStringLiteral("job.help"),
            tr("What the part is for, and what to do when it fails"),
            {QKeySequence(Qt::SHIFT | Qt::Key_F1)}},
           [this] { toggleHelp(); });
    addKey(this,
           {QStringLiteral("job.print"),
            tr("Print the card, or the certificate one is at"),
            {QKeySequence::Print}},
           [this] { printAtHand(*this); });
    int place = 0;
    for (const auto &[station, word] : EnumCodes<Station>::table) {
        const QString name = localizedWord(StationState{station}.name());
        addKey(this,
               {QString("job.station." + QString::fromLatin1(word)),
                tr("To the station %1").arg(name),
                {QKeySequence(Qt::ALT | Qt::Key(Qt::Key_1 + place++))}},
               [this, station = station] { goTo(station); });
    }
}

/// Where the work ends if nothing is to be done any more.
QString JobScreen::lastPart() const
{
    return m_desk.decision().firstOpen() ? QStringLiteral("acceptance")
                                         : QStringLiteral("certificate");
}

/// The first that is to be done after the place in the plan, and if there is none, or nothing may
/// be done before an open hazard is closed, the one that the head's sentence asks for.
const Step *JobScreen::toDoAfter(std::ptrdiff_t place) const
{
    const auto &steps = m_desk.steps();
    const Step *asked = nextStep(steps);
    if (place < 0 || (asked && asked->need.key == u"hazard_closed"))
        return asked;
    const auto found = std::find_if(steps.begin() + place + 1, steps.end(),
                                    [](const Step &each) { return each.isToDo(); });
    return found == steps.end() ? asked : &*found;
}

/// Place in the plan of the step that has the keyboard; -1 if none has.
std::ptrdiff_t JobScreen::focused() const
{
    const QWidget *now = QApplication::focusWidget();
    const auto &steps = m_desk.steps();
    std::ptrdiff_t place = -1;
    for (std::size_t i = 0; now && i < steps.size(); ++i)
        if (StationPanel *each = panelOf(steps[i]);
            each && each->isAncestorOf(now) && each->enters(steps[i].need.key, now))
            place = std::ptrdiff_t(i);
    return place;
}

void JobScreen::goNext()
{
    if (!m_desk.isOpen())
        return;
    // The first one is what the sentence asks for; from a step F2 goes to the next after it.
    if (const Step *next = toDoAfter(focused()))
        go(panelOf(*next), next->need.key);
    else
        go(panel(lastPart()), {});
}

/// After a step was recorded: what it waits for now, else the next one; at the end the head says
/// what is left.
void JobScreen::goOn(const QString &need)
{
    const auto &steps = m_desk.steps();
    const auto recorded =
        std::ranges::find_if(steps, [&need](const Step &each) { return each.need.key == need; });
    const Step *next = nullptr;
    if (recorded != steps.end()) {
        if (recorded->state == StepState::Closed)
            for (const QString &key : recorded->need.after)
                if (const Step *before = m_desk.step(key); !next && before && before->isToDo())
                    next = before;
        if (!next)
            next = toDoAfter(recorded - steps.begin());
    }
    if (next)
        go(panelOf(*next), next->need.key);
    else
        (m_head->next()->isHidden() ? m_head->circuit() : m_head->next())
            ->setFocus(Qt::OtherFocusReason);
    showFolds();
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

void JobScreen::toggleHelp()
{
    StationPanel *shown = nullptr;
    for (StationPanel *each : m_panels)
        if (each->isAncestorOf(QApplication::focusWidget()) || (!shown && !each->isFolded()))
            shown = each;
    if (shown)
        shown->toggleHelp();
}

void JobScreen::goTo(Station station)
{
    for (const Step &step : m_desk.steps())
        if (step.need.station == station && step.isToDo())
            return go(panelOf(step), step.need.key);
    // Not the instrument, which stands under acceptance too.
    if (StationPanel *own = panel(toText(station)); own && !own->info().group)
        return go(own, {});
    for (StationPanel *each : m_panels)
        if (each->info().station == station)
            return go(each, {});
    m_head->say(Status::NotNeeded,
                tr("%1 is not needed for this order.").arg(localizedWord(stationName(station))));
}

void JobScreen::go(StationPanel *panel, const QString &need)
{
    if (!panel)
        return;
    QWidget *place = panel->takeKeyboard(need);
    m_scroll->ensureWidgetVisible(panel, 0, 0);
    follow(place);
}

void JobScreen::showFact(const QString &id)
{
    for (StationPanel *each : m_panels)
        if (each->attempts()->has(id)) {
            each->unfold();
            each->attempts()->goTo(id);
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
                                  em(3)); // with the name above it
}

} // namespace loopwright
