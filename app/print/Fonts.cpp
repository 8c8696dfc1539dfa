#include "app/print/Fonts.h"

#include <QFontDatabase>
#include <QFontInfo>
#include <QStringList>

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

bool fontsAreThere()
{
    return !QFontDatabase::families().isEmpty() &&
           !QFontInfo(printFont(Face::Text, 100)).family().isEmpty();
}

} // namespace loopwright
