#pragma once
// Records with something in every table that a day of work fills: an order that was accepted,
// certified and completed, and two that are open.

#include "app/actions/Acceptance.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "tests/support/Office.h"

namespace loopwright::jobs {

/// A second basic-rate order: A-0999 on circuit C-66.
inline OrderFields otherFields()
{
    return otherBriFields("A-0999", "C-66", "9", "217-555-0181", "217-555-0182");
}

/// Returns the certificate, a PDF.
inline QByteArray makeSmallRecords(const QString &path)
{
    const auto good = [](const auto &done) {
        if (!done)
            qFatal("%s", qPrintable(done.error().text()));
    };
    QByteArray certificate;
    auto records = office(path);
    good(importOrders(*records, csv({briFields(), analogFields(), otherFields()}), {"o.csv"}));
    good(recordFile(*records, recordBytes(briFields(), briFacts()), "job.json"));
    good(decideOrder(*records, "A-1001"));
    good(issueCertificate(*records, {"A-1001", Paper::A4, {}, [&](const CertificatePaper &made) {
                                         certificate = made.pdf;
                                         return Result<void>();
                                     }}));
    good(completeOrder(*records, "A-1001"));
    return certificate;
}

} // namespace loopwright::jobs
