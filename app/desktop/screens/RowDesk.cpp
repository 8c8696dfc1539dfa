#include "app/actions/DeskWork.h"
#include "app/desktop/Language.h"
#include "app/desktop/job/StepFields.h"
#include "app/desktop/screens/RowDeed.h"

#include <QCoreApplication>

namespace loopwright {

namespace {

QString deskWords(const char *source)
{
    return QCoreApplication::translate("RowDesk", source);
}

std::vector<FieldSpec> deskFields(const DeedGround &ground)
{
    std::vector<FieldSpec> fields;
    fields.push_back({QStringLiteral("what"),
                      deskWords(QT_TRANSLATE_NOOP("RowDesk", "What was done")),
                      {},
                      Answer::Choice,
                      keyedOptions(allWords<DeskWhat>()),
                      0});
    FieldSpec related{QStringLiteral("related"),
                      deskWords(QT_TRANSLATE_NOOP("RowDesk", "Release the related orders too")),
                      firstOrders(ground.related),
                      Answer::YesNo,
                      {},
                      0};
    related.asked = [any = !ground.related.isEmpty()](const QJsonObject &typed) {
        return any && typed.value("what").toString() == toText(DeskWhat::Released);
    };
    fields.push_back(related);
    fields.push_back({QStringLiteral("by"), deskWords(QT_TRANSLATE_NOOP("RowDesk", "By whom")),
                      deskWords(QT_TRANSLATE_NOOP("RowDesk", "may be left empty")), Answer::Text});
    fields.push_back({QStringLiteral("at"), deskWords(QT_TRANSLATE_NOOP("RowDesk", "When")),
                      deskWords(QT_TRANSLATE_NOOP("RowDesk", "empty: now")), Answer::Clock});
    fields.push_back({QStringLiteral("text"),
                      deskWords(QT_TRANSLATE_NOOP("RowDesk", "Remark")),
                      deskWords(QT_TRANSLATE_NOOP("RowDesk", "may be left empty")),
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

Deed deskWork(const DeedGround &ground)
{
    Deed deed{deskWords(QT_TRANSLATE_NOOP("RowDesk", "Desk work")),
              deskWords(QT_TRANSLATE_NOOP("RowDesk", "Record it"))};
    deed.fields = deskFields(ground);
    deed.proposed = {{"by", ground.by}};
    deed.check = [](const QJsonObject &values) -> Findings {
        if (values.value("what").toString().isEmpty())
            return {lackAt("what", deskWords(QT_TRANSLATE_NOOP("RowDesk", "Say what was done.")))};
        const QString at = values.value("at").toString();
        if (!at.isEmpty() && !Moment::parse(at))
            return {
                lackAt("at", deskWords(QT_TRANSLATE_NOOP("RowDesk", "A time is typed as 8:14.")))};
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
        return deskWords(QT_TRANSLATE_NOOP("RowDesk", "%1: %2."))
            .arg(deedSubject(changed))
            .arg(localizedWord(values.value("what").toString()));
    };
    return deed;
}

Result<DeedGround> withRelated(Records &records, DeedGround ground)
{
    LOOPWRIGHT_ASSIGN(ground.related, relatedOrders(records, ground.orders()));
    return ground;
}

} // namespace loopwright
