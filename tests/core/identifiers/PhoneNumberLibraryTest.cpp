// Directory numbers against libphonenumber over generated numbers of twenty countries. If the
// two disagree, tests/data/identifiers/phone-number-disagreements.csv says so and why; a
// disagreement that is not listed fails, and so does a row that no longer holds.
#include "core/base/Csv.h"
#include "core/identifiers/CountryCodes.h"
#include "core/identifiers/DirectoryNumber.h"

#include <QFile>
#include <QMap>
#include <QTest>

#include <phonenumbers/phonenumberutil.h>
#include <random>

using namespace loopwright;
using i18n::phonenumbers::PhoneNumber;
using i18n::phonenumbers::PhoneNumberUtil;

namespace {

const char *const regions[] = {"US", "CA", "GB", "IE", "FR", "DE", "NL", "BE", "CH", "AT",
                               "IT", "ES", "SE", "NO", "DK", "PL", "CZ", "JP", "AU", "NZ"};
constexpr int numbersPerRegion = 2000;

const PhoneNumberUtil &library()
{
    return *PhoneNumberUtil::GetInstance();
}

QString digitsOf(const QString &text)
{
    QString digits;
    for (const QChar c : text)
        if (c.isDigit())
            digits += c;
    return digits;
}

struct Opinions
{
    QString oursVerdict;
    QString oursKey;
    QString oursShown;
    QString theirsVerdict; ///< "valid", "possible", "not possible"
    QString theirsKey;     ///< E.164 form
    QString theirsShown;   ///< international form
};

// Japan and Australia have prefixes of their own for international numbers, hence their variants.
const ProtocolVariant &variantIn(const std::string &region)
{
    static const QMap<std::string, QStringView> own{
        {"US", u"ni1"}, {"CA", u"ni1"}, {"JP", u"ins64"}, {"AU", u"ts013"}};
    return *findVariant(own.value(region, u"dss1"));
}

Opinions opinionsOf(const std::string &region, const QString &typed)
{
    Opinions result;
    const std::string country = std::to_string(library().GetCountryCodeForRegion(region));
    const ProtocolVariant &variant = variantIn(region);
    const auto check = checkDirectoryNumber(variant, typed, {"", QString::fromStdString(country)});
    result.oursVerdict = check.verdict();
    result.oursKey = check.number.isNull() ? QString() : check.number.assignmentKey();
    result.oursShown = check.number.isNull() ? QString() : check.number.international();

    PhoneNumber number;
    result.theirsVerdict = "not possible";
    if (library().Parse(typed.toStdString(), region, &number) != PhoneNumberUtil::NO_PARSING_ERROR)
        return result;
    std::string text;
    library().Format(number, PhoneNumberUtil::E164, &text);
    result.theirsKey = QString::fromStdString(text);
    library().Format(number, PhoneNumberUtil::INTERNATIONAL, &text);
    result.theirsShown = QString::fromStdString(text);
    if (library().IsValidNumber(number))
        result.theirsVerdict = "valid";
    else if (library().IsPossibleNumber(number))
        result.theirsVerdict = "possible";
    return result;
}

/// The kinds of disagreement on one number; empty if both agree.
QStringList disagreements(const Opinions &opinions)
{
    QStringList kinds;
    const bool accepted = opinions.oursVerdict != "error";
    if (accepted != (opinions.theirsVerdict != "not possible"))
        kinds << (accepted ? "accepts_what_is_not_possible" : "refuses_what_is_possible");
    if (!accepted && opinions.theirsVerdict == "valid")
        kinds << "refuses_what_is_valid";
    if (accepted && opinions.theirsVerdict == "valid") {
        if (opinions.oursKey != opinions.theirsKey)
            kinds << "stores_another_number";
        if (opinions.oursShown != opinions.theirsShown)
            kinds << "groups_otherwise";
        if (digitsOf(opinions.oursShown) != digitsOf(opinions.theirsShown))
            kinds << "shows_another_number";
    }
    return kinds;
}

/// A number of a region as somebody may type it: near one of the library's own examples, or any
/// digits; with country code, or as it is dialled inside the country.
class Generator
{
public:
    explicit Generator(const std::string &region)
        : m_region(region)
        , m_random(20260)
    {
        library().GetNddPrefixForRegion(region, true, &m_trunkPrefix);
        for (const auto type :
             {PhoneNumberUtil::FIXED_LINE, PhoneNumberUtil::MOBILE, PhoneNumberUtil::TOLL_FREE}) {
            PhoneNumber number;
            std::string text;
            if (library().GetExampleNumberForType(region, type, &number)) {
                library().GetNationalSignificantNumber(number, &text);
                m_examples.push_back(text);
            }
        }
    }

