#include "core/acceptance/Decision.h"

#include "core/base/PaperTime.h"

#include <algorithm>

namespace loopwright {

namespace {

QJsonObject criterionJson(const CriterionResult &result)
{
    QJsonObject object{{"key", result.key},
                       {"name", result.name.english()},
                       {"station", toText(result.station)},
                       {"outcome", toText(result.outcome)},
                       {"measured", result.measured},
                       {"measured_text", result.measuredText.english()},
                       {"limit", result.limit},
                       {"limit_text", result.limitText.english()},
                       {"unit", result.unit},
                       {"source", result.source},
                       {"reason", result.reason.english()},
                       {"next", result.next.english()},
                       {"class", result.grade ? QJsonValue(toText(*result.grade)) : QJsonValue()},
                       {"evidence", QJsonArray::fromStringList(result.evidence)}};
    if (result.excepted)
        object.insert("excepted", QJsonObject{{"by", result.excepted->by},
                                              {"because", result.excepted->because},
                                              {"at", result.excepted->at.text()}});
    return object;
}

QJsonObject runJson(const RunMade &run)
{
    QJsonObject object{{"fact", run.fact}, {"text", run.text()}, {"result", run.result}};
    if (run.struckOut)
        object.insert("struck_out",
                      QJsonObject{{"by", run.struckOut->by}, {"because", run.struckOut->because}});
    return object;
}

} // namespace

QString StruckOut::words() const
{
    constexpr int longest = 200; // what is shown in a line; the void keeps all of it
    QString said = because.simplified();
    if (said.size() > longest)
        said = said.left(longest - 1) + u'…';
    return QString("%1 (by %2)").arg(said, by);
}

QString StruckOut::sentence() const
{
    return QString("A run of %1 was struck out: %2.").arg(paperTime(began), words());
}

QString RunMade::resultInWords() const
{
    return struckOut ? result + ": " + struckOut->words() : result;
}

const CriterionResult *Decision::criterion(const QString &key) const
{
    const auto found =
        std::find_if(criteria.begin(), criteria.end(),
                     [&key](const CriterionResult &result) { return result.key == key; });
    return found == criteria.end() ? nullptr : &*found;
}

const CriterionResult *Decision::firstOpen() const
{
    const CriterionResult *first = nullptr;
    for (const CriterionResult &result : criteria)
        if (result.open() && (!first || result.station < first->station))
            first = &result;
    return first;
}

QStringList Decision::notesInEnglish() const
{
    QStringList said;
    for (const Text &note : notes)
        said << note.english();
    return said;
}

QJsonObject Decision::toJson() const
{
    QJsonArray list, made;
    for (const CriterionResult &result : criteria)
        list << criterionJson(result);
    for (const RunMade &run : runs)
        made << runJson(run);
    return {{"decision", id},
            {"order", order},
            {"outcome", toText(outcome)},
            {"limit_set", limitSet},
            {"criteria", list},
            {"runs", made},
            {"proves", proves.english()},
            {"proven", proven},
            {"notes", QJsonArray::fromStringList(notesInEnglish())}};
}

} // namespace loopwright
