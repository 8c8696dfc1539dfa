#include "core/certificate/PlainWords.h"

#include "core/errortest/Bounds.h"

#include <QLocale>

#include <cmath>

namespace loopwright {

namespace {

struct PlainWord
{
    const char *key;
    const char *met;       ///< what it means that the criterion is met
    const char *otherwise; ///< what is not certain without it
};

constexpr PlainWord words[] = {
    {"safety", "The pair was checked for dangerous voltage before any work, and none was found.",
     "The check for dangerous voltage is not complete."},
    {"identifiers", "The numbers and identifiers are well formed, and no other line has them.",
     "The numbers or identifiers are not certain."},
    {"loop", "The pair of wires from the serving office can carry this service.",
     "It is not shown that the pair of wires carries this service well."},
    {"layer1", "The line and the equipment in the serving office run in step.",
     "It is not shown that the line runs in step with the serving office."},
    {"layer2", "Each terminal was given an address of its own on the line.",
     "It is not shown that each terminal has an address of its own."},
    {"layer3", "The serving office recognised the identifier of each terminal.",
     "It is not shown that the serving office recognises each terminal."},
    {"calls", "Calls were made and received for every service that was ordered.",
     "Not every ordered service was shown to work in a call."},
    {"readback", "The number that the network announced on this pair is the number ordered.",
     "The number announced on this pair is not certain."},
    {"detector", "Errors were sent on purpose before the test, and the test set saw each one.",
     "It is not shown that the test set would have seen an error."},
    {"run", "Data was sent over the line without a break and compared bit by bit.",
     "It is not shown how many errors the line makes."},
    {"instrument", "The test sets are known, in order, and were calibrated on the day.",
     "The state of a test set is not certain."},
    {"loop_current", "Enough current reaches a telephone for it to work.",
     "The current that reaches a telephone is not as it should be."},
    {"loss_1004", "A voice arrives loud enough.", "A voice may arrive faint."},
    {"noise", "The line is quiet while nobody speaks.", "The line may hiss or crackle."},
    {"power_influence", "Power lines near the cable disturb it no more than it can bear.",
     "Power lines near the cable may disturb it."},
    {"balance", "The two wires are alike enough to keep hum out of a call.",
     "Hum may be heard in a call."},
    {"polarity", "The two wires are connected the right way round.",
     "The two wires may be connected the wrong way round."},
    {"dial_tone", "Dial tone is heard when the receiver is lifted.", "Dial tone was not shown."},
    {"ringing", "The telephone rings when it is called.", "Ringing was not shown."},
    {"slope", "High and low tones of a voice arrive about equally loud.",
     "High tones of a voice may arrive fainter than low ones."},
    {"insulation", "The wires are well insulated from each other and from ground.",
     "The wires may leak current to each other or to ground."},
    {"foreign_voltage", "No voltage from elsewhere is on the pair.",
     "A voltage from elsewhere may be on the pair."},
    {"on_hook_voltage", "The serving office feeds the line with its usual voltage.",
     "The voltage of the serving office is not as it should be."},
    {"ringing_voltage", "The ringing signal is strong enough.",
     "The ringing signal may be too weak."}};

const PlainWord *find(const QString &key)
{
    for (const PlainWord &word : words)
        if (key == QLatin1StringView(word.key))
            return &word;
    return nullptr;
}

} // namespace

QString plainMeaning(const CriterionResult &criterion)
{
    const PlainWord *word = find(criterion.key);
    if (criterion.outcome == CriterionOutcome::NotNeeded || !word)
        return criterion.reason;
    return QString::fromLatin1(criterion.outcome == CriterionOutcome::Met ? word->met
                                                                          : word->otherwise);
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
    // Where the limit set asks for another confidence, the bound at that stands beside the usual
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
    return QString("With %1 % confidence, at most one bit in %2 arrives wrong.")
        .arg(QString::number(confidence * 100, 'g', 6), count);
}

QStringList plainKeys()
{
    QStringList keys;
    for (const PlainWord &word : words)
        keys << QString::fromLatin1(word.key);
    return keys;
}

} // namespace loopwright
