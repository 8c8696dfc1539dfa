#include "app/desktop/screens/JobScreen.h"

#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/AttemptList.h"
#include "app/desktop/job/ContextLine.h"
#include "app/desktop/job/JobHead.h"
#include "app/desktop/job/PanelTable.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/JobLine.h"

#include <QApplication>
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
    showNone();
    m_empty->addButton(
        makeButton(tr("To the board"), "job.board", [this] { emit openScreen("board", {}); }));
    m_faces->addWidget(m_empty);
    m_faces->addWidget(page);

    connect(&m_desk, &JobSession::changed, this, [this] {
        showOrder();
        emit recordsChanged();
    });
    connect(&m_desk, &JobSession::contextChanged, this, &JobScreen::showOrder);
    connect(&m_desk, &JobSession::alarmed, this, [this] { m_head->showNext(); });
    connect(&m_desk, &JobSession::said, this, [this](const QString &sentence) {
        m_head->say(Status::None, {});
        emit said(sentence);
    });
    connect(&m_desk, &JobSession::troubled, this,
            [this](const QString &sentence) { m_head->say(Status::Failed, sentence); });
    connect(&m_desk, &JobSession::runChanged, this, &JobScreen::runChanged);
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

/// What has the focus goes away with the page, and the page must not follow it any more.
JobScreen::~JobScreen()
{
    qApp->disconnect(this);
}

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
    emit placeChanged();
}

void JobScreen::showPart(const QString &part)
{
    if (part != u"run" || !m_desk.isOpen())
        return;
    for (StationPanel *each : m_panels)
        if (each->info().group == StepGroup::ErrorTest) {
            // The channel that is being tested is chosen on the page, not by the plan.
            const QString channel =
                m_desk.draft(each->key() + ".setup").value("channel").toString();
            const auto run = std::ranges::find_if(m_desk.steps(), [&](const Step &step) {
                return step.need.kind == FactKind::Run &&
                       (channel.isEmpty() || step.need.key == "run." + channel);
            });
            return go(each, run == m_desk.steps().end() ? QString() : run->need.key);
        }
}

void JobScreen::restore(const QJsonObject &place)
{
    const QString number = place.value("order").toString();
    if (number.isEmpty())
        return;
    open(number);
    if (m_desk.isOpen())
        return;
    m_number.clear(); // it is in these records no more
    showNone();
    emit titleChanged();
}

void JobScreen::showNone()
{
    m_empty->say(tr("No job is open"), tr("Choose one on the board, or type its number there."));
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
        column->setContentsMargins(em(1), em(0.6), em(1), em(1));
        column->setSpacing(em(0.4));
    });
    m_needs.clear();
    for (const Step &step : m_desk.steps())
        m_needs << step.need.key;
    for (const PanelInfo &info : allPanels()) {
        if (!info.always && std::ranges::none_of(m_desk.steps(), [&info](const Step &step) {
                return step.need.group == info.group;
            }))
            continue;
        StationPanel *panel = info.make(info, m_desk);
        connect(panel, &StationPanel::recorded, this, &JobScreen::goOn);
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
    QStringList needs;
    for (const Step &step : m_desk.steps())
        needs << step.need.key;
    if (needs != m_needs) // another terminal, another service
        return build();
    m_head->showOrder();
    for (StationPanel *panel : m_panels)
        panel->showOrder();
    showFolds();
}

/// The page shows the work: what comes next is unfolded, and where the keyboard is.
void JobScreen::showFolds()
{
    const Step *next = nextStep(m_desk.steps());
    const StationPanel *open = next ? panelOf(*next) : panel(lastPart());
    const bool arrives = next && !m_desk.visit() && m_desk.view().status == OrderStatus::Open;
    const QWidget *now = QApplication::focusWidget();
    for (StationPanel *each : m_panels)
        each->setFolded(each != open && !(now && each->isAncestorOf(now)) &&
                        !(arrives && each->info().group == StepGroup::Visit));
}

StationPanel *JobScreen::panel(const QString &key) const
{
    const auto found = std::ranges::find_if(
        m_panels, [&key](const StationPanel *each) { return each->key() == key; });
    return found == m_panels.end() ? nullptr : *found;
}

StationPanel *JobScreen::panelOf(const Step &step) const
{
    const auto found = std::ranges::find_if(m_panels, [&step](const StationPanel *each) {
        return each->info().group == step.need.group ||
               (each->info().station == step.need.station && !each->info().group &&
                !step.need.kind);
    });
    return found == m_panels.end() ? nullptr : *found;
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
