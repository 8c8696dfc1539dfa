#include "core/identifiers/Spid.h"

#include "core/identifiers/SpidRepair.h"
#include "core/identifiers/SpidText.h"

namespace loopwright {

namespace {

struct Meaning
{
    SpidPartKind kind;
    const char *words;
};

constexpr Meaning meanings[] = {
    {SpidPartKind::Prefix, "prefix"},          {SpidPartKind::AreaCode, "area code"},
    {SpidPartKind::Number, "number"},          {SpidPartKind::SharingId, "sharing id"},
    {SpidPartKind::TerminalId, "terminal id"}, {SpidPartKind::Suffix, "suffix"},
    {SpidPartKind::Other, "not known"}};

QString meaningOf(SpidPartKind kind)
{
    for (const Meaning &meaning : meanings)
        if (meaning.kind == kind)
            return QString::fromLatin1(meaning.words);
    return {};
}

// All digits, however many; empty if there is anything else.
QString digitsOf(const QString &typed, const SpidJudge &judge)
{
    QString digits;
    if (!judge.spid().onlyDigits || judge.spid().plus)
        return digits;
    for (const QChar c : typed)
        if (c >= u'0' && c <= u'9')
            digits += c;
    return digits;
}

std::vector<SpidPart> partsOf(const QString &digits, const SpidJudge &judge)
{
    std::vector<SpidPart> parts;
    if (digits.isEmpty())
        return parts;
    int at = 0;
    const auto add = [&](SpidPartKind kind, int length) {
        parts.push_back({kind, at, length, digits.mid(at, length), meaningOf(kind)});
        at += length;
    };
    for (const SpidSpan &span : judge.parts())
        add(span.kind, span.length);
    if (at < digits.size())
        add(SpidPartKind::Other, int(digits.size()) - at);
    return parts;
}

QString numberWithHyphen(const QString &digits)
{
    return QString::fromStdString(hyphenated(digits.toStdString()));
}

} // namespace

QString SpidCheck::repair() const
{
    for (const Finding &finding : findings)
        if (!finding.repair.isEmpty())
            return finding.repair;
    return {};
}

QString SpidCheck::inWords() const
{
    QStringList words;
    for (const SpidPart &part : parts)
        words << QString("%1 %2").arg(
            part.kind == SpidPartKind::Number ? numberWithHyphen(part.digits) : part.digits,
            part.meaning);
    return words.join(QString(" %1 ").arg(QChar(0x00B7)));
}

QString SpidCheck::grouped() const
{
    QStringList groups;
    for (const SpidPart &part : parts) {
        if (part.kind == SpidPartKind::Number)
            groups << part.digits.left(3) << part.digits.mid(3);
        else if (part.kind != SpidPartKind::Other)
            groups << part.digits;
        else
            for (int at = 0; at < part.digits.size(); at += 3)
                groups << part.digits.mid(at, 3);
    }
    return groups.join(' ');
}

SpidCheck checkSpid(const ProtocolVariant &variant, const QString &spid, const QString &dn)
{
    const std::string typed = spid.toStdString();
    const std::string typedDn = dn.toStdString();
    const SpidJudge judge(variant, typed, typedDn);
    SpidCheck check;
    check.digits = digitsOf(spid, judge);
    check.parts = partsOf(check.digits, judge);
    const SpidDiagnosis diagnosis = diagnose(judge);
    for (const SpidFaultFound &fault : diagnosis.faults) {
        const std::string_view code = codeOf(fault.what);
        check.findings.push_back({fault.severity,
                                  QString::fromLatin1(code.data(), qsizetype(code.size())),
                                  reasonOf(judge, fault), QString(), "spid", 0});
    }
    if (!check.findings.empty())
        check.findings.front().repair = QString::fromStdString(diagnosis.repair);
    return check;
}

} // namespace loopwright
