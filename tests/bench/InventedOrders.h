#pragma once
// Orders for benches of imports, as many as are wanted.

#include <QByteArray>

namespace loopwright {

/// `orders` rows of new basic-rate lines of an office, from number `first` on.
inline QByteArray inventedOrders(const QByteArray &office, int first, int orders)
{
    QByteArray csv =
        "order_number,order_type,due_date,customer,premises,circuit_number,kind,office,"
        "protocol_variant,pair,b1_services,b2_services,dn_1,spid_1,tei_1,dn_2,spid_2,tei_2,"
        "nt_supplied\n";
    const auto digits = [](int number, int width) {
        return QByteArray::number(number).rightJustified(width, '0');
    };
    for (int i = first; i < first + orders; ++i) {
        const QByteArray n = digits(i, 6), one = "298" + digits(5'560'000 + 2 * i, 7),
                         two = "299" + digits(5'570'000 + 2 * i, 7);
        csv += "N" + n + ",new,2026-12-15,Bench Bakery " + n + "," + n + " Kiln Road,NC" + n +
               ",bri," + office + ",,900-" + n + ",voice+data,voice+data," + one + "," + one +
               "0101,auto," + two + "," + two + "0101,auto,yes\n";
    }
    return csv;
}

} // namespace loopwright
