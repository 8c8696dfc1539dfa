#include "app/desktop/screens/RegisterScreen.h"

#include "app/actions/LimitSets.h"
#include "app/actions/Register.h"
#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/Table.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QStackedWidget>
#include <QTabWidget>

namespace loopwright {

namespace {

/// A calibration that ends within so many days is told beforehand.
constexpr int soonDays = 30;

QString testLinesText(const QList<TestLine> &lines)
{
    QStringList texts;
    for (const TestLine &line : lines)
        texts << line.label + " " + line.number.forInstallersOnly();
    return texts.join(QStringLiteral(" · "));
}

struct CalibrationState
{
    Status sign;
    QString words;
};

CalibrationState calibrationState(const Instrument &instrument, QDate today)
{
    if (instrument.calibrations.isEmpty())
        return {Status::Failed, RegisterScreen::tr("no calibration recorded")};
    const Calibration &last = instrument.calibrations.last();
    if (!last.due && instrument.asLabelled)
        return {Status::Doubtful, RegisterScreen::tr("not required, as labelled")};
    if (!last.due)
        return {Status::NotNeeded, RegisterScreen::tr("not required")};
    const qint64 days = today.daysTo(*last.due);
    if (days >= 0 && instrument.asLabelled)
        return {Status::Doubtful, RegisterScreen::tr("as labelled: an import confirms it")};
    if (days == -1)
        return {Status::Failed, RegisterScreen::tr("ended yesterday")};
    if (days < 0)
        return {Status::Failed, RegisterScreen::tr("ended %1 days ago").arg(-days)};
    if (days <= 1)
        return {Status::Doubtful,
                days == 0 ? RegisterScreen::tr("ends today") : RegisterScreen::tr("ends tomorrow")};
    if (days <= soonDays)
        return {Status::Doubtful, RegisterScreen::tr("ends in %1 days").arg(days)};
    return {Status::Done, RegisterScreen::tr("holds")};
}

QString dueText(const Instrument &instrument)
{
    if (instrument.calibrations.isEmpty() || !instrument.calibrations.last().due)
        return {};
    return dayText(*instrument.calibrations.last().due);
}

} // namespace

RegisterScreen::RegisterScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_tabs(new QTabWidget)
{
    m_tabs->setObjectName(QStringLiteral("register.tabs"));
    m_tabs->setAccessibleName(tr("Parts of the register"));
    m_tabs->setDocumentMode(true);
    m_offices = addTable(QStringLiteral("offices"), tr("Serving offices"),
                         tr("Import a file with the columns office, name, protocol_variant and "
                            "test_lines."),
                         new TextTable({tr("Office"), tr("Name"), tr("Protocol variant"),
                                        tr("Test lines, unpublished: for installers only")},
                                       -1, {0, 3}, this),
                         {8, 16, 20, 30});
    m_people =
        addTable(QStringLiteral("people"), tr("People"),
                 tr("Import a file with the columns installer, name and role."),
                 new TextTable({tr("Key"), tr("Name"), tr("Role")}, -1, {0}, this), {10, 20, 12});
    m_instruments =
        addTable(QStringLiteral("instruments"), tr("Instruments"),
                 tr("Import a file with the columns instrument, serial, kind, calibrated_on and "
                    "calibration_due."),
                 new TextTable({tr("Instrument"), tr("Kind"), tr("Serial"), tr("Calibrated"),
                                tr("Holds until"), tr("Calibration")},
                               5, {0, 2}, this),
                 {10, 16, 12, 9, 9, 14});
    m_limits = addTable(
        QStringLiteral("limits"), tr("Limits"), {},
        new TextTable({tr("Limit"), tr("Value"), tr("Unit"), tr("Source"), tr("Set"), tr("Key")},
                      -1, {1, 5}, this),
        {26, 7, 6, 26, 6, 18});

    auto *head = new QHBoxLayout;
    head->addWidget(makeHeading(tr("Register"), 1.5), 1);
    head->addWidget(makeButton(tr("Bulk change…"), QStringLiteral("register.bulk"), [this] {
        emit openScreen(QStringLiteral("bulk"), chosenOffice());
    }));
    head->addWidget(makeButton(tr("Import a file…   Ctrl+I"), QStringLiteral("register.import"),
                               [this] { emit openScreen(QStringLiteral("import"), {}); }));
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addLayout(head);
    layout->addWidget(m_tabs, 1);
}

TextTable *RegisterScreen::addTable(const QString &key, const QString &name,
                                    const QString &emptyWords, TextTable *model,
                                    std::vector<double> ems)
{
    auto *table = new Table("register." + key, name);
    table->setModel(model);
    table->setColumnEms(std::move(ems));
    auto *empty = new EmptyState;
    empty->say(tr("None yet"), emptyWords);
    auto *pages = new QStackedWidget;
    pages->addWidget(empty);
    pages->addWidget(table);
    connect(model, &QAbstractItemModel::modelReset, pages,
            [pages, model] { pages->setCurrentIndex(model->rowCount() > 0 ? 1 : 0); });
    m_tabs->addTab(pages, name);
    return model;
}

/// The one whose row has the keyboard; empty: none.
QString RegisterScreen::chosenOffice() const
{
    const auto *table = findChild<Table *>(QStringLiteral("register.offices"));
    const int row = table->currentIndex().row();
    return row >= 0 && row < m_offices->rowCount() ? m_offices->row(row).key : QString();
}

void RegisterScreen::refresh()
{
    showOffices();
    showPeople();
    showInstruments();
    showLimits();
}

void RegisterScreen::takeFocus()
{
    const auto tables = m_tabs->currentWidget()->findChildren<Table *>();
    if (!tables.isEmpty() && tables.first()->model()->rowCount() > 0)
        tables.first()->setFocus();
    else
        m_tabs->setFocus();
}

void RegisterScreen::showOffices()
{
    const auto known = offices(records());
    if (!known) {
        emit said(localized(known.error()));
        return;
    }
    std::vector<TextRow> rows;
    for (const ServingOffice &office : *known) {
        const auto lines = testLinesOf(records(), office.key);
        rows.push_back({{office.key, office.name, variantName(office.protocolVariant),
                         lines ? testLinesText(*lines) : localized(lines.error())},
                        Status::None,
                        office.key,
                        false});
    }
    m_offices->show(std::move(rows));
}

void RegisterScreen::showPeople()
{
    const auto known = people(records());
    if (!known) {
        emit said(localized(known.error()));
        return;
    }
    std::vector<TextRow> rows;
    for (const Person &person : *known)
        rows.push_back({{person.key, person.name, eventName(toText(person.role))},
                        Status::None,
                        person.key,
                        false});
    m_people->show(std::move(rows));
}

void RegisterScreen::showInstruments()
{
    const auto known = instruments(records());
    if (!known) {
        emit said(localized(known.error()));
        return;
    }
    std::vector<TextRow> rows;
    for (const Instrument &instrument : *known) {
        const CalibrationState state = calibrationState(instrument, workplace().today());
        rows.push_back(
            {{instrument.key, instrument.kind, instrument.serial,
              instrument.calibrations.isEmpty() ? QString()
                                                : dayText(instrument.calibrations.last().on),
              dueText(instrument), state.words},
             state.sign,
             instrument.key,
             false});
    }
    m_instruments->show(std::move(rows));
}

void RegisterScreen::showLimits()
{
    const auto limits = limitsInForce(records());
    if (!limits) {
        emit said(localized(limits.error()));
        return;
    }
    std::vector<TextRow> rows;
    for (const Limit &limit : limits->all())
        rows.push_back({{localizedName(limit.name),
                         localizedFigure(QLocale::c().toString(limit.value, 'g', 12)),
                         localizedFigure(limit.unit), localizedName(limit.source),
                         limits->version(), limit.key},
                        Status::None,
                        limit.key,
                        false});
    m_limits->show(std::move(rows));
}

} // namespace loopwright
