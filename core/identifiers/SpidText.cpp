#include "core/identifiers/SpidText.h"

#include "core/identifiers/SpellingTrouble.h"

namespace loopwright {

namespace {

std::string_view shapeHint(const SpidJudge &judge)
{
    if (!judge.spid().onlyDigits)
        return {};
    switch (
        shapeOf(judge.spid().count > DigitText::capacity ? std::string_view() : judge.digits())) {
    case SpidShape::Generic:
        return "; it has the generic format of National ISDN, check the protocol variant";
    case SpidShape::FiveEss:
        return "; it has the NI-1 shape of a 5ESS, check the protocol variant";
    case SpidShape::FiveEssCustom:
        return "; it has the custom multipoint shape of a 5ESS, check the protocol variant";
    case SpidShape::None:
        break;
    }
    return {};
}

void appendPlace(std::string &text, const SpidFaultFound &fault)
{
    const std::string first = std::to_string(fault.from + 1);
    text += fault.length == 1 ? "digit " + first
                              : "digits " + first + '-' + std::to_string(fault.from + fault.length);
}

// "Character 1 is the letter O: type the digit 0 (2 more are wrong)".
void appendOddCharacters(std::string &text, std::string_view typed)
{
    const auto odd = oddCharacters(QString::fromUtf8(typed.data(), qsizetype(typed.size())));
    if (odd.empty())
        return;
    const OddCharacter &first = odd.front();
    text += "Character " + std::to_string(first.place) + " is " +
            characterInWords(first.character).toStdString() + ": ";
    if (first.meant)
        text += std::string("type the digit ") + *first.meant;
    else
        text += first.droppable ? "leave it out" : "a SPID has digits only";
    if (odd.size() > 1)
        text += " (" + std::to_string(odd.size() - 1) + " more are not digits)";
}

/// What the variant says.
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
    case 'r':
        appendPlace(text, fault);
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
    case 'c':
        appendOddCharacters(text, judge.typed());
        break;
    case 't':
        if (const auto trouble = spellingTroubleOf(
                QString::fromUtf8(judge.typed().data(), qsizetype(judge.typed().size()))))
            text += trouble->reason.toStdString();
        break;
    case 'h':
        text += shapeHint(judge);
        break;
    default:
        appendVariantPiece(text, piece, judge.variant());
    }
}

} // namespace

void appendReason(std::string &text, const SpidJudge &judge, const SpidFaultFound &fault)
{
    const std::string_view sentence = sentenceOf(fault.what);
    for (std::size_t i = 0; i < sentence.size(); ++i) {
        if (sentence[i] == '%')
            appendPiece(text, sentence[++i], judge, fault);
        else
            text += sentence[i];
    }
}

} // namespace loopwright
