#include "app/cli/commands/RegisterLists.h"

#include "app/actions/Register.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

/// What one list shows of its entries.
template<class T>
struct ListForm
{
    Result<QList<T>> (*read)(Records &);
    QStringList headings;
    QJsonObject (*json)(const T &);
    QStringList (*cells)(const T &);
};

template<class T>
class ListRegister : public Command
{
public:
    explicit ListRegister(ListForm<T> form)
        : m_form(std::move(form))
    {
    }

    void declare(Options &) override {}

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto entries, m_form.read(*records));
        QJsonArray json;
        ColumnLayout table(m_form.headings);
        for (const T &entry : entries) {
            json.append(m_form.json(entry));
            table.add(m_form.cells(entry));
        }
        return Answer::of(json, table.text());
    }

private:
    ListForm<T> m_form;
};

QString dueText(const Calibration &calibration)
{
    return calibration.due ? calibration.due->toString(Qt::ISODate) : QString("not_required");
}

const Calibration *latest(const Instrument &instrument)
{
    return instrument.calibrations.isEmpty() ? nullptr : &instrument.calibrations.last();
}

const ListForm<ServingOffice> officeForm{
    offices,
    {"office", "name", "variant", "trouble desk"},
    [](const ServingOffice &office) { return office.toJson(); },
    [](const ServingOffice &office) {
        return QStringList{office.key, office.name, office.protocolVariant,
                           office.troubleTelephone};
    }};

const ListForm<Person> personForm{
    people,
    {"installer", "name", "role"},
    [](const Person &person) {
        return QJsonObject{
            {"installer", person.key}, {"name", person.name}, {"role", toText(person.role)}};
    },
    [](const Person &person) {
        return QStringList{person.key, person.name, toText(person.role)};
    }};

const ListForm<Instrument> instrumentForm{
    instruments,
    {"instrument", "kind", "serial", "calibrated", "due", "known"},
    [](const Instrument &instrument) { return instrument.toJson(); },
    [](const Instrument &instrument) {
        const Calibration *last = latest(instrument);
        return QStringList{instrument.key,
                           instrument.kind,
                           instrument.serial,
                           last ? last->on.toString(Qt::ISODate) : QString(),
                           last ? dueText(*last) : QString(),
                           instrument.asLabelled ? "as labelled" : "registered"};
    }};

} // namespace

std::unique_ptr<Command> makeOfficeList()
{
    return std::make_unique<ListRegister<ServingOffice>>(officeForm);
}

std::unique_ptr<Command> makeInstallerList()
{
    return std::make_unique<ListRegister<Person>>(personForm);
}

std::unique_ptr<Command> makeInstrumentList()
{
    return std::make_unique<ListRegister<Instrument>>(instrumentForm);
}

} // namespace loopwright
