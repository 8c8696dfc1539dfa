#include "app/print/Fonts.h"

#include <QFontDatabase>
#include <QFontMetricsF>

#include <array>

namespace loopwright {

namespace {

struct FaceRow
{
    const char *family;
    QFont::Weight weight;
};
/// In the order of Face; these are the faces of the package fonts-dejavu-core.
constexpr std::array<FaceRow, 5> faces{{{"DejaVu Sans", QFont::Normal},
                                        {"DejaVu Sans", QFont::Bold},
                                        {"DejaVu Serif", QFont::Normal},
                                        {"DejaVu Sans Mono", QFont::Normal},
                                        {"DejaVu Sans Mono", QFont::Bold}}};

} // namespace

QFont printFont(Face face, int size)
{
    const FaceRow &row = faces[std::size_t(face)];
    QFont font(QString::fromLatin1(row.family));
    font.setStyleHint(QFont::SansSerif);
    font.setWeight(row.weight);
    font.setStretch(QFont::Unstretched); // a condensed face of the same family may be installed
    font.setPixelSize(size);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setLetterSpacing(QFont::PercentageSpacing, 100.01);
    return font;
}

QStringList missingCharacters(const QString &text)
{
    const bool none = QFontDatabase::families().isEmpty();
    const QFontMetricsF metrics(printFont(Face::Text, 100));
    QStringList missing;
    for (const char32_t character : text.toUcs4()) {
        // What is not drawn needs no font.
        const bool drawn = !QChar::isSpace(character) &&
                           QChar::category(character) != QChar::Other_Control &&
                           QChar::category(character) != QChar::Other_Format;
        const QString name = QString::fromUcs4(&character, 1);
        if (drawn && (none || !metrics.inFontUcs4(character)) && !missing.contains(name))
            missing << name;
    }
    return missing;
}

QString fontPackageFor(char32_t character)
{
    switch (QChar::script(character)) {
    case QChar::Script_Han:
    case QChar::Script_Hiragana:
    case QChar::Script_Katakana:
    case QChar::Script_Hangul:
    case QChar::Script_Bopomofo:
        return "fonts-noto-cjk";
    case QChar::Script_Latin:
    case QChar::Script_Greek:
    case QChar::Script_Cyrillic:
        return "fonts-dejavu-core";
    case QChar::Script_Common:
        if (character >= 0x1F000)
            return "fonts-symbola";
        return character >= 0x3000 && character < 0xFFF0 ? "fonts-noto-cjk" : "fonts-dejavu-core";
    default:
        return "fonts-noto-core";
    }
}

QString characterName(const QString &character)
{
    return QString("%1 (U+%2)")
        .arg(character, QString::number(uint(character.toUcs4().value(0)), 16)
                            .toUpper()
                            .rightJustified(4, u'0'));
}

} // namespace loopwright
