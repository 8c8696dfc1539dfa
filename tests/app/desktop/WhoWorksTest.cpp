// Who may do what in the window, row by row of the table of roles: who works there does it with the
// controls that it shows, or is refused in the words of the table, and nothing else is changed.
// Longer than 400 lines: a row for each act, and what all of them are tried on.

#include "app/desktop/WhoWorks.h"

#include "app/actions/Acting.h"
#include "app/actions/Keys.h"
#include "app/actions/TakeAlong.h"
#include "app/desktop/form/Form.h"
#include "app/desktop/job/AttemptList.h"
#include "app/desktop/screens/ImportScreen.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"
#include "db/Connection.h"
#include "tests/support/JobBench.h"
#include "tests/support/RoleRecords.h"

#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QPushButton>
#include <QTextBrowser>

using namespace loopwright;
using namespace loopwright::jobs;
using namespace loopwright::roles;

namespace {

/// Each finds the records as they were made, or what the rows before it made of them.
struct Shown
{
    Act act;
    const char *what;
    void (*deed)(JobBench &bench, const Worker &worker);
    bool alone = false; ///< what others did before it would forbid it
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

/// A file of its own for each, since the screen looks at a name but once.
void import(JobBench &bench, const char *name, const QByteArray &csv)
{
    QFile file(beside(bench, name));
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

/// The entry in the list of its part, then Delete and why.
void strikeOut(JobBench &bench, const QString &order, const QString &fact)
{
    bench.window().openOrder(order);
    bench.unfoldAll();
    for (AttemptList *list : bench.window().findChildren<AttemptList *>())
        if (list->goTo(fact))
            break;
    JobBench::key(Qt::Key_Delete);
    JobBench::enter("it was another line");
}

/// Once it is shown.
QDialog *dialog(JobBench &bench, const char *name)
{
    QDialog *found = nullptr;
    [&] { QTRY_VERIFY2((found = bench.find<QDialog>(name)), name); }();
    if (!found)
        qFatal("there is no %s", name);
    return found;
}

/// One that none of the records has.
OrderFields furtherLine()
{
    OrderFields fields = thirdLine();
    fields["order_number"] = "A-4001";
    fields["circuit_number"] = "C-94";
    fields["pair"] = "17-294";
    fields["dn_1"] = "217-555-0154";
    return fields;
}

const Shown rows[] = {
    {Act::LabelInstrument, "label an instrument",
     [](JobBench &bench, const Worker &) {
         bench.window().openOrder("A-0999");
         bench.unfoldAll();
         auto *form = bench.find<Form>("instrument");
         form->setTyped({{"instrument", "TS-9"},
                         {"serial", "S-9"},
                         {"kind", "loss set"},
                         {"calibrated_on", "20250901"},
                         {"calibration_due", "20260901"}});
         form->confirm();
     }},
    {Act::RecordFacts, "record",
     [](JobBench &bench, const Worker &) {
         bench.window().openOrder("A-1001");
         bench.unfoldAll();
         auto *form = bench.find<Form>("leaving.left");
         form->setTyped({{"left", "0935"}, {"result", "worked"}});
         form->confirm();
     }},
    {Act::VoidOwnFact, "void an own entry",
     [](JobBench &bench, const Worker &worker) { strikeOut(bench, "A-0999", noteOf(worker)); }},
    {Act::Except, "except",
     [](JobBench &bench, const Worker &) {
         bench.window().openOrder("A-0999");
         bench.unfoldAll();
         auto *form = bench.find<Form>("acceptance.exception");
         form->setTyped({{"criteria", "loop"},
                         {"because", "the cable is replaced in May"},
                         {"by", bench.records().by()}});
         form->confirm();
     }},
    {Act::VoidAnothersFact, "void",
     [](JobBench &bench, const Worker &) { strikeOut(bench, "A-0999", uuid(208)); }},
    {Act::TakeOrderOnSite, "new order",
     [](JobBench &bench, const Worker &) { saveOrder(bench, {}, analogFields()); }},
    {Act::HandOn, "refer",
     [](JobBench &bench, const Worker &) {
         bench.window().showScreen("handoff", "A-0999");
         auto *form = bench.find<Form>("handoff.refer");
         QTRY_VERIFY(form->isEnabled());
         form->setTyped({{"to", "cable desk"}, {"reference", "T-44"}, {"waiting_on", "plant"}});
         form->confirm();
     }},
    {Act::KeepOrders, "change",
     [](JobBench &bench, const Worker &) { saveOrder(bench, "A-1001", {}); }},
    {Act::IssueCertificate, "issue",
     [](JobBench &bench, const Worker &) {
         bench.window().openOrder("A-1001");
         bench.go("certificate.path");
         auto *path = bench.find<QLineEdit>("certificate.path");
         path->selectAll();
         path->insert(beside(bench, "c.pdf")); // at once: the preview follows each key
         for (int i = 0; i < 2; ++i)           // once more: unsigned
             button(bench, "certificate.confirm")->click();
     }},
    {Act::KeepOrders, "complete",
     [](JobBench &bench, const Worker &) {
         bench.window().openOrder("A-1001");
         bench.unfoldAll();
         button(bench, "certificate.complete")->click();
     }},
    {Act::KeepOrders, "orders",
     [](JobBench &bench, const Worker &) { import(bench, "orders.csv", csv({furtherLine()})); }},
    {Act::KeepRegister, "offices",
     [](JobBench &bench, const Worker &) {
         import(bench, "offices.csv",
                "office,name,protocol_variant,test_lines\nSOUTH,South Street,ni2,\n");
     }},
    {Act::KeepRegister, "instruments",
     [](JobBench &bench, const Worker &) {
         import(bench, "instruments.csv",
                "instrument,serial,kind,calibrated_on,calibration_due\n"
                "TS-5,S-2,loss set,2025-09-01,2026-09-01\n");
     }},
    {Act::KeepPeople, "people",
     [](JobBench &bench, const Worker &) {
         import(bench, "people.csv", "installer,name\nK8,Jo Reed\n");
     }},
    {Act::KeepIssuer, "issuer",
     [](JobBench &bench, const Worker &) {
         import(bench, "issuer.csv",
                "name,address,telephone,trouble_telephone,trouble_hours\n"
                "Prairie Line,4 Hill,555-0170,555-0171,always\n");
     }},
    {Act::SendVans, "add a van",
     [](JobBench &bench, const Worker &) {
         QFile key(beside(bench, "van.key"));
         QVERIFY(key.open(QIODevice::WriteOnly) && key.write(keyOfVan()) > 0);
         key.close();
         bench.window().showScreen("board");
         auto *table = bench.find<Table>("orders");
         QTRY_VERIFY(table->model()->rowCount() > 0);
         table->setFocus();
         QTest::keyClick(table, Qt::Key_Home, Qt::ControlModifier);
         auto *take = bench.find<QAction>("rows.take_along");
         QTRY_VERIFY(take->isEnabled());
         take->trigger();
         QDialog *asks = dialog(bench, "take_along");
         asks->findChild<QLineEdit *>("van.name")->setText("van-7");
         asks->findChild<QLineEdit *>("van.key")->setText(key.fileName());
         asks->findChild<QPushButton *>("van.add")->click();
     }},
    {Act::ChangeOffice, "all lines",
     [](JobBench &bench, const Worker &) {
         bench.window().showScreen("bulk", "NORTH");
         bench.find<QLineEdit>("bulk.from")->setText("217");
         bench.find<QLineEdit>("bulk.to")->setText("447");
         button(bench, "bulk.preview")->click();
         QTRY_VERIFY(button(bench, "bulk.apply")->isEnabled());
         button(bench, "bulk.apply")->click();
     }},
    {Act::WorkApart, "take in what an office hands out",
     [](JobBench &bench, const Worker &) {
         bench.window().takeIn({beside(bench, "out.json")});
         auto *confirm = dialog(bench, "take_in")->findChild<QPushButton *>("take_in.confirm");
         QTRY_VERIFY(confirm->isEnabled());
         confirm->click();
     },
     true},
};

/// What the window has no control for, and why; on the command line each is tried.
struct Missing
{
    Act act;
    const char *why;
};
const Missing notInTheWindow[] = {
    {Act::ExportInternal, "it writes out a circuit or a view, and these without the numbers"},
    {Act::KeepLimits, "a set of limits is a file of somebody who edits JSON: limits add"},
    {Act::Restore, "nobody may have the records open, and the window has"},
    {Act::KeepKeys, "it is seldom and has consequences for all vans: key renew"},
    {Act::LoseVan, "likewise: van lost"},
};

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

    QTemporaryDir m_folder;
    std::unique_ptr<QTemporaryDir> m_site; ///< of the records that the window is on
    std::unique_ptr<JobBench> m_bench;
    int m_worker = -1; ///< who is at that window

    QString made(const Worker &worker, const char *ending) const
    {
        return m_folder.filePath(QLatin1String(worker.supervised ? "supervised" : "alone") +
                                 QLatin1String(ending));
    }
    static std::unique_ptr<Records> opened(const QString &path, const QString &keys)
    {
        auto records = Records::open(path);
        if (!records)
            qFatal("%s", qPrintable(records.error().text()));
        (*records)->setKeys(KeyFolder(keys));
        (*records)->setNow(now());
        (*records)->actAs("S1");
        return std::move(*records);
    }
    /// The records, and beside them what another office hands out to them.
    void make(const Worker &worker)
    {
        makeRecords(made(worker, ".sqlite"), worker.supervised);
        const auto keys = publicKeyFile(*opened(made(worker, ".sqlite"), made(worker, ".keys")));
        QVERIFY(keys);
        makeRecords(made(worker, ".office"), true);
        const auto office = opened(made(worker, ".office"), made(worker, ".office-keys"));
        OrderFields order = furtherLine();
        order["order_number"] = "A-5001";
        order["circuit_number"] = "C-95";
        order["pair"] = "17-295";
        order["dn_1"] = "217-555-0155";
        takeOrders(*office, {order});
        QVERIFY(addVan(*office, "van-1", *keys, "key.txt", false));
        TakingAlong wish;
        wish.orders = QStringList{"A-5001"};
        wish.station = "van-1";
        wish.out = made(worker, ".json");
        const auto taken = takeAlong(*office, wish);
        QVERIFY(taken && taken->orders == wish.orders);
    }
    /// The window on a copy, with keys of its own, and the worker at it.
    void open(int number)
    {
        const Worker &worker = workers[number];
        close();
        m_site = std::make_unique<QTemporaryDir>();
        qputenv("XDG_DATA_HOME", QFile::encodeName(m_site->filePath("home")));
        QVERIFY(QFile::copy(made(worker, ".sqlite"), m_site->filePath("records.sqlite")));
        QVERIFY(QFile::copy(made(worker, ".json"), m_site->filePath("out.json")));
        const QDir keys(made(worker, ".keys"));
        QVERIFY(QDir().mkpath(KeyFolder::defaultPath()));
        for (const QString &key : keys.entryList(QDir::Files))
            QVERIFY(QFile::copy(keys.filePath(key), KeyFolder::defaultPath() + '/' + key));
        m_bench = std::make_unique<JobBench>(m_site->filePath("records.sqlite"), 120);
        m_worker = number;
        if (!worker.role) // whose login is in no register
            return m_bench->actAs(worker.key);
        // As a person does it: by the menu of who works.
        auto *chooser = m_bench->find<WhoWorks>("who");
        emit chooser->menu()->aboutToShow();
        auto *person = chooser->menu()->findChild<QAction *>(QString("who.") + worker.key);
        QVERIFY(person);
        person->trigger();
    }
    void close()
    {
        m_bench.reset();
        m_site.reset();
        m_worker = -1;
    }
    void closeDialogs()
    {
        for (QDialog *each : m_bench->window().findChildren<QDialog *>()) {
            const QPointer<QDialog> open(each);
            QTRY_VERIFY(!open || !open->isVisible() || open->close()); // not while it works
        }
        m_bench->window().activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&m_bench->window()));
    }

private slots:
    void initTestCase()
    {
        make(workers[0]);
        make(workers[std::size(workers) - 1]);
    }
    void cleanupTestCase() { close(); }
    /// Who comes next finds no window in which something went wrong.
    void cleanup()
    {
        if (QTest::currentTestFailed())
            close();
    }

