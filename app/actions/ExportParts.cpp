#include "app/actions/ExportParts.h"

#include "db/OfficeStore.h"

#include <algorithm>

namespace loopwright {

namespace {

QString dayText(QDate day)
{
    return day.isValid() ? day.toString(Qt::ISODate) : QString();
}

Result<QString> testLinesText(Records &records, const QString &office)
{
    LOOPWRIGHT_ASSIGN(const auto lines, OfficeStore(records.database()).testLines(office));
    QStringList texts;
    for (const TestLine &line : lines)
        texts << line.label + '=' + line.number.forInstallersOnly();
    return texts.join(';');
}

/// The facts that a fact speaks of.
QStringList namedBy(const Fact &fact)
{
    if (const auto *closed = fact.as<HazardClosedFact>())
        return {closed->hazard};
    if (const auto *made = fact.as<MadeWithFact>())
        return made->facts;
    return {};
}

/// Where the record of a fact goes: one that names facts of another file is taken after them.
QString folderOf(const Fact &fact, const QSet<QString> &voided, const QMap<QString, Fact> &ofOrder)
{
    if (voided.contains(fact.id))
        return QStringLiteral("records_voided/");
    const QStringList named = namedBy(fact);
    for (const QString &id : named) {
        const auto there = ofOrder.constFind(id);
        if (there == ofOrder.constEnd() || voided.contains(id) ||
            there->installer != fact.installer)
            return QStringLiteral("records_after/");
    }
    return QStringLiteral("records/");
}

void addToRecord(QJsonObject &record, const QString &order, const Fact &fact)
{
    if (record.isEmpty()) {
        record = {{"order", order}, {"facts", QJsonArray()}};
        if (!fact.installer.isEmpty())
            record.insert("installer", fact.installer);
    }
    QJsonObject entry = fact.toJson();
    entry.remove("order");
    entry.remove("installer");
    QJsonArray facts = record.value("facts").toArray();
    facts << entry;
    record.insert("facts", facts);
}

} // namespace

Result<void> writeOffices(ExportFolder &folder, Records &records,
                          const std::vector<ServingOffice> &offices)
{
    const bool internal = folder.form().internal;
    return folder.table("offices.csv", [&](const TakeCells &take) -> Result<void> {
        QStringList header{"office",  "name",      "protocol_variant",
                           "address", "telephone", "trouble_telephone"};
        if (internal)
            header << "test_lines";
        LOOPWRIGHT_TRY(take(header));
        for (const ServingOffice &office : offices) {
            QStringList cells{office.key,     office.name,      office.protocolVariant,
                              office.address, office.telephone, office.troubleTelephone};
            if (internal) {
                LOOPWRIGHT_ASSIGN(const auto lines, testLinesText(records, office.key));
                cells << lines;
            }
            LOOPWRIGHT_TRY(take(cells));
        }
        return {};
    });
}

Result<void> writeInstruments(ExportFolder &folder, const QString &name,
                              const std::vector<Instrument> &instruments)
{
    return folder.table(name, [&](const TakeCells &take) -> Result<void> {
        LOOPWRIGHT_TRY(take({"instrument", "serial", "kind", "calibrated_on", "calibration_due"}));
        for (const Instrument &instrument : instruments)
            for (const Calibration &calibration : instrument.calibrations)
                LOOPWRIGHT_TRY(take(
                    {instrument.key, instrument.serial, instrument.kind, dayText(calibration.on),
                     calibration.due ? dayText(*calibration.due) : QString("not_required")}));
        return {};
    });
}

void UsedColumns::note(const ServiceOrder &order)
{
    const QStringList columns = order.fields().keys();
    for (const QString &column : columns)
        m_used.insert(column);
}

QStringList UsedColumns::columns() const
{
    QStringList columns = requiredOrderColumns();
    const QStringList &further = optionalOrderColumns();
    for (const QString &name : further) {
        if (!name.contains('#')) {
            if (m_used.contains(name))
                columns << name;
            continue;
        }
        for (int number = 1; number <= 8; ++number) {
            const QString column = QString(name).replace('#', QString::number(number));
            if (m_used.contains(column) && !columns.contains(column))
                columns << column;
        }
    }
    return columns;
}

QStringList orderCells(const ServiceOrder &order, const QStringList &columns)
{
    const OrderFields fields = order.fields();
    QStringList cells;
    for (const QString &column : columns)
        cells << fields.value(column);
    return cells;
}

OrderRecords recordsOf(const QString &order, const std::vector<Fact> &facts)
{
    OrderRecords found;
    QSet<QString> voided;
    QMap<QString, Fact> byId;
    for (const Fact &fact : facts) {
        byId.insert(fact.id, fact);
        if (const auto *voiding = fact.as<VoidFact>()) {
            voided.insert(voiding->fact);
            found.voids.push_back(
                {voiding->fact, order, voiding->because, voiding->by, fact.at.text()});
        } else if (const auto *exception = fact.as<ExceptionFact>()) {
            found.exceptions.push_back({order, exception->criteria.join(' '), exception->because,
                                        exception->by, fact.at.text()});
        }
    }
    for (const Fact &fact : facts) {
        if (fact.as<VoidFact>() || fact.as<ExceptionFact>())
            continue;
        const QString name =
            folderOf(fact, voided, byId) + asFileName(order) +
            (fact.installer.isEmpty() ? QString() : '@' + asFileName(fact.installer)) + ".json";
        addToRecord(found.files[name], order, fact);
    }
    return found;
}

const QStringList &voidColumns()
{
    static const QStringList columns{"fact", "order_number", "because", "by", "at"};
    return columns;
}

const QStringList &exceptionColumns()
{
    static const QStringList columns{"order_number", "criteria", "because", "by", "at"};
    return columns;
}

} // namespace loopwright
