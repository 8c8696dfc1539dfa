// Certificates that a van brings: its own, with the issues that its history tells of, and no
// others.

#include "app/actions/VerifyCertificate.h"
#include "app/trust/BundleFile.h"
#include "core/base/Json.h"
#include "core/certificate/CertificateNumber.h"
#include "db/CertificateStore.h"
#include "tests/support/Vans.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

class VanCertificatesTest : public QObject
{
    Q_OBJECT

    using Orders = std::vector<BundledOrder>;

    std::unique_ptr<Site> m_office, m_van;
    const QByteArray m_forged = "a file that nobody issued";

    Site &office() { return *m_office; }
    Site &van() { return *m_van; }

    static QByteArray issue(Site &site, const Signatures &signatures = {})
    {
        QByteArray pdf;
        good(issueCertificate(*site.records,
                              {"A-1001", Paper::A4, signatures, [&pdf](const auto &paper) {
                                   pdf = paper.pdf;
                                   return Result<void>();
                               }}));
        return pdf;
    }
    static QString numberOf(Site &site) { return site.show().certificates.back().number; }
    static QJsonObject note() { return fact(90, "note", 60, {{"text", "label on the NT"}}); }

    void work()
    {
        van().open(take(office(), {"A-1001"}));
        van().record(briFields(), briFacts());
    }
    bool isGenuine(const QByteArray &file)
    {
        return good(verifyCertificateFile(*office().records, file)).verdict ==
               CertificateVerdict::Genuine;
    }

    /// What the van brings, changed, and signed by its own key.
    QByteArray changed(const std::function<void(Orders &)> &change)
    {
        auto file = readBundle(van().bring(true), "b");
        change(file->bundle.orders);
        const auto key = van().records->keys().find(file->key);
        return signedBundle(file->bundle, **key).bytes();
    }
    static BundledOrder &entryOf(Orders &orders, const QString &order)
    {
        return *std::ranges::find(orders, order, &BundledOrder::number);
    }
    BundledIssue forgedIssue(const Moment &at) const { return {sha256Hex(m_forged), "a4", at}; }
    /// Byte for byte as the site has it, and with a forged issue more.
    BundledCertificate withOneIssueMore(Site &site, const QString &number) const
    {
        const CertificateStore store(site.records->database());
        const auto stored = good(store.find(number));
        BundledCertificate certificate{number,         stored->decision,
                                       stored->at,     canonicalJson(stored->content),
                                       stored->claims, {}};
        for (const CertificateIssue &each : good(store.issuesOf(number)))
            certificate.issues.push_back({each.fileSha256, each.paper, each.at});
        certificate.issues.push_back(forgedIssue(stored->at));
        return certificate;
    }
    /// The van's history tells of it, too: the van can write there what it likes.
    static void bringSealed(BundledOrder &entry, const BundledCertificate &certificate)
    {
        const QString &number = certificate.number;
        std::vector<Seal> seals{{"certificate", number, sha256Hex(certificate.content)}};
        for (const BundledIssue &each : certificate.issues)
            seals.push_back({"certificate_issue", QString("%1/%2").arg(number).arg(seals.size()),
                             each.fileSha256});
        Event &last = entry.events.back().event;
        last.addSeals(seals);
        last.digest = last.computedDigest();
        entry.certificates = {certificate};
    }

    JoinedOrder received(const QByteArray &bundle, const QString &order = "A-1001")
    {
        const TakenBundle taken = office().receive(bundle);
        const auto found = std::ranges::find(taken.orders, order, &JoinedOrder::order);
        if (found == taken.orders.end())
            qFatal("%s: %s", qPrintable(taken.code), qPrintable(taken.reason));
        return *found;
    }
    void refuses(const QByteArray &bundle, const QString &order, const QString &why)
    {
        const JoinedOrder refused = received(bundle, order);
        QCOMPARE(refused.code, QString("broken_chain"));
        QVERIFY2(refused.reason.contains(why), qPrintable(refused.reason));
        QVERIFY(!isGenuine(m_forged));
    }

private slots:
    void init()
    {
        m_office = std::make_unique<Site>(true);
        m_van = std::make_unique<Site>(false);
        good(importOrders(*office().records, csv({briFields(), analogFields()}), {"o.csv"}));
        join(office(), van());
    }
    void cleanup()
    {
        QCOMPARE(office().faults(), QStringList());
        QCOMPARE(van().faults(), QStringList());
    }

