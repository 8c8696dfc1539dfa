#include "core/base/Text.h"

#include <QRegularExpression>
#include <QStringList>

namespace loopwright {

namespace {

/// "B1 …" keeps its capital.
QString continuing(const QString &sentence)
{
    return sentence.size() > 1 && sentence[1].isLower() ? sentence[0].toLower() + sentence.mid(1)
                                                        : sentence;
}

/// Fills %1 to %9 and %n in one pass.
QString filled(const QString &source, const QStringList &values, std::optional<qint64> count)
{
    QString text;
    for (qsizetype i = 0; i < source.size(); ++i) {
        const QChar next = i + 1 < source.size() ? source[i + 1] : QChar();
        const int place = next.digitValue();
        if (source[i] == u'%' && place >= 1 && place <= values.size()) {
            text += values[place - 1];
            ++i;
        } else if (source[i] == u'%' && next == u'n' && count) {
            text += QString::number(*count);
            ++i;
        } else {
            text += source[i];
        }
    }
    return text;
}

} // namespace

/// The units of one letter or two are the same everywhere; this one is a word.
QString Text::Catalogue::figure(const QString &english) const
{
    static const QRegularExpression word("\\b[kM]?ohm\\b");
    QString text = figureWith(decimalMark, english);
    if (!say || !text.contains(QStringLiteral("ohm")) || !isFigure(english))
        return text;
    qsizetype from = 0;
    for (auto unit = word.match(text); unit.hasMatch(); unit = word.match(text, from)) {
        const QString said = say(unit.captured().toUtf8().constData(), {});
        text.replace(unit.capturedStart(), unit.capturedLength(), said);
        from = unit.capturedStart() + said.size();
    }
    return text;
}

Text::Text(const char *source)
{
    if (source && *source)
        m_parts.push_back({source});
}

Text Text::verbatim(const QString &text)
{
    Text made;
    if (!text.isEmpty())
        made.m_parts.push_back({nullptr, nullptr, {}, text});
    return made;
}

Text Text::message(const QString &english)
{
    Text made = verbatim(english);
    for (Part &part : made.m_parts)
        part.isMessage = true;
    return made;
}

Text Text::figure(const QString &text)
{
    Text made = verbatim(text);
    for (Part &part : made.m_parts)
        part.isFigure = true;
    return made;
}

Text Text::counted(const char *one, const char *many, qint64 count)
{
    Text made;
    made.m_parts.push_back({many, one, count});
    return made;
}

Text Text::withArgument(Argument argument) const
{
    Text made = *this;
    if (!made.m_parts.empty())
        made.m_parts.back().arguments.push_back(std::move(argument));
    return made;
}

Text Text::arg(const QString &value) const
{
    return withArgument(value);
}

Text Text::arg(const Text &value) const
{
    return withArgument(std::vector<Text>{value});
}

Text Text::arg(qint64 value) const
{
    return withArgument(QString::number(value));
}

Text Text::arg(double value) const
{
    return withArgument(QString::number(value));
}

Text Text::continued() const
{
    Text made = *this;
    if (!made.m_parts.empty())
        made.m_parts.front().continues = true;
    return made;
}

Text &Text::operator+=(const Text &next)
{
    for (const Part &part : next.m_parts) {
        m_parts.push_back(part);
        if (m_parts.size() > 1 && &part == &next.m_parts.front())
            m_parts.back().before = QStringLiteral(" ");
    }
    return *this;
}

Text Text::joined(const std::vector<Text> &parts, const QString &between)
{
    Text made;
    for (const Text &part : parts) {
        const std::size_t first = made.m_parts.size();
        made.m_parts.insert(made.m_parts.end(), part.m_parts.begin(), part.m_parts.end());
        if (first > 0 && first < made.m_parts.size())
            made.m_parts[first].before = between;
    }
    return made;
}

bool Text::contains(const Text &sentence) const
{
    return english().contains(sentence.english());
}

QString Text::shown(const Part &part, const Catalogue &catalogue)
{
    if (part.isMessage && catalogue)
        return catalogue.say(part.verbatim.toUtf8().constData(), {});
    if (part.isFigure)
        return catalogue.figure(part.verbatim);
    if (!part.source)
        return part.continues && !catalogue ? continuing(part.verbatim) : part.verbatim;
    const QStringList values = shownArguments(part, catalogue);
    const char *english = part.one && part.count == 1 ? part.one : part.source;
    if (catalogue)
        return filled(catalogue.say(part.source, part.count), values, part.count);
    const QString text = filled(QString::fromUtf8(english), values, part.count);
    return part.continues ? continuing(text) : text;
}

QStringList Text::shownArguments(const Part &part, const Catalogue &catalogue)
{
    QStringList values;
    for (const Argument &argument : part.arguments) {
        const QString *plain = std::get_if<QString>(&argument);
        values << (!plain ? std::get<std::vector<Text>>(argument).front().in(catalogue)
                   : !catalogue || holdsKey(QString::fromUtf8(part.source), int(values.size()) + 1)
                       ? *plain
                       : catalogue.figure(*plain));
    }
    return values;
}

QString Text::in(const Catalogue &catalogue) const
{
    QString text;
    for (const Part &part : m_parts)
        text += part.before + shown(part, catalogue);
    return text;
}

QString Text::english() const
{
    return in({});
}

} // namespace loopwright
