#include "app/actions/Cards.h"

#include "app/actions/Evidence.h"
#include "app/actions/HandOn.h"
#include "app/actions/Orders.h"
#include "tests/support/Office.h"
#include "tests/support/Papers.h"

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

std::unique_ptr<Records> recorded(const OrderFields &fields, const QList<QJsonObject> &facts)
{
    auto records = office();
    if (!importOrders(*records, csv({fields}), {"orders.csv"}))
        qFatal("the order is not taken in");
    if (!facts.isEmpty()) {
        const auto report =
            recordFile(*records, canonicalJson(record(order(fields), facts)), "job.json");
        if (!report)
            qFatal("%s", qPrintable(report.error().text()));
    }
    return records;
}

QString textOf(Records &records, CardKind kind)
{
    const auto sheet = cardOf(records, "A-1001", kind, Paper::A4);
    return sheet ? papers::textOf(*sheet) : "refused: " + sheet.error().message;
}

} // namespace

class CardsTest : public QObject
{
    Q_OBJECT

private slots:
    void settings()
    {
        auto records = recorded(briFields(), briFacts());
        const QString text = textOf(*records, CardKind::Settings);
        VERIFY_IN_ORDER(text, {"Settings for your equipment", "A-1001", "217 555 0143",
                               "Bright Bakery", "North Street"});
    }

    void settingsWithoutWhatEveryPaperNames()
    {
        QVERIFY(textOf(*recorded(briFields(), {}), CardKind::Settings)
                    .startsWith("refused: order A-1001 names no installer"));
        OrderFields fields = briFields();
        fields["installer"] = "K7";
        QVERIFY(!textOf(*recorded(fields, {}), CardKind::Settings).startsWith("refused"));
        fields["customer"] = fields["premises"] = "";
        QVERIFY(textOf(*recorded(fields, {}), CardKind::Settings)
                    .startsWith("refused: order A-1001 names no customer and no premises"));
    }

    void leaveBehind()
    {
        QList<QJsonObject> facts = briFacts();
        facts[11] = jobs::call(12, 24, "B1", "in", "data", "2175550143", "failed");
        auto records = recorded(briFields(), facts.first(12));
        QString text = textOf(*records, CardKind::LeaveBehind);
        VERIFY_IN_ORDER(
            text, {"Your line is not ready yet", "Bright Bakery", "4 March 2026, by Kim Carver",
                   "What is missing", "A call did not go through.",
                   "It was not shown how many errors the line makes.", "What happens next",
                   "The line is due on 6 March 2026.", "Whom to call", "name order A-1001",
                   "What was done", "checked for dangerous voltage"});
        QVERIFY(!text.contains("Calls were made and received"));
        QVERIFY(refer(*records, "A-1001", {"switch desk", "S-9", WaitingOn::Office}));
        text = textOf(*records, CardKind::LeaveBehind);
        QVERIFY2(text.contains("your order was handed on to: switch desk, reference S-9; it waits "
                               "for the serving office."),
                 qPrintable(text));
        QVERIFY(textOf(*records, CardKind::CloseOut).startsWith("refused: order A-1001 is not"));
    }

    void leaveBehindWithAHazard()
    {
        auto records = recorded(briFields(), {jobs::safety(1, 5, 214)});
        const QString text = textOf(*records, CardKind::LeaveBehind);
        VERIFY_IN_ORDER(text, {"A dangerous voltage was read on the pair.", "What happens next",
                               "Leave the jack, the NT and the wires alone"});
        QVERIFY(!text.contains("no reading was above"));
    }

    void closeOut()
    {
        auto records = recorded(briFields(), briFacts());
        const QString text = textOf(*records, CardKind::CloseOut);
        const auto view = showOrder(*records, "A-1001");
        QVERIFY(view);
        VERIFY_IN_ORDER(text, {"Close-out", completionNumber(view->decision), "A-1001", "Accepted",
                               "217-555-0143 answered when it was called", "Loop", "DC resistance",
                               "612 ohm", "Loss at 40 kHz", "28.4 dB"});
        // Ten digits, the last two of which check the others.
        QString digits = completionNumber(view->decision);
        digits.remove(' ');
        QCOMPARE(digits.size(), 10);
        QCOMPARE(*mod97CheckDigits(digits.left(8)), digits.right(2));
        QVERIFY(textOf(*records, CardKind::LeaveBehind)
                    .startsWith("refused: order A-1001 is accepted"));
    }

    void noUnpublishedNumber()
    {
        OrderFields fields = briFields();
        fields["dial_prefix"] = "9 or " + sentinel;
        fields["premises"] = QString::fromUtf8("12 Mill Lane, ٥٥٥ ٠١٩ ٩٧٧٧");
        auto records = recorded(fields, briFacts());
        for (const CardKind kind : {CardKind::Settings, CardKind::CloseOut}) {
            QString text = textOf(*records, kind);
            QVERIFY2(text.contains(NumberGuard::covered()), qPrintable(text));
            QVERIFY(!text.remove(' ').contains(sentinel));
            QVERIFY(!text.contains(QString::fromUtf8("٩٧٧٧")));
        }
    }
};

QTEST_MAIN(CardsTest)
#include "CardsTest.moc"
