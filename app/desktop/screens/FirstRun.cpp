#include "app/desktop/screens/FirstRun.h"

#include "app/actions/Demo.h"
#include "app/actions/Import.h"
#include "app/actions/Register.h"
#include "app/desktop/DesktopContext.h"
#include "app/desktop/Language.h"
#include "app/desktop/screens/AskDialog.h"
#include "app/desktop/screens/ColumnsDialog.h"
#include "app/desktop/screens/RowDeed.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/identifiers/ProtocolVariant.h"

namespace loopwright {

namespace {

FieldSpec officeField(const char *key, const QString &label, const QString &hint,
                      bool optional = false)
{
    FieldSpec spec{QString::fromLatin1(key), label, hint, Answer::Text};
    spec.optional = optional;
    return spec;
}

/// The columns of an office file.
std::vector<FieldSpec> officeFields()
{
    FieldSpec variant{QStringLiteral("protocol_variant"), FirstRun::tr("Protocol variant"),
                      FirstRun::tr("of its switch"), Answer::List};
    variant.span = 2;
    for (const ProtocolVariant &each : allVariants())
        if (!each.isAnalog)
            variant.options.push_back(
                {{}, each.key, QStringLiteral("%1 — %2").arg(each.key, localizedWord(each.name))});
    const QString optional = FirstRun::tr("may be left empty");
    FieldSpec lines = officeField("test_lines", FirstRun::tr("Test lines"),
                                  FirstRun::tr("label=number joined by ; may be left empty"), true);
    lines.span = 2;
    FieldSpec address = officeField("address", FirstRun::tr("Address"), optional, true);
    address.span = 2;
    return {
        officeField("office", FirstRun::tr("Key"), FirstRun::tr("as orders name it: north")),
        officeField("name", FirstRun::tr("Name"), FirstRun::tr("as papers print it")),
        variant,
        lines,
        address,
        officeField("telephone", FirstRun::tr("Telephone"), optional, true),
        officeField("trouble_telephone", FirstRun::tr("Telephone for troubles"), optional, true)};
}

/// As its import takes it: the form knows no rule of an office.
QByteArray officeFile(const QJsonObject &values)
{
    const CsvLayout layout = officesLayout();
    const QStringList columns = layout.required + layout.optional;
    QStringList row;
    for (const QString &column : columns)
        row << values.value(column).toString();
    return csvRecord(columns) + csvRecord(row);
}

} // namespace

FirstRun::FirstRun(DesktopContext &workplace, EmptyState &place, QWidget *owner)
    : QObject(owner)
    , m_workplace(workplace)
    , m_place(place)
    , m_owner(owner)
    , m_maker(workplace.longWork())
    , m_demo(makeButton({}, QStringLiteral("empty.demo"), [this] { openDemo(); }))
    , m_import(makeButton(tr("Import a file…   Ctrl+I"), QStringLiteral("empty.import"),
                          [this] { emit importWished(); }))
    , m_columns(makeButton(tr("Columns of an order file, a sample…"),
                           QStringLiteral("empty.columns"), [this] { showColumns(); }))
    , m_office(makeButton(tr("Make the first office…"), QStringLiteral("empty.office"),
                          [this] { askOffice(); }))
    , m_server(makeButton(tr("Records on a server…"), QStringLiteral("empty.server"),
                          [this] { emit serverWished(); }))
    , m_order(makeButton(tr("Add an order   Ctrl+N"), QStringLiteral("empty.new"),
                         [this] { emit orderWished(); }))
{
    showDemoButton(false);
    for (QPushButton *button : {m_demo, m_import, m_columns, m_office, m_order, m_server})
        m_place.addButton(button);
    connect(&m_maker, &Asker::progressed, this, [this](qint64 done, qint64 total) {
        m_demo->setText(tr("Stop making the demo (%1 of %2)").arg(done).arg(total));
    });
}

bool FirstRun::hasOffice() const
{
    const auto known = offices(m_workplace.records());
    return known && !known->isEmpty();
}

void FirstRun::offer(bool offered)
{
    const bool office = offered && hasOffice();
    if (offered)
        m_place.say(tr("No orders yet"),
                    office
                        ? tr("Import a file of orders or add one by hand; or look around in the "
                             "demo.")
                        : tr("Look around in the demo, import files (serving offices first, then "
                             "orders), or make your first office by hand."));
    for (QPushButton *button : {m_demo, m_import, m_columns, m_server})
        button->setVisible(offered);
    m_office->setVisible(offered && !office);
    m_order->setVisible(office);
}

void FirstRun::showDemoButton(bool making)
{
    m_demo->setText(making ? tr("Stop making the demo") : tr("Open the demo"));
}

void FirstRun::openDemo()
{
    if (m_maker.isBusy())
        return m_maker.stop();
    showDemoButton(true);
    const QString path = demoDatabasePath();
    m_maker.ask<bool>(
        [path](Records &, const Progress &progress) -> Result<bool> {
            LOOPWRIGHT_TRY(makeDemo(path, progress));
            return true;
        },
        [this, path](const Result<bool> &made) {
            showDemoButton(false);
            if (made)
                emit demoReady(path);
            else
                emit said(localized(made.error()));
        });
}

void FirstRun::askOffice()
{
    Deed deed{.title = tr("The first serving office"), .confirm = tr("Make the office")};
    deed.fields = officeFields();
    auto *dialog = new AskDialog(
        QStringLiteral("office"), deed,
        tr("Where the pairs end: orders name it by its key. More of them, people and instruments "
           "come in by files."),
        [&workplace = m_workplace] { return workplace.records().now(); }, m_owner);
    connect(dialog, &AskDialog::confirmed, this,
            [this, dialog](const QJsonObject &values) { makeOffice(*dialog, values); });
    dialog->open();
}

void FirstRun::makeOffice(AskDialog &dialog, const QJsonObject &values)
{
    ImportOptions options;
    options.fileName = tr("The form");
    options.allOrNothing = true;
    const auto report = importOffices(m_workplace.records(), officeFile(values), options);
    if (!report)
        return dialog.refuse(localized(report.error()));
    for (const Finding &finding : report->findings)
        if (finding.severity == Severity::Error)
            return dialog.form()->tell(finding);
    dialog.accept();
    emit said(tr("The office %1 is in the register.").arg(values.value("name").toString()));
    emit officeMade();
}

void FirstRun::showColumns()
{
    connect(showColumnsOf(QStringLiteral("orders"), m_owner), &ColumnsDialog::said, this,
            &FirstRun::said);
}

} // namespace loopwright
