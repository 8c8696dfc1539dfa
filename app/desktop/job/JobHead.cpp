#include "app/desktop/job/JobHead.h"

#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/ContextLine.h"
#include "app/desktop/job/VisitState.h"
#include "app/desktop/widgets/JobLineView.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "core/acceptance/JobLine.h"
#include "core/identifiers/ProtocolVariant.h"

#include <QHBoxLayout>
#include <QResizeEvent>

namespace loopwright {

namespace {

QString typeName(OrderType type)
{
    QString text = toText(type).replace(u'_', u' ');
    text[0] = text[0].toUpper();
    return text;
}

} // namespace

JobHead::JobHead(JobSession &desk, QWidget *parent)
    : QFrame(parent)
    , m_desk(desk)
    , m_order(new QLabel)
    , m_where(makeMuted({}))
    , m_alsoHere(makeText({}))
    , m_outcome(new SignLine)
    , m_line(new JobLineView)
    , m_sentence(makeText({}))
    , m_circuit(makeButton(tr("Circuit"), "head.circuit",
                           [this] { emit circuitWished(m_desk.order().circuit); }))
    , m_next(makeButton(tr("Go there (F2)"), "next", [this] { emit nextWished(); }))
    , m_said(new SignLine)
    , m_context(new ContextLine(desk))
{
    setObjectName("head");
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    m_order->setObjectName("head.order");
    m_sentence->setObjectName("head.sentence");
    m_order->setWordWrap(true);
    m_alsoHere->setObjectName("head.also_here");
    m_outcome->setWrapping(false);
    m_circuit->setToolTip(tr("The circuit of this order with its whole history"));
    m_next->setAutoDefault(true);
    m_next->setAccessibleName(tr("Go to the entry of the next step"));

    auto *layout = new QVBoxLayout(this);
    auto *top = new QHBoxLayout;
    top->addWidget(m_order, 1);
    top->addWidget(m_outcome, 0, Qt::AlignVCenter);
    whenThemed(m_outcome, [top] { top->setSpacing(em(0.8)); });
    top->addWidget(m_circuit);
    layout->addLayout(top);
    layout->addWidget(m_where);
    layout->addWidget(m_alsoHere);
    layout->addWidget(m_line);
    auto *next = new QHBoxLayout;
    next->addWidget(m_sentence, 1);
    next->addWidget(m_next, 0, Qt::AlignTop);
    layout->addLayout(next);
    layout->addWidget(m_said);
    layout->addWidget(m_context);
    m_said->hide();
    whenThemed(this, [this, layout] {
        layout->setContentsMargins(em(1.2), em(0.6), em(1.2), em(0.6));
        layout->setSpacing(em(0.25));
        m_order->setFont(sized(1.3, QFont::DemiBold));
        m_sentence->setFont(sized(1.12, QFont::DemiBold));
        m_next->setMinimumHeight(em(2.4));
        m_next->setFont(sized(1, QFont::DemiBold));
    });
    connect(m_line, &JobLineView::chosen, this, &JobHead::stationWished);
}

void JobHead::showOrder()
{
    const OrderView &view = m_desk.view();
    const ServiceOrder &order = view.order;
    const ProtocolVariant *variant = findVariant(order.variant);
    m_order->setText(tr("%1 · %2 · %3").arg(order.number, order.customer, typeName(order.type)));
    QStringList where{order.premises,
                      tr("circuit %1").arg(order.circuit),
                      view.office.name.isEmpty() ? order.office : view.office.name,
                      variant ? variant->name : order.variant,
                      tr("pair %1").arg(order.pair),
                      tr("due %1").arg(dayText(order.dueDate))};
    const QString late =
        dueWords(order.dueDate, m_desk.now().localDate(), view.stage == Stage::Done);
    if (!late.isEmpty())
        where.last() += tr(" (%1)").arg(late);
    m_where->setText(where.join(QStringLiteral(" · ")));
    m_alsoHere->setText(alsoHereText(view));
    m_alsoHere->setVisible(!view.alsoHere.empty());
    const OrderOutcome outcome = view.decision.outcome;
    m_outcome->show(outcomeSign(outcome),
                    view.stage == Stage::Done
                        ? outcomeName(outcome)
                        : tr("%1 · at %2").arg(outcomeName(outcome), stageName(view.stage)));
    m_line->setLine(jobLine(view.decision, view.stage));
    m_sentence->setText(sentence());
    m_next->setVisible(view.status == OrderStatus::Open);
    m_context->showOrder();
}

QString JobHead::sentence() const
{
    const OrderView &view = m_desk.view();
    return view.status == OrderStatus::Open ? nextSentence(view.decision, view.stage)
                                            : tr("The order is %1.").arg(statusName(view.status));
}

void JobHead::setStopped(const QString &why)
{
    m_sentence->setText(why.isEmpty() ? sentence() : tr("Stop: nobody touches the pair."));
    if (!why.isEmpty())
        say(Status::Failed, why);
}

void JobHead::say(Status sign, const QString &sentence)
{
    m_said->show(sign, sentence);
    m_said->setVisible(!sentence.isEmpty());
}

void JobHead::resizeEvent(QResizeEvent *event)
{
    QFrame::resizeEvent(event);
    // On a low screen the line of places goes first; it stands on the paper too.
    m_where->setVisible(window()->height() >= em(42));
}

} // namespace loopwright
