#pragma once
// The fields of a step as a form asks for them, made from the table of the fact's fields: words
// with their keys, numbers with unit and limit, times. And what was typed as the fact that it is.

#include "app/desktop/form/FieldSpec.h"
#include "app/desktop/job/JobSession.h"

namespace loopwright {

/// In the order of the need. A field of several words (what is confirmed) is one question for each.
std::vector<FieldSpec> fieldSpecsOf(const Need &need, JobSession &desk);
/// Kind, preset and what was typed; a time that was left empty is now. Empty where nothing that
/// makes a fact was typed.
FactObjects factsOf(const Need &need, const QJsonObject &values, const Moment &now);
/// One of a few answers for each word, with a letter of its own as its key.
std::vector<KeyedOption> keyedOptions(const QStringList &words);
/// Each by name, under its key.
std::vector<KeyedOption> peopleOptions(const QList<Person> &people);
/// "Nothing found" of "nothing_found".
QString wordName(const QString &word);
/// "TS-4 · basic-rate test set · calibrated until 1 Sep"
QString instrumentText(const Instrument &instrument, QDate today);
/// Instruments of the register with kind and calibration.
std::vector<KeyedOption> instrumentOptions(JobSession &desk);

} // namespace loopwright
