#include "core/base/Phrasebook.h"

#include <QTest>

using namespace loopwright;

namespace {

/// A language of capitals: what is translated can be seen, places and names stay as they are.
QString inCapitals(const char *source, std::optional<qint64>)
{
    QString said = QString::fromUtf8(source).toUpper();
    return said.replace("%N", "%n");
}

const Phrasebook &book()
{
    static const Phrasebook all({"met", "not met", "Customer", "Order %1 is ready.",
                                 "issued on %1 for order %2", "%1 is not met, because: %2",
                                 "%n runs were made", "%1 of them failed", "by %1", "%1 of %2",
                                 "%2 comes before %1, and %1 again", "Keep this.", "and",
                                 "The line is quiet: the balance says nothing of it", "%1, %2",
                                 "There is no “%1”", "is \"%1\"", "It fits the line of %1."},
                                inCapitals);
    return all;
}

} // namespace

class PhrasebookTest : public QObject
{
    Q_OBJECT

private slots:
    void saysWhatItKnowsAndLeavesTheRest_data()
    {
        QTest::addColumn<QString>("english");
        QTest::addColumn<QString>("said");
        const auto row = [](const char *english, const char *said) {
            QTest::newRow(english) << QString(english) << QString(said);
        };
        row("", "");
        row("met", "MET");
        row("Met", "MET");
        row("met.", "MET.");
        row("Mill Lane 4", "Mill Lane 4");
        row("Order 26-0001 is ready.", "ORDER 26-0001 IS READY.");
        row("issued on 4 May for order A-1", "ISSUED ON 4 May FOR ORDER A-1");
        row("3 runs were made, 2 of them failed.", "3 RUNS WERE MADE, 2 OF THEM FAILED.");
        // Sentences, lists, what stands behind a colon, in brackets, in lines.
        row("Keep this. Order 1 is ready. Mill Lane", "KEEP THIS. ORDER 1 IS READY. Mill Lane");
        row("Loop: met; SPID: not met", "Loop: MET; SPID: NOT MET");
        row("Loop (not met)", "Loop (NOT MET)");
        row("Customer\nMill Lane", "CUSTOMER\nMill Lane");
        row("Balance: The line is quiet: the balance says nothing of it.",
            "Balance: THE LINE IS QUIET: THE BALANCE SAYS NOTHING OF IT.");
        // A place holds what is read in the same way, and no second sentence.
        row("Loop is not met, because: Order 7 is ready.",
            "Loop IS NOT MET, BECAUSE: ORDER 7 IS READY.");
        // By a word or two nothing is known unless what stands beside them is.
        row("House of Commons", "House of Commons");
        row("2 of 3", "2 OF 3");
        row("by Kim Carver", "by Kim Carver");
        row("it stands by met", "it stands by met");
        // Twice the same place, in another order.
        row("b comes before a, and a again", "b COMES BEFORE a, AND a AGAIN");
        row("b comes before a, and c again", "b comes before a, and c again");
        // A form without a word of its own fits nothing.
        row("one, two", "one, two");
        // What was typed stands in quotation marks.
        row("Order 1 is ready. “Keep this.”", "ORDER 1 IS READY. “Keep this.”");
        row("Order met, not_met is ready.", "ORDER met, not_met IS READY.");
        row("There is no “met”", "THERE IS NO “met”");
        row("is \"not met\"", "IS \"not met\"");
        // A name with a full stop is no sentence, and what follows is one of its own.
        row("It fits the line of S. Lind.", "IT FITS THE LINE OF S. Lind.");
        row("It fits the line of 4. Keep this. Order 2 is ready.",
            "IT FITS THE LINE OF 4. KEEP THIS. ORDER 2 IS READY.");
    }
    void saysWhatItKnowsAndLeavesTheRest()
    {
        QFETCH(QString, english);
        QTEST(book().say(english), "said");
        QTEST(book().say(english), "said"); // and what it remembers
    }

    void whatWasTypedStays()
    {
        QCOMPARE(book().say("Customer", {"Customer"}), QString("Customer"));
        QCOMPARE(book().say("Customer: Customer"), QString("CUSTOMER: CUSTOMER"));
        QCOMPARE(book().say("by Kim Carver", {"Kim Carver"}), QString("BY Kim Carver"));
    }

    void aTextWithoutEndIsSaidInTime()
    {
        QString nested = "x";
        for (int i = 0; i < 2000; ++i)
            nested = QString("Order %1 is ready.").arg(nested);
        QVERIFY(!book().say(nested).isEmpty());
        QVERIFY(!book().say(QString("by met of ").repeated(500)).isEmpty());
        QVERIFY(!book().say(QString("met; ").repeated(5000)).isEmpty());
    }
};

QTEST_GUILESS_MAIN(PhrasebookTest)
#include "PhrasebookTest.moc"