    void everyRowOfTheTable()
    {
        for (const auto &[act, word] : EnumCodes<Act>::table) {
            const bool walked = std::ranges::find(rows, act, &Shown::act) != std::end(rows);
            const auto *missing = std::ranges::find(notInTheWindow, act, &Missing::act);
            QVERIFY2(walked != (missing != std::end(notInTheWindow)), word);
            QVERIFY(walked || *missing->why != 0);
        }
    }

    void eachRoleInTheWindow_data()
    {
        QTest::addColumn<int>("row");
        QTest::addColumn<int>("worker");
        for (int j = 0; j < int(std::size(workers)); ++j)
            for (int i = 0; i < int(std::size(rows)); ++i)
                QTest::newRow(nameOfTry(rows[i].what, workers[j])) << i << j;
    }
    void eachRoleInTheWindow()
    {
        QFETCH(int, row);
        QFETCH(int, worker);
        const Worker &who = workers[worker];
        const Act act = rows[row].act;
        if (m_worker != worker || rows[row].alone)
            open(worker);
        QVERIFY(m_bench);
        JobBench &bench = *m_bench;
        QCOMPARE(bench.records().by(), who.key);

        const qint64 before = eventsOf(bench), refused = eventsOf(bench, refusals);
        rows[row].deed(bench, who);
        if (may(who, act)) {
            QTRY_VERIFY2(eventsOf(bench) > before, qPrintable(shown(bench)));
            QCOMPARE(eventsOf(bench, refusals), refused);
            return closeDialogs();
        }
        const auto actor = actorOf(bench.records());
        QVERIFY(actor);
        const QString words = whyNot(*actor, act).english();
        QTRY_VERIFY2(shown(bench).contains(words), qPrintable(words + "\n--\n" + shown(bench)));
        QTRY_COMPARE(eventsOf(bench, refusals), refused + 1);
        QCOMPARE(eventsOf(bench), before + 1); // the refusal, and nothing else
        closeDialogs();
    }
};

QTEST_MAIN(WhoWorksTest)
#include "WhoWorksTest.moc"
