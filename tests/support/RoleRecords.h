#pragma once
// Records in which each act of the table of roles can be tried, by each worker of it. They lie in a
// file that is copied for each try.

#include "app/actions/Acceptance.h"
#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "app/trust/Signing.h"
#include "tests/support/Premises.h"
#include "tests/support/RoleTable.h"
#include "tests/support/SmallRecords.h"

namespace loopwright::roles {

inline Moment now()
{
    return *Moment::parse(u"2026-03-04T10:00:00-06:00");
}

/// The note of his own that a worker may void.
inline QString noteOf(const Worker &worker)
{
    static const QStringList keys{"somebody", "K9", "D4", "S1"};
    return jobs::uuid(81 + int(keys.indexOf(worker.key)));
}

/// A-1001 is accepted, A-0999 but for its loop, A-3001 completed on circuit C-91; K7 recorded it.
/// Each worker recorded a note on A-0999. Where nobody supervises S1 is a dispatcher.
inline void makeRecords(const QString &path, bool supervised)
{
    using namespace jobs;
    auto opened = Records::open(path);
    if (!opened)
        qFatal("%s", qPrintable(opened.error().text()));
    Records &records = **opened;
    records.setNow(now());
    records.actAs("somebody");
    const auto good = [](const auto &done) {
        if (!done)
            qFatal("%s", qPrintable(done.error().text()));
    };
    const auto note = [&](const Worker &worker) {
        QJsonObject body = fact(0, "note", 90, {{"text", "gate code told"}});
        body["id"] = noteOf(worker);
        take(records, otherFields(), {body});
    };
    good(bringShippedLimits(records));
    good(importOffices(records, "office,name,protocol_variant\nNORTH,North Street,ni2\n", {"o"}));
    takeOrders(records, {briFields(), otherFields(), thirdLine()});
    note(workers[3]);
    good(importInstallers(records,
                          QByteArray("installer,name,role\nK7,Kim Carver,installer\n"
                                     "K9,Max Poole,installer\nD4,Lee Ward,dispatcher\n"
                                     "S1,Sam Holt,") +
                              (supervised ? "supervisor\n" : "dispatcher\n"),
                          {"p"}));
    for (int i = 0; i < 3; ++i) {
        records.actAs(workers[i].key);
        note(workers[i]);
    }
    good(importInstruments(records,
                           "instrument,serial,kind,calibrated_on,calibration_due\n"
                           "TS-4,S-1021,basic-rate test set,2025-09-01,2026-09-01\n",
                           {"i"}));
    records.actAs("K7");
    take(records, briFields(), briFacts());
    QList<QJsonObject> facts = briFacts();
    facts.removeAt(2); // the reading of the loop
    take(records, otherFields(), factsFor(otherFields(), facts, 200));
    take(records, thirdLine(), factsFor(thirdLine(), analogFacts(), 300));
    records.actAs("D4");
    good(completeOrder(records, "A-3001"));
}

/// As a van's `key export` writes it.
inline QByteArray keyOfVan()
{
    const SigningKey key = *SigningKey::fromSeed(QByteArray(SigningKey::seedBytes, 'v'));
    return PublicKey{"K7M4QP", key.publicKey(), {}, {}}.line(false).toUtf8() + '\n';
}

} // namespace loopwright::roles
