#pragma once
// A catalogue with what is its own of each text in brackets, "⟦Auftrag ⟧%1⟦.⟧": so what is German
// can be told from what is not.

#include <QRegularExpression>
#include <QTranslator>

namespace loopwright {

class Bracketed : public QTranslator
{
public:
    QString translate(const char *, const char *source, const char *comment, int n) const override
    {
        static const QRegularExpression place("(%(?:\\d|n))");
        QString said = QTranslator::translate("loopwright", source, comment, n);
        if (said.isNull())
            return said;
        return QStringLiteral("⟦%1⟧").arg(said.replace(place, QStringLiteral("⟧\\1⟦")));
    }
};

inline QString outsideOfBrackets(const QString &text)
{
    static const QRegularExpression bracketed("⟦[^⟧]*⟧");
    return QString(text).replace(bracketed, " ");
}

} // namespace loopwright
