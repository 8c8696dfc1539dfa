#include "app/actions/BundleRegisters.h"

#include "db/InstrumentStore.h"
#include "db/LimitSetStore.h"
#include "db/OfficeStore.h"
#include "db/PersonStore.h"

namespace loopwright {

namespace {

constexpr int mostRows = 100'000;

QJsonObject personJson(const Person &person)
{
    return {{"installer", person.key},
            {"name", person.name},
            {"role", toText(person.role)},
            {"login", person.login}};
}

/// The value of each item of a list; the first that is wrong ends it, with its place.
template<class Take>
Result<void> eachItem(const QJsonObject &registers, const QString &key, const QString &place,
                      const Take &take)
{
    JsonReader reader(registers, place);
    const QJsonArray list = reader.has(key) ? reader.array(key, mostRows) : QJsonArray();
    for (int i = 0; i < list.size() && !reader.failed(); ++i) {
        JsonReader item = reader.item(key, i, list[i]);
        LOOPWRIGHT_TRY(take(item, list[i].toObject()));
        LOOPWRIGHT_TRY(item.result());
    }
    return reader.result();
}

Result<bool> copyOffices(Transaction &transaction, const QJsonObject &registers,
                         const QJsonObject &testLines, const QString &place)
{
    bool changed = false;
    const OfficeStore store(transaction.database());
    LOOPWRIGHT_TRY(eachItem(
        registers, "offices", place, [&](JsonReader &item, const QJsonObject &) -> Result<void> {
            const ServingOffice office{
                item.filledText("office"), item.text("name"),      item.text("protocol_variant"),
                item.text("address"),      item.text("telephone"), item.text("trouble_telephone")};
            LOOPWRIGHT_TRY(item.result());
            QList<TestLine> lines;
            const QJsonObject told = testLines.value(office.key).toObject();
            for (auto it = told.begin(); it != told.end(); ++it)
                lines << TestLine{it.key(), UnpublishedNumber(it.value().toString())};
            LOOPWRIGHT_ASSIGN(const auto before, store.find(office.key));
            LOOPWRIGHT_ASSIGN(const auto linesBefore, store.testLines(office.key));
            if (before == office && lines == linesBefore)
                return {};
            changed = true;
            return OfficeStore::put(transaction, office, lines);
        }));
    return changed;
}

/// What is known by its key, and differs here or is not there.
template<class Store, class Read>
Result<bool> copyEach(Transaction &transaction, const QJsonObject &registers, const QString &key,
                      const QString &place, const Read &read)
{
    bool changed = false;
    LOOPWRIGHT_TRY(
        eachItem(registers, key, place, [&](JsonReader &item, const QJsonObject &) -> Result<void> {
            const auto value = read(item);
            LOOPWRIGHT_TRY(item.result());
            LOOPWRIGHT_ASSIGN(const auto before, Store(transaction.database()).find(value.key));
            if (before == value)
                return {};
            changed = true;
            return Store::put(transaction, value);
        }));
    return changed;
}

Person readPerson(JsonReader &item)
{
    return {item.filledText("installer"), item.text("name"), item.word<Role>("role"),
            item.text("login")};
}

Result<bool> copyLimits(Transaction &transaction, const QJsonObject &registers,
                        const QString &place)
{
    bool changed = false;
    LOOPWRIGHT_TRY(eachItem(
        registers, "limit_sets", place,
        [&](JsonReader &, const QJsonObject &content) -> Result<void> {
            LOOPWRIGHT_ASSIGN(const auto set, LimitSet::fromJson(content, place + ".limit_sets"));
            LOOPWRIGHT_ASSIGN(const bool added, LimitSetStore::add(transaction, set));
            changed = changed || added;
            return {};
        }));
    return changed;
}

Result<bool> copyIssuer(Transaction &transaction, const QJsonObject &registers,
                        const QString &place)
{
    if (!registers.value("issuer").isObject())
        return false;
    JsonReader reader(registers.value("issuer").toObject(), place + ".issuer");
    const Issuer issuer{reader.filledText("name"), reader.text("address"), reader.text("telephone"),
                        reader.text("trouble_telephone"), reader.text("trouble_hours")};
    LOOPWRIGHT_TRY(reader.result());
    LOOPWRIGHT_ASSIGN(const auto before, OfficeStore(transaction.database()).issuer());
    if (before == issuer)
        return false;
    LOOPWRIGHT_TRY(OfficeStore::putIssuer(transaction, issuer));
    return true;
}

} // namespace

Result<QJsonObject> registersOf(const Database &database)
{
    QJsonArray offices, people, instruments, limits;
    LOOPWRIGHT_ASSIGN(const auto allOffices, OfficeStore(database).all());
    for (const ServingOffice &office : allOffices)
        offices << office.toJson();
    LOOPWRIGHT_ASSIGN(const auto allPeople, PersonStore(database).all());
    for (const Person &person : allPeople)
        people << personJson(person);
    LOOPWRIGHT_ASSIGN(const auto allInstruments, InstrumentStore(database).all());
    for (const Instrument &instrument : allInstruments)
        instruments << instrument.toJson();
    LOOPWRIGHT_ASSIGN(const auto allLimits, LimitSetStore(database).all());
    for (const LimitSet &set : allLimits)
        limits << set.toJson();
    QJsonObject registers{{"offices", offices},
                          {"people", people},
                          {"instruments", instruments},
                          {"limit_sets", limits}};
    LOOPWRIGHT_ASSIGN(const auto issuer, OfficeStore(database).issuer());
    if (issuer)
        registers.insert("issuer", issuer->toJson());
    return registers;
}

Result<QByteArray> testLinesOfAll(const Database &database)
{
    QJsonObject all;
    LOOPWRIGHT_ASSIGN(const auto offices, OfficeStore(database).all());
    for (const ServingOffice &office : offices) {
        LOOPWRIGHT_ASSIGN(const auto lines, OfficeStore(database).testLines(office.key));
        QJsonObject numbers;
        for (const TestLine &line : lines)
            numbers.insert(line.label, line.number.forInstallersOnly());
        if (!numbers.isEmpty())
            all.insert(office.key, numbers);
    }
    return canonicalJson(all);
}

Result<bool> takeRegisters(Transaction &transaction, const QJsonObject &registers,
                           const QByteArray &testLines, const QString &place)
{
    const QString where = place + ".registers";
    LOOPWRIGHT_ASSIGN(const auto lines, parseJsonObject(testLines, place + ".test_lines"));
    LOOPWRIGHT_ASSIGN(const bool limits, copyLimits(transaction, registers, where));
    LOOPWRIGHT_ASSIGN(const bool offices, copyOffices(transaction, registers, lines, where));
    LOOPWRIGHT_ASSIGN(const bool people,
                      copyEach<PersonStore>(transaction, registers, "people", where, readPerson));
    LOOPWRIGHT_ASSIGN(
        const bool instruments,
        copyEach<InstrumentStore>(transaction, registers, "instruments", where, Instrument::read));
    LOOPWRIGHT_ASSIGN(const bool issuer, copyIssuer(transaction, registers, where));
    return limits || offices || people || instruments || issuer;
}

namespace {

/// Which of two labels of one instrument stands until the office has looked at it: the one that is
/// due sooner. So it does not matter which van came first.
bool isMoreCautious(const Instrument &label, const Instrument &than)
{
    const auto due = [](const Instrument &each) {
        return each.calibrations.isEmpty()
                   ? QDate()
                   : each.calibrations.last().due.value_or(QDate(9999, 12, 31));
    };
    const QDate here = due(than), there = due(label);
    return there != here ? there < here
                         : canonicalJson(label.toJson()) < canonicalJson(than.toJson());
}

} // namespace

Result<QStringList> takeNewInstruments(Transaction &transaction, const QJsonObject &registers,
                                       const QString &place)
{
    QStringList taken;
    LOOPWRIGHT_TRY(eachItem(
        registers, "instruments", place + ".registers",
        [&](JsonReader &item, const QJsonObject &) -> Result<void> {
            const Instrument instrument = Instrument::read(item);
            LOOPWRIGHT_TRY(item.result());
            LOOPWRIGHT_ASSIGN(const auto before,
                              InstrumentStore(transaction.database()).find(instrument.key));
            const bool stays =
                before && (!before->asLabelled || !isMoreCautious(instrument, *before));
            if (stays || !instrument.asLabelled)
                return {};
            taken << instrument.key;
            return InstrumentStore::put(transaction, instrument);
        }));
    return taken;
}

} // namespace loopwright
