#include "app/desktop/screens/JobScreen.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/ContextLine.h"
#include "app/desktop/job/JobHead.h"
#include "app/desktop/job/PanelTable.h"
#include "app/desktop/job/StationPanel.h"
#include "app/desktop/vans/ConflictsDialog.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/JobLine.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>

#include <algorithm>

namespace loopwright {

namespace {

/// They were asked before they stood on the page, and buttons and lists keep what they said.
void askHeightsAnew(const QWidget &page)
{
    for (QWidget *each : page.findChildren<QWidget *>()) {
        if (qobject_cast<QAbstractButton *>(each) || qobject_cast<QComboBox *>(each)) {
            QEvent anew(QEvent::StyleChange);
            QCoreApplication::sendEvent(each, &anew);
        }
        each->updateGeometry();
    }
}

} // namespace

JobScreen::JobScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_desk(workplace)
    , m_faces(new QStackedLayout(this))
    , m_empty(new EmptyState)
    , m_head(new JobHead(m_desk))
    , m_scroll(new QScrollArea)
{
    setProperty(hitWithGloves, true);
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
        m_head->clear();
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
    connect(m_head, &JobHead::settleWished, this, [this](const QString &order) {
        connect(showConflicts(this->workplace(), order, window()), &ConflictsDialog::recordsChanged,
                this, [this] {
                    refresh();
                    emit recordsChanged();
                });
    });
    connect(qApp, &QApplication::focusChanged, this,
            [this](QWidget *, QWidget *now) { follow(now); });
    makeKeys();
}

/// What has the focus goes away with the page, and the page must not follow it any more.
JobScreen::~JobScreen()
{
    qApp->disconnect(this);
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
                                        .arg(localized(reloaded.error())));
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
    m_empty->say(tr("Job %1 cannot be opened").arg(m_number), localized(error));
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
    askHeightsAnew(*page);
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

} // namespace loopwright
