#include "app/desktop/screens/BoardSide.h"

#include "app/desktop/DesktopContext.h"
#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/StepFields.h"
#include "app/desktop/widgets/JobLineView.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"
#include "core/acceptance/Referral.h"
#include "core/base/PaperTime.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr int selectionRestMs = 60;
constexpr std::size_t reasonsShown = 6;
constexpr std::size_t eventsShown = 6;

/// "Handed on to the cable desk, reference T-44 · waits on plant · 2026-03-04 09:15 by Kim Carver".
QString referralText(const OrderView &view)
{
    const Fact *referral = standingReferral(view.input.facts);
    if (!referral)
        return {};
    const auto *referred = referral->as<ReferredFact>();
    QStringList parts{BoardSide::tr("Handed on to %1").arg(referred->to)};
    if (referred->reference)
        parts.last() += BoardSide::tr(", reference %1").arg(*referred->reference);
    if (referred->waitingOn)
        parts << BoardSide::tr("waits on %1").arg(localizedWord(toText(*referred->waitingOn)));
    parts << (referral->installer.isEmpty()
                  ? paperTime(referral->at)
                  : BoardSide::tr("%1 by %2")
                        .arg(paperTime(referral->at),
                             markedNameOf(view.people, referral->installer)));
    return parts.join(QStringLiteral(" · "));
}

/// How long it is open, and what it is.
QString openHazardText(const OrderView &view)
{
    const auto hazards = view.judged.cards.open();
    if (hazards.empty())
        return {};
    const QDate today = view.now.localDate();
    const QDate read = hazards.front().card->at.localDate();
    return hazardAge(std::max<qint64>(read.daysTo(today), 0)) + u' ' +
           localized(hazardText(hazards.front(), view.order.number));
}

QString whereText(const OrderView &view)
{
    QStringList parts{BoardSide::tr("Circuit %1").arg(view.order.circuit),
                      view.office.name.isEmpty() ? view.order.office : view.office.name,
                      variantName(view.order.variant),
                      BoardSide::tr("due %1").arg(dayText(view.order.dueDate))};
    if (!view.order.installer.isEmpty())
        parts << markedNameOf(view.people, view.order.installer);
    return parts.join(QStringLiteral(" · "));
}

/// A line for each that was typed.
QString meetingText(const ServiceOrder &order)
{
    QStringList lines;
    for (const auto &[name, text] : {std::pair(BoardSide::tr("Appointment: %1"), order.appointment),
                                     std::pair(BoardSide::tr("Contact: %1"), order.contact),
                                     std::pair(BoardSide::tr("Access: %1"), order.accessNotes)})
        if (!text.isEmpty())
            lines << name.arg(text);
    return lines.join(u'\n');
}

/// "Jumper run, 4 Mar, S. Lind. Cut over, …": what the office did, oldest first.
QString deskText(const OrderView &view)
{
    QStringList parts;
    for (const FactView &each : view.facts) {
        const auto *desk = each.fact.as<DeskFact>();
        if (!desk || each.voided)
            continue;
        QStringList said{wordName(toText(desk->what)), paperTime(each.fact.at)};
        if (desk->by)
            said << *desk->by;
        parts << said.join(QStringLiteral(", ")) + u'.';
    }
    return parts.join(u' ');
}

} // namespace

BoardSide::BoardSide(DesktopContext &workplace, QWidget *parent)
    : QScrollArea(parent)
    , m_reader(workplace.questions())
    , m_content(new QWidget)
    , m_number(new QLabel)
    , m_customer(makeText({}))
    , m_where(makeMuted({}))
    , m_meeting(makeText({}))
    , m_outcome(new SignLine)
    , m_hazard(new SignLine)
    , m_referred(new SignLine)
    , m_plan(new SignLine)
    , m_desk(new SignLine)
    , m_out(new SignLine)
    , m_conflicts(new SignLine)
    , m_line(new JobLineView)
    , m_next(makeText({}))
    , m_reasonsHead(makeHeading(tr("Why it is not accepted yet")))
    , m_reasons(new SignList(QStringLiteral("side.reasons"), m_reasonsHead->text()))
    , m_events(makeMuted({}))
    , m_handoff(nullptr)
{
    setObjectName(QStringLiteral("side"));
    m_number->setTextFormat(Qt::PlainText);
    setAccessibleName(tr("Selected order"));
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    m_content->setAutoFillBackground(true);
    m_content->setBackgroundRole(QPalette::Base);
    m_hazard->setObjectName(QStringLiteral("side.hazard"));
    m_referred->setObjectName(QStringLiteral("side.referred"));
    m_plan->setObjectName(QStringLiteral("side.plan"));
    m_desk->setObjectName(QStringLiteral("side.desk"));
    m_out->setObjectName(QStringLiteral("side.out"));
    m_conflicts->setObjectName(QStringLiteral("side.conflicts"));
    m_number->setObjectName(QStringLiteral("side.number"));
    m_meeting->setObjectName(QStringLiteral("side.meeting"));
    m_next->setObjectName(QStringLiteral("side.next"));
    m_line->setBackgroundRole(QPalette::Base);

    auto *column = new QVBoxLayout(m_content);
    column->addWidget(m_number);
    for (SignLine *line : {m_hazard, m_outcome, m_conflicts, m_out, m_referred, m_plan, m_desk})
        column->addWidget(line);
    column->addWidget(m_customer);
    column->addWidget(m_meeting);
    column->addWidget(m_where);
    column->addWidget(m_line);
    column->addWidget(m_next);
    column->addWidget(makeButtons());
    column->addWidget(m_reasonsHead);
    column->addWidget(m_reasons);
    column->addWidget(makeHeading(tr("Last events")));
    column->addWidget(m_events);
    column->addStretch(1);
    setWidget(m_content);
    whenThemed(this, [this, column] {
        column->setContentsMargins(em(1.1), em(0.9), em(1.1), em(0.9));
        column->setSpacing(em(0.6));
        m_number->setFont(digitsFont(1.5, QFont::DemiBold));
        setMinimumWidth(em(22));
    });
    m_content->hide();
    m_reasons->setStill();

    m_rest.setSingleShot(true);
    m_rest.setInterval(selectionRestMs);
    connect(&m_rest, &QTimer::timeout, this, &BoardSide::read);
    connect(m_line, &JobLineView::chosen, this, [this] { emit openOrder(m_order); });
}

