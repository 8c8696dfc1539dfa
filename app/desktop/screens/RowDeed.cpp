#include "app/desktop/screens/RowDeed.h"

#include "app/actions/DeskWork.h"
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
constexpr qsizetype relatedNamed = 6;

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

/// Whether the day is another than any of the rows has.
bool movesAny(const std::vector<BoardRow> &rows, const QString &typed)
{
    const QString day = dateText(typed);
    return !day.isEmpty() &&
           std::ranges::any_of(rows, [&](const BoardRow &row) { return isoDay(row) != day; });
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
    because.asked = [rows = ground.rows](const QJsonObject &typed) {
        return movesAny(rows, typed.value("due_date").toString());
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
    if (movesAny(ground.rows, day) && values.value("due_because").toString().trimmed().isEmpty())
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

std::vector<FieldSpec> deskFields(const DeedGround &ground)
{
    std::vector<FieldSpec> fields;
    fields.push_back({QStringLiteral("what"),
                      deedText(QT_TRANSLATE_NOOP("RowDeed", "What was done")),
                      {},
                      Answer::Choice,
                      keyedOptions(allWords<DeskWhat>()),
                      0});
    FieldSpec related{QStringLiteral("related"),
                      deedText(QT_TRANSLATE_NOOP("RowDeed", "Release the related orders too")),
                      ground.related.mid(0, relatedNamed).join(QStringLiteral(", ")),
                      Answer::YesNo,
                      {},
                      0};
    if (ground.related.size() > relatedNamed)
        related.hint = deedText(QT_TRANSLATE_NOOP("RowDeed", "%1 and %2 more"))
                           .arg(related.hint)
                           .arg(ground.related.size() - relatedNamed);
    related.asked = [any = !ground.related.isEmpty()](const QJsonObject &typed) {
        return any && typed.value("what").toString() == toText(DeskWhat::Released);
    };
    fields.push_back(related);
    fields.push_back({QStringLiteral("by"), deedText(QT_TRANSLATE_NOOP("RowDeed", "By whom")),
                      deedText(QT_TRANSLATE_NOOP("RowDeed", "may be left empty")), Answer::Text});
    fields.push_back({QStringLiteral("at"), deedText(QT_TRANSLATE_NOOP("RowDeed", "When")),
                      deedText(QT_TRANSLATE_NOOP("RowDeed", "empty: now")), Answer::Clock});
    fields.push_back({QStringLiteral("text"),
                      deedText(QT_TRANSLATE_NOOP("RowDeed", "Remark")),
                      deedText(QT_TRANSLATE_NOOP("RowDeed", "may be left empty")),
                      Answer::Text,
                      {},
                      0});
    return fields;
}

DeskFact deskFact(const QJsonObject &values)
{
    const auto optional = [&values](const char *key) -> std::optional<QString> {
        const QString text = values.value(QLatin1String(key)).toString().trimmed();
        return text.isEmpty() ? std::nullopt : std::optional(text);
    };
    return {fromText<DeskWhat>(values.value("what").toString()).value_or(DeskWhat::SwitchBuilt),
            optional("by"), optional("text")};
}

} // namespace

QStringList DeedGround::orders() const
{
    QStringList numbers;
    for (const BoardRow &row : rows)
        numbers << row.order;
    return numbers;
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

Deed assigning(const DeedGround &ground)
{
    std::vector<KeyedOption> people = peopleOptions(ground.people);
    people.push_back({{}, nobody, deedText(QT_TRANSLATE_NOOP("RowDeed", "Nobody any more"))});
    Deed deed{deedText(QT_TRANSLATE_NOOP("RowDeed", "Assign")),
              deedText(QT_TRANSLATE_NOOP("RowDeed", "Assign"))};
    deed.fields.push_back({QStringLiteral("installer"),
                           deedText(QT_TRANSLATE_NOOP("RowDeed", "Installer")),
                           {},
                           Answer::List,
                           people});
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
    deed.carryOut = asDeed([orders = ground.orders()](Records &records, const QJsonObject &values) {
        const QString installer = values.value("installer").toString();
        return assignOrders(records,
                            {orders, installer == nobody ? QString() : installer,
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

Deed deskWork(const DeedGround &ground)
{
    Deed deed{deedText(QT_TRANSLATE_NOOP("RowDeed", "Desk work")),
              deedText(QT_TRANSLATE_NOOP("RowDeed", "Record it"))};
    deed.fields = deskFields(ground);
    deed.proposed = {{"by", ground.by}};
    deed.check = [](const QJsonObject &values) -> Findings {
        if (values.value("what").toString().isEmpty())
            return {lack("what", QT_TRANSLATE_NOOP("RowDeed", "Say what was done."))};
        const QString at = values.value("at").toString();
        if (!at.isEmpty() && !Moment::parse(at))
            return {lack("at", QT_TRANSLATE_NOOP("RowDeed", "A time is typed as 8:14."))};
        return {};
    };
    deed.carryOut = [ground](Records &records, const QJsonObject &values,
                             const Progress &) -> Result<DeedReport> {
        DeskWork work{ground.orders(), deskFact(values),
                      Moment::parse(values.value("at").toString()).value_or(records.now())};
        if (values.value("related").toBool())
            work.orders << ground.related;
        LOOPWRIGHT_ASSIGN(const auto facts, recordDeskWork(records, work));
        DeedReport report;
        report.changed = work.orders;
        report.takeBack = [facts](Records &records) {
            return voidDeskWork(records, facts, QStringLiteral("taken back"));
        };
        return report;
    };
    deed.sentence = [](const QStringList &changed, const QJsonObject &values) {
        return said(QT_TRANSLATE_NOOP("RowDeed", "%1: %2."), changed)
            .arg(localizedWord(values.value("what").toString()));
    };
    return deed;
}

} // namespace loopwright
