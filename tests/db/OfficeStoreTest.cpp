#include "db/OfficeStore.h"

#include "db/Connection.h"
#include "db/InstrumentStore.h"
#include "db/PersonStore.h"
#include "tests/support/StoredJobs.h"

using namespace loopwright;

class OfficeStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();

    template<class Write>
    void write(Write write)
    {
        QVERIFY_RESULT(jobs::inTransaction(m_database, registerSubject(), write));
    }

private slots:
    void init() { m_database = recordsInMemory(); }
    void keepsOfficesAndTheirTestLines()
    {
        const ServingOffice north{"NORTH", "North exchange", "ni2"};
        const QList<TestLine> lines{{"loopback", UnpublishedNumber("217-555-0198")},
                                    {"milliwatt", UnpublishedNumber("217-555-0199")}};
        write([&](Transaction &t) { return OfficeStore::put(t, north, lines); });
        const OfficeStore store(m_database);
        QCOMPARE(*store.find("NORTH"), std::optional(north));
        QCOMPARE(*store.find("SOUTH"), std::nullopt);
        QCOMPARE(*store.testLines("NORTH"), lines);
        const ServingOffice renamed{"NORTH", "North", "dss1"};
        write([&](Transaction &t) { return OfficeStore::put(t, renamed, {lines[1]}); });
        QCOMPARE(*store.all(), std::vector<ServingOffice>{renamed});
        QCOMPARE(*store.testLines("NORTH"), QList<TestLine>{lines[1]});
    }
    void noEventHoldsAnUnpublishedNumber()
    {
        QVERIFY_RESULT(jobs::addOffice(m_database));
        QCOMPARE(*m_database.connection().number(
                     "SELECT count(*) FROM event WHERE CAST(detail AS TEXT) LIKE '%0199%'"),
                 0);
    }
    void keepsPeople()
    {
        const Person rivera{"K7", "A. Rivera", Role::Installer};
        const Person ode{"D2", "B. Ode", Role::Supervisor};
        write([&](Transaction &t) { return PersonStore::put(t, rivera); });
        write([&](Transaction &t) { return PersonStore::put(t, ode); });
        QCOMPARE(*PersonStore(m_database).all(), (std::vector<Person>{ode, rivera}));
        const Person promoted{"K7", "A. Rivera", Role::Supervisor};
        write([&](Transaction &t) { return PersonStore::put(t, promoted); });
        QCOMPARE(*PersonStore(m_database).find("K7"), std::optional(promoted));
        QCOMPARE(*PersonStore(m_database).find("X"), std::nullopt);
    }
    void calibrationsAreOnlyAdded()
    {
        Instrument set = jobs::instrument();
        write([&](Transaction &t) { return InstrumentStore::put(t, set); });
        write([&](Transaction &t) { return InstrumentStore::put(t, set); });
        const InstrumentStore store(m_database);
        QCOMPARE(*store.find("TS-4"), std::optional(set));
        Instrument later{"TS-4", "S-1022", "basic-rate test set", {{QDate(2026, 8, 20), {}}}};
        write([&](Transaction &t) { return InstrumentStore::put(t, later); });
        later.calibrations.prepend(set.calibrations.first());
        QCOMPARE(*store.find("TS-4"), std::optional(later));
        QCOMPARE(*store.all(), std::vector<Instrument>{later});
        QCOMPARE(*store.find("TS-5"), std::nullopt);
        QVERIFY(!m_database.connection().run("DELETE FROM calibration", "test"));
    }
    void whatIsAsLabelledGoesAsTheOfficeConfirms()
    {
        const InstrumentStore store(m_database);
        Instrument set{"TS-9", "S-9", "loss set", {{QDate(2026, 1, 2), QDate(2027, 1, 2)}}, true};
        for (const std::optional<QDate> &due : {std::optional(QDate(2027, 1, 3)), {}}) {
            set.calibrations.first().due = due;
            write([&](Transaction &t) { return InstrumentStore::put(t, set); });
            QCOMPARE(*store.find("TS-9"), std::optional(set));
        }
        const Instrument confirmed{"TS-9", "S-9", "loss set", {{QDate(2025, 8, 20), {}}}};
        write([&](Transaction &t) { return InstrumentStore::put(t, confirmed); });
        QCOMPARE(*store.find("TS-9"), std::optional(confirmed));
    }
};

QTEST_GUILESS_MAIN(OfficeStoreTest)
#include "OfficeStoreTest.moc"
