#include "app/actions/Register.h"
#include "app/desktop/OpenErrorPage.h"
#include "app/desktop/WhoWorks.h"
#include "app/desktop/job/StationPanel.h"
#include "app/desktop/screens/IdentifierScreen.h"
#include "core/acceptance/ReportQuery.h"
#include "tests/pictures/PictureDesk.h"
#include "tests/pictures/VanScenes.h"
#include "tests/support/ScreenSubjects.h"

#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QTabWidget>
#include <QTest>

namespace loopwright {

namespace {

const QString scenario = QStringLiteral(LOOPWRIGHT_SOURCE_DIR "/demo/scenario/");

/// Orders of the demo, each in a state of its own.
struct Job
{
    const char *name, *order;
};
constexpr Job jobs[] = {{"job-accepted", "26-0001"},  {"job-failed", "26-0002"},
                        {"job-analog", "26-0004"},    {"job-waiting", "26-0006"},
                        {"job-dangerous", "26-0010"}, {"job-untouched", "26-0150"}};

void showJob(PictureDesk &desk, const char *order)
{
    desk.window().openOrder(order);
    desk.take();
    for (StationPanel *panel : desk.window().findChildren<StationPanel *>())
        panel->unfold();
    desk.takeWhole("whole");
}

void addScreens(std::vector<Scene> &scenes)
{
    const ScreenSubjects subjects{"26-0006", "HR-BR-0001"};
    for (const ScreenEntry &entry : allScreens())
        for (const bool empty : {false, true})
            scenes.push_back({entry.key, empty, [&entry, subjects, empty](PictureDesk &desk) {
                                  const QString of = empty ? QString() : subjects.of(entry);
                                  desk.window().showScreen(entry.key, of);
                                  desk.take(empty ? "empty" : "");
                              }});
    for (const Job &job : jobs)
        scenes.push_back(
            {job.name, false, [&job](PictureDesk &desk) { showJob(desk, job.order); }});
}

void jobHelp(PictureDesk &desk)
{
    desk.window().openOrder("26-0150");
    PictureDesk::settle(desk.window());
    for (StationPanel *panel : desk.window().findChildren<StationPanel *>()) {
        panel->unfold();
        panel->toggleHelp();
    }
    desk.takeWhole("whole");
}

void boardSelected(PictureDesk &desk)
{
    desk.window().showScreen("board");
    desk.selectRows("orders", 1);
    desk.take("one");
    desk.selectRows("orders", 5);
    desk.take("several");
    for (const char *deed : {"assign", "redate", "hold", "desk", "print", "cancel_order"})
        desk.takeDialog(deed, [&] { desk.trigger(QString("rows.") + deed); });
    desk.takeMenu("menu", desk.find<QMenu>("rows.menu"));
    desk.takeMenu("boards", desk.find<QMenu>("boards.menu"));
    desk.find<QLineEdit>("search")->setText("mill");
    desk.take("search");
    desk.find<QLineEdit>("search")->setText("nobody of that name");
    desk.take("nothing");
    desk.find<QLineEdit>("search")->clear();
    PictureDesk::settle(desk.window());
    desk.takeDialog("name", [&] { desk.trigger("boards.keep"); });
}

void orderChange(PictureDesk &desk)
{
    desk.window().editOrder("26-0006");
    desk.take();
    desk.takeWhole("whole");
}

void circuitTabs(PictureDesk &desk)
{
    desk.window().openCircuit("HR-BR-0001");
    PictureDesk::settle(desk.window());
    desk.takeTabs("circuit.tabs");
}

void identifiersChecked(PictureDesk &desk)
{
    desk.window().showScreen("identifiers");
    desk.find<QLineEdit>("identifiers.spid")->setText("2175550141010");
    desk.find<QLineEdit>("identifiers.dn")->setText("217-555-0141");
    desk.find<QLineEdit>("identifiers.cause")->setText("88");
    desk.find<QPlainTextEdit>("identifiers.list")
        ->setPlainText("21755501410101\n2175501410101\n21755501420101\n21755501420101");
    QTest::qWait(600); // it checks when nothing more is typed
    desk.take();
    desk.takeWhole("whole");
}

void auditDone(PictureDesk &desk)
{
    desk.window().showScreen("audit");
    desk.click("audit.start");
    desk.selectRows("audit.findings", 1);
    desk.take();
}

void importDone(PictureDesk &desk)
{
    desk.window().showScreen("import", scenario + "bad-orders.csv");
    desk.take("chosen");
    desk.click("import.start");
    QTest::qWait(500);
    desk.take("done");
    desk.takeDialog("columns", [&] { desk.click("import.help"); });
}

void importOfOthers(PictureDesk &desk)
{
    const QString path = desk.records() + ".theirs.csv";
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) ||
        file.write("Auftrag,Art,Termin,Kunde,Adresse,Leitung,Anschluss,Amt,Rufnummer,Farbe\n"
                   "M-1,Neu,2026-03-20,Mill Shop,2 Mill Lane,M-C-1,a/b,hollow,4475550190,red\n") <
            0)
        qFatal("%s cannot be written", qPrintable(path));
    file.close();
    desk.window().showScreen("import", path);
    desk.take();
    desk.takeDialog("map", [&] { desk.click("import.columns"); });
}

