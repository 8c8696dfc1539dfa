#include "core/base/TextForm.h"

#include <algorithm>

namespace loopwright {

namespace {

bool isControl(QChar c)
{
    // With those that turn the direction of writing a paper shows another text than was typed.
    const bool turns = (c.unicode() >= 0x202a && c.unicode() <= 0x202e) ||
                       (c.unicode() >= 0x2066 && c.unicode() <= 0x2069);
    return (c.unicode() < 0x20 && c != '\n' && c != '\t') || c.unicode() == 0x7f || turns;
}

} // namespace

Text textTrouble(QStringView text, qsizetype longest)
{
    if (text.size() > longest)
        return Text(QT_TRANSLATE_NOOP("core", "is longer than %1 characters")).arg(longest);
    if (std::any_of(text.begin(), text.end(), isControl))
        return QT_TRANSLATE_NOOP("core", "holds a control character");
    return text.isValidUtf16() ? Text() : Text(QT_TRANSLATE_NOOP("core", "holds half a character"));
}

} // namespace loopwright
