#include "app/desktop/screens/RowDeed.h"

#include "app/actions/Board.h"
#include "app/actions/Orders.h"
#include "app/actions/Plans.h"
#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/job/StepFields.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace loopwright {

namespace {

/// Stands in the list for an order that nobody is assigned to any more.
const QString nobody = QStringLiteral("-");
constexpr qsizetype mostNamed = 6;

QString deedText(const char *source)
{
    return QCoreApplication::translate("RowDeed", source);
}

/// The one value that all rows have; empty if they differ.
template<class Value>
QString common(const std::vector<BoardRow> &rows, Value value)
{
    const QString first = value(rows.front());
    const bool same =
        std::ranges::all_of(rows, [&](const BoardRow &row) { return value(row) == first; });
    return same ? first : QString();
}

QString isoDay(const BoardRow &row)
{
    return row.due.toString(Qt::ISODate);
}

/// "Tue 1 Dec"
QString weekday(const QString &iso)
{
    return QLocale().toString(QDate::fromString(iso, Qt::ISODate),
                              deedText(QT_TRANSLATE_NOOP("RowDeed", "ddd d MMM")));
}

/// As it is typed, or as a value.
bool wantsOthers(const QJsonObject &answers)
{
    const QJsonValue others = answers.value("premises");
    return others.toBool() || others.toString() == u"true";
}

/// Whether the day is another than any of the rows has that it is for.
bool movesAny(const DeedGround &ground, const QJsonObject &answers, const QString &typed)
{
    const QString day = dateText(typed);
    const auto moves = [&day](const BoardRow &row) { return isoDay(row) != day; };
    return !day.isEmpty() &&
           (std::ranges::any_of(ground.rows, moves) ||
            (wantsOthers(answers) && std::ranges::any_of(ground.alsoThere, moves)));
}

Finding lack(const QString &field, const char *reason)
{
    return lackAt(field, deedText(reason));
}

/// Asks for a day, and why it is another one as soon as it is.
std::vector<FieldSpec> dayFields(const DeedGround &ground, const char *hint)
{
    std::vector<FieldSpec> fields;
    fields.push_back({QStringLiteral("due_date"), deedText(QT_TRANSLATE_NOOP("RowDeed", "Day")),
                      deedText(hint), Answer::Date});
    FieldSpec because{QStringLiteral("due_because"),
                      deedText(QT_TRANSLATE_NOOP("RowDeed", "Why another day")),
                      deedText(QT_TRANSLATE_NOOP("RowDeed", "the first day is kept beside it")),
                      Answer::Text,
                      {},
                      0};
    because.asked = [ground](const QJsonObject &typed) {
        return movesAny(ground, typed, typed.value("due_date").toString());
    };
    fields.push_back(because);
    return fields;
}

Findings checkDay(const DeedGround &ground, const QJsonObject &values)
{
    const QString day = values.value("due_date").toString();
    if (day.isEmpty())
        return {};
    if (!QDate::fromString(day, Qt::ISODate).isValid())
        return {lack("due_date", QT_TRANSLATE_NOOP("RowDeed", "A day is typed as 2026-12-01."))};
    if (movesAny(ground, values, day) && values.value("due_because").toString().trimmed().isEmpty())
        return {lack("due_because",
                     QT_TRANSLATE_NOOP("RowDeed", "Say why it is another day: the customer was "
                                                  "told the first one."))};
    return {};
}

DeedReport reportOf(const PlanReport &plan)
{
    DeedReport report;
    for (const PlanStep &step : plan.changed)
        report.changed << step.order;
    report.unchanged = plan.unchanged;
    if (!plan.held.isEmpty())
        report.remark =
            deedText(QT_TRANSLATE_NOOP("RowDeed", "Held, for identifiers in error or taken: %1."))
                .arg(plan.held.join(QStringLiteral(", ")));
    report.takeBack = [steps = plan.changed](Records &records) -> Result<void> {
        LOOPWRIGHT_TRY(undoPlan(records, steps));
        return {};
    };
    return report;
}

/// A plan's action as a deed's.
template<class Plan>
auto asDeed(Plan plan)
{
    return [plan](Records &records, const QJsonObject &values,
                  const Progress &) -> Result<DeedReport> {
        LOOPWRIGHT_ASSIGN(const auto report, plan(records, values));
        return reportOf(report);
    };
}

QString said(const char *source, const QStringList &changed)
{
    return deedText(source).arg(deedSubject(changed));
}

QStringList numbersOf(const std::vector<BoardRow> &rows)
{
    QStringList numbers;
    for (const BoardRow &row : rows)
        numbers << row.order;
    return numbers;
}

/// "A. Rivera · 3 on Tue 1 Dec"; without a day the names alone.
std::vector<KeyedOption> installerOptions(const QList<Person> &people,
                                          const QMap<QString, int> &load, const QString &day)
{
    std::vector<KeyedOption> options = peopleOptions(people);
    if (!day.isEmpty())
        for (KeyedOption &option : options)
            option.label =
                deedText(QT_TRANSLATE_NOOP("RowDeed", "%1 · %2 on %3"))
                    .arg(option.label, QLocale().toString(load.value(option.code)), weekday(day));
    options.push_back({{}, nobody, deedText(QT_TRANSLATE_NOOP("RowDeed", "Nobody any more"))});
    return options;
}

/// By the day that is typed.
DeedList installerList(const QList<Person> &people)
{
    return {QStringLiteral("installer"), QStringLiteral("due_date"),
            [people](Records &records, const QString &typed) -> Result<std::vector<KeyedOption>> {
                const QString day = dateText(typed);
                const QDate date = QDate::fromString(day, Qt::ISODate);
                if (!date.isValid())
                    return installerOptions(people, {}, {});
                LOOPWRIGHT_ASSIGN(const auto load, loadOfDay(records, date));
                return installerOptions(people, load, day);
            }};
}

} // namespace

