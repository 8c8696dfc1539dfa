#pragma once
// What was measured of a circuit over all its orders, one row of readings for each quantity: how a
// line changes between its turn-up and today.

#include "core/acceptance/Judged.h"

namespace loopwright {

/// What the order's decision makes of a reading.
enum class ReadingState
{
    Met,
    NearLimit, ///< met, and of the class marginal
    NotMet,
    Aside, ///< decides nothing: taken again, on another pair, of a quantity that has no criterion
};
template<>
struct EnumCodes<ReadingState>
{
    static constexpr std::pair<ReadingState, const char *> table[] = {
        {ReadingState::Met, "met"},
        {ReadingState::NearLimit, "near_limit"},
        {ReadingState::NotMet, "not_met"},
        {ReadingState::Aside, "aside"}};
};

struct CircuitReading
{
    Moment at;
    QString order;
    QString fact; ///< id
    QString pair; ///< in force in that order
    double value = 0;
    ReadingState state = ReadingState::Aside;
};

struct CircuitFigure
{
    QString key; ///< "dc_resistance", "loss_40000", a quantity of analog lines, …
    Text name;
    QString unit;
    std::optional<double> limit; ///< the bound nearest to the newest reading; none if there is none
    Text limitText;              ///< by the limits of the newest order that has readings of it
    std::vector<CircuitReading> readings; ///< by time; never empty

    const CircuitReading &newest() const { return readings.back(); }
    /// The last reading that decided for the order, else the last one of it; null without any.
    const CircuitReading *of(const QString &order) const;

    /// `turnUp`: the order whose readings are the turn-up's.
    QJsonObject toJson(const QString &turnUp) const;
};

/// Collects the figures, order by order.
class CircuitFigures
{
public:
    /// Oldest order first. What was struck out is left out.
    void add(const DecisionInput &input, const LimitSet &limits, const Judged &judged);
    /// Those of which there are readings, in the order of the work.
    std::vector<CircuitFigure> take();

private:
    void put(int place, const CircuitFigure &head, const CircuitReading &reading);

    QMap<std::pair<int, QString>, CircuitFigure> m_figures; ///< by place, then key
};

} // namespace loopwright
