#pragma once
// What happened to a circuit, on one line: its orders, visits, readings, runs, hazards, changes and
// certificates, by time.

#include "app/actions/Orders.h"

namespace loopwright {

enum class LifeKind
{
    Order,       ///< taken in, completed, cancelled
    Trouble,     ///< opened, closed
    Visit,       ///< somebody was there
    Hazard,      ///< read, or said to be closed
    Readings,    ///< a day's measurements, layers and calls of one order
    Run,         ///< an error-rate run, struck-out ones too
    Change,      ///< something was changed, cleared, referred, excepted
    Certificate, ///< issued
};
template<>
struct EnumCodes<LifeKind>
{
    static constexpr std::pair<LifeKind, const char *> table[] = {
        {LifeKind::Order, "order"},       {LifeKind::Trouble, "trouble"},
        {LifeKind::Visit, "visit"},       {LifeKind::Hazard, "hazard"},
        {LifeKind::Readings, "readings"}, {LifeKind::Run, "run"},
        {LifeKind::Change, "change"},     {LifeKind::Certificate, "certificate"}};
};

/// How an entry of the life line ended.
enum class LifeResult
{
    Told, ///< neither well nor badly
    Well,
    Badly
};
template<>
struct EnumCodes<LifeResult>
{
    static constexpr std::pair<LifeResult, const char *> table[] = {
        {LifeResult::Told, "told"}, {LifeResult::Well, "well"}, {LifeResult::Badly, "badly"}};
};

struct LifeEntry
{
    Moment at;
    QString order;
    LifeKind kind = LifeKind::Order;
    LifeResult result = LifeResult::Told;
    QString text; ///< one line

    QJsonObject toJson() const;
};

/// Oldest first. `people` name who was there.
std::vector<LifeEntry> lifeOf(const std::vector<OrderView> &orders, const QList<Person> &people);

} // namespace loopwright
