// What vans and office cost: taking a hundred orders along, and receiving against recording the
// same facts.
//
//   bench.vans [ORDERS]      100 orders unless said
//
// Each figure is the median of five; the baseline is the time that `record` takes for the same
// facts in records that are alike.

#include "tests/support/Vans.h"

#include <QGuiApplication>

#include <algorithm>
#include <chrono>
#include <cstdio>

using namespace loopwright;

namespace {

template<class Work>
double msOf(const Work &work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
        .count();
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

OrderFields fieldsOf(int n)
{
    const QString digits = QString::number(100 + n);
    return jobs::otherBriFields("V-" + digits, "CV-" + digits, "30-" + digits,
                                QString("217-556-%1").arg(2 * n, 4, 10, QChar('0')),
                                QString("217-556-%1").arg(2 * n + 1, 4, 10, QChar('0')));
}

QByteArray recordOf(int n)
{
    QList<QJsonObject> facts = jobs::briFacts();
    for (QJsonObject &fact : facts)
        fact["id"] = QString("%1-%2").arg(n, 8, 16, QChar('0')).arg(fact["id"].toString().mid(9));
    // A day for each: orders of one visit would all be judged again with each of them.
    const QByteArray day = QDate(2026, 3, 4).addDays(-n).toString(Qt::ISODate).toLatin1();
    return jobs::recordBytes(fieldsOf(n), facts).replace("2026-03-04", day);
}

void record(Records &records, int orders)
{
    for (int n = 0; n < orders; ++n)
        jobs::good(recordFile(records, recordOf(n), "job.json"));
}

} // namespace

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    const int orders = argc > 1 ? QByteArray(argv[1]).toInt() : 100;
    std::vector<double> takes, receives, records;
    QList<OrderFields> all;
    QStringList numbers;
    for (int n = 0; n < orders; ++n) {
        all << fieldsOf(n);
        numbers << fieldsOf(n)["order_number"];
    }
    for (int turn = 0; turn < 5; ++turn) {
        jobs::Site office(true), desk(true), van(false);
        for (jobs::Site *site : {&office, &desk})
            jobs::good(importOrders(*site->records, jobs::csv(all), {"o.csv"}));
        jobs::join(office, van);
        QByteArray out;
        takes.push_back(msOf([&] { out = jobs::take(office, numbers); }));
        van.open(out);
        record(*van.records, orders);
        const QByteArray back = van.bring();
        records.push_back(msOf([&] { record(*desk.records, orders); }));
        receives.push_back(msOf([&] { office.receive(back); }));
    }
    std::printf("take %d orders: %.0f ms\n", orders, median(takes));
    std::printf("record their facts: %.0f ms\n", median(records));
    std::printf("receive them: %.0f ms, %.2f times record\n", median(receives),
                median(receives) / median(records));
    return 0;
}
