// Who may do what in the window, row by row of the table of roles: who works there does it with the
// controls that it shows, or is refused in the words of the table, and nothing else is changed.

#include "app/desktop/WhoWorks.h"

#include "app/actions/Acting.h"
#include "app/desktop/form/Form.h"
#include "app/desktop/job/AttemptList.h"
#include "app/desktop/screens/ImportScreen.h"
#include "app/desktop/widgets/SignLine.h"
#include "db/SqliteConnection.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTextBrowser>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

struct Row
{
    Act act;
    const char *what;
    void (*deed)(JobBench &bench);
};

QPushButton *button(JobBench &bench, const char *name)
{
    auto *found = bench.find<QPushButton>(name);
    if (!found)
        qFatal("there is no %s", name);
    return found;
}

QString beside(JobBench &bench, const char *name)
{
    return QFileInfo(bench.path()).absolutePath() + '/' + name;
}

void import(JobBench &bench, const QByteArray &csv)
{
    QFile file(beside(bench, "some.csv"));
    if (!file.open(QIODevice::WriteOnly) || file.write(csv) != csv.size())
        qFatal("the file cannot be written");
    file.close();
    bench.window().showScreen("import");
    qobject_cast<ImportScreen *>(bench.window().current())->choose(file.fileName());
    auto *start = button(bench, "import.start");
    start->click();
    QTRY_VERIFY(start->isEnabled());
}

/// The last answer by keys, so that the page judges all of them.
void saveOrder(JobBench &bench, const QString &number, const OrderFields &fields)
{
    bench.window().editOrder(number);
    auto *form = bench.window().current()->findChild<Form *>();
    QJsonObject typed = form->typed();
    for (auto it = fields.begin(); it != fields.end(); ++it)
        typed.insert(it.key(), *it);
    form->setTyped(typed);
    form->goTo("remarks");
    JobBench::keys("ring twice");
    auto *save = button(bench, "order.save");
    QTRY_VERIFY2(save->isEnabled(), canonicalJson(form->typed()).constData());
    save->click();
}

const Row rows[] = {
    {Act::RecordFacts, "record",
     [](JobBench &bench) {
         bench.window().openOrder("A-1001");
         bench.unfoldAll();
         auto *form = bench.find<Form>("leaving.left");
         form->setTyped({{"left", "0935"}, {"result", "worked"}});
         form->confirm();
     }},
    {Act::TakeOrderOnSite, "new order",
     [](JobBench &bench) { saveOrder(bench, {}, analogFields()); }},
    {Act::IssueCertificate, "issue",
     [](JobBench &bench) {
         bench.window().openOrder("A-1001");
         bench.go("certificate.path");
         JobBench::key(Qt::Key_A, Qt::ControlModifier);
         JobBench::keys(beside(bench, "c.pdf"));
         for (int i = 0; i < 2; ++i) // once more: unsigned
             button(bench, "certificate.confirm")->click();
     }},
    {Act::HandOn, "refer",
     [](JobBench &bench) {
         bench.window().showScreen("handoff", "A-1001");
         auto *form = bench.find<Form>("handoff.refer");
         QTRY_VERIFY(form->isEnabled());
         form->setTyped({{"to", "cable desk"}, {"reference", "T-44"}, {"waiting_on", "plant"}});
         form->confirm();
     }},
    {Act::KeepOrders, "change", [](JobBench &bench) { saveOrder(bench, "A-1001", {}); }},
    {Act::KeepOrders, "complete",
     [](JobBench &bench) {
         bench.window().openOrder("A-1001");
         bench.unfoldAll();
         button(bench, "certificate.complete")->click();
     }},
    {Act::KeepOrders, "orders", [](JobBench &bench) { import(bench, csv({analogFields()})); }},
    {Act::KeepRegister, "offices",
     [](JobBench &bench) {
         import(bench, "office,name,protocol_variant,test_lines\nSOUTH,South Street,ni2,\n");
     }},
    {Act::KeepRegister, "instruments",
     [](JobBench &bench) {
         import(bench, "instrument,serial,kind,calibrated_on,calibration_due\n"
                       "TS-5,S-2,loss set,2025-09-01,2026-09-01\n");
     }},
    {Act::KeepPeople, "people",
     [](JobBench &bench) { import(bench, "installer,name\nK8,Jo Reed\n"); }},
    {Act::VoidAnothersFact, "void",
     [](JobBench &bench) {
         bench.window().openOrder("A-1001");
         bench.unfoldAll();
         for (AttemptList *list : bench.window().findChildren<AttemptList *>())
             if (list->goTo(uuid(10)))
                 break;
         JobBench::key(Qt::Key_Delete);
         JobBench::enter("it was another line");
     }},
    {Act::ChangeOffice, "all lines",
     [](JobBench &bench) {
         bench.window().showScreen("bulk", "NORTH");
         bench.find<QLineEdit>("bulk.from")->setText("217");
         bench.find<QLineEdit>("bulk.to")->setText("447");
         button(bench, "bulk.preview")->click();
         QTRY_VERIFY(button(bench, "bulk.apply")->isEnabled());
         button(bench, "bulk.apply")->click();
     }},
    {Act::Except, "except",
     [](JobBench &bench) {
         bench.window().openOrder("A-1001");
         bench.unfoldAll();
         auto *form = bench.find<Form>("acceptance.exception");
         form->setTyped({{"criteria", "loop"},
                         {"because", "the cable is replaced in May"},
                         {"by", bench.records().by()}});
         form->confirm();
     }},
};

