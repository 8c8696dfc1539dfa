#include "app/desktop/screens/RegisterScreen.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "tests/support/DeskRecords.h"

#include <QAbstractButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>

using namespace loopwright;

class RegisterScreenTest : public QObject
{
    Q_OBJECT

private:
    QAbstractItemModel *model(const RegisterScreen &screen, const QString &name) const
    {
        return screen.findChild<QTableView *>("register." + name)->model();
    }
    QString cell(const QAbstractItemModel *model, int row, int column) const
    {
        return model->index(row, column).data().toString();
    }
    /// What is said of each, by instrument.
    QMap<QString, QString> calibrations(const RegisterScreen &screen) const
    {
        const auto *instruments = model(screen, "instruments");
        QMap<QString, QString> states;
        for (int row = 0; row < instruments->rowCount(); ++row)
            states.insert(cell(instruments, row, 0), cell(instruments, row, 5));
        return states;
    }

private slots:
    void listsWhatWasImported()
    {
        DeskRecords records;
        RegisterScreen screen(records.workplace());
        screen.refresh();
        const auto *offices = model(screen, "offices");
        QCOMPARE(offices->rowCount(), 2);
        QCOMPARE(cell(offices, 0, 1), "North Street");
        QCOMPARE(cell(offices, 0, 3), "loopback 217-555-0198 · milliwatt 217-555-0199");
        QCOMPARE(cell(offices, 1, 3), "");
        QCOMPARE(model(screen, "people")->rowCount(), 3);
    }

    void saysWhetherACalibrationHolds()
    {
        DeskRecords records;
        RegisterScreen screen(records.workplace());
        screen.refresh();
        const auto states = calibrations(screen);
        QCOMPARE(states.value("TS-1"), "holds");
        QCOMPARE(states.value("TS-2"), "ended 418 days ago"); // 2025-01-10 to 2026-03-04
        QCOMPARE(states.value("TS-3"), "ends in 16 days");
        QCOMPARE(states.value("LP-1"), "not required");
    }

    /// That of TS-3 ends on 2026-03-20.
    void aCalibrationEndsInWords_data()
    {
        QTest::addColumn<QString>("day");
        QTest::addColumn<QString>("said");
        QTest::newRow("tomorrow") << "2026-03-19"
                                  << "ends tomorrow";
        QTest::newRow("today") << "2026-03-20"
                               << "ends today";
        QTest::newRow("yesterday") << "2026-03-21"
                                   << "ended yesterday";
        QTest::newRow("before") << "2026-03-22"
                                << "ended 2 days ago";
    }
    void aCalibrationEndsInWords()
    {
        QFETCH(QString, day);
        DeskRecords records;
        records.records().setNow(Moment::parse(QString(day + "T09:00:00-06:00")));
        RegisterScreen screen(records.workplace());
        screen.refresh();
        const auto states = calibrations(screen);
        QTEST(states.value("TS-3"), "said");
    }

    void everyLimitHasItsSource()
    {
        DeskRecords records(false);
        RegisterScreen screen(records.workplace());
        screen.refresh();
        const auto *limits = model(screen, "limits");
        QVERIFY(limits->rowCount() > 10);
        for (int row = 0; row < limits->rowCount(); ++row)
            QVERIFY2(!cell(limits, row, 3).isEmpty(), qPrintable(cell(limits, row, 0)));
    }

    /// The shipped limits; what an office named itself is in no catalogue.
    void limitsAreNamedInTheLanguageOfTheWindow()
    {
        speak("de");
        DeskRecords records(false);
        RegisterScreen screen(records.workplace());
        screen.refresh();
        const auto *limits = model(screen, "limits");
        QStringList rows;
        for (int row = 0; row < limits->rowCount(); ++row)
            rows << QStringList{cell(limits, row, 0), cell(limits, row, 1), cell(limits, row, 2),
                                cell(limits, row, 3)}
                        .join(u'|');
        speak("en");
        QVERIFY(rows.contains("Gleichstromwiderstand einer Basisanschlussleitung, "
                              "höchstens|1300|Ohm|im Fach üblich"));
        QVERIFY(rows.filter(" at most").isEmpty());
    }
    void anotherNameOfALimitStaysAsItWasTyped()
    {
        speak("de");
        const QString own = localizedName("Our loops, at most; common practice");
        speak("en");
        QCOMPARE(own, "Our loops, at most; common practice");
    }

    void emptyListsSayWhichFileToImport()
    {
        DeskRecords records(false);
        RegisterScreen screen(records.workplace());
        screen.show();
        screen.refresh();
        QVERIFY(!screen.findChild<QTableView *>("register.offices")->isVisible());
        QSignalSpy opened(&screen, &Screen::openScreen);
        screen.findChild<QAbstractButton *>("register.import")->click();
        QCOMPARE(opened.first().first().toString(), "import");
    }
};

QTEST_MAIN(RegisterScreenTest)
#include "RegisterScreenTest.moc"