QStringList DeedGround::orders() const
{
    return numbersOf(rows);
}

Finding lackAt(const QString &field, const QString &sentence)
{
    return {Severity::Error, field + "_missing", Text::verbatim(sentence), {}, field, 0};
}

QString deedSubject(const QStringList &orders)
{
    return orders.size() == 1
               ? deedText(QT_TRANSLATE_NOOP("RowDeed", "Order %1")).arg(orders.front())
               : deedText(QT_TRANSLATE_NOOP("RowDeed", "%1 orders"))
                     .arg(QLocale().toString(orders.size()));
}

QString firstOrders(const QStringList &orders)
{
    const QString named = orders.mid(0, mostNamed).join(QStringLiteral(", "));
    return orders.size() <= mostNamed
               ? named
               : deedText(QT_TRANSLATE_NOOP("RowDeed", "%1 and %2 more"))
                     .arg(named, QLocale().toString(orders.size() - mostNamed));
}

Result<DeedGround> withOthersThere(Records &records, DeedGround ground)
{
    LOOPWRIGHT_ASSIGN(ground.alsoThere, othersAtPremises(records, ground.rows));
    return ground;
}

Deed assigning(const DeedGround &ground)
{
    Deed deed{deedText(QT_TRANSLATE_NOOP("RowDeed", "Assign")),
              deedText(QT_TRANSLATE_NOOP("RowDeed", "Assign"))};
    deed.fields.push_back({QStringLiteral("installer"),
                           deedText(QT_TRANSLATE_NOOP("RowDeed", "Installer")),
                           {},
                           Answer::List,
                           installerOptions(ground.people, {}, {})});
    const QStringList others = numbersOf(ground.alsoThere);
    FieldSpec also{QStringLiteral("premises"),
                   deedText(QT_TRANSLATE_NOOP("RowDeed", "The others at these premises too")),
                   firstOrders(others),
                   Answer::YesNo,
                   {},
                   0};
    also.asked = [any = !others.isEmpty()](const QJsonObject &) { return any; };
    deed.fields.push_back(also);
    deed.list = installerList(ground.people);
    for (const FieldSpec &field :
         dayFields(ground, QT_TRANSLATE_NOOP("RowDeed", "empty: each keeps its day")))
        deed.fields.push_back(field);
    deed.proposed = {
        {"installer", common(ground.rows, [](const BoardRow &row) { return row.installer; })},
        {"due_date", common(ground.rows, isoDay)}};
    deed.check = [ground](const QJsonObject &values) -> Findings {
        if (values.value("installer").toString().isEmpty())
            return {lack("installer", QT_TRANSLATE_NOOP("RowDeed", "Say who goes there."))};
        return checkDay(ground, values);
    };
    deed.carryOut =
        asDeed([orders = ground.orders(), others](Records &records, const QJsonObject &values) {
            const QString installer = values.value("installer").toString();
            return assignOrders(
                records, {wantsOthers(values) ? orders + others : orders,
                          installer == nobody ? QString() : installer,
                          QDate::fromString(values.value("due_date").toString(), Qt::ISODate),
                          values.value("due_because").toString()});
        });
    deed.sentence = [ground](const QStringList &changed, const QJsonObject &values) -> QString {
        const QString key = values.value("installer").toString();
        const QString day = values.value("due_date").toString();
        QString text =
            key == nobody
                ? said(QT_TRANSLATE_NOOP("RowDeed", "%1 assigned to nobody any more"), changed)
                : said(QT_TRANSLATE_NOOP("RowDeed", "%1 assigned to %2"), changed)
                      .arg(nameOf(ground.people, key));
        if (!day.isEmpty())
            text += deedText(QT_TRANSLATE_NOOP("RowDeed", " for %1")).arg(weekday(day));
        return text + u'.';
    };
    return deed;
}

