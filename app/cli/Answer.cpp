#include "app/cli/Answer.h"

namespace loopwright {

namespace {

/// Letters and the like; no control, direction mark or line separator.
bool isShown(QChar c)
{
    const QChar::Category category = c.category();
    return category != QChar::Other_Control && category != QChar::Other_Format &&
           category != QChar::Separator_Line && category != QChar::Separator_Paragraph;
}

} // namespace

Answer Answer::of(QJsonValue json, QString text, bool yes)
{
    Answer answer;
    answer.yes = yes;
    answer.json = [json = std::move(json)](QIODevice &out) { out.write(canonicalJson(json)); };
    answer.text = [text = std::move(text)](QIODevice &out) { out.write(text.toUtf8()); };
    return answer;
}

Writing Answer::jsonArray(qsizetype count, std::function<QJsonValue(qsizetype)> item)
{
    return jsonArray(count, [item = std::move(item)](qsizetype i, QByteArray &bytes) {
        bytes += canonicalJson(item(i));
    });
}

Writing Answer::jsonArray(qsizetype count, std::function<void(qsizetype, QByteArray &)> append)
{
    constexpr qsizetype atOnce = 65536;
    return [count, append = std::move(append)](QIODevice &out) {
        QByteArray bytes = "[";
        for (qsizetype i = 0; i < count; ++i) {
            if (i > 0)
                bytes += ',';
            append(i, bytes);
            if (bytes.size() >= atOnce) {
                out.write(bytes);
                bytes.resize(0); // keeps the memory
            }
        }
        out.write(bytes += ']');
    };
}

void Answer::tell(const Findings &findings, const QString &fileName)
{
    told.reserve(told.size() + std::size_t(findings.size()));
    for (const Finding &finding : findings)
        told.push_back({findingLine(finding, fileName), finding.severity != Severity::Error});
}

QJsonObject errorJson(const Error &error)
{
    QJsonObject object{{"code", errorName(error.code)},
                       {"message", error.message},
                       {"place", error.place.isEmpty() ? QJsonValue() : QJsonValue(error.place)}};
    if (error.rowsDone > 0)
        object.insert("rows_done", error.rowsDone);
    return object;
}

QString oneLine(const QString &text)
{
    QString line;
    line.reserve(text.size());
    for (const QChar c : text)
        line.append(isShown(c) ? c : QChar(u' '));
    return line.simplified();
}

QString findingLine(const Finding &finding, const QString &fileName)
{
    QStringList place;
    if (finding.row > 0)
        place << QString("row %1").arg(finding.row);
    if (!finding.field.isEmpty())
        place << (finding.row > 0 ? u"column " : u"") + finding.field;
    QStringList line;
    if (!fileName.isEmpty())
        line << fileName;
    if (!place.isEmpty())
        line << place.join(u", ");
    QString reason = finding.reason.english();
    if (!finding.repair.isEmpty())
        reason += u" (repair: " + finding.repair + u")";
    const QString weight =
        finding.severity == Severity::Error ? QString() : severityName(finding.severity);
    if (!weight.isEmpty())
        line << weight;
    line << reason;
    return oneLine(line.join(u": "));
}

} // namespace loopwright
