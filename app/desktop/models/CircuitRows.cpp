#include "app/desktop/models/CircuitRows.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/models/EventRows.h"

namespace loopwright {

namespace {

Status signOf(const CircuitReading &reading)
{
    switch (reading.state) {
    case ReadingState::Met:
        return Status::Done;
    case ReadingState::NearLimit:
        return Status::Doubtful;
    case ReadingState::NotMet:
        return Status::Failed;
    case ReadingState::Aside:
        break;
    }
    return Status::Note;
}

QString figureText(double value)
{
    return localizedFigure(QString::number(value, 'g', 6));
}

} // namespace

TextRow orderRow(const OrderView &view)
{
    const ServiceOrder &order = view.order;
    QStringList numbers;
    for (const OrderedTerminal &terminal : order.terminals)
        if (!numbers.contains(terminal.dn))
            numbers << terminal.dn;
    const bool open = view.status == OrderStatus::Open;
    return {{order.number, eventName(toText(order.type)), dayText(order.dueDate),
             open ? eventName(toText(view.decision.outcome)) : eventName(toText(view.status)),
             order.customer, order.premises, variantName(order.variant), order.pair,
             numbers.join(QStringLiteral(", "))},
            Status::None,
            order.number,
            !open};
}

TextRow lifeRow(const LifeEntry &entry)
{
    const Status sign = entry.result == LifeResult::Badly  ? Status::Failed
                        : entry.result == LifeResult::Well ? Status::Done
                                                           : Status::None;
    return {{momentText(entry.at), entry.order, eventName(toText(entry.kind)),
             localizedSentence(entry.text)},
            sign,
            entry.order,
            false};
}

/// The turn-up's figure beside the newest, and how far they lie apart.
TextRow figureRow(const CircuitFigure &figure, const QString &turnUp)
{
    QString name = localized(figure.name);
    name[0] = name[0].toUpper();
    const CircuitReading *then = figure.of(turnUp);
    const CircuitReading &now = figure.newest();
    QString change;
    if (then && then->fact != now.fact) {
        const double difference = now.value - then->value;
        change = (difference > 0 ? "+" : "") + localizedFigure(QString::number(difference, 'g', 3));
    }
    return {{name, then ? figureText(then->value) : QStringLiteral("–"), figureText(now.value),
             change, localizedFigure(figure.unit), dayText(now.at.localDate())},
            signOf(now),
            now.order,
            false};
}

TextRow neighbourRow(const BoardRow &row)
{
    return {{row.pair, row.circuit, localizedSentence(row.reason), row.customer, row.order},
            row.hazard ? Status::Failed : Status::None,
            row.circuit,
            false};
}

TextRow spareRow(const SparePair &spare)
{
    const bool known = !spare.makeupOf.isEmpty();
    return {{spare.pair, QString::number(spare.away), spare.lastOrder,
             known ? QString("%1 dB, %2")
                         .arg(localizedFigure(spare.lossDb, 1), suitabilityName(spare.verdict))
                   : QString(),
             spare.makeupOf, localizedSentences(spare.against).join(u' ')},
            !spare.against.isEmpty()                             ? Status::Doubtful
            : known && spare.verdict == Suitability::NotSuitable ? Status::Failed
                                                                 : Status::None,
            {},
            false};
}

TextRow candidateRow(const BoardRow &row)
{
    return {{row.circuit, row.customer, row.premises, row.office, row.pair, row.order},
            Status::None,
            row.circuit,
            row.status != OrderStatus::Open};
}

} // namespace loopwright
