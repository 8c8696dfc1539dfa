// What must hold for every SPID whatsoever; the single rules are in SpidTest.cpp.
#include "core/identifiers/Spid.h"

#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;

namespace {

// Digits that often come near a documented shape, so that properties reach the rules behind it.
rc::Gen<std::string> digitsNearShapes()
{
    return rc::gen::map(
        rc::gen::tuple(rc::gen::element<std::string>("", "01", "1", "0"),
                       rc::gen::element<std::string>("2175550143", "5550143", "2905550143",
                                                     "9115550143", "1555014", ""),
                       rc::gen::element<std::string>("", "0", "000", "0101", "0102", "01", "3401",
                                                     "0163", "063", "100", "62", "0100000000000")),
        [](const auto &parts) {
            return std::get<0>(parts) + std::get<1>(parts) + std::get<2>(parts);
        });
}

// What fingers and spreadsheets do to a good SPID.
std::string damaged(std::string spid, int how)
{
    const std::size_t zero = spid.find('0');
    switch (how) {
    case 0:
        return spid.replace(zero, 1, "O");
    case 1:
        return spid.replace(zero, 1, "\xEF\xBC\x90");
    case 2:
        return spid.substr(1);
    case 3:
        return spid.substr(0, spid.size() - 2);
    case 4:
        return spid.insert(1, 1, '.') + "E+" + std::to_string(spid.size() - 2);
    case 5:
        return spid + ".0";
    case 6:
        return spid.insert(0, 1, '\'');
    default:
        return spid;
    }
}

rc::Gen<std::string> damagedSpid()
{
    return rc::gen::map(
        rc::gen::pair(rc::gen::element<std::string>("21755501430101", "015550143000", "0155501430",
                                                    "2175550143100", "217555014302"),
                      rc::gen::inRange(0, 8)),
        [](const auto &pair) { return damaged(pair.first, pair.second); });
}

rc::Gen<std::string> anySpid()
{
    return rc::gen::oneOf(digitsNearShapes(), damagedSpid(),
                          rc::gen::container<std::string>(rc::gen::inRange('0', char('9' + 1))));
}

rc::Gen<QString> anyDn()
{
    return rc::gen::map(rc::gen::element<std::string>("", "217-555-0143", "555-0143", "12175550143",
                                                      "+1 217 555 0143", "217-555-0144",
                                                      "773-555-0143", "21755501430101", "x"),
                        [](const std::string &dn) { return QString::fromStdString(dn); });
}

const ProtocolVariant &anyVariant()
{
    const auto all = allVariants();
    return all[*rc::gen::inRange<std::size_t>(0, all.size())];
}

} // namespace

class SpidPropertiesTest : public QObject
{
    Q_OBJECT
private slots:
    void repairIsOkAndStable()
    {
        int repaired = 0;
        QVERIFY(rc::check("a repair is ok, offers no further repair and changes nothing when "
                          "applied again",
                          [&repaired] {
                              const auto texts =
                                  *rc::gen::container<std::vector<std::string>>(30, anySpid());
                              const QString dn = *anyDn();
                              for (const std::string &text : texts)
                                  for (const ProtocolVariant &variant : allVariants()) {
                                      const QString spid = QString::fromStdString(text);
                                      const SpidCheck check = checkSpid(variant, spid, dn);
                                      if (check.repair().isEmpty())
                                          continue;
                                      ++repaired;
                                      const SpidCheck again =
                                          checkSpid(variant, check.repair(), dn);
                                      RC_ASSERT(check.verdict() != "ok");
                                      RC_ASSERT(again.verdict() == "ok");
                                      RC_ASSERT(again.repair().isEmpty());
                                      RC_ASSERT(again.digits == check.repair());
                                  }
                          }));
        QVERIFY2(repaired > 20, qPrintable(QString("only %1 cases had a repair").arg(repaired)));
    }

    void separatorsNeverChangeTheVerdict()
    {
        QVERIFY(rc::check("separators never change the verdict", [] {
            const ProtocolVariant &variant = anyVariant();
            const QString spid = QString::fromStdString(*anySpid());
            const QString dn = *anyDn();
            static const QString separators = QString::fromUtf8(" \t\xC2\xA0-\xE2\x80\x93.()");
            QString spaced;
            for (const QChar c : spid) {
                for (int n = *rc::gen::inRange(0, 3); n > 0; --n)
                    spaced += separators[*rc::gen::inRange(0, int(separators.size()))];
                spaced += c;
            }
            RC_ASSERT(checkSpid(variant, spaced, dn).verdict() ==
                      checkSpid(variant, spid, dn).verdict());
        }));
    }

    void partsCoverTheDigits()
    {
        QVERIFY(rc::check("parts cover the digits from left to right", [] {
            const SpidCheck check = checkSpid(anyVariant(), QString::fromStdString(*anySpid()));
            QString joined;
            for (const SpidPart &part : check.parts) {
                RC_ASSERT(part.from == joined.size());
                RC_ASSERT(part.length == part.digits.size());
                joined += part.digits;
            }
            RC_ASSERT(joined == check.digits);
        }));
    }

    void noBytesCrash()
    {
        QVERIFY(rc::check("any text has a verdict", [] {
            const auto bytes = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
            const auto more = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
            const QString text = *rc::gen::arbitrary<bool>()
                                     ? QString::fromUtf8(bytes.data(), qsizetype(bytes.size()))
                                     : QString::fromLatin1(bytes.data(), qsizetype(bytes.size()));
            const SpidCheck check = checkSpid(anyVariant(), text, QString::fromStdString(more));
            RC_ASSERT(QStringList({"ok", "warning", "error"}).contains(check.verdict()));
        }));
    }
};

QTEST_APPLESS_MAIN(SpidPropertiesTest)
#include "SpidPropertiesTest.moc"
