#include "app/desktop/screens/CertificateScreen.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"
#include "tests/support/Heard.h"
#include "tests/support/Jobs.h"

#include <QDropEvent>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

#include <sys/stat.h>

using namespace loopwright;

class CertificateScreenTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<CertificateScreen> m_screen;
    QTemporaryDir m_folder;
    QByteArray m_pdf;
    std::optional<IssuedCertificate> m_issued;

    QString write(const char *name, const QByteArray &bytes) const
    {
        QFile file(m_folder.filePath(name));
        if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
            qFatal("the temporary folder cannot be written");
        return file.fileName();
    }
    SignLine *line(const char *name) const
    {
        return m_screen->findChild<SignLine *>(QString("certificate.%1").arg(name));
    }
    QString certified() const
    {
        const auto *model = m_screen->findChild<QTableView *>("certificate.claims")->model();
        QStringList rows;
        for (int row = 0; row < model->rowCount(); ++row)
            rows << model->index(row, 0).data().toString() + ": " +
                        model->index(row, 1).data().toString();
        return rows.join('\n');
    }
    void drop(const QString &path)
    {
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(path)});
        QDragEnterEvent enter(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton,
                              Qt::NoModifier);
        QCoreApplication::sendEvent(m_screen.get(), &enter);
        QVERIFY(enter.isAccepted());
        QDropEvent event(QPointF(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(m_screen.get(), &event);
    }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>(false);
        Records &records = m_records->workplace().records();
        OrderFields fields = jobs::briFields();
        m_records->take(importOffices(
            records, "office,name,protocol_variant\nNORTH,North Street,ni2\n", {"offices.csv"}));
        QVERIFY(putOrder(records, fields, false));
        QVERIFY(importInstruments(records,
                                  "instrument,serial,kind,calibrated_on,calibration_due\n"
                                  "TS-4,S-1021,basic-rate test set,2025-09-01,2026-09-01\n",
                                  {"instruments.csv"}));
        QVERIFY(recordFile(records,
                           canonicalJson(jobs::record(jobs::order(fields), jobs::briFacts())),
                           "job.json"));
        const auto issued = issueCertificate(
            records, {"A-1001", Paper::A4, {}, [this](const CertificatePaper &made) {
                          m_pdf = made.pdf;
                          return Result<void>();
                      }});
        QVERIFY2(issued, issued ? "" : qPrintable(issued.error().text()));
        m_issued = *issued;
        m_screen = std::make_unique<CertificateScreen>(m_records->workplace());
        m_screen->resize(em(90), em(50));
        m_screen->show();
        QVERIFY(QTest::qWaitForWindowActive(m_screen.get()));
    }

    void cleanup()
    {
        m_screen.reset(); // before the lanes that it asks in
        m_records.reset();
    }

    void aDroppedFileIsHeldAgainstTheRecords()
    {
        drop(write("c.pdf", m_pdf));
        QTRY_COMPARE(line("verdict")->sign(), Status::Done);
        QVERIFY(line("verdict")->text().startsWith("Genuine."));
        QCOMPARE(line("standing")->sign(), Status::Done);
        QVERIFY2(certified().contains("Number: " + m_issued->number), qPrintable(certified()));
        QVERIFY(certified().contains("Circuit: C-77"));
        QVERIFY(certified().contains("Numbers: 217-555-0143, 217-555-0144"));
        QVERIFY(certified().contains("Exceptions: none"));
        QSignalSpy opened(m_screen.get(), &Screen::openOrder);
        m_screen->findChild<QPushButton *>("certificate.open")->click();
        QCOMPARE(opened.first().first().toString(), "A-1001");
    }

    void theVerdictIsSaidOfEachPaper()
    {
        Heard heard;
        for (int checked = 0; checked < 2; ++checked) {
            drop(write("c.pdf", m_pdf));
            QVERIFY(!line("verdict")->isVisible()); // that of the last one is gone
            QTRY_VERIFY(line("verdict")->isVisible());
            QCOMPARE(heard.take(),
                     (QStringList{line("verdict")->text(), line("standing")->text()}));
        }
        QSignalSpy read(m_screen->findChild<QTableView *>("certificate.claims")->model(),
                        &QAbstractItemModel::modelReset);
        m_screen->refresh();
        QTRY_VERIFY(!read.isEmpty());
        QCOMPARE(heard.take(), QStringList());
    }

    void typedFromThePaperByKeyboard()
    {
        m_screen->takeFocus();
        auto *number = qobject_cast<QLineEdit *>(QApplication::focusWidget());
        QVERIFY(number && number->objectName().contains("number"));
        QTest::keyClicks(number, m_issued->number.toLower());
        QTest::keyClick(number, Qt::Key_Return);
        QTest::keyClicks(QApplication::focusWidget(), m_issued->code);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
        QTRY_COMPARE(line("verdict")->sign(), Status::Done);
        QVERIFY(certified().contains(m_issued->digest));
    }

    void whatWasVoidedSinceIsToldWhenThePageIsShownAgain()
    {
        drop(write("c.pdf", m_pdf));
        QTRY_COMPARE(line("standing")->sign(), Status::Done);
        QVERIFY(voidFact(m_records->workplace().records(), jobs::uuid(4), "the wrong pair"));
        m_screen->refresh();
        QTRY_COMPARE(line("standing")->sign(), Status::Failed);
        QVERIFY(line("standing")->text().contains("the wrong pair"));
        QCOMPARE(line("verdict")->sign(), Status::Done); // the paper is true all the same
    }

    void anotherFileIsToldApart()
    {
        drop(write("altered.pdf", QByteArray(m_pdf).replace(2000, 1, "?")));
        QTRY_COMPARE(line("verdict")->sign(), Status::Failed);
        QVERIFY(line("verdict")->text().startsWith("Altered."));
        drop(write("hello.txt", "<b>hello</b><img src=\"file:///etc/hostname\">"));
        QTRY_COMPARE(line("verdict")->sign(), Status::Doubtful);
        QVERIFY(!m_screen->findChild<QTableView *>("certificate.claims")->isVisible());
        QVERIFY(!m_screen->findChild<QPushButton *>("certificate.open")->isVisible());
        m_screen->openFile(m_folder.path());
        QCOMPARE(line("verdict")->sign(), Status::Failed);
        QVERIFY(!line("standing")->isVisible());
    }

    /// A pipe would be waited for without end, with the window standing still.
    void whatIsNoFileIsNotOpened()
    {
        const QString pipe = m_folder.filePath("pipe.pdf"),
                      device = m_folder.filePath("device.pdf");
        QCOMPARE(::mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
        QVERIFY(QFile::link("/dev/null", device));
        for (const auto &[path, what] :
             {std::pair(pipe, "is a pipe"), std::pair(device, "is a device")}) {
            drop(path);
            QCOMPARE(line("verdict")->sign(), Status::Failed);
            QVERIFY2(line("verdict")->text().contains(path) &&
                         line("verdict")->text().contains(what),
                     qPrintable(line("verdict")->text()));
        }
    }

    void aHalfTypedPaperIsAskedFor()
    {
        m_screen->takeFocus();
        QTest::keyClicks(QApplication::focusWidget(), m_issued->number);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
        QTest::qWait(50);
        QVERIFY(!line("verdict")->isVisible());
    }
};

QTEST_MAIN(CertificateScreenTest)
#include "CertificateScreenTest.moc"
