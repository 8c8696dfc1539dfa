#include "core/errortest/CaptureReference.h"

#include <QTest>

#include <random>

using namespace loopwright;

namespace {

/// The octets of `seconds` seconds of the pattern, bit by bit, from phase 0 on after `skip` bits.
QByteArray octetsOf(Pattern pattern, OctetUse use, bool complement, quint32 skip, int octets)
{
    pattern.inverted = false;
    PatternRegister source(pattern, pattern.period());
    for (quint32 i = 0; i < skip; ++i)
        source.next();
    QByteArray out;
    for (int i = 0; i < octets; ++i) {
        uchar octet = 0;
        for (int bit = 0; bit < use.bitsPerOctet(); ++bit)
            if (source.next() != complement)
                octet |= uchar(use.order == BitOrder::MsbFirst ? 0x80 >> bit : 1 << bit);
        out += char(octet);
    }
    return out;
}

} // namespace

class CaptureReferenceTest : public QObject
{
    Q_OBJECT
private slots:
    void givesTheRegistersOctets_data()
    {
        QTest::addColumn<int>("pattern");
        QTest::addColumn<bool>("lsb");
        QTest::addColumn<bool>("seven");
        QTest::addColumn<bool>("complement");
        for (int pattern = 0; pattern < int(patterns().size()); ++pattern)
            for (const bool lsb : {false, true})
                for (const bool seven : {false, true})
                    for (const bool complement : {false, true})
                        QTest::addRow("%s%s%s%s", patterns()[std::size_t(pattern)].name,
                                      lsb ? " lsb" : "", seven ? " seven" : "",
                                      complement ? " complement" : "")
                            << pattern << lsb << seven << complement;
    }
    void givesTheRegistersOctets()
    {
        QFETCH(int, pattern);
        QFETCH(bool, lsb);
        QFETCH(bool, seven);
        QFETCH(bool, complement);
        const OctetUse use{lsb ? BitOrder::LsbFirst : BitOrder::MsbFirst, seven};
        const PatternPhase phase(patterns()[std::size_t(pattern)]);
        for (const int words : {1000, 2000}) {
            CaptureReference reference(phase, use, complement, words);
            for (const quint32 start : {0u, 1u, 333u, phase.period() - 1, 500'000u}) {
                const quint32 from = start % phase.period();
                reference.seek(from);
                QByteArray made;
                for (int second = 0; second < 3; ++second)
                    made += QByteArray(reinterpret_cast<const char *>(reference.nextSecond()),
                                       8 * words);
                const QByteArray expected =
                    octetsOf(phase.pattern(), use, complement, from, 24 * words);
                const quint64 mask = use.nativeMask();
                for (qsizetype i = 0; i < made.size(); ++i)
                    if ((uchar(made[i]) ^ uchar(expected[i])) & mask & 0xff)
                        QFAIL(qPrintable(QString("octet %1 from phase %2").arg(i).arg(from)));
                const quint64 bits = quint64(3 * words) * quint64(use.bitsPerWord());
                QCOMPARE(reference.phase(), quint32((from + bits) % phase.period()));
            }
        }
    }

    void packsAndUnpacks()
    {
        std::mt19937_64 random(3);
        for (const BitOrder order : {BitOrder::MsbFirst, BitOrder::LsbFirst})
            for (const bool seven : {false, true}) {
                const OctetUse use{order, seven};
                for (int i = 0; i < 1000; ++i) {
                    const quint64 native = random();
                    QCOMPARE(use.unpack(use.pack(native)), native & use.nativeMask());
                    const quint64 packed = random() & (seven ? ~quint64(0xff) : ~quint64(0));
                    QCOMPARE(use.pack(use.unpack(packed)), packed);
                }
            }
    }
};

QTEST_APPLESS_MAIN(CaptureReferenceTest)
#include "CaptureReferenceTest.moc"
