#include "app/desktop/job/JobHead.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/ContextLine.h"
#include "app/desktop/job/PremisesText.h"
#include "app/desktop/widgets/JobLineView.h"
#include "app/desktop/widgets/OneLine.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "core/acceptance/JobLine.h"

#include <QHBoxLayout>
#include <QResizeEvent>

#include <algorithm>

namespace loopwright {

/// Two halves in one row or in two; asks for no more width than two rows need, or there would never
/// be too little for one.
class HeadRows : public QBoxLayout
{
public:
    HeadRows()
        : QBoxLayout(LeftToRight)
    {
    }

    QSize minimumSize() const override
    {
        QSize size = QBoxLayout::minimumSize();
        size.setWidth(0);
        for (int half = 0; half < count(); ++half)
            size.setWidth(std::max(size.width(), itemAt(half)->minimumSize().width()));
        return size;
    }
    void arrange(int width)
    {
        int needed = em(betweenEm);
        for (int half = 0; half < count(); ++half)
            needed += itemAt(half)->minimumSize().width();
        const bool one = needed <= width;
        const int between = em(one ? betweenEm : 0.2);
        if (one == (direction() == LeftToRight) && between == spacing())
            return;
        setDirection(one ? LeftToRight : TopToBottom);
        setStretch(0, one ? 1 : 0);
        setSpacing(between);
    }

