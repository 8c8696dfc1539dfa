#include "core/identifiers/DirectoryNumber.h"

#include "core/identifiers/CountryCodes.h"
#include "core/identifiers/Digits.h"
#include "core/identifiers/Nanp.h"
#include "core/identifiers/SpellingTrouble.h"

namespace loopwright {

namespace {

constexpr int shortest = 3;
constexpr int longest = 15; // E.164 6.1, with the country code

Finding finding(Severity severity, const char *code, const Text &reason)
{
    return {severity, QString::fromLatin1(code), reason, QString(), "dn", 0};
}

// Groups of three, the last of up to four.
QString inGroups(const QString &digits)
{
    QStringList groups;
    qsizetype at = 0;
    for (; digits.size() - at > 4; at += 3)
        groups << digits.mid(at, 3);
    groups << digits.mid(at);
    return groups.join(' ');
}

/// A number on its way from what was typed to what is stored.
struct Reading
{
    const ProtocolVariant &variant;
    const NumberHome &home;
    bool plus = false;
    QString digits;
    DirectoryNumberCheck check{};

    void note(const char *code, const Text &reason)
    {
        check.findings.push_back(finding(Severity::Note, code, reason));
    }
    void warn(const char *code, const Text &reason)
    {
        check.findings.push_back(finding(Severity::Warning, code, reason));
    }
    void refuse(const char *code, const Text &reason)
    {
        check.findings.push_back(finding(Severity::Error, code, reason));
    }
};

void readCode(Reading &reading, const char *code, const Text &name, const QString &digits,
              NanpFault fault)
{
    if (fault == NanpFault::FirstDigit)
        reading.refuse(code,
                       Text(QT_TRANSLATE_NOOP("core", "%1 %2 cannot be, it begins with 2 to 9"))
                           .arg(name)
                           .arg(digits));
    else if (fault == NanpFault::ServiceCode)
        reading.refuse(code,
                       Text(QT_TRANSLATE_NOOP("core", "%1 %2 cannot be, it is a service number"))
                           .arg(name)
                           .arg(digits));
    else if (fault == NanpFault::Held)
        reading.warn(
            "dn_area_code_held",
            Text(QT_TRANSLATE_NOOP(
                     "core",
                     "%1 %2 is held for expansion and not given out: confirm it with the provider"))
                .arg(name)
                .arg(digits));
}

void checkNanp(Reading &reading, const QString &digits)
{
    const std::string text = digits.toStdString();
    const std::string_view view = text;
    if (view.size() == 10)
        readCode(reading, "dn_area_code", QT_TRANSLATE_NOOP("core", "Area code"), digits.left(3),
                 areaCodeFault(view.substr(0, 3)));
    readCode(reading, "dn_office_code", QT_TRANSLATE_NOOP("core", "Office code"),
             digits.right(7).left(3), officeCodeFault(view.substr(view.size() - 7, 3)));
    if (const char *why = view.size() == 10 ? whyNoAreaOfLines(view.substr(0, 3)) : nullptr)
        reading.warn(
            "dn_area_code_set_aside",
            Text(QT_TRANSLATE_NOOP("core", "Area code %1 %2: confirm it with the provider"))
                .arg(digits.left(3))
                .arg(Text(why)));
    if (const char *why =
            whyNoOfficeOfLines(view.substr(view.size() - 7, 3), view.substr(view.size() - 4)))
        reading.warn(
            "dn_office_code_set_aside",
            Text(QT_TRANSLATE_NOOP("core", "Office code %1 %2: confirm it with the provider"))
                .arg(digits.right(7).left(3))
                .arg(Text(why)));
    reading.check.number = {"1", digits};
}

void readNanp(Reading &reading)
{
    QString digits = reading.digits;
    if (reading.plus && !digits.startsWith(u'1')) {
        reading.refuse(
            "dn_country",
            QT_TRANSLATE_NOOP("core", "A line of North America has a number of country code 1"));
        return;
    }
    if (reading.plus || (digits.size() == 11 && digits.startsWith(u'1')))
        digits.remove(0, 1);
    if (digits.size() == 7 && !reading.plus) {
        if (reading.home.areaCode.size() == 3) {
            digits.prepend(reading.home.areaCode);
            reading.note(
                "dn_completed",
                Text(QT_TRANSLATE_NOOP("core", "Completed with the line's area code to %1"))
                    .arg(DirectoryNumber{"1", digits}.shown()));
        } else {
            reading.warn(
                "dn_area_code_missing",
                QT_TRANSLATE_NOOP("core", "7 digits without area code: type all 10 digits"));
        }
    } else if (digits.size() != 10) {
        reading.refuse(
            "dn_length",
            Text(QT_TRANSLATE_NOOP(
                     "core", "%1 digits: a North American number has 10, the area code first"))
                .arg(digits.size()));
        return;
    }
    checkNanp(reading, digits);
}

QString withoutInsideZero(Reading &reading, const QString &country, const QString &digits)
{
    // Behind the 0 stands another digit; a number with two is dialled, and kept, as it is (0066 in
    // Japan).
    if (!digits.startsWith(u'0') || digits.startsWith(u"00") || digits.size() < 2 ||
        !dialsZeroInside(country))
        return digits;
    reading.note(
        "dn_trunk_zero",
        Text(QT_TRANSLATE_NOOP("core", "The 0 in front is dialled inside the country only: "
                                       "stored without it, as +%1 %2"))
            .arg(country)
            .arg(digits.mid(1)));
    return digits.mid(1);
}

// If a 0 stands in front of every national number, a long one without it that begins with the
// country's own code was meant internationally. Shorter ones may be local.
constexpr int longestLocal = 9;

bool hasCountryInFront(const Reading &reading, const QString &country)
{
    return !reading.plus && !country.isEmpty() && dialsZeroInside(country) &&
           reading.digits.startsWith(country) && reading.digits.size() > longestLocal;
}

void readOther(Reading &reading)
{
    const QString &digits = reading.digits;
    if (digits.size() < shortest || digits.size() > longest) {
        reading.refuse("dn_length",
                       Text(QT_TRANSLATE_NOOP("core", "%1 digits: a directory number has %2 to %3"))
                           .arg(digits.size())
                           .arg(shortest)
                           .arg(longest));
        return;
    }
    QString country =
        reading.home.country.isEmpty() ? reading.variant.homeCountry : reading.home.country;
    QString national = digits;
    if (reading.plus) {
        const int length = countryCodeLength(digits);
        if (length == 0 || length == digits.size()) {
            reading.refuse(
                "dn_country",
                QT_TRANSLATE_NOOP("core", "Behind the + a country code and a number are needed"));
            return;
        }
        country = digits.left(length);
        national = digits.mid(length);
    } else if (hasCountryInFront(reading, country)) {
        national = digits.mid(country.size());
        reading.note(
            "dn_country_read",
            Text(QT_TRANSLATE_NOOP(
                     "core", "Read as +%1 %2: type the + where that is meant, else the 0 in front"))
                .arg(country)
                .arg(national));
    } else if (country.isEmpty()) {
        reading.note(
            "dn_country_unknown",
            QT_TRANSLATE_NOOP(
                "core",
                "The country is not known: type + and the country code, or the number is not "
                "recognised where it is typed otherwise"));
    }
    national = withoutInsideZero(reading, country, national);
    if (country.size() + national.size() > longest) {
        reading.refuse("dn_length",
                       Text(QT_TRANSLATE_NOOP(
                                "core", "%1 digits with the country code: a number has at most %2"))
                           .arg(country.size() + national.size())
                           .arg(longest));
        return;
    }
    reading.check.number = {country, national};
}

// What stands in front of international numbers on the telephones of the variant's region.
void takeInternationalPrefix(Reading &reading)
{
    const QString &prefix = reading.variant.internationalPrefix;
    if (reading.plus || prefix.isEmpty() || !reading.digits.startsWith(prefix))
        return;
    const QString behind = reading.digits.mid(prefix.size());
    const int length = countryCodeLength(behind);
    if (length == 0 || length == behind.size())
        return; // no country code follows: a number like any other
    reading.digits = behind;
    reading.plus = true;
    reading.note("dn_international_prefix",
                 Text(QT_TRANSLATE_NOOP("core", "%1 in front is only dialled: stored as +%2"))
                     .arg(prefix)
                     .arg(reading.digits));
}

bool takesNanp(Reading &reading)
{
    if (reading.variant.northAmerican)
        return true;
    if (!reading.variant.isAnalog)
        return reading.plus && reading.digits.startsWith(u'1');
    if (reading.plus)
        return reading.digits.startsWith(u'1');
    if (!reading.home.country.isEmpty())
        return reading.home.country == u"1";
    if (!reading.digits.startsWith(u'0'))
        return true;
    reading.warn("dn_outside",
                 QT_TRANSLATE_NOOP(
                     "core", "No North American number begins with 0: for another country type + "
                             "and the country code"));
    return false;
}

void readNumber(Reading &reading)
{
    takeInternationalPrefix(reading);
    if (takesNanp(reading))
        readNanp(reading);
    else
        readOther(reading);
}

// A number that a spreadsheet spoilt is named so, before what else is wrong with it.
bool nameSpelling(DirectoryNumberCheck &check, const ProtocolVariant &variant, const QString &typed,
                  const NumberHome &home)
{
    const auto trouble = spellingTroubleOf(typed);
    if (!trouble)
        return false;
    Finding named = finding(Severity::Error, "", trouble->reason);
    named.code = "dn_" + trouble->code;
    if (!trouble->restored.isEmpty() &&
        checkDirectoryNumber(variant, trouble->restored, home).worst() == Severity::Note)
        named.repair = trouble->restored;
    check.findings.insert(check.findings.begin(), named);
    return true;
}

void refuseCharacters(DirectoryNumberCheck &check, const ProtocolVariant &variant,
                      const QString &typed, const NumberHome &home)
{
    if (nameSpelling(check, variant, typed, home))
        return;
    const auto odd = oddCharacters(typed);
    const OddCharacter &first = odd.front();
    check.findings.push_back(finding(
        Severity::Error, "dn_character",
        oddCharacterText(first, QT_TRANSLATE_NOOP("core", "a directory number has digits only"))));
    const auto meant = respelt(typed);
    if (!meant)
        return;
    const QString digits = QString::fromStdString(*meant);
    if (checkDirectoryNumber(variant, digits, home).worst() == Severity::Note)
        check.findings.front().repair = digits;
}

} // namespace

QString DirectoryNumber::shown() const
{
    if (isNanp() && (digits.size() == 10 || digits.size() == 7))
        return QString::fromStdString(hyphenated(digits.toStdString()));
    return international();
}

QString DirectoryNumber::international() const
{
    if (country.isEmpty())
        return digits;
    return QString("+%1 %2").arg(country, isNanp() ? inGroups(digits) : digits);
}

QString DirectoryNumber::assignmentKey() const
{
    return '+' + country + digits;
}

QString DirectoryNumberCheck::repair() const
{
    for (const Finding &found : findings)
        if (!found.repair.isEmpty())
            return found.repair;
    return {};
}

DirectoryNumberCheck checkDirectoryNumber(const ProtocolVariant &variant, const QString &typed,
                                          const NumberHome &home)
{
    const std::string utf8 = typed.toStdString();
    const DigitText text = stripSeparators(utf8);
    Reading reading{variant, home, text.plus, {}};
    if (text.isBlank()) {
        reading.refuse("dn_missing", QT_TRANSLATE_NOOP("core", "The directory number is missing"));
        return reading.check;
    }
    if (!text.onlyDigits) {
        refuseCharacters(reading.check, variant, typed, home);
        return reading.check;
    }
    if (text.count > DigitText::capacity) {
        reading.refuse(
            "dn_length",
            Text(QT_TRANSLATE_NOOP("core", "%1 digits: a directory number has at most %2"))
                .arg(text.count)
                .arg(longest));
        return reading.check;
    }
    reading.digits = QString::fromLatin1(text.view().data(), qsizetype(text.view().size()));
    readNumber(reading);
    DirectoryNumberCheck &check = reading.check;
    if (check.worst() == Severity::Error) {
        check.number = {};
        nameSpelling(check, variant, typed, home);
    }
    std::stable_sort(check.findings.begin(), check.findings.end(),
                     [](const Finding &a, const Finding &b) { return a.severity > b.severity; });
    return check;
}

} // namespace loopwright
