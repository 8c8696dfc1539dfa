#include "app/actions/Keys.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/Maintenance.h"
#include "app/actions/Orders.h"
#include "app/actions/VerifyCertificate.h"
#include "app/print/PaperLanguage.h"
#include "core/certificate/CertificateNumber.h"
#include "db/Connection.h"
#include "db/EventStore.h"
#include "db/MetaStore.h"
#include "tests/support/Office.h"

#include <QJsonDocument>
#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class KeysTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<Records> m_records;

    KeyFolder folder(const QString &name = "keys") const
    {
        return KeyFolder(m_folder->filePath(name));
    }
    QString station() const { return *MetaStore(m_records->database()).station(); }
    std::vector<KnownKey> known() const
    {
        return knownKeys(*m_records).value_or(std::vector<KnownKey>());
    }
    Result<IssuedCertificate> issue() { return issueCertificate(*m_records, {"A-1001"}); }
    QString newestKind() const
    {
        return *m_records->database().connection().text(
            "SELECT kind FROM event ORDER BY log_position DESC LIMIT 1");
    }

    void reopen()
    {
        m_records = std::move(*Records::open(m_folder->filePath("r.sqlite")));
        m_records->actAs("Dana");
        m_records->setKeys(folder());
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_records = office(m_folder->filePath("r.sqlite"));
        m_records->setKeys(folder());
        QVERIFY(importOrders(*m_records, csv({briFields()}), {"orders.csv"}));
        QVERIFY(recordFile(*m_records, recordBytes(briFields(), briFacts()), "job.json"));
    }
    void theFirstCertificateMakesThem()
    {
        QVERIFY(known().empty());
        QVERIFY(!*signerAtHand(*m_records));
        const auto issued = issue();
        QVERIFY2(issued, issued ? "" : qPrintable(issued.error().text()));
        const auto keys = known();
        QCOMPARE(keys.size(), 2u);
        QVERIFY(keys[0].key.isIssuers() && keys[0].inUse && keys[0].here);
        QCOMPARE(keys[1].key.holder, station());
        QVERIFY(keys[1].inUse && keys[1].here);
        QVERIFY(isEndorsedBy(keys[0].key, keys[1].key));
        QVERIFY(issue());
        QCOMPARE(known().size(), 2u); // once
        const auto verdict = verifyHistory(*m_records);
        QVERIFY(verdict && verdict->broken.empty());
    }
    void whatIsRefusedMakesNone()
    {
        QVERIFY(cancelOrder(*m_records, "A-1001", "not wanted"));
        QVERIFY(!issue());
        QVERIFY(known().empty());
    }
    /// Nothing secret is in the records, nor in a backup of them.
    void theSecretStaysOutside()
    {
        QVERIFY(issue());
        QVERIFY(backupTo(*m_records, m_folder->filePath("backup.sqlite")));
        for (const KnownKey &each : known()) {
            const QByteArray seed = (*folder().find(each.key.fingerprint()))->seed();
            for (const char *name : {"r.sqlite", "r.sqlite-wal", "backup.sqlite"}) {
                QFile file(m_folder->filePath(name));
                if (!file.open(QIODevice::ReadOnly))
                    continue;
                const QByteArray bytes = file.readAll();
                QVERIFY(!bytes.contains(seed) && !bytes.contains(seed.toHex()));
            }
        }
    }
    void aLostKeyIsRenewedByASupervisor()
    {
        const auto first = issue();
        QVERIFY(first);
        const QString before = station();
        m_records->setKeys(folder("elsewhere"));
        const auto refused = issue();
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QVERIFY2(refused.error().message.contains("key renew"), qPrintable(refused.error().text()));
        QVERIFY(refused.error().message.contains(folder("elsewhere").path()));
        m_records->actAs("D4");
        QCOMPARE(renewKeys(*m_records, {false, "the laptop is gone"}).error().code,
                 ErrorCode::Refused);
        m_records->actAs("S1");
        QCOMPARE(renewKeys(*m_records, {false, " "}).error().code, ErrorCode::Usage);
        const auto renewed = renewKeys(*m_records, {false, "the laptop is gone"});
        QVERIFY2(renewed, renewed ? "" : qPrintable(renewed.error().text()));
        // Neither secret was here: both are new, and so is the station, for the old one may go on.
        QCOMPARE(renewed->made.size(), 2u);
        QVERIFY(station() != before);
        QCOMPARE(renewed->station, station());
        QCOMPARE(newestKind(), "keys_renewed");
        const auto keys = known();
        QCOMPARE(keys.size(), 4u);
        QVERIFY(!keys[0].inUse && !keys[0].here && !keys[1].inUse && keys[2].inUse &&
                keys[3].inUse);
        const auto verdict = verifyHistory(*m_records);
        QVERIFY(verdict);
        QVERIFY2(verdict->broken.empty(),
                 qPrintable(QString::fromUtf8(QJsonDocument(verdict->toJson()).toJson())));
        // A copy of what was certified before bears the old claims, and both keys.
        const auto copy = issue();
        QVERIFY2(copy, copy ? "" : qPrintable(copy.error().text()));
        QCOMPARE(copy->number, first->number);
        QCOMPARE(copy->mark.proof->claims, first->mark.proof->claims);
        QCOMPARE(copy->mark.proof->stations.size(), 2u);
    }
    void renewedInTime()
    {
        QVERIFY(issue());
        const QString before = station();
        const auto renewed = renewKeys(*m_records, {false, "in use for a year"});
        QVERIFY(renewed);
        QCOMPARE(renewed->made.size(), 1u);
        QCOMPARE(station(), before); // nobody else has the records
        QCOMPARE(renewed->made.front().endorsedBy, known()[0].key.fingerprint());
        const auto both = renewKeys(*m_records, {true, "somebody read them"});
        QVERIFY(both);
        QCOMPARE(both->made.size(), 2u);
        QCOMPARE(both->made[1].endorsedBy, both->made[0].fingerprint());
        // Whoever checks needs both keys of the issuer, and all of the station, its present one
        // last.
        const auto file = publicKeyFile(*m_records);
        QVERIFY(file);
        const auto keys = readPublicKeys(*file, "keys");
        QVERIFY(keys);
        QCOMPARE(keys->size(), 5u);
        QVERIFY((*keys)[0].isIssuers() && (*keys)[1].isIssuers() && !(*keys)[2].isIssuers());
        QCOMPARE(keys->back().bytes, both->made[1].bytes);
    }
    /// A paper that could not be written is made by the key of its day, though a newer one signs
    /// now; by the newer one, as a further copy, only if the older is gone.
    void aDuePaperOutlivesARenewal()
    {
        QByteArray lost, file;
        const auto full = [&lost](const CertificatePaper &made) -> Result<void> {
            lost = made.pdf;
            return failure(ErrorCode::DiskTrouble, "no space is left");
        };
        const auto written = [&file](const CertificatePaper &made) {
            file = made.pdf;
            return Result<void>();
        };
        QVERIFY(!issueCertificate(*m_records, {"A-1001", Paper::A4, {}, full}));
        QVERIFY(renewKeys(*m_records, {false, "in use for a year"}));
        const auto made = issueCertificate(*m_records, {"A-1001", Paper::A4, {}, written});
        QVERIFY2(made, made ? "" : qPrintable(made.error().text()));
        QVERIFY(!made->copy);
        QVERIFY(!lost.isEmpty());
        QCOMPARE(file, lost);
        QVERIFY(verifyCertificateFile(*m_records, file)->isGood());

        QVERIFY(!issueCertificate(*m_records, {"A-1001", Paper::A4, {}, full}));
        const auto stolen = renewKeys(*m_records, {false, "the laptop was stolen", true});
        QVERIFY2(stolen, stolen ? "" : qPrintable(stolen.error().text()));
        const auto copy = issueCertificate(*m_records, {"A-1001", Paper::A4, {}, written});
        QVERIFY2(copy, copy ? "" : qPrintable(copy.error().text()));
        QVERIFY(copy->copy);
        QVERIFY(file != lost);
        QVERIFY(verifyCertificateFile(*m_records, file)->isGood());
    }
    /// Given out by a window that speaks German; made again where English is spoken.
    void aDuePaperHasTheLanguageThatItHad()
    {
        QByteArray lost, file;
        {
            const PaperLanguageHere german(paperLanguageOf("de"));
            QVERIFY(!issueCertificate(
                *m_records,
                {"A-1001", Paper::A4, {}, [&lost](const CertificatePaper &made) -> Result<void> {
                     lost = made.pdf;
                     return failure(ErrorCode::DiskTrouble, "no space is left");
                 }}));
        }
        const auto made = issueCertificate(
            *m_records, {"A-1001", Paper::A4, {}, [&file](const CertificatePaper &again) {
                             file = again.pdf;
                             return Result<void>();
                         }});
        QVERIFY2(made, made ? "" : qPrintable(made.error().text()));
        QVERIFY(!made->copy && !lost.isEmpty());
        QCOMPARE(file, lost);
        QVERIFY(verifyCertificateFile(*m_records, file)->isGood());
    }
    void aStolenKeyIsRevoked()
    {
        QByteArray file;
        const auto issued = issueCertificate(
            *m_records, {"A-1001", Paper::A4, {}, [&file](const CertificatePaper &made) {
                             file = made.pdf;
                             return Result<void>();
                         }});
        QVERIFY(issued);
        const auto before = knownKeys(*m_records);
        const auto renewed = renewKeys(*m_records, {true, "the laptop was stolen", true});
        QVERIFY2(renewed, renewed ? "" : qPrintable(renewed.error().text()));
        const auto after = known();
        QCOMPARE(after.size(), 4u);
        QVERIFY(after[0].revokedAt && after[1].revokedAt && !after[2].revokedAt &&
                !after[3].revokedAt);
        QVERIFY(!after[0].toJson()["revoked"].isNull() && after[2].toJson()["revoked"].isNull());
        const auto exported = readPublicKeys(*publicKeyFile(*m_records), "keys");
        QCOMPARE(exported->size(), 2u);
        QCOMPARE((*exported)[0].bytes, renewed->made[0].bytes);
        // By the keys nobody can tell it from a thief's; by the records it is ours.
        QCOMPARE(toText(verifyByKeys(file, *exported).verdict), "unknown");
        QVERIFY(verifyCertificateFile(*m_records, file)->isGood());
        // Nor does the thief's own, for a number that was never given, fool the records.
        const auto thief = office();
        thief->setKeys(folder());
        QCOMPARE(toText(verifyCertificateFile(*thief, file)->verdict), "unknown");
        const auto verdict = verifyHistory(*m_records);
        QVERIFY(verdict && verdict->broken.empty());
    }
    /// The issuer's key is there, but not to be read: it is not made anew unasked.
    void anUnreadableIssuersKeyIsNotReplacedUnasked()
    {
        QVERIFY(issue());
        const QString path = folder().path() + '/' + known()[0].key.fingerprint() + ".key";
        QFile key(path);
        QVERIFY(key.open(QIODevice::WriteOnly | QIODevice::Truncate));
        key.close();
        const auto refused = renewKeys(*m_records, {false, "in use for a year"});
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QVERIFY2(refused.error().message.contains("make a new issuer's key too"),
                 qPrintable(refused.error().text()));
        QCOMPARE(known().size(), 2u);
        const auto asked = renewKeys(*m_records, {true, "in use for a year"});
        QVERIFY2(asked, asked ? "" : qPrintable(asked.error().text()));
        QCOMPARE(asked->made.size(), 2u);
    }
    void exportMakesThem()
    {
        const auto file = publicKeyFile(*m_records);
        QVERIFY2(file, file ? "" : qPrintable(file.error().text()));
        QCOMPARE(readPublicKeys(*file, "keys")->size(), 2u);
        QCOMPARE(newestKind(), "keys_made");
        QCOMPARE(*publicKeyFile(*m_records), *file);
    }
    void aRestoredStationHasAKeyOfItsOwn()
    {
        QVERIFY(issue());
        const QString before = station(), records = m_folder->filePath("r.sqlite");
        QVERIFY(backupTo(*m_records, m_folder->filePath("backup.sqlite")));
        m_records.reset();
        const auto kept = restoreFrom(m_folder->filePath("backup.sqlite"), records, {"S1"});
        QVERIFY2(kept, kept ? "" : qPrintable(kept.error().text()));
        m_records = std::move(*Records::open(records));
        m_records->actAs("Dana");
        m_records->setKeys(folder());
        QVERIFY(station() != before);
        QVERIFY(!*signerAtHand(*m_records));
        QVERIFY(recordFile(*m_records, recordBytes(briFields(), {detector(50, 60), run(51, 62)}),
                           "retest.json"));
        const auto issued = issue();
        QVERIFY2(issued, issued ? "" : qPrintable(issued.error().text()));
        QVERIFY2(issued->number.contains(station()), qPrintable(issued->number));
        QCOMPARE(known().size(), 3u);
        QCOMPARE(known()[2].key.endorsedBy, known()[0].key.fingerprint());
    }
    /// Who has a copy of the records from before the certificate in their place again.
    void anOlderCopyGivesNoNumberAgain()
    {
        const QString now = m_folder->filePath("r.sqlite"), old = m_folder->filePath("old.sqlite");
        QVERIFY(issue()); // the station has its keys
        m_records.reset();
        QVERIFY(QFile::copy(now, old));
        reopen();
        QVERIFY(recordFile(*m_records, recordBytes(briFields(), {detector(50, 60), run(51, 62)}),
                           "retest.json"));
        QByteArray file;
        const auto issued = issueCertificate(
            *m_records, {"A-1001", Paper::A4, {}, [&file](const CertificatePaper &made) {
                             file = made.pdf;
                             return Result<void>();
                         }});
        QVERIFY(issued);
        QCOMPARE(CertificateNumber::parse(issued->number)->sequence, 2);
        m_records.reset();
        QVERIFY(QFile::remove(now) && QFile::copy(old, now));
        reopen();
        const auto again = issue();
        QVERIFY(!again);
        QCOMPARE(again.error().code, ErrorCode::Refused);
        QVERIFY2(again.error().message.startsWith("These records are an older copy"),
                 qPrintable(again.error().message));
        const auto broken = [this](const Witnesses &witnesses) {
            QStringList told;
            const auto verdict = verifyHistory(*m_records, {}, witnesses);
            for (const BrokenLink &link : verdict->broken)
                told << link.what;
            return told.join('\n');
        };
        QVERIFY2(broken({}).contains("the log is shorter now"), qPrintable(broken({})));
        // On another machine the certificate itself is the witness: by its number.
        m_records->setKeys(folder("elsewhere"));
        QCOMPARE(broken({}), QString());
        const Witnesses paper{{}, witnessesIn(file, "c.pdf")->certificates};
        QCOMPARE(paper.certificates.size(), 1u);
        QCOMPARE(paper.certificates[0].claims.number, issued->number);
        QVERIFY2(broken(paper).contains("certificate " + issued->number + " was given by station"),
                 qPrintable(broken(paper)));
        // Restored as a station of its own it may go on.
        m_records->setKeys(folder());
        m_records.reset();
        QVERIFY(QFile::remove(now));
        QVERIFY(restoreFrom(old, now, {"S1"}));
        reopen();
        QVERIFY(recordFile(*m_records, recordBytes(briFields(), {detector(50, 60), run(51, 62)}),
                           "retest.json"));
        const auto anew = issue();
        QVERIFY2(anew, anew ? "" : qPrintable(anew.error().text()));
        QVERIFY(anew->number != issued->number);
    }
    void aHeadThatNobodySignedIsToldAsSuch()
    {
        QVERIFY(issue());
        SignedHead bare = *logHead(*m_records);
        bare.key.clear();
        bare.signature.clear();
        const auto verdict = verifyHistory(*m_records, {}, {{bare}, {}});
        QCOMPARE(verdict->broken.size(), 0u);
        QCOMPARE(verdict->witnessed.front().signedBy, QString());
        QVERIFY(verdict->witnessed.back().signedBy.startsWith("station ")); // the one that is kept
    }
    void headsAreSigned()
    {
        QVERIFY(logHead(*m_records)->signature.isEmpty());
        QVERIFY(issue());
        const auto head = logHead(*m_records);
        QVERIFY(head);
        QCOMPARE(head->key, known()[1].key.fingerprint());
        QVERIFY(isSignedBy(known()[1].key.bytes, head->head.text(), head->signature));
        QCOMPARE(verifyHistory(*m_records, {}, {{*head}, {}})->broken.size(), 0u);
        SignedHead forged = *head;
        forged.head.at = forged.head.at.plusSeconds(1);
        const auto verdict = verifyHistory(*m_records, {}, {{forged}, {}});
        QVERIFY(verdict && !verdict->broken.empty());
        QVERIFY(std::ranges::any_of(verdict->broken, [](const BrokenLink &link) {
            return link.what.contains("the signature does not fit");
        }));
    }
};

QTEST_MAIN(KeysTest)
#include "KeysTest.moc"
