#pragma once
// An office and vans, each with records, keys and a clock of its own.

#include "app/actions/Audit.h"
#include "app/actions/BringBack.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/Keys.h"
#include "app/actions/OpenBundles.h"
#include "app/actions/Orders.h"
#include "app/actions/ReceiveBundles.h"
#include "app/actions/StationConflicts.h"
#include "app/actions/TakeAlong.h"
#include "tests/support/Office.h"

#include <QTemporaryDir>

namespace loopwright::jobs {

template<class T>
T good(Result<T> done)
{
    if (!done)
        qFatal("%s", qPrintable(done.error().text()));
    if constexpr (!std::is_void_v<T>)
        return std::move(*done);
}

inline QByteArray contentOf(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("%s is missing", qPrintable(path));
    return file.readAll();
}

inline QStringList faultsOf(Records &records)
{
    QStringList faults;
    for (const BrokenLink &each : good(verifyHistory(records)).broken)
        faults << each.subject + ' ' + each.what;
    return faults;
}

/// One set of records; of a van they are empty until it opened something.
struct Site
{
    explicit Site(bool isOffice)
    {
        const QString path = folder.filePath("records.sqlite");
        records = isOffice ? office(path) : std::move(*Records::open(path));
        records->setKeys(KeyFolder(folder.filePath("keys")));
        records->actAs(isOffice ? "Dana" : "K7");
        at(isOffice ? "2026-03-04T07:00:00-06:00" : "2026-03-04T20:00:00-06:00");
    }
    void at(const char *time) { records->setNow(Moment::parse(QString(time))); }
    QString file(const QString &name) const { return folder.filePath(name); }
    QString tag() { return good(signerAtHand(*records))->key.holder; }
    QStringList faults() { return faultsOf(*records); }

    QByteArray bring(bool keep = false, const QString &since = {})
    {
        good(bringBack(*records, {file("back.json"), since, 0, keep}));
        return contentOf(file("back.json"));
    }
    TakenBundle open(const QByteArray &bundle)
    {
        return good(openBundles(*records, {{"out.json", bundle}})).front();
    }
    TakenBundle receive(const QByteArray &bundle)
    {
        return good(receiveBundles(*records, {{"back.json", bundle}})).front();
    }
    RecordReport record(const OrderFields &fields, const QList<QJsonObject> &facts)
    {
        return good(recordFile(*records, recordBytes(fields, facts), "job.json"));
    }
    OrderView show(const QString &order = "A-1001") { return good(showOrder(*records, order)); }
    OrderOutcome outcome(const QString &order = "A-1001") { return show(order).decision.outcome; }

    QTemporaryDir folder;
    std::unique_ptr<Records> records;
};

/// The van is known in the office; what it takes along.
inline void join(Site &office, Site &van, const QString &name = "van-7")
{
    good(addVan(*office.records, name, good(publicKeyFile(*van.records)), "van.key", false));
}
inline Result<TakenAlong> takeInto(Site &office, const QString &file, const QStringList &orders,
                                   const QString &name = "van-7", bool anyway = false)
{
    TakingAlong wish;
    wish.orders = orders;
    wish.station = name;
    wish.out = office.file(file);
    wish.anyway = anyway;
    return takeAlong(*office.records, wish);
}
inline QByteArray take(Site &office, const QStringList &orders, const QString &name = "van-7",
                       bool anyway = false)
{
    const TakenAlong taken = good(takeInto(office, "out.json", orders, name, anyway));
    if (taken.orders.size() != orders.size())
        qFatal("an order stays");
    return contentOf(taken.files.front());
}

/// An office whose vans are van() and other().
class OfficeWithTwoVans
{
protected:
    Site &office() { return *m_office; }
    Site &van() { return *m_van; }
    Site &other() { return *m_other; }

    void start()
    {
        m_office = std::make_unique<Site>(true);
        m_van = std::make_unique<Site>(false);
        m_other = std::make_unique<Site>(false);
        join(office(), van());
        join(office(), other(), "van-8");
    }
    QStringList faults()
    {
        QStringList faults = office().faults();
        for (const DerivedFault &each : good(auditDerived(*office().records)))
            faults << each.subject + ' ' + each.what;
        return faults;
    }
    /// Both vans have the order.
    void takeTwice()
    {
        van().open(take(office(), {"A-1001"}));
        other().open(take(office(), {"A-1001"}, "van-8", true));
    }
    std::vector<ShownConflict> conflicts(const QString &order, ConflictCode code)
    {
        auto all = good(stationConflicts(*office().records, order));
        std::erase_if(all,
                      [code](const ShownConflict &each) { return each.conflict.code != code; });
        return all;
    }
    bool loopCounts(const QString &order)
    {
        return office().show(order).decision.criterion("loop")->outcome == CriterionOutcome::Met;
    }

private:
    std::unique_ptr<Site> m_office, m_van, m_other;
};

} // namespace loopwright::jobs