/// What the window has no control for; on the command line Acting.h asks the same table.
const QList<Act> notInTheWindow{
    Act::LabelInstrument, Act::VoidOwnFact, Act::ExportInternal, Act::KeepLimits, Act::KeepIssuer,
    Act::Restore,         Act::KeepKeys,    Act::WorkApart,      Act::SendVans,   Act::LoseVan};

/// Everything that can be read in the window now.
QString shown(JobBench &bench)
{
    QStringList all;
    for (const QLabel *label : bench.window().findChildren<QLabel *>())
        if (label->isVisible())
            all << label->text();
    for (const SignLine *line : bench.window().findChildren<SignLine *>())
        if (line->isVisible())
            all << line->text();
    for (const QTextBrowser *text : bench.window().findChildren<QTextBrowser *>())
        all << text->toPlainText();
    return all.join('\n').simplified();
}

qint64 eventsOf(JobBench &bench, const QByteArray &where = "true")
{
    const auto count =
        bench.records().database().connection().number("SELECT count(*) FROM event WHERE " + where);
    return count.value_or(-1);
}

constexpr const char *refusals = "kind = 'refused'";

} // namespace

class WhoWorksTest : public QObject
{
    Q_OBJECT

private slots:
    void everyRowOfTheTable()
    {
        for (const auto &[act, word] : EnumCodes<Act>::table) {
            const bool walked = std::ranges::find(rows, act, &Row::act) != std::end(rows);
            QVERIFY2(walked != notInTheWindow.contains(act), word);
        }
    }

    void eachRoleInTheWindow_data()
    {
        QTest::addColumn<int>("row");
        QTest::addColumn<QString>("who");
        QTest::addColumn<bool>("may");
        for (int i = 0; i < int(std::size(rows)); ++i)
            for (const auto &[who, role] :
                 {std::pair("K9", Role::Installer), // not who recorded it
                  std::pair("D4", Role::Dispatcher), std::pair("S1", Role::Supervisor)})
                QTest::addRow("%s by %s", rows[i].what, who)
                    << i << QString(who) << (role >= leastRoleFor(rows[i].act));
    }
    void eachRoleInTheWindow()
    {
        QFETCH(int, row);
        QFETCH(QString, who);
        QFETCH(bool, may);
        JobBench bench({briFields()});
        bench.at(100);
        QList<QJsonObject> facts = briFacts();
        if (rows[row].act == Act::Except)
            facts.removeAt(2); // the reading of the loop
        take(bench.records(), briFields(), facts);
        bench.actAs("S1");
        QVERIFY(importInstallers(bench.records(), "installer,name\nK9,Max Poole\n", {"p.csv"}));
        // As a person does it: by the menu of who works.
        auto *chooser = bench.find<WhoWorks>("who");
        emit chooser->menu()->aboutToShow();
        auto *person = chooser->menu()->findChild<QAction *>("who." + who);
        QVERIFY(person);
        person->trigger();
        QCOMPARE(bench.records().by(), who);

        const qint64 before = eventsOf(bench), refused = eventsOf(bench, refusals);
        rows[row].deed(bench);
        if (may) {
            QTRY_VERIFY2(eventsOf(bench) > before, qPrintable(shown(bench)));
            QCOMPARE(eventsOf(bench, refusals), refused);
            return;
        }
        const auto actor = actorOf(bench.records());
        QVERIFY(actor);
        const QString words = whyNot(*actor, rows[row].act).english();
        QTRY_VERIFY2(shown(bench).contains(words), qPrintable(words + "\n--\n" + shown(bench)));
        QCOMPARE(eventsOf(bench, refusals), refused + 1);
        QCOMPARE(eventsOf(bench), before + 1); // the refusal, and nothing else
    }
};

QTEST_MAIN(WhoWorksTest)
#include "WhoWorksTest.moc"
