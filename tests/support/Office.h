#pragma once
// Records in memory with a register, for tests of actions and faces. The clock stands still.

#include "app/actions/Import.h"
#include "app/actions/LimitChanges.h"
#include "app/actions/Records.h"
#include "tests/support/Jobs.h"
#include "tests/support/Place.h"

namespace loopwright::jobs {

/// Appears in the office's unpublished numbers; must never appear on a customer document.
inline const QString sentinel = QStringLiteral("5550199777");

inline QByteArray csv(const QList<OrderFields> &orders)
{
    QStringList header = requiredOrderColumns();
    for (const OrderFields &order : orders)
        for (const QString &column : order.keys())
            if (!header.contains(column))
                header << column;
    QByteArray bytes = header.join(',').toUtf8() + "\r\n";
    for (const OrderFields &order : orders) {
        QStringList row;
        for (const QString &column : header)
            row << order.value(column);
        QStringList quoted;
        for (const QString &field : row)
            quoted << (field.contains(',') ? '"' + field + '"' : field);
        bytes += quoted.join(',').toUtf8() + "\r\n";
    }
    return bytes;
}

/// A record file of the order.
inline QByteArray recordBytes(const OrderFields &fields, const QList<QJsonObject> &facts)
{
    return canonicalJson(jobs::record(jobs::order(fields), facts));
}

inline std::unique_ptr<Records> office(const QString &path = ":memory:")
{
    auto records = Records::open(path == u":memory:" ? newPlace() : path);
    if (!records)
        qFatal("%s", qPrintable(records.error().text()));
    (*records)->actAs("Dana");
    (*records)->setNow(Moment::parse(u"2026-03-05T12:00:00-06:00"));
    if (const auto brought = bringShippedLimits(**records); !brought)
        qFatal("%s", qPrintable(brought.error().text()));
    const auto good = [](const Result<ImportReport> &report) {
        if (!report || !report->clean())
            qFatal("%s", qPrintable(report ? QString("rows refused") : report.error().text()));
    };
    good(importOffices(
        **records,
        QByteArray("office,name,protocol_variant,test_lines\nNORTH,North Street,ni2,loopback=" +
                   sentinel.toUtf8() + "\n"),
        {"offices.csv"}));
    good(importInstallers(**records,
                          "installer,name,role\nK7,Kim Carver,installer\nS1,Sam Holt,supervisor\n"
                          "D4,Lee Ward,dispatcher\nDana,Dana Sample,supervisor\n",
                          {"installers.csv"}));
    good(importInstruments(**records,
                           "instrument,serial,kind,calibrated_on,calibration_due\n"
                           "TS-4,S-1021,basic-rate test set,2025-09-01,2026-09-01\n",
                           {"instruments.csv"}));
    return std::move(*records);
}

} // namespace loopwright::jobs