    static constexpr double betweenEm = 0.8;
};

JobHead::JobHead(JobSession &desk, QWidget *parent)
    : QFrame(parent)
    , m_desk(desk)
    , m_order(new OneLine("head.order"))
    , m_where(new OneLine("head.where"))
    , m_remarks(new OneLine("head.remarks"))
    , m_alsoHere(new OneLine("head.also_here"))
    , m_stations(new SignLine)
    , m_outcome(new SignLine)
    , m_rows(new HeadRows)
    , m_line(new JobLineView)
    , m_sentence(makeText({}))
    , m_settle(makeButton(tr("Settle…"), "head.settle",
                          [this] { emit settleWished(m_desk.order().number); }))
    , m_circuit(makeButton(tr("Circuit"), "head.circuit",
                           [this] { emit circuitWished(m_desk.order().circuit); }))
    , m_next(makeButton(tr("Go there (F2)"), "next", [this] { emit nextWished(); }))
    , m_said(new SignLine)
    , m_context(new ContextLine(desk))
{
    setObjectName("head");
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    m_order->setForegroundRole(QPalette::WindowText);
    // As wide as it needs if there is room, and no wider.
    m_order->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_sentence->setObjectName("head.sentence");
    m_outcome->setWrapping(false);
    m_stations->setObjectName("head.stations");
    m_settle->setAccessibleName(tr("Settle what stations say otherwise"));
    m_circuit->setToolTip(tr("The circuit of this order with its whole history"));
    m_next->setAccessibleName(tr("Go to the entry of the next step"));

    auto *layout = new QVBoxLayout(this);
    layOutRows();
    layout->addLayout(m_rows);
    for (OneLine *line : {m_where, m_remarks, m_alsoHere})
        layout->addWidget(line);
    auto *stations = new QHBoxLayout;
    stations->addWidget(m_stations, 1, Qt::AlignVCenter);
    stations->addWidget(m_settle);
    layout->addLayout(stations);
    layout->addWidget(m_line);
    auto *next = new QHBoxLayout;
    next->addWidget(m_sentence, 1, Qt::AlignVCenter);
    next->addWidget(m_next, 0, Qt::AlignTop);
    layout->addLayout(next);
    m_said->setObjectName("head.said");
    auto *said = new QVBoxLayout;
    said->addWidget(m_said);
    layout->addLayout(said);
    m_said->hide();
    whenThemed(this, [this, layout, said] {
        layout->setContentsMargins(em(1), em(0.2), em(1), em(0.2));
        layout->setSpacing(0);
        said->setContentsMargins(0, em(0.4), 0, 0); // the frame around the button has room
        m_order->setFont(sized(1.2, QFont::DemiBold));
        m_sentence->setFont(sized(1.08, QFont::DemiBold));
        m_next->setFont(sized(1, QFont::DemiBold));
    });
    connect(m_line, &JobLineView::chosen, this, &JobHead::stationWished);
}

/// What is done at which order; who does it, and since when.
void JobHead::layOutRows()
{
    auto *what = new QHBoxLayout;
    what->addWidget(m_order, 1);
    what->addWidget(m_outcome, 0, Qt::AlignVCenter);
    auto *who = new QHBoxLayout;
    who->addWidget(m_context, 1);
    who->addWidget(m_circuit);
    m_rows->addLayout(what, 1);
    m_rows->addLayout(who);
    whenThemed(m_circuit, [what, who] {
        for (QHBoxLayout *half : {what, who})
            half->setSpacing(em(HeadRows::betweenEm));
    });
}

void JobHead::showOrder()
{
    const OrderView &view = m_desk.view();
    const ServiceOrder &order = view.order;
    m_order->setText(
        tr("%1 · %2 · %3").arg(order.number, order.customer, eventName(toText(order.type))));
    m_order->setKept(order.number);
    m_where->setText(whereText());
    m_alsoHere->setText(alsoHereText(view));
    const OrderOutcome outcome = view.decision.outcome;
    m_outcome->show(
        outcomeSign(outcome),
        view.stage == Stage::Done
            ? outcomeName(outcome)
            : tr("%1 · at %2").arg(outcomeName(outcome), localizedWord(stageName(view.stage))));
    m_line->setLine(jobLine(view.decision, view.stage));
    showStations();
    showNext();
    m_next->setVisible(view.status == OrderStatus::Open);
    m_context->showOrder();
    showLines();
}

void JobHead::showStations()
{
    const OrderView &view = m_desk.view();
    const int conflicts = int(view.conflicts.size());
    const QStringList said = stationLines(view.out, conflicts, m_desk.now().localDate());
    m_stations->show(conflicts > 0 ? Status::Doubtful : Status::Away,
                     said.join(QStringLiteral(" · ")).replace(u'\n', QStringLiteral(" · ")));
    m_stations->setVisible(!said.isEmpty());
    m_settle->setVisible(conflicts > 0);
}

QString JobHead::whereText() const
{
    const OrderView &view = m_desk.view();
    const ServiceOrder &order = view.order;
    QString due = tr("due %1").arg(dayText(order.dueDate));
    const QString late =
        dueWords(order.dueDate, m_desk.now().localDate(), view.stage == Stage::Done);
    if (!late.isEmpty())
        due += tr(" (%1)").arg(late);
    // What there is no room for goes from the end.
    return QStringList{tr("pair %1").arg(order.pair),
                       order.premises,
                       due,
                       tr("circuit %1").arg(order.circuit),
                       view.office.name.isEmpty() ? order.office : view.office.name,
                       variantName(order.variant)}
        .join(QStringLiteral(" · "));
}

/// On a low screen it is the only line below the first: pair and premises stand before all else.
QString JobHead::remarksText(bool low) const
{
    const ServiceOrder &order = m_desk.order();
    QStringList said;
    if (low)
        said << tr("pair %1").arg(order.pair) << order.premises;
    for (const auto &[name, text] :
         {std::pair(tr("Trouble: %1"), order.symptom),
          std::pair(tr("From the desk: %1"), order.deskTest),
          std::pair(QStringLiteral("%1"), planText(order)),
          std::pair(tr("Appointment: %1"), order.appointment),
          std::pair(tr("Crew: %1"), order.crew), std::pair(tr("Contact: %1"), order.contact),
          std::pair(tr("Access: %1"), order.accessNotes),
          std::pair(tr("Remarks: %1"), order.remarks)})
        if (!text.isEmpty())
            said << name.arg(text);
    return said.join(QStringLiteral(" · "));
}

QString JobHead::sentence() const
{
    const OrderView &view = m_desk.view();
    if (!m_desk.alarm().isEmpty() || m_desk.isStopped())
        return tr("Stop: nobody touches the pair.");
    return view.status == OrderStatus::Open
               ? localized(nextSentence(m_desk.steps(), view.decision, view.stage))
               : tr("The order is %1.").arg(statusName(view.status));
}

void JobHead::showNext()
{
    m_sentence->setText(sentence());
    const bool stop = !m_desk.alarm().isEmpty() || m_desk.isStopped();
    QPalette palette = m_sentence->palette();
    for (const QPalette::ColorRole role :
         {QPalette::WindowText, QPalette::Text, QPalette::ToolTipText})
        palette.setColor(role, stop ? colours().bad : this->palette().color(role));
    m_sentence->setPalette(palette);
    const Step *closing = m_desk.step("hazard_closed");
    const auto hazards = m_desk.view().judged.cards.open();
    const auto warn = [this](const QString &of) { m_said->tellIfNew(Status::Failed, of); };
    if (!m_desk.alarm().isEmpty())
        warn(m_desk.alarm());
    else if (m_desk.isStopped())
        warn(QString("%1 %2").arg(localized(closing->because), localized(closing->next)));
    else if (!hazards.empty())
        // Of another pair at the premises: it stops nobody here, and everybody is told.
        warn(localized(hazardText(hazards.front(), m_desk.order().number)));
    else if (m_stopped || m_warned)
        say(Status::None, {});
    m_warned = !hazards.empty();
    m_stopped = stop;
}

void JobHead::say(Status sign, const QString &sentence)
{
    m_said->tell(sign, sentence);
}

void JobHead::clear()
{
    m_said->show(Status::None, {});
    m_said->hide();
}

/// On a low screen pair, premises and whom to meet stay.
void JobHead::showLines()
{
    const bool low = window()->height() < em(52);
    if (m_desk.isOpen())
        m_remarks->setText(remarksText(low));
    m_where->setVisible(!low);
    m_remarks->setVisible(!m_remarks->text().isEmpty());
    m_alsoHere->setVisible(!m_alsoHere->text().isEmpty() && !low);
    m_line->setLow(low);
}

void JobHead::resizeEvent(QResizeEvent *event)
{
    QFrame::resizeEvent(event);
    showLines();
    showRows();
}

bool JobHead::event(QEvent *event)
{
    if (event->type() == QEvent::LayoutRequest)
        showRows(); // what stands in a row needs more room, or less
    return QFrame::event(event);
}

void JobHead::showRows()
{
    const QMargins margins = layout()->contentsMargins();
    m_rows->arrange(width() - margins.left() - margins.right());
}

} // namespace loopwright
