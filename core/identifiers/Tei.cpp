#include "core/identifiers/Tei.h"

namespace loopwright {

namespace {

constexpr int highestFixed = 63; // Q.921 3.3.4 (clause from memory)
constexpr int highest = 126;

Finding teiFinding(Severity severity, const char *code, const Text &reason,
                   const QString &repair = {})
{
    return {severity, QString::fromLatin1(code), reason, repair, "tei", 0};
}

// -1 if it is not a plain number; 127 for all that is too large.
int numberIn(const QString &text)
{
    int value = 0;
    for (const QChar c : text) {
        if (c < u'0' || c > u'9')
            return -1;
        value = std::min(value * 10 + (c.unicode() - u'0'), highest + 1);
    }
    return value;
}

void checkFixed(const ProtocolVariant &variant, int value, Findings &findings)
{
    if (variant.tei == TeiRule::FixedZero && value != 0)
        findings.push_back(teiFinding(
            Severity::Warning, "tei_not_zero",
            Text(QT_TRANSLATE_NOOP("core", "TEI %1 on a point-to-point line, where 0 is usual: "
                                           "confirm it with the provider"))
                .arg(value)));
    if (variant.tei == TeiRule::Automatic && value == 0)
        findings.push_back(teiFinding(
            Severity::Warning, "tei_zero",
            QT_TRANSLATE_NOOP("core",
                              "TEI 0 is for point-to-point lines: set automatic, or check the "
                              "protocol variant")));
    if (value > highestFixed)
        findings.push_back(teiFinding(
            Severity::Warning, "tei_not_fixed",
            Text(QT_TRANSLATE_NOOP("core",
                                   "TEI %1 is one that the network gives: set automatic, or "
                                   "a fixed one of 0 to 63"))
                .arg(value)));
}

} // namespace

TeiCheck checkTei(const ProtocolVariant &variant, const QString &typed)
{
    TeiCheck check;
    const QString text = typed.trimmed();
    if (!variant.hasLayer2()) {
        if (!text.isEmpty())
            check.findings.push_back(
                teiFinding(Severity::Error, "tei_not_used",
                           Text(QT_TRANSLATE_NOOP("core", "%1 has no TEI: leave it empty"))
                               .arg(variant.name)));
        return check;
    }
    if (isAutomaticTei(text)) {
        if (variant.tei == TeiRule::FixedZero)
            check.findings.push_back(teiFinding(
                Severity::Warning, "tei_not_zero",
                QT_TRANSLATE_NOOP("core", "A point-to-point line has no automatic TEI: set 0"),
                "0"));
        return check;
    }
    const int value = numberIn(text);
    if (value < 0) {
        check.findings.push_back(
            teiFinding(Severity::Error, "tei_form",
                       QT_TRANSLATE_NOOP("core", "A TEI is \"auto\" or a number of 0 to 63")));
    } else if (value > highest) {
        check.findings.push_back(teiFinding(
            Severity::Error, "tei_range",
            QT_TRANSLATE_NOOP("core", "A TEI of 127 or more cannot belong to a terminal")));
    } else {
        check.fixed = value;
        checkFixed(variant, value, check.findings);
    }
    return check;
}

bool isAutomaticTei(const QString &typed)
{
    const QString text = typed.trimmed();
    return text.isEmpty() || text.compare(u"auto", Qt::CaseInsensitive) == 0 ||
           text.compare(u"automatic", Qt::CaseInsensitive) == 0;
}

} // namespace loopwright
