#include "core/office/InstrumentLabel.h"

#include "core/base/TextForm.h"

namespace loopwright {

namespace {

Finding wrong(const QString &code, const QString &field, const Text &reason)
{
    return {Severity::Error, code, reason, {}, field};
}

const QString labelDayFormat = QStringLiteral("yyyy-MM-dd");

} // namespace

Text registerKeyTrouble(const QString &key)
{
    constexpr int longest = 60;
    if (key.isEmpty())
        return QT_TRANSLATE_NOOP("core", "is empty");
    if (const Text trouble = identifierTrouble(key); !trouble.isEmpty())
        return trouble;
    return key.size() > longest ? Text(QT_TRANSLATE_NOOP("core", "is longer than 60 characters"))
                                : Text();
}

tl::expected<Calibration, Finding> calibrationFrom(const QString &on, const QString &due)
{
    Calibration calibration{QDate::fromString(on, labelDayFormat),
                            QDate::fromString(due, labelDayFormat)};
    if (due == u"not_required") {
        calibration.due.reset();
        if (on.isEmpty())
            return calibration;
    } else if (!calibration.due->isValid()) {
        return tl::unexpected(
            wrong("date_malformed", "calibration_due",
                  Text(QT_TRANSLATE_NOOP("core",
                                         "\"%1\" is neither a day as YYYY-MM-DD nor not_required"))
                      .arg(due.left(20))));
    }
    if (!calibration.on.isValid())
        return tl::unexpected(wrong(
            "date_malformed", "calibrated_on",
            Text(QT_TRANSLATE_NOOP("core", "\"%1\" is not a day as YYYY-MM-DD")).arg(on.left(20))));
    if (calibration.due && *calibration.due < calibration.on)
        return tl::unexpected(
            wrong("dates_turned_round", "calibration_due",
                  QT_TRANSLATE_NOOP("core", "lies before the day of calibration")));
    return calibration;
}

Findings checkLabel(const InstrumentLabel &label, QDate today)
{
    constexpr int longest = 200;
    Findings findings;
    if (const Text trouble = registerKeyTrouble(label.key); !trouble.isEmpty())
        findings.push_back(wrong("instrument_malformed", "instrument", trouble));
    for (const auto &[field, text] :
         {std::pair("serial", label.serial), std::pair("kind", label.kind)}) {
        const Text trouble = text.trimmed().isEmpty() ? Text(QT_TRANSLATE_NOOP("core", "is empty"))
                                                      : textTrouble(text, longest);
        if (!trouble.isEmpty())
            findings.push_back(wrong("text_malformed", field, trouble));
    }
    const auto calibration = calibrationFrom(label.calibratedOn, label.calibrationDue);
    if (!calibration)
        findings.push_back(calibration.error());
    else if (calibration->on.isValid() && calibration->on > today)
        findings.push_back(wrong("date_in_future", "calibrated_on",
                                 QT_TRANSLATE_NOOP("core", "lies in the future")));
    return findings;
}

Instrument instrumentFrom(const InstrumentLabel &label)
{
    const auto calibration = calibrationFrom(label.calibratedOn, label.calibrationDue);
    return {label.key, label.serial, label.kind, {calibration.value_or(Calibration())}, true};
}

} // namespace loopwright