QWidget *BoardSide::makeButtons()
{
    m_handoff = makeButton(tr("Hand on"), QStringLiteral("side.handoff"),
                           [this] { emit openHandoff(m_order); });
    m_handoff->setAccessibleName(tr("Hand on a job that is not accepted"));
    m_settle = makeButton(tr("Settle…"), QStringLiteral("side.settle"),
                          [this] { emit settleWished(m_order); });
    m_settle->setAccessibleName(tr("Settle what stations say otherwise"));
    return makeButtonRow(
        {makeButton(tr("Open the job"), QStringLiteral("side.open"),
                    [this] { emit openOrder(m_order); }),
         makeButton(tr("Circuit"), QStringLiteral("side.circuit"),
                    [this] { emit openCircuit(m_circuit); }),
         makeButton(tr("Change"), QStringLiteral("side.edit"), [this] { emit editOrder(m_order); }),
         m_handoff, m_settle});
}

void BoardSide::show(const QString &order)
{
    if (m_order == order && m_content->isVisibleTo(this))
        return;
    m_order = order;
    if (order.isEmpty())
        m_content->hide();
    else
        m_rest.start();
}

void BoardSide::refresh()
{
    if (!m_order.isEmpty())
        m_rest.start();
}

void BoardSide::read()
{
    m_reader.supersede();
    m_reader.ask<OrderView>(
        [order = m_order](Records &records, const Progress &) { return showOrder(records, order); },
        [this](const Result<OrderView> &shown) { fill(shown); });
}

void BoardSide::fill(const Result<OrderView> &shown)
{
    m_content->setVisible(shown.has_value());
    if (!shown)
        return;
    const OrderView &view = *shown;
    m_circuit = view.order.circuit;
    m_number->setText(view.order.number);
    fillHead(view);
    m_customer->setText(view.order.customer + "\n" + view.order.premises);
    m_meeting->setText(meetingText(view.order));
    m_meeting->setVisible(!m_meeting->text().isEmpty());
    m_where->setText(whereText(view));
    m_line->setLine(jobLine(view.decision, view.stage));
    const bool open = view.status == OrderStatus::Open;
    m_next->setText(open ? localized(nextSentenceOf(view)) : QString());
    m_next->setVisible(!m_next->text().isEmpty());
    m_handoff->setVisible(open && view.decision.firstOpen());
    fillReasons(view);
    fillEvents(view);
}

/// How it stands, in lines that are there only where they say something.
void BoardSide::fillHead(const OrderView &view)
{
    const OrderOutcome outcome = view.decision.outcome;
    if (view.status == OrderStatus::Cancelled)
        m_outcome->show(Status::NotNeeded, tr("Cancelled"));
    else if (view.held)
        m_outcome->show(Status::Doubtful, tr("Held: its identifiers are in error or taken"));
    else
        m_outcome->show(outcomeSign(outcome), outcomeName(outcome));
    const auto say = [](SignLine *line, Status sign, const QString &text) {
        line->show(sign, text);
        line->setVisible(!text.isEmpty());
    };
    say(m_hazard, Status::Failed, openHazardText(view));
    say(m_conflicts, Status::Doubtful, conflictsText(int(view.conflicts.size())));
    m_settle->setVisible(!view.conflicts.empty());
    say(m_out, Status::Away, outText(view.out, view.now.localDate()));
    say(m_referred, Status::Doubtful,
        view.status == OrderStatus::Open ? referralText(view) : QString());
    say(m_plan, view.order.isOnHold() ? Status::Doubtful : Status::Note, planText(view.order));
    say(m_desk, Status::Note, deskText(view));
}

void BoardSide::fillReasons(const OrderView &view)
{
    std::vector<const CriterionResult *> open;
    for (const CriterionResult &criterion : view.decision.criteria)
        if (criterion.open())
            open.push_back(&criterion);
    std::stable_partition(open.begin(), open.end(), [](const CriterionResult *criterion) {
        return criterion->outcome == CriterionOutcome::NotMet;
    });
    m_reasonsHead->setVisible(!open.empty());
    std::vector<SignItem> items;
    for (std::size_t i = 0; i < std::min(open.size(), reasonsShown); ++i) {
        const bool failed = open[i]->outcome == CriterionOutcome::NotMet;
        items.push_back({open[i]->key,
                         failed ? Status::Failed : Status::Open,
                         {},
                         localized(open[i]->sentence())});
    }
    if (open.size() > reasonsShown)
        items.push_back(
            {{},
             Status::None,
             {},
             tr("and %1 more on the job's page").arg(qlonglong(open.size() - reasonsShown))});
    m_reasons->setItems(std::move(items));
}

void BoardSide::fillEvents(const OrderView &view)
{
    QStringList lines;
    for (auto event = view.events.rbegin();
         event != view.events.rend() && std::size_t(lines.size()) < eventsShown; ++event)
        lines << QStringLiteral("%1  %2 · %3")
                     .arg(event->at.text().left(16).replace(u'T', u' '), eventName(event->kind),
                          event->by);
    m_events->setText(lines.join(u'\n'));
}

} // namespace loopwright
