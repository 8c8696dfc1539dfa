#include "core/order/ServiceOrder.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class ServiceOrderTest : public QObject
{
    Q_OBJECT

    static std::optional<QString> office(const QString &key)
    {
        return key == "NORTH" ? std::optional<QString>("ni2") : std::nullopt;
    }
    static QStringList errors(const OrderFields &fields)
    {
        QStringList columns;
        for (const Finding &finding : readOrder(fields, office).malformed)
            if (finding.severity == Severity::Error)
                columns << finding.field;
        return columns;
    }

private slots:
    void writesWhatItReads()
    {
        for (const OrderFields &fields : {briFields(), analogFields()}) {
            const ServiceOrder order = jobs::order(fields);
            const auto again = ServiceOrder::fromJson(order.toJson(), "order");
            QVERIFY2(again, again ? "" : qPrintable(again.error().text()));
            QCOMPARE(*again == order, true);
            QCOMPARE(canonicalJson(again->toJson()), canonicalJson(order.toJson()));
        }
    }
    void takesGoodRows()
    {
        QCOMPARE(errors(briFields()), QStringList());
        QCOMPARE(errors(analogFields()), QStringList());
    }
    /// A spreadsheet's filled-down column makes no terminal, however the word is typed.
    void automaticTeiAloneIsNoTerminal()
    {
        OrderFields fields = briFields();
        for (const char *automatic : {"auto", "AUTO", "automatic"}) {
            fields["tei_3"] = automatic;
            QCOMPARE(jobs::order(fields).terminals.size(), 2U);
        }
        fields["tei_3"] = "5";
        QCOMPARE(jobs::order(fields).terminals.size(), 3U);
    }
    void refusesMalformedFields_data()
    {
        QTest::addColumn<QString>("column");
        QTest::addColumn<QString>("value");
        QTest::newRow("no number") << "order_number"
                                   << "";
        QTest::newRow("no such type") << "order_type"
                                      << "upgrade";
        QTest::newRow("bad date") << "due_date"
                                  << "2026-02-30";
        QTest::newRow("date turned round") << "due_date"
                                           << "06.03.2026";
        QTest::newRow("no circuit") << "circuit_number"
                                    << " ";
        QTest::newRow("no such kind") << "kind"
                                      << "pri";
        QTest::newRow("unknown office") << "office"
                                        << "SOUTH";
        QTest::newRow("unknown variant") << "protocol_variant"
                                         << "ni3";
        QTest::newRow("analog variant") << "protocol_variant"
                                        << "analog";
        QTest::newRow("no such service") << "b1_services"
                                         << "voice+fax";
        QTest::newRow("service twice") << "b1_services"
                                       << "voice+voice";
        QTest::newRow("voice on D") << "d_services"
                                    << "voice";
        QTest::newRow("no such rate") << "data_rate"
                                      << "128000";
        QTest::newRow("maybe supplied") << "nt_supplied"
                                        << "maybe";
        QTest::newRow("too long") << "remarks" << QString(501, 'x');
        QTest::newRow("control character") << "customer" << QString("a\x07");
        QTest::newRow("a Cyrillic letter among Latin ones")
            << "order_number" << QString::fromUtf8("\u0410B-1001");
        QTest::newRow("an invisible character")
            << "circuit_number" << QString::fromUtf8("C-\u200b77");
        QTest::newRow("a full-width digit") << "pair" << QString::fromUtf8("17-20\uff14");
        QTest::newRow("a letter of private use") << "feeder_pair" << QString::fromUtf8("F\ue000");
        QTest::newRow("a line break") << "related_order" << QString("A-1\nA-2");
    }
    void refusesMalformedFields()
    {
        QFETCH(QString, column);
        QFETCH(QString, value);
        OrderFields fields = briFields();
        fields[column] = value;
        QCOMPARE(errors(fields), QStringList{column});
    }
    void takesTheOfficesVariant()
    {
        OrderFields fields = briFields();
        fields.remove("protocol_variant");
        QCOMPARE(readOrder(fields, office).order.variant, "ni2");
    }
    void analogIsItsOwnVariant()
    {
        OrderFields fields = analogFields();
        fields["protocol_variant"] = "ni2";
        const ServiceOrder order = readOrder(fields, office).order;
        QCOMPARE(order.variant, "analog");
        QCOMPARE(order.b1, Services(Service::Voice));
    }
    void readsUpToEightTerminals()
    {
        OrderFields fields = briFields();
        fields["dn_8"] = "2175550150";
        fields["spid_8"] = "21755501500101";
        const ServiceOrder order = readOrder(fields, office).order;
        QCOMPARE(order.terminals.size(), 3U);
        QVERIFY(order.terminal(8));
        QVERIFY(!order.terminal(3));
    }
    void numberAnswersItsServices()
    {
        const ServiceOrder order = jobs::order(briFields());
        QCOMPARE(order.servicesOf(*order.terminal(2)), Services(Service::Data));
        OrderFields fields = briFields();
        fields.remove("dn_2_services");
        const ServiceOrder unsaid = jobs::order(fields);
        QCOMPARE(unsaid.servicesOf(*unsaid.terminal(2)), Service::Voice | Service::Data);
    }
};

QTEST_APPLESS_MAIN(ServiceOrderTest)
#include "ServiceOrderTest.moc"
