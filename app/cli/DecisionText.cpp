#include "app/cli/DecisionText.h"

#include "app/cli/Layout.h"
#include "core/base/PaperTime.h"

namespace loopwright {

namespace {

QString criteriaText(const Decision &decision)
{
    ColumnLayout table({"criterion", "outcome", "measured, and its limit"});
    for (const CriterionResult &criterion : decision.criteria) {
        const QString limit =
            criterion.limitText.isEmpty() ? QString() : "limit: " + criterion.limitText.english();
        QStringList figures{criterion.measuredText.english(), limit};
        figures.removeAll(QString());
        QString outcome = plainWord(toText(criterion.outcome));
        if (criterion.grade)
            outcome += ", " + toText(*criterion.grade);
        if (criterion.excepted)
            outcome += " (excepted)";
        table.add({criterion.name.english(), outcome, figures.join("; ")});
    }
    return table.text();
}

/// Only of what is open, excepted or to be mended: a list of all that is well says nothing.
QString reasonsText(const Decision &decision)
{
    LabelledLines lines;
    for (const CriterionResult &criterion : decision.criteria) {
        if (criterion.excepted)
            lines.add(criterion.name.english(),
                      QString("%1 Excepted by %2, %3: %4")
                          .arg(criterion.reason.english(), criterion.excepted->by,
                               paperTime(criterion.excepted->at), criterion.excepted->because));
        else if (criterion.open())
            lines.add(criterion.name.english(), criterion.reason.english());
        else
            for (const Remark &remark : criterion.remarks)
                lines.add(criterion.name.english(), remark.trade.english());
    }
    return lines.text();
}

QString runsText(const Decision &decision)
{
    LabelledLines lines;
    for (const RunMade &run : decision.runs)
        lines.add(run.result,
                  run.struckOut ? run.text() + "; " + run.struckOut->words() : run.text());
    return lines.text();
}

QString detailText(const QJsonObject &detail)
{
    QStringList parts;
    for (auto it = detail.begin(); it != detail.end(); ++it)
        if (it.key() != "seals")
            parts << it.key() + " " +
                         (it->isString() ? it->toString() : QString(canonicalJson(it.value())));
    const QString text = parts.join(", ").simplified();
    return text.size() > 90 ? text.left(87) + "..." : text;
}

} // namespace

QString plainWord(const QString &code)
{
    return QString(code).replace('_', ' ');
}

QString decisionText(const Decision &decision, const QString &next)
{
    QString text;
    for (const Text &hazard : decision.hazardsNearby)
        text += wrapped(hazard.english()) + "\n";
    text += LabelledLines()
                .add("Order", decision.order)
                .add("Outcome", plainWord(toText(decision.outcome)))
                .add("Decision", decision.id)
                .add("Limit set", decision.limitSet)
                .text() +
            "\n" + criteriaText(decision);
    if (const QString reasons = reasonsText(decision); !reasons.isEmpty())
        text += "\n" + reasons;
    if (const QString runs = runsText(decision); !runs.isEmpty())
        text += "\nRuns made\n" + runs;
    if (!decision.proves.isEmpty())
        text += wrapped(decision.proves.english()) + "\n";
    for (const QString &note : decision.notesInEnglish().mid(decision.hazardsNearby.size()))
        text += wrapped(note) + "\n";
    if (decision.firstOpen() && !next.isEmpty())
        text += "\n" + wrapped(next) + "\n";
    return text;
}

Answer answerOf(const Decision &decision, const QString &next)
{
    return Answer::of(decision.toJson(), decisionText(decision, next),
                      isAccepted(decision.outcome));
}

QString eventsText(const std::vector<Event> &events)
{
    ColumnLayout table({"when", "who", "what", "detail"});
    for (const Event &event : events)
        table.add({event.at.text(), event.by, plainWord(event.kind), detailText(event.detail)});
    return table.text();
}

} // namespace loopwright