    /// Nor can the office be kept from giving its own numbers out.
    void whatTheVanNeverIssuedIsRefused_data()
    {
        QTest::addColumn<QString>("why");
        QTest::newRow("an issue more") << "No event of the van tells of issue 2 of certificate 26-";
        QTest::newRow("the office's number") << "whose number is that of another station";
        QTest::newRow("another van's number") << "whose number is that of another station";
        QTest::newRow("another number of its own") << "No event of the van tells of a certificate";
        QTest::newRow("no number") << "with the number \"26\", which is none";
        QTest::newRow("a number as typed") << "which is none";
    }
    void whatTheVanNeverIssuedIsRefused()
    {
        QFETCH(QString, why);
        const QString what = QTest::currentDataTag();
        Site other(false);
        join(office(), other, "van-8");
        work();
        const QByteArray pdf = issue(van());
        const auto last = [](Site &site) {
            return CertificateNumber{2026, site.tag(), CertificateNumber::mostSequence}.text();
        };
        const QHash<QString, QString> numbers{{"the office's number", last(office())},
                                              {"another van's number", last(other)},
                                              {"another number of its own", last(van())},
                                              {"no number", "26"},
                                              {"a number as typed", numberOf(van()).remove(u'-')}};
        refuses(changed([&](Orders &orders) {
                    BundledCertificate &brought = orders.front().certificates.front();
                    brought.number = numbers.value(what, brought.number);
                    if (!numbers.contains(what))
                        brought.issues.push_back(forgedIssue(brought.at));
                }),
                "A-1001", why);
        QVERIFY(office().show().facts.empty());
        const CertificateStore store(office().records->database());
        QCOMPARE(good(store.nextSequence(2026, office().tag())), 1);
        QCOMPARE(received(van().bring(true)).code, QString());
        QVERIFY(isGenuine(pdf));
    }

    /// Whatever the van's history tells of it.
    void noVanAddsToTheOfficesCertificate()
    {
        office().record(briFields(), briFacts());
        office().at("2026-03-04T19:00:00-06:00");
        const QByteArray pdf = issue(office());
        van().open(take(office(), {"A-1001"}));
        van().record(briFields(), {note()});
        const QString number = numberOf(office());
        refuses(changed([&](Orders &orders) {
                    bringSealed(orders.front(), withOneIssueMore(office(), number));
                }),
                "A-1001", "whose number is that of another station");
        QVERIFY(isGenuine(pdf));
        QCOMPARE(received(van().bring(true)).code, QString());
    }

    /// The other order is of another circuit, whose history the certificate is no part of.
    void aCertificateStaysWithItsOrder()
    {
        van().open(take(office(), {"A-1001", "A-2001"}));
        van().record(briFields(), briFacts());
        issue(van());
        office().receive(van().bring(true));
        van().record(analogFields(), {note()});
        const QString number = numberOf(van());
        refuses(changed([&](Orders &orders) {
                    bringSealed(entryOf(orders, "A-2001"), withOneIssueMore(van(), number));
                }),
                "A-2001", "here it is that of order A-1001");
        QCOMPARE(received(van().bring(true), "A-2001").code, QString());
    }

    /// Its first issue is told of by what is here already.
    void whatIsSignedLaterComesLater()
    {
        work();
        const QByteArray first = issue(van());
        const QByteArray before = van().bring(true);
        QCOMPARE(received(before).code, QString());
        const QByteArray later = issue(van(), {{"customer",
                                                "Alex Customer",
                                                *Moment::parse(u"2026-03-04T20:00:00-06:00"),
                                                {{{200, 700}, {900, 250}}}}});
        const JoinedOrder joined = received(van().bring(true, readBundle(before, "b")->id));
        QCOMPARE(joined.code, QString());
        QCOMPARE(joined.certificates, QStringList()); // none that is new
        QVERIFY(isGenuine(first) && isGenuine(later));
    }

    /// It tells its whole history under the new tag, and goes on with what it issued under the one
    /// before. Only the name says that it is the same van.
    void aVanWithANewTagBringsItsEarlierCertificates_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("code");
        QTest::newRow("the same van") << "van-7" << QString();
        QTest::newRow("another") << "van-9"
                                 << "broken_chain";
    }
    void aVanWithANewTagBringsItsEarlierCertificates()
    {
        QFETCH(QString, name);
        QFETCH(QString, code);
        work();
        const QByteArray first = issue(van());
        QCOMPARE(received(van().bring(true)).code, QString());
        const QString tag = van().tag();
        van().records->setKeys(KeyFolder(van().file("new keys")));
        van().records->actAs("S1");
        good(renewKeys(*van().records, {false, "the machine with the old one is gone"}));
        van().records->actAs("K7");
        QVERIFY(van().tag() != tag);
        good(addVan(*office().records, name, good(publicKeyFile(*van().records)), "van.key", true));
        QCOMPARE(van().open(take(office(), {"A-2001"}, name)).verdict, BundleVerdict::Taken);
        const QByteArray copy = issue(van());
        const JoinedOrder joined = received(van().bring(true));
        QCOMPARE(joined.code, code);
        QCOMPARE(joined.certificates, QStringList());
        QVERIFY(isGenuine(first));
        QCOMPARE(isGenuine(copy), code.isEmpty());
    }
};

QTEST_MAIN(VanCertificatesTest)
#include "VanCertificatesTest.moc"
