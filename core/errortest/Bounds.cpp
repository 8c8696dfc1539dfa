#include "core/errortest/Bounds.h"

#include "core/errortest/CountText.h"

#include <QStringList>

#include <algorithm>
#include <boost/math/distributions/beta.hpp>
#include <boost/math/special_functions/erf.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>

namespace loopwright {

namespace {

namespace policies = boost::math::policies;
// Nothing is thrown across this file's edge: an argument out of range is the caller's bug and gives
// a NaN.
using Quiet = policies::policy<policies::domain_error<policies::ignore_error>,
                               policies::pole_error<policies::ignore_error>,
                               policies::overflow_error<policies::ignore_error>,
                               policies::evaluation_error<policies::ignore_error>>;

/// Above this shape Boost's inverse gamma function loses digits, and its expansion has them all.
constexpr double largeShape = 1e9;

/// The quantile of the gamma distribution with this shape: half of chi2inv(probability, 2 shape).
/// For a large shape the Cornish-Fisher expansion; what it leaves out is of the order of
/// shape^(-3/2).
double gammaQuantile(double shape, double probability)
{
    if (shape <= largeShape)
        return boost::math::gamma_p_inv(shape, probability, Quiet());
    const double z = -std::sqrt(2.0) * boost::math::erfc_inv(2 * probability, Quiet());
    const double root = std::sqrt(shape);
    return shape + z * root + (z * z - 1) / 3 + (z * z * z - 7 * z) / (36 * root) -
           (3 * z * z * z * z + 7 * z * z - 16) / (810 * shape);
}

/// The mean m with P(Poisson(m) <= errors) = 1 - confidence: half of chi2inv(C, 2E+2).
double poissonMeanUpper(qint64 errors, double confidence)
{
    return errors == 0 ? -std::log1p(-confidence) : gammaQuantile(double(errors) + 1, confidence);
}

/// The mean m with P(Poisson(m) >= errors) = 1 - confidence: half of chi2inv(1-C, 2E).
double poissonMeanLower(qint64 errors, double confidence)
{
    return errors == 0 ? 0 : gammaQuantile(double(errors), 1 - confidence);
}

/// Digits that are significant, rounded up, so that the number is never below `value`.
QString roundedUp(double value, int digits)
{
    if (value <= 0)
        return "0";
    QString text = QString::number(value, 'e', digits - 1);
    if (text.toDouble() < value) {
        const double step = std::pow(10.0, std::floor(std::log10(value)) - digits + 1);
        text = QString::number(text.toDouble() + step, 'e', digits - 1);
    }
    // 8.1e-08 is 8.1e-8 to a person.
    const auto e = text.indexOf('e');
    return QString(text.left(e) + 'e' + QString::number(text.mid(e + 1).toInt()));
}

} // namespace

Result<void> checkBoundInput(const BoundInput &input)
{
    if (input.bits < 1)
        return failure(ErrorCode::Usage, "the number of bits must be at least 1", "bits");
    if (input.errors < 0 || input.errors > input.bits)
        return failure(ErrorCode::Usage, "the errors must be from 0 to the number of bits",
                       "errors");
    if (!(input.confidence > 0 && input.confidence < 1))
        return failure(ErrorCode::Usage, "the confidence must lie between 0 and 1, such as 0.95",
                       "confidence");
    return {};
}

double poissonUpper(const BoundInput &input)
{
    return poissonMeanUpper(input.errors, input.confidence) / double(input.bits);
}

double poissonLower(const BoundInput &input)
{
    return poissonMeanLower(input.errors, input.confidence) / double(input.bits);
}

double clopperPearsonUpper(const BoundInput &input)
{
    const double errors = double(input.errors);
    const double bits = double(input.bits);
    if (input.errors >= input.bits)
        return 1;
    if (input.errors == 0) // 1 - (1-C)^(1/N) loses its digits at N = 1e8 if written like that
        return -std::expm1(std::log1p(-input.confidence) / bits);
    return boost::math::ibeta_inv(errors + 1, bits - errors, input.confidence, Quiet());
}

double clopperPearsonLower(const BoundInput &input)
{
    const double errors = double(input.errors);
    const double bits = double(input.bits);
    if (input.errors == 0)
        return 0;
    if (input.errors >= input.bits)
        return std::exp(std::log1p(-input.confidence) / bits);
    return boost::math::ibetac_inv(errors, bits - errors + 1, input.confidence, Quiet());
}

QJsonObject Bounds::toJson() const
{
    return {{"poisson_upper", poissonUpper}, {"clopper_pearson_upper", clopperPearsonUpper}};
}

Result<Bounds> upperBounds(const BoundInput &input)
{
    LOOPWRIGHT_TRY(checkBoundInput(input));
    return Bounds{poissonUpper(input), clopperPearsonUpper(input)};
}

ProofVerdict prove(qint64 errors, qint64 bits, double bitsPerSecond, double target,
                   double confidence)
{
    ProofVerdict verdict;
    if (bits > 0) {
        verdict.upper = poissonUpper({errors, bits, confidence});
        verdict.lower = poissonLower({errors, bits, confidence});
    }
    verdict.proof = bits > 0 && verdict.upper <= target ? Proof::Proved
                    : verdict.lower > target            ? Proof::Refuted
                                                        : Proof::NotProved;
    verdict.upper = std::min(verdict.upper, 1.0);
    if (verdict.proof == Proof::NotProved)
        verdict.furtherSeconds =
            std::max(0.0, secondsNeeded(target, bitsPerSecond, confidence, errors) -
                              double(bits) / bitsPerSecond);
    return verdict;
}

QString ratioText(double ratio)
{
    return QString::number(ratio).replace("e-0", "e-");
}

QString proofText(const ProofVerdict &verdict, double target)
{
    const QString named = ratioText(target);
    switch (verdict.proof) {
    case Proof::Proved:
        return named + " is proved";
    case Proof::Refuted:
        return named + " is refuted";
    case Proof::NotProved:
        break;
    }
    return QString("%1 is not proved yet: %2 more without an error")
        .arg(named, durationText(qint64(std::ceil(verdict.furtherSeconds))));
}

double secondsNeeded(double target, double bitsPerSecond, double confidence, qint64 errors)
{
    return poissonMeanUpper(errors, confidence) / (target * bitsPerSecond);
}

Text proofSentence(qint64 errors, qint64 bits, qint64 seconds, double confidence)
{
    if (bits <= 0)
        return QT_TRANSLATE_NOOP("core", "nothing compared yet");
    const Text count = errors == 0 ? Text(QT_TRANSLATE_NOOP("core", "no error"))
                                   : countText(errors, Counted::Error);
    return Text(QT_TRANSLATE_NOOP("core", "%1 in %2: BER below %3 with %4 % confidence"))
        .arg(count)
        .arg(durationText(seconds))
        .arg(roundedUp(std::min(1.0, poissonUpper({errors, bits, confidence})), 2))
        .arg(percentText(confidence));
}

QString percentText(double confidence)
{
    constexpr int usualDigits = 6;
    constexpr int mostDigits = 17; // tell any two numbers apart
    const double percent = confidence * 100;
    QString text = QString::number(percent, 'g', usualDigits);
    for (int digits = usualDigits + 1; digits <= mostDigits && percent < 100 && text == "100";
         ++digits)
        text = QString::number(percent, 'g', digits);
    return text;
}

QString durationText(qint64 seconds)
{
    const auto two = [](qint64 value) { return QString("%1").arg(value, 2, 10, QChar('0')); };
    const qint64 minutes = seconds / 60;
    if (minutes < 60)
        return QString("%1:%2").arg(minutes).arg(two(seconds % 60));
    return QString("%1:%2:%3").arg(minutes / 60).arg(two(minutes % 60), two(seconds % 60));
}

} // namespace loopwright
