#include "app/print/PdfSeal.h"

#include "app/print/CertificateDocument.h"
#include "app/print/PdfFile.h"
#include "tests/support/Certificates.h"

#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

class PdfSealTest : public QObject
{
    Q_OBJECT

    const QByteArray m_signature = QByteArray(86, 'S');
    QByteArray m_plain, m_text;

    QByteArray sealed(const QByteArray &pdf)
    {
        return *sealedPdf(pdf, "0011", [this](const QByteArray &text) {
            m_text = text;
            return m_signature;
        });
    }

private slots:
    void initTestCase()
    {
        const auto content = certificates::bri();
        const auto made = certificatePaper(
            content, {0, content.issuedAt, false, {}, certificates::proof(content)}, Paper::A4);
        QVERIFY(made);
        m_plain = made->pdf;
    }
    void readBack()
    {
        const QByteArray file = sealed(m_plain);
        const auto seal = sealOf(file);
        QVERIFY(seal);
        QCOMPARE(seal->key, "0011");
        QCOMPARE(seal->signature, m_signature);
        QCOMPARE(seal->text, m_text);
        QVERIFY(m_text.contains(sha256Hex(m_plain).toUtf8()));
        QVERIFY(!sealOf(m_plain));
    }
    /// It is a PDF as before, to a program that knows nothing of seals.
    void staysAPdf()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath("sealed.pdf");
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly) && file.write(sealed(m_plain)) > 0);
        file.close();
        const auto checked = certificates::run("qpdf", {"--check", path});
        QVERIFY2(checked.status == 0, checked.text);
        QVERIFY(certificates::run("pdftotext", {path, "-"}).text.contains("Line certificate"));
        QCOMPARE(readPdf(sealed(m_plain)).attachment("record.json"),
                 readPdf(m_plain).attachment("record.json"));
        QVERIFY(!readPdf(m_plain).attachment("record.json").isEmpty());
    }
    void everyByteCounts()
    {
        const QByteArray file = sealed(m_plain);
        for (qsizetype at = 0; at < file.size(); at += 53) {
            QByteArray changed = file;
            changed[at] = char(changed[at] ^ 1);
            const auto seal = sealOf(changed);
            QVERIFY2(!seal || seal->text != m_text || seal->signature != m_signature ||
                         seal->key != "0011",
                     qPrintable(QString::number(at)));
        }
    }
    void nothingIsAddedUnnoticed()
    {
        const QByteArray file = sealed(m_plain);
        for (const QByteArray &more :
             QByteArrayList{file + '\n', file + "startxref\n0\n%%EOF\n", "\n" + file, sealed(file),
                            QByteArray(file).insert(1000, ' ')}) {
            const auto seal = sealOf(more);
            QVERIFY(!seal || seal->text != sealOf(file)->text);
        }
    }
    void noPdf()
    {
        QVERIFY(!sealedPdf("hello", "0011", [](const QByteArray &) { return QByteArray(); }));
        for (const char *bad : {"", "startxref\n", "%Signature over all other bytes: ",
                                "%Signature over all other bytes: startxref\n",
                                "%Signature over all other bytes: a b\nc\nstartxref\n",
                                "%Signature over all other bytes: a bstartxref\n"})
            QVERIFY2(!sealOf(bad), bad);
    }
};

QTEST_MAIN(PdfSealTest)
#include "PdfSealTest.moc"
