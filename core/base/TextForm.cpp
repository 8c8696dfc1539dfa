#include "core/base/TextForm.h"

#include <QList>

#include <algorithm>
#include <optional>

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

QString textFromUtf8(QByteArrayView utf8)
{
    QString text = QString::fromUtf8(utf8);
    if (utf8.startsWith("\xEF\xBB\xBF"))
        text.prepend(QChar(QChar::ByteOrderMark));
    return text;
}

bool isUtf16(QByteArrayView bytes)
{
    if (bytes.startsWith("\xFF\xFE") || bytes.startsWith("\xFE\xFF"))
        return true;
    return bytes.size() >= 4 && !bytes[0] == !bytes[2] && !bytes[1] == !bytes[3] &&
           !bytes[0] != !bytes[1];
}

Text textTrouble(QStringView text, qsizetype longest)
{
    if (text.size() > longest)
        return Text(QT_TRANSLATE_NOOP("core", "is longer than %1 characters")).arg(longest);
    if (std::any_of(text.begin(), text.end(), isControl))
        return QT_TRANSLATE_NOOP("core", "holds a control character");
    return text.isValidUtf16() ? Text() : Text(QT_TRANSLATE_NOOP("core", "holds half a character"));
}

Text identifierTrouble(const QString &text)
{
    std::optional<QChar::Script> script;
    for (const char32_t c : text.toUcs4()) {
        const QChar::Category category = QChar::category(c);
        if (category >= QChar::Other_Control && category <= QChar::Other_NotAssigned)
            return QT_TRANSLATE_NOOP("core", "holds a character that is not seen");
        if (category == QChar::Separator_Line || category == QChar::Separator_Paragraph)
            return QT_TRANSLATE_NOOP("core", "holds a line break");
        const QChar::Script of = QChar::script(c);
        if (of == QChar::Script_Common || of == QChar::Script_Inherited)
            continue;
        if (script && *script != of)
            return QT_TRANSLATE_NOOP("core", "mixes letters of two scripts that look alike");
        script = of;
    }
    if (text.normalized(QString::NormalizationForm_KC) != text)
        return QT_TRANSLATE_NOOP("core", "is written with characters that stand for others");
    return {};
}

} // namespace loopwright
