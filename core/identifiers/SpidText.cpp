#include "core/identifiers/SpidText.h"

#include "core/identifiers/SpellingTrouble.h"

namespace loopwright {

namespace {

const char *shapeHint(const SpidJudge &judge)
{
    if (!judge.spid().onlyDigits)
        return "";
    switch (
        shapeOf(judge.spid().count > DigitText::capacity ? std::string_view() : judge.digits())) {
    case SpidShape::Generic:
        return QT_TRANSLATE_NOOP("core", "; it has the generic format of National ISDN, check the "
                                         "protocol variant");
    case SpidShape::FiveEss:
        return QT_TRANSLATE_NOOP("core",
                                 "; it has the NI-1 shape of a 5ESS, check the protocol variant");
    case SpidShape::FiveEssCustom:
        return QT_TRANSLATE_NOOP("core", "; it has the custom multipoint shape of a 5ESS, check "
                                         "the protocol variant");
    case SpidShape::None:
        break;
    }
    return "";
}

Text placeText(const SpidFaultFound &fault)
{
    const int first = fault.from + 1;
    if (fault.length == 1)
        return Text(QT_TRANSLATE_NOOP("core", "digit %1")).arg(first);
    return Text(QT_TRANSLATE_NOOP("core", "digits %1-%2"))
        .arg(first)
        .arg(fault.from + fault.length);
}

// "Character 1 is the letter O: type the digit 0 (2 more are not digits)".
Text oddCharactersText(const QString &typed)
{
    const auto odd = oddCharacters(typed);
    if (odd.empty())
        return {};
    const Text first =
        oddCharacterText(odd.front(), QT_TRANSLATE_NOOP("core", "a SPID has digits only"));
    if (odd.size() == 1)
        return first;
    return Text(QT_TRANSLATE_NOOP("core", "%1 (%2 more are not digits)"))
        .arg(first)
        .arg(qint64(odd.size()) - 1);
}

Text spellingText(const QString &typed)
{
    const auto trouble = spellingTroubleOf(typed);
    return trouble ? trouble->reason : Text();
}

/// A piece that is words; nothing if it is a figure or a name.
std::optional<Text> wordsOf(char piece, const SpidJudge &judge, const SpidFaultFound &fault)
{
    const auto typed = [&judge] {
        return QString::fromUtf8(judge.typed().data(), qsizetype(judge.typed().size()));
    };
    switch (piece) {
    case 'r':
        return placeText(fault);
    case 'c':
        return oddCharactersText(typed());
    case 't':
        return spellingText(typed());
    case 'h':
        return Text(shapeHint(judge));
    }
    return {};
}

/// A figure of the variant, or its name.
void appendVariantPiece(std::string &text, char piece, const ProtocolVariant &variant)
{
    switch (piece) {
    case 'm':
        text += std::to_string(variant.minDigits);
        break;
    case 'M':
        text += std::to_string(variant.maxDigits);
        break;
    case 'v':
        text += variant.name.toStdString();
        break;
    case 'e':
        text += variant.soleEnding.toStdString();
        break;
    }
}

void appendPiece(std::string &text, char piece, const SpidJudge &judge, const SpidFaultFound &fault)
{
    const std::string_view dn = comparableDn(judge.dn());
    switch (piece) {
    case 'd':
        text += std::to_string(judge.length());
        break;
    case 'p':
        text += judge.digits().substr(std::size_t(fault.from), std::size_t(fault.length));
        break;
    case 's':
        text += hyphenated(judge.embedded());
        break;
    case 'n':
        text += hyphenated(dn);
        break;
    case 'a':
        text += judge.embedded().substr(0, 3);
        break;
    case 'b':
        text += dn.substr(0, 3);
        break;
    default:
        appendVariantPiece(text, piece, judge.variant());
    }
}

} // namespace

Text reasonOf(const SpidJudge &judge, const SpidFaultFound &fault)
{
    const SpidSentence sentence = sentenceOf(fault.what);
    Text text(sentence.source);
    for (const char piece : sentence.pieces) {
        if (const auto words = wordsOf(piece, judge, fault)) {
            text = text.arg(*words);
        } else {
            std::string figure;
            appendPiece(figure, piece, judge, fault);
            text = text.arg(QString::fromStdString(figure));
        }
    }
    return text;
}

void appendReason(std::string &text, const SpidJudge &judge, const SpidFaultFound &fault)
{
    const auto [source, pieces] = sentenceOf(fault.what);
    for (const char *c = source; *c; ++c) {
        if (*c != '%') {
            text += *c;
            continue;
        }
        const char piece = pieces[std::size_t(*++c - '1')];
        if (const auto words = wordsOf(piece, judge, fault))
            text += words->english().toStdString();
        else
            appendPiece(text, piece, judge, fault);
    }
}

} // namespace loopwright
