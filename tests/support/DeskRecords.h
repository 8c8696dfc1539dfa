#pragma once
// Records for tests of the desktop: a file in a folder of its own with a small office, its people
// and instruments, and a board of orders of every kind.

#include "app/actions/Evidence.h"
#include "app/actions/Import.h"
#include "app/desktop/DesktopContext.h"
#include "tests/support/ScreenSubjects.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

namespace loopwright {

class DeskRecords
{
public:
    static QByteArray officesCsv()
    {
        return "office,name,protocol_variant,test_lines\n"
               "NORTH,North Street,ni2,loopback=217-555-0198;milliwatt=217-555-0199\n"
               "SOUTH,South Bridge,dss1,\n";
    }
    static QByteArray installersCsv()
    {
        return "installer,name,role\n"
               "rivera,A. Rivera,installer\n"
               "okafor,N. Okafor,installer\n"
               "lind,S. Lind,supervisor\n";
    }
    static QByteArray instrumentsCsv()
    {
        return "instrument,serial,kind,calibrated_on,calibration_due\n"
               "TS-1,10441,basic-rate test set,2025-06-01,2026-06-01\n"
               "TS-2,10442,basic-rate test set,2024-01-10,2025-01-10\n"
               "TS-3,10443,basic-rate test set,2025-03-20,2026-03-20\n"
               "LP-1,77,handset,2025-01-01,not_required\n";
    }
    static QByteArray orderHeader()
    {
        return "order_number,order_type,due_date,customer,premises,circuit_number,kind,office,"
               "protocol_variant,pair,b1_services,b2_services,dn_1,spid_1,tei_1,dn_2,spid_2,tei_2,"
               "nt_supplied,installer,remarks\n";
    }
    /// Eight orders; "today" is Wednesday, 4 March 2026. O-1008 is held: O-1001 has its number.
    static QByteArray ordersCsv()
    {
        return orderHeader() +
               "O-1001,new,2026-03-02,Bright Bakery,12 Mill Lane,C-501,bri,NORTH,,17-204,"
               "voice+data,voice+data,217-555-0101,21755501010101,auto,217-555-0102,21755501020101,"
               "auto,yes,rivera,\n"
               "O-1002,new,2026-03-04,Harbour Dental,4 Quay Street,C-502,bri,NORTH,,17-205,"
               "voice+data,data,217-555-0103,21755501030101,auto,217-555-0104,21755501040101,auto,"
               "yes,rivera,ring twice\n"
               "O-1003,new,2026-03-05,Elm Road School,1 Elm Road,C-503,bri,NORTH,,17-206,"
               "voice,data,217-555-0105,21755501050101,auto,217-555-0106,21755501060101,auto,no,"
               "okafor,\n"
               "O-1004,new,2026-03-06,Quiet Cafe,3 Quay Street,C-504,analog,NORTH,,17-207,voice,,"
               "217-555-0107,,,,,,no,okafor,\n"
               "O-1005,new,2026-03-20,Hill Farm,Hill Farm,C-505,bri,SOUTH,,3-11,voice+data,"
               "voice+data,+49 30 5550108,,auto,+49 30 5550109,,auto,yes,,\n"
               "O-1006,record_only,2026-03-10,Old Mill Press,7 Mill Lane,C-506,bri,NORTH,,17-208,"
               "voice,voice,217-555-0110,21755501100101,auto,,,,no,,\n"
               "O-1007,new,2026-04-01,Bright Bakery,14 Mill Lane,C-507,bri,NORTH,,17-209,"
               "voice+data,,217-555-0111,21755501110101,auto,,,,yes,rivera,\n"
               "O-1008,new,2026-03-09,Second Hand Books,9 Mill Lane,C-508,bri,NORTH,,17-210,"
               "voice+data,,217-555-0101,21755501010102,auto,,,,yes,okafor,\n";
    }
    static ScreenSubjects subjects() { return {QStringLiteral("O-1002"), QStringLiteral("C-501")}; }
    static Moment now() { return *Moment::parse(u"2026-03-04T09:15:00-06:00"); }

    /// `filled`: with all of the above; else empty records.
    explicit DeskRecords(bool filled = true)
    {
        auto opened = DesktopContext::open(path(), QStringLiteral("lind"), now());
        if (!opened)
            qFatal("%s", qPrintable(opened.error().text()));
        m_workplace = std::move(*opened);
        if (filled)
            fill();
    }

    QString path(const QString &name = QStringLiteral("records.sqlite")) const
    {
        return m_folder.filePath(name);
    }
    /// A file in the folder, with that content.
    QString file(const QString &name, const QByteArray &content) const
    {
        QFile file(path(name));
        if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
            qFatal("cannot write %s", qPrintable(name));
        return file.fileName();
    }
    DesktopContext &workplace() { return *m_workplace; }
    Records &records() { return m_workplace->records(); }

    /// The same file in another program, where the same person acts.
    std::unique_ptr<Records> elsewhere() const
    {
        auto opened = Records::open(path());
        if (!opened)
            qFatal("%s", qPrintable(opened.error().text()));
        (*opened)->actAs("lind");
        (*opened)->setNow(now());
        return std::move(*opened);
    }

    void take(const Result<ImportReport> &report)
    {
        if (!report || report->refused > 0)
            qFatal("%s", report ? report->rejects.constData() : qPrintable(report.error().text()));
    }

private:
    void fill()
    {
        const ImportOptions options;
        take(importOffices(records(), officesCsv(), options));
        take(importInstallers(records(), installersCsv(), options));
        take(importInstruments(records(), instrumentsCsv(), options));
        take(importOrders(records(), ordersCsv(), options));
        const QByteArray safety =
            R"({"order":"O-1002","installer":"rivera","instrument":"TS-1","facts":[
                {"id":"00000000-0000-4000-8000-000000000001","kind":"safety",
                 "at":"2026-03-04T08:30:00-06:00","office_connected":true,
                 "ac_v":{"tip_ground":0.2,"ring_ground":0.1,"tip_ring":0.1},
                 "dc_v":{"tip_ground":0.1,"ring_ground":50.2,"tip_ring":50.1},
                 "confirmed":["foreign_voltage","bonding_ground","storm","work_position"]},
                {"id":"00000000-0000-4000-8000-000000000002","kind":"layer",
                 "at":"2026-03-04T08:40:00-06:00","layer":1,"interface":"u","outcome":"up"},
                {"id":"00000000-0000-4000-8000-000000000003","kind":"layer",
                 "at":"2026-03-04T08:45:00-06:00","layer":3,"terminal":1,"outcome":"down",
                 "cause":88}]})";
        if (const auto recorded = recordFile(records(), safety, QStringLiteral("safety"));
            !recorded)
            qFatal("%s", qPrintable(recorded.error().text()));
    }

    QTemporaryDir m_folder;
    std::unique_ptr<DesktopContext> m_workplace;
};

} // namespace loopwright
