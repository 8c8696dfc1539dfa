#include "core/certificate/PlainWords.h"

#include "core/acceptance/Criteria.h"
#include "core/errortest/Bounds.h"

#include <QLocale>

#include <cmath>

namespace loopwright {

namespace {

QString rowWords(const CriterionResult &criterion)
{
    const Criterion *row = findCriterion(criterion.key);
    if (!row)
        return criterion.reason.english();
    const PlainWords &words = row->words;
    switch (criterion.outcome) {
    case CriterionOutcome::Met:
        return QString::fromUtf8(criterion.grade == QuantityClass::Marginal ? words.marginal
                                                                            : words.met);
    case CriterionOutcome::NotMet:
        return QString::fromUtf8(words.failed);
    case CriterionOutcome::Missing:
        return QString::fromUtf8(words.notShown);
    case CriterionOutcome::NotNeeded:
        break;
    }
    return criterion.reason.english();
}

} // namespace

QString plainMeaning(const CriterionResult &criterion)
{
    QStringList said{criterion.plain.isEmpty() ? rowWords(criterion) : criterion.plain.english()};
    for (const Remark &remark : criterion.remarks)
        said << remark.plain.english();
    return said.join(' ');
}

QString plainOutcome(CriterionOutcome outcome)
{
    static constexpr std::pair<CriterionOutcome, const char *> table[] = {
        {CriterionOutcome::Met, "met"},
        {CriterionOutcome::NotMet, "not met"},
        {CriterionOutcome::Missing, "not shown"},
        {CriterionOutcome::NotNeeded, "not needed"}};
    for (const auto &[candidate, text] : table)
        if (candidate == outcome)
            return QString::fromLatin1(text);
    return {};
}

QString plainProof(const QJsonObject &proven)
{
    // If the limit set asks for another confidence, the bound at that stands beside the usual
    // one.
    const bool asAsked = proven.contains("ber_upper");
    const double upper = proven.value(asAsked ? "ber_upper" : "ber_upper_95").toDouble(1);
    const double confidence = asAsked ? proven.value("confidence").toDouble() : usualConfidence;
    if (!(upper > 0) || upper > 1e-2)
        return {};
    // Rounded down to two digits, so that no more is said than is proved.
    const double one = 1 / upper;
    const double unit = std::pow(10, std::floor(std::log10(one)) - 1);
    const double rounded = std::floor(one / unit) * unit;
    const QString count = rounded >= 1e6 ? QString("%1 million").arg(rounded / 1e6)
                                         : QLocale(QLocale::English).toString(qint64(rounded));
    return QString("With %1 % confidence, at most one bit in %2 arrived wrong in this run.")
        .arg(QString::number(confidence * 100, 'g', 6), count);
}

} // namespace loopwright
