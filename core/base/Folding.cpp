#include "core/base/Folding.h"

#include <QMap>

namespace loopwright {

QString foldForSearch(const QString &text)
{
    // Letters that do not come apart into a letter and an accent.
    static const QMap<QChar, QString> strokes{{u'ł', "l"},  {u'ø', "o"}, {u'đ', "d"},
                                              {u'ħ', "h"},  {u'ı', "i"}, {u'æ', "ae"},
                                              {u'œ', "oe"}, {u'ß', "ss"}};
    QString folded;
    for (const QChar c : text.toCaseFolded().normalized(QString::NormalizationForm_KD)) {
        if (c.category() == QChar::Mark_NonSpacing)
            continue;
        const auto stroke = strokes.constFind(c);
        folded += stroke == strokes.constEnd() ? QString(c) : *stroke;
    }
    return folded.simplified();
}

} // namespace loopwright