Deed redating(const DeedGround &ground)
{
    Deed deed{deedText(QT_TRANSLATE_NOOP("RowDeed", "Another day")),
              deedText(QT_TRANSLATE_NOOP("RowDeed", "Move them"))};
    deed.fields = dayFields(ground, QT_TRANSLATE_NOOP("RowDeed", "up and down change it"));
    deed.proposed = {{"due_date", common(ground.rows, isoDay)}};
    deed.check = [ground](const QJsonObject &values) -> Findings {
        if (values.value("due_date").toString().isEmpty())
            return {lack("due_date", QT_TRANSLATE_NOOP("RowDeed", "Say on which day."))};
        return checkDay(ground, values);
    };
    deed.carryOut = asDeed([orders = ground.orders()](Records &records, const QJsonObject &values) {
        return moveOrders(records, orders,
                          QDate::fromString(values.value("due_date").toString(), Qt::ISODate),
                          values.value("due_because").toString());
    });
    deed.sentence = [](const QStringList &changed, const QJsonObject &values) {
        return said(QT_TRANSLATE_NOOP("RowDeed", "%1 moved to %2."), changed)
            .arg(weekday(values.value("due_date").toString()));
    };
    return deed;
}

Deed holding(const DeedGround &ground)
{
    Deed deed{deedText(QT_TRANSLATE_NOOP("RowDeed", "Hold")),
              deedText(QT_TRANSLATE_NOOP("RowDeed", "Put on hold"))};
    deed.fields.push_back({QStringLiteral("waiting_on"),
                           deedText(QT_TRANSLATE_NOOP("RowDeed", "Waiting on")),
                           {},
                           Answer::Choice,
                           keyedOptions(allWords<WaitingOn>()),
                           0});
    deed.fields.push_back({QStringLiteral("because"),
                           deedText(QT_TRANSLATE_NOOP("RowDeed", "Because")),
                           deedText(QT_TRANSLATE_NOOP("RowDeed", "what is missing")),
                           Answer::Text,
                           {},
                           0});
    deed.check = [](const QJsonObject &values) -> Findings {
        if (values.value("waiting_on").toString().isEmpty())
            return {lack("waiting_on", QT_TRANSLATE_NOOP("RowDeed", "Say who has to act first."))};
        if (values.value("because").toString().trimmed().isEmpty())
            return {lack("because", QT_TRANSLATE_NOOP("RowDeed", "Say what is missing."))};
        return {};
    };
    deed.carryOut = asDeed([orders = ground.orders()](Records &records, const QJsonObject &values) {
        return holdOrders(records, orders,
                          *fromText<WaitingOn>(values.value("waiting_on").toString()),
                          values.value("because").toString());
    });
    deed.sentence = [](const QStringList &changed, const QJsonObject &values) {
        return said(QT_TRANSLATE_NOOP("RowDeed", "%1 on hold, waiting on %2."), changed)
            .arg(localizedWord(values.value("waiting_on").toString()));
    };
    return deed;
}

Deed resuming(const DeedGround &ground)
{
    Deed deed{deedText(QT_TRANSLATE_NOOP("RowDeed", "Resume")),
              deedText(QT_TRANSLATE_NOOP("RowDeed", "Resume"))};
    deed.carryOut = asDeed([orders = ground.orders()](Records &records, const QJsonObject &) {
        return resumeOrders(records, orders);
    });
    deed.sentence = [](const QStringList &changed, const QJsonObject &) {
        return said(QT_TRANSLATE_NOOP("RowDeed", "%1 resumed."), changed);
    };
    return deed;
}

Deed cancelling(const DeedGround &ground)
{
    const QString orders = ground.rows.size() == 1
                               ? deedText(QT_TRANSLATE_NOOP("RowDeed", "Cancel the order"))
                               : deedText(QT_TRANSLATE_NOOP("RowDeed", "Cancel the orders"));
    Deed deed{orders, orders};
    deed.letGo = deedText(QT_TRANSLATE_NOOP("RowDeed", "Back   Esc"));
    deed.fields.push_back(
        {QStringLiteral("because"),
         deedText(QT_TRANSLATE_NOOP("RowDeed", "Because")),
         deedText(QT_TRANSLATE_NOOP("RowDeed", "who called it off; it cannot be taken back")),
         Answer::Text,
         {},
         0});
    deed.check = [](const QJsonObject &values) -> Findings {
        if (values.value("because").toString().trimmed().isEmpty())
            return {lack("because", QT_TRANSLATE_NOOP("RowDeed", "Say why it is cancelled."))};
        return {};
    };
    deed.carryOut = [orders = ground.orders()](Records &records, const QJsonObject &values,
                                               const Progress &) -> Result<DeedReport> {
        LOOPWRIGHT_TRY(cancelOrders(records, orders, values.value("because").toString().trimmed()));
        DeedReport report;
        report.changed = orders;
        return report;
    };
    deed.sentence = [](const QStringList &changed, const QJsonObject &) {
        return said(QT_TRANSLATE_NOOP("RowDeed", "%1 cancelled."), changed);
    };
    return deed;
}

} // namespace loopwright
