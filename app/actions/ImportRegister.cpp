// Offices, people and instruments from files.

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/ImportRun.h"
#include "core/base/TextForm.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/office/InstrumentLabel.h"
#include "db/InstrumentStore.h"
#include "db/OfficeStore.h"
#include "db/PersonStore.h"

namespace loopwright {

namespace {

/// One row is new, the same, or a change that needs --update.
template<class T>
std::optional<RowOutcome> compareWithStored(const std::optional<T> &before, const T &now,
                                            const ImportOptions &options, const QString &column,
                                            const QString &key)
{
    if (!before)
        return std::nullopt;
    if (*before == now)
        return RowOutcome{RowOutcome::Unchanged, {}, {}};
    if (!options.update)
        return RowOutcome::refused(
            column + "_differs", column,
            Text(QT_TRANSLATE_NOOP("core", "%1 is there with other values.")).arg(key));
    return std::nullopt;
}

Result<RowOutcome> takeOffice(Records &records, const ImportOptions &options,
                              Transaction &transaction, const CsvTable &table, const CsvRow &row)
{
    const ServingOffice office{
        table.value(row, "office"),           table.value(row, "name"),
        table.value(row, "protocol_variant"), table.value(row, "address"),
        table.value(row, "telephone"),        table.value(row, "trouble_telephone")};
    if (const Text trouble = registerKeyTrouble(office.key); !trouble.isEmpty())
        return RowOutcome::refused("office_malformed", "office", trouble);
    if (!findVariant(office.protocolVariant))
        return RowOutcome::refused(
            "variant_unknown", "protocol_variant",
            Text(QT_TRANSLATE_NOOP("core", "\"%1\" is not a protocol variant."))
                .arg(office.protocolVariant.left(40)));
    const auto told = testLinesFromText(table.value(row, "test_lines"));
    if (!told)
        return RowOutcome::refused(
            "test_lines_malformed", "test_lines",
            QT_TRANSLATE_NOOP("core", "must be label=number joined by ; with each label once"));
    const auto before = OfficeStore(transaction.database()).find(office.key);
    const auto linesBefore = OfficeStore(transaction.database()).testLines(office.key);
    if (!before)
        return failure(before.error());
    if (!linesBefore)
        return failure(linesBefore.error());
    // A file without the column says nothing of them.
    const QList<TestLine> lines = table.column("test_lines") < 0 ? *linesBefore : *told;
    const auto sorted = [](QList<TestLine> list) {
        std::sort(list.begin(), list.end(),
                  [](const TestLine &a, const TestLine &b) { return a.label < b.label; });
        return list;
    };
    const bool sameLines = sorted(lines) == sorted(*linesBefore);
    if (*before && **before == office && !sameLines && !options.update)
        return RowOutcome::refused(
            "office_differs", "test_lines",
            Text(QT_TRANSLATE_NOOP("core", "%1 is there with other values.")).arg(office.key));
    if (!(*before && **before == office && !sameLines))
        if (const auto outcome = compareWithStored(*before, office, options, "office", office.key))
            return *outcome;
    LOOPWRIGHT_TRY(OfficeStore::put(transaction, office, lines));
    return RowOutcome{
        RowOutcome::Accepted,
        {},
        {registerEvent(records, *before ? "office_changed" : "office_added", office.toJson())}};
}

Result<RowOutcome> takeIssuer(Records &records, const ImportOptions &options,
                              Transaction &transaction, const CsvTable &table, const CsvRow &row)
{
    const Issuer issuer{table.value(row, "name"), table.value(row, "address"),
                        table.value(row, "telephone"), table.value(row, "trouble_telephone"),
                        table.value(row, "trouble_hours")};
    if (issuer.name.isEmpty())
        return RowOutcome::refused("issuer_malformed", "name",
                                   QT_TRANSLATE_NOOP("core", "is empty"));
    LOOPWRIGHT_ASSIGN(const auto before, OfficeStore(transaction.database()).issuer());
    if (const auto outcome =
            compareWithStored(before, issuer, options, "issuer", QString("The issuer")))
        return *outcome;
    LOOPWRIGHT_TRY(OfficeStore::putIssuer(transaction, issuer));
    return RowOutcome{
        RowOutcome::Accepted,
        {},
        {registerEvent(records, before ? "issuer_changed" : "issuer_added", issuer.toJson())}};
}

/// A login says who acts, so it is one person's; and somebody must be left who may change people.
std::optional<RowOutcome> checkPerson(const std::vector<Person> &people, const Person &person)
{
    bool wasLast = false, isOther = false;
    for (const Person &each : people) {
        if (each.key == person.key) {
            wasLast = each.role == Role::Supervisor && person.role != Role::Supervisor;
            continue;
        }
        isOther = isOther || each.role == Role::Supervisor;
        if (!person.login.isEmpty() && each.login == person.login)
            return RowOutcome::refused(
                "login_taken", "login",
                Text(QT_TRANSLATE_NOOP("core", "%1 has the login %2 already"))
                    .arg(each.key)
                    .arg(person.login));
    }
    if (wasLast && !isOther)
        return RowOutcome::refused(
            "last_supervisor", "role",
            Text(QT_TRANSLATE_NOOP("core", "%1 is the last supervisor: register another one first"))
                .arg(person.key));
    return std::nullopt;
}

Result<RowOutcome> takePerson(Records &records, const ImportOptions &options,
                              Transaction &transaction, const CsvTable &table, const CsvRow &row)
{
    const QString role = table.value(row, "role");
    const auto known = role.isEmpty() ? std::optional(Role::Installer) : fromText<Role>(role);
    const Person person{table.value(row, "installer"), table.value(row, "name"),
                        known.value_or(Role::Installer), table.value(row, "login")};
    if (const Text trouble = registerKeyTrouble(person.key); !trouble.isEmpty())
        return RowOutcome::refused("installer_malformed", "installer", trouble);
    if (!known)
        return RowOutcome::refused("role_unknown", "role",
                                   Text(QT_TRANSLATE_NOOP("core", "\"%1\" is not one of %2"))
                                       .arg(role.left(40))
                                       .arg(allWords<Role>().join(", ")));
    LOOPWRIGHT_ASSIGN(const auto before, PersonStore(transaction.database()).find(person.key));
    if (const auto outcome = compareWithStored(before, person, options, "installer", person.key))
        return *outcome;
    LOOPWRIGHT_ASSIGN(const auto people, PersonStore(transaction.database()).all());
    if (const auto refused = checkPerson(people, person))
        return *refused;
    LOOPWRIGHT_TRY(PersonStore::put(transaction, person));
    return RowOutcome{RowOutcome::Accepted,
                      {},
                      {registerEvent(records, before ? "person_changed" : "person_added",
                                     {{"installer", person.key},
                                      {"name", person.name},
                                      {"role", toText(person.role)},
                                      {"login", person.login}})}};
}

/// `ofThisFile`: what its rows brought in, now or when it was taken in before; a further row of one
/// of them is a further calibration.
Result<RowOutcome> takeInstrument(Records &records, const ImportOptions &options,
                                  Transaction &transaction, const CsvTable &table,
                                  const CsvRow &row, QSet<QString> &ofThisFile)
{
    Instrument instrument{
        table.value(row, "instrument"), table.value(row, "serial"), table.value(row, "kind"), {}};
    if (const Text trouble = registerKeyTrouble(instrument.key); !trouble.isEmpty())
        return RowOutcome::refused("instrument_malformed", "instrument", trouble);
    const auto calibration =
        calibrationFrom(table.value(row, "calibrated_on"), table.value(row, "calibration_due"));
    if (!calibration)
        return RowOutcome::refused(calibration.error().code, calibration.error().field,
                                   calibration.error().reason);
    LOOPWRIGHT_ASSIGN(const auto before,
                      InstrumentStore(transaction.database()).find(instrument.key));
    if (before && before->asLabelled && !options.update)
        return RowOutcome::refused(
            "instrument_as_labelled", "instrument",
            Text(QT_TRANSLATE_NOOP("core", "%1 was entered from its label: an update confirms it."))
                .arg(instrument.key));
    if (before && !before->asLabelled)
        instrument.calibrations = before->calibrations;
    if (!instrument.calibrations.contains(*calibration))
        instrument.calibrations << *calibration;
    const bool furtherCalibration = before && ofThisFile.contains(instrument.key) &&
                                    before->serial == instrument.serial &&
                                    before->kind == instrument.kind && *before != instrument;
    if (const auto same =
            compareWithStored(before, instrument, options, "instrument", instrument.key);
        same && !furtherCalibration) {
        if (same->kind == RowOutcome::Unchanged)
            ofThisFile.insert(instrument.key);
        return *same;
    }
    if (!before)
        ofThisFile.insert(instrument.key);
    LOOPWRIGHT_TRY(InstrumentStore::put(transaction, instrument));
    LOOPWRIGHT_TRY(refreshOrdersUsing(records, transaction, instrument.key));
    return RowOutcome{RowOutcome::Accepted,
                      {},
                      {registerEvent(records, before ? "instrument_changed" : "instrument_added",
                                     instrument.toJson())}};
}

/// Refuses a row with a text that could not be read back from what quotes it.
std::optional<RowOutcome> checkTexts(const CsvTable &table, const CsvRow &row)
{
    constexpr int longest = 200, longestList = 2000;
    for (const QString &column : table.header) {
        if (column.isEmpty())
            continue; // passed over by a map
        const Text trouble =
            textTrouble(table.value(row, column), column == "test_lines" ? longestList : longest);
        if (!trouble.isEmpty())
            return RowOutcome::refused("text_malformed", column, trouble);
    }
    return std::nullopt;
}

using TakeRow = std::function<Result<RowOutcome>(Records &, const ImportOptions &, Transaction &,
                                                 const CsvTable &, const CsvRow &)>;

Result<ImportReport> importWith(Records &records, const QByteArray &csv,
                                const ImportOptions &options, const CsvLayout &layout,
                                const TakeRow &take)
{
    const ImportRun run{records,
                        options,
                        layout,
                        [&](Transaction &transaction, const CsvTable &table,
                            const CsvRow &row) -> Result<RowOutcome> {
                            if (const auto refused = checkTexts(table, row))
                                return *refused;
                            return take(records, options, transaction, table, row);
                        },
                        {}};
    return run.run(csv);
}

} // namespace

CsvLayout officesLayout()
{
    return {{"office", "name", "protocol_variant"},
            {"test_lines", "address", "telephone", "trouble_telephone"},
            {}};
}

CsvLayout issuerLayout()
{
    return {{"name", "address", "telephone", "trouble_telephone"}, {"trouble_hours"}, {}};
}

CsvLayout installersLayout()
{
    return {{"installer", "name"}, {"role", "login"}, {}};
}

CsvLayout instrumentsLayout()
{
    return {{"instrument", "serial", "kind", "calibrated_on", "calibration_due"}, {}, {}};
}

Result<ImportReport> importOffices(Records &records, const QByteArray &csv,
                                   const ImportOptions &options)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepRegister));
    return importWith(records, csv, options, officesLayout(), takeOffice);
}

Result<ImportReport> importIssuer(Records &records, const QByteArray &csv,
                                  const ImportOptions &options)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepIssuer));
    return importWith(records, csv, options, issuerLayout(), takeIssuer);
}

Result<ImportReport> importInstallers(Records &records, const QByteArray &csv,
                                      const ImportOptions &options)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepPeople));
    return importWith(records, csv, options, installersLayout(), takePerson);
}

Result<ImportReport> importInstruments(Records &records, const QByteArray &csv,
                                       const ImportOptions &options)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepRegister));
    QSet<QString> ofThisFile;
    return importWith(records, csv, options, instrumentsLayout(),
                      [&ofThisFile](Records &r, const ImportOptions &o, Transaction &transaction,
                                    const CsvTable &table, const CsvRow &row) {
                          return takeInstrument(r, o, transaction, table, row, ofThisFile);
                      });
}

} // namespace loopwright