void registerTabs(PictureDesk &desk)
{
    desk.window().showScreen("register");
    PictureDesk::settle(desk.window());
    const auto found = desk.window().current()->findChildren<QTabWidget *>();
    if (!found.isEmpty())
        desk.takeTabs(found.first()->objectName());
    else
        desk.takeWhole("whole");
}

void certificateChecked(PictureDesk &desk)
{
    desk.window().showScreen("certificate", certificateBeside(desk.records()));
    QTest::qWait(500);
    desk.take();
}

void hazardChosen(PictureDesk &desk)
{
    desk.window().showScreen("hazards");
    desk.selectRows("hazards.list", 1);
    desk.take();
}

void loopsJudged(PictureDesk &desk)
{
    desk.window().showScreen("loops");
    PictureDesk::settle(desk.window());
    desk.click("loops.start");
    desk.selectRows("loops.list", 1);
    desk.take();
}

void everyReport(PictureDesk &desk)
{
    desk.window().showScreen("reports");
    auto *kind = desk.find<QComboBox>("reports.kind");
    for (int i = 0; i < kind->count(); ++i) {
        kind->setCurrentIndex(i);
        emit kind->activated(i);
        desk.take(toText(EnumCodes<ReportKind>::table[i].first));
    }
}

void bulkPreview(PictureDesk &desk)
{
    desk.window().showScreen("bulk", "hollow");
    desk.find<QLineEdit>("bulk.from")->setText("217");
    desk.find<QLineEdit>("bulk.to")->setText("447");
    desk.click("bulk.preview");
    QTest::qWait(1000);
    desk.takeTabs("bulk.tabs");
}

void dialogs(PictureDesk &desk)
{
    desk.window().showScreen("board");
    for (const char *each : {"settings", "keys", "glossary", "about", "find_action"})
        desk.takeDialog(each, [&] { desk.trigger(QString("action.") + each); });
    const Person person{.key = "hale", .name = "J. Hale", .role = Role::Supervisor};
    desk.takeDialog("pin", [&] { askForPin(person, &desk.window()); });
}

void menus(PictureDesk &desk)
{
    int place = 0;
    for (const QAction *action : desk.window().menuBar()->actions())
        desk.takeMenu(QString::number(++place), action->menu());
    for (const char *each : {"menu.look", "menu.size", "menu.language", "menu.paper", "who.menu"})
        desk.takeMenu(QString(each).remove("menu.").remove(".menu"), desk.find<QMenu>(each));
}

void firstRun(PictureDesk &desk)
{
    desk.window().showScreen("board");
    PictureDesk::settle(desk.window());
    desk.takeDialog("office", [&] { desk.click("empty.office"); });
    desk.takeDialog("columns", [&] { desk.click("empty.columns"); });
    OpenErrorPage page(
        Error{ErrorCode::DatabaseTrouble, "the file is no database", "records.sqlite"},
        "/home/kim/.local/share/loopwright/records.sqlite");
    page.show();
    desk.takeOf(page, "trouble");
}

} // namespace

std::vector<Scene> allScenes()
{
    const Scene further[] = {{"job-help", false, jobHelp},
                             {"board-rows", false, boardSelected},
                             {"order-change", false, orderChange},
                             {"circuit-tabs", false, circuitTabs},
                             {"identifiers-checked", false, identifiersChecked},
                             {"audit-done", false, auditDone},
                             {"import-report", false, importDone},
                             {"import-others", false, importOfOthers},
                             {"register-parts", false, registerTabs},
                             {"certificate-checked", false, certificateChecked},
                             {"hazards-chosen", false, hazardChosen},
                             {"loops-judged", false, loopsJudged},
                             {"reports-each", false, everyReport},
                             {"bulk-preview", false, bulkPreview},
                             {"dialog", false, dialogs},
                             {"menu", false, menus},
                             {"vans", false, vanDialogs}, // changes the records: after the others
                             {"first-run", true, firstRun}};
    std::vector<Scene> scenes;
    addScreens(scenes);
    scenes.insert(scenes.end(), std::begin(further), std::end(further));
    return scenes;
}

} // namespace loopwright