    QString next()
    {
        std::string national;
        if (below(4) == 0) {
            for (int n = 4 + below(9); n > 0; --n)
                national += char('0' + below(10));
        } else {
            national = m_examples[std::size_t(below(int(m_examples.size())))];
            for (std::size_t i = national.size() - std::size_t(1 + below(7)); i < national.size();
                 ++i)
                national[i] = char('0' + below(10));
        }
        const QString country = QString::number(library().GetCountryCodeForRegion(m_region));
        const QString number = QString::fromStdString(national);
        return below(2) == 0 ? QString("+%1 %2").arg(country, number)
                             : QString::fromStdString(m_trunkPrefix) + number;
    }

private:
    int below(int n) { return int(m_random() % unsigned(n)); }

    std::string m_region;
    std::string m_trunkPrefix;
    std::vector<std::string> m_examples;
    std::mt19937 m_random;
};

const CsvTable &listed()
{
    static const CsvTable table = [] {
        QFile file(LOOPWRIGHT_SOURCE_DIR "/tests/data/identifiers/phone-number-disagreements.csv");
        if (!file.open(QIODevice::ReadOnly))
            qFatal("%s", qPrintable(file.errorString()));
        return readCsv(file.readAll(), "phone-number-disagreements.csv",
                       {{"region", "kind", "example", "ours", "theirs", "explanation"}, {}, {}})
            .value();
    }();
    return table;
}

QString oursIn(const Opinions &opinions)
{
    return opinions.oursVerdict + ' ' + opinions.oursShown;
}

QString theirsIn(const Opinions &opinions)
{
    return opinions.theirsVerdict + ' ' + opinions.theirsShown;
}

} // namespace

class PhoneNumberLibraryTest : public QObject
{
    Q_OBJECT
private slots:
    void disagreesOnlyAsListed_data()
    {
        QTest::addColumn<QString>("region");
        for (const char *region : regions)
            QTest::newRow(region) << region;
    }
    void disagreesOnlyAsListed()
    {
        QFETCH(QString, region);
        QMap<QString, QString> seen; // kind -> first example as a row of the list
        Generator generator(region.toStdString());
        for (int n = 0; n < numbersPerRegion; ++n) {
            const QString typed = generator.next();
            const Opinions opinions = opinionsOf(region.toStdString(), typed);
            for (const QString &kind : disagreements(opinions))
                if (!seen.contains(kind))
                    seen[kind] = QString::fromUtf8(
                        csvRecord({region, kind, typed, oursIn(opinions), theirsIn(opinions), ""}));
        }
        QStringList kinds;
        for (const CsvRow &row : listed().rows)
            if (listed().value(row, "region") == region)
                kinds << listed().value(row, "kind");
        QStringList unlisted;
        for (auto it = seen.cbegin(); it != seen.cend(); ++it)
            if (!kinds.contains(it.key()))
                unlisted << it.value();
        QVERIFY2(unlisted.isEmpty(), qPrintable("not listed:\n" + unlisted.join(QString())));
        for (const QString &kind : kinds)
            QVERIFY2(seen.contains(kind), qPrintable("no longer seen: " + kind));
    }

    void listedExamplesHold()
    {
        for (const CsvRow &row : listed().rows) {
            const auto value = [&row](const char *name) { return listed().value(row, name); };
            const Opinions opinions = opinionsOf(value("region").toStdString(), value("example"));
            QVERIFY2(disagreements(opinions).contains(value("kind")),
                     qPrintable(QString("row %1").arg(row.line)));
            QCOMPARE(oursIn(opinions).trimmed(), value("ours"));
            QCOMPARE(theirsIn(opinions).trimmed(), value("theirs"));
            QVERIFY(!value("explanation").isEmpty());
        }
    }

    void countryCodes()
    {
        std::set<std::string> all;
        library().GetSupportedRegions(&all);
        for (const std::string &region : all) {
            const QString code = QString::number(library().GetCountryCodeForRegion(region));
            QCOMPARE(countryCodeLength(QString(code + "5550100")), int(code.size()));
        }
    }

    void trunkZero()
    {
        std::set<std::string> all;
        library().GetSupportedRegions(&all);
        for (const std::string &region : all) {
            const int code = library().GetCountryCodeForRegion(region);
            std::string main;
            std::string prefix;
            library().GetRegionCodeForCountryCode(code, &main);
            library().GetNddPrefixForRegion(region, true, &prefix);
            if (main == region)
                QCOMPARE(dialsZeroInside(QString::number(code)), prefix == "0");
        }
    }
};

QTEST_APPLESS_MAIN(PhoneNumberLibraryTest)
#include "PhoneNumberLibraryTest.moc"
