#include "app/desktop/job/StepFields.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "core/loop/AnalogQuantity.h"
#include "core/safety/SafetyFact.h"

#include <QCoreApplication>

#include <algorithm>

namespace loopwright {

namespace {

QString trField(const char *text)
{
    return QCoreApplication::translate("StepFields", text);
}

/// How a field is called on the page, if its key alone does not say it.
struct FieldWords
{
    FactKind kind;
    const char *key;
    const char *label;
    const char *hint = "";
    const char *limit = nullptr; ///< fills %1 of the hint
    bool aside = false;          ///< seldom asked for: Enter passes it by
};

#define TEXT(text) QT_TRANSLATE_NOOP("StepFields", text)
constexpr FieldWords fieldWords[] = {
    {FactKind::Visit, "left", TEXT("Left at"), TEXT("HH:MM; left empty: now")},
    {FactKind::Safety, "office_connected", TEXT("Is the office connected to the pair?")},
    {FactKind::Safety, "place", TEXT("Where the pair is worked on"), TEXT("NT, terminal 4, …"),
     nullptr, true},
    {FactKind::Safety, "meter_proved", TEXT("Was the meter proved on a known source?"), "", nullptr,
     true},
    {FactKind::Safety, "wet", TEXT("Is the place wet?"), "", nullptr, true},
    {FactKind::HazardClosed, "source", TEXT("What the voltage came from")},
    {FactKind::HazardClosed, "by", TEXT("Who says that it is cleared")},
    {FactKind::HazardClosed, "reference", TEXT("Reference"),
     TEXT("ticket of the utility or the office; a contact with power needs the utility's, or a "
          "supervisor")},
    {FactKind::Changed, "to", TEXT("New pair")},
    {FactKind::Changed, "text", TEXT("What was done"), TEXT("may be empty")},
    {FactKind::Cleared, "text", TEXT("In a few words"), TEXT("at least two")},
    {FactKind::Loop, "dc_resistance_ohm", TEXT("DC resistance"), TEXT("ohm")},
    {FactKind::Loop, "loss_db", TEXT("Loss"), TEXT("dB; at most %1"), "bri_loss_max"},
    {FactKind::Loop, "frequency_hz", TEXT("Loss measured at"), TEXT("Hz; left empty: %1"),
     "bri_loss_frequency", true},
    {FactKind::Layer, "tei", TEXT("TEI"), TEXT("0 to 63 set, 64 to 126 by the network")},
    {FactKind::Layer, "cause", TEXT("Cause"), TEXT("Q.850, 1 to 127; may be empty")},
    {FactKind::Layer, "cause_location", TEXT("Where the cause comes from"), TEXT("may be empty"),
     nullptr, true},
    {FactKind::Call, "cause", TEXT("Cause"), TEXT("Q.850, 1 to 127; may be empty")},
    {FactKind::Call, "cause_location", TEXT("Where the cause comes from"), TEXT("may be empty"),
     nullptr, true},
    {FactKind::Detector, "quiet_seconds", TEXT("Quiet seconds"), TEXT("s; at least %1"),
     "detector_quiet_seconds_min"},
    {FactKind::Detector, "quiet_bit_errors", TEXT("Bit errors in them"), TEXT("must be 0")},
    {FactKind::Detector, "injections", TEXT("Errors sent: how often"), TEXT("at least 1")},
    {FactKind::Detector, "injected", TEXT("Errors sent: bits in all"), TEXT("where it is known")},
    {FactKind::Detector, "seen_bit_errors", TEXT("Bit errors seen"),
     TEXT("at least as many as were sent")},
    {FactKind::Detector, "seen_errored_seconds", TEXT("Errored seconds seen"),
     TEXT("s; at least 1")},
    {FactKind::Detector, "cleared", TEXT("Are the counters cleared?")},
};
#undef TEXT

const FieldWords *wordsOf(FactKind kind, const QString &key)
{
    const auto found = std::ranges::find_if(fieldWords, [&](const FieldWords &each) {
        return each.kind == kind && key == QLatin1StringView(each.key);
    });
    return found == std::end(fieldWords) ? nullptr : &*found;
}

Answer answerOf(const FactField &field)
{
    switch (field.type) {
    case FieldType::Whole:
        return Answer::Whole;
    case FieldType::YesNo:
        return Answer::YesNo;
    case FieldType::Word:
        return field.words().size() > 6 && qstrcmp(field.key, "what") != 0 &&
                       qstrcmp(field.key, "source") != 0
                   ? Answer::List
                   : Answer::Choice;
    case FieldType::Moment:
        return Answer::Clock;
    case FieldType::Number:
        return Answer::Number;
    default:
        return Answer::Text;
    }
}

bool typedIs(const QJsonObject &typed, const char *key, const char *word)
{
    return typed.value(QLatin1StringView(key)).toString() == QLatin1StringView(word);
}

/// A cause belongs to what failed, a TEI to a layer that is up, a new pair to a change of the pair.
std::function<bool(const QJsonObject &)> askedWhen(FactKind kind, const QString &key)
{
    if (key == u"cause")
        return [](const QJsonObject &typed) {
            return typedIs(typed, "outcome", "down") || typedIs(typed, "outcome", "failed");
        };
    if (key == u"cause_location")
        return [](const QJsonObject &typed) { return typed.contains("cause"); };
    if (key == u"tei")
        return [](const QJsonObject &typed) { return typedIs(typed, "outcome", "up"); };
    if (kind == FactKind::Changed && key == u"to")
        return [](const QJsonObject &typed) { return typedIs(typed, "what", "pair"); };
    return {};
}

/// "AC, tip to ground", with the voltage above which the work stops.
void sayVoltage(FieldSpec &spec, const LimitSet &limits)
{
    const auto wires = fromText<WirePair>(spec.key.section('.', 1)).value_or(WirePair::TipRing);
    const bool alternating = spec.key.startsWith(u"ac_v");
    const auto volts = [&limits](const char *key) { return localizedFigure(limits.value(key)); };
    spec.label = (alternating ? trField("AC") : trField("DC")) + ", " +
                 localizedSentence(wirePairName(wires));
    spec.hint = alternating ? trField("V ac; above %1 V (where it is wet: %2 V): stop")
                                  .arg(volts("hazard_ac_v"), volts("hazard_ac_wet_v"))
                            : trField("V dc; above %1 V: stop").arg(volts("hazard_dc_v"));
    spec.newRow = wires == WirePair::TipGround;
}

std::vector<FieldSpec> confirmations()
{
    std::vector<FieldSpec> list;
    for (const auto &[key, word] : EnumCodes<CardKey>::table)
        list.push_back({QString("confirmed.%1").arg(word),
                        localized(cardSentence(key)),
                        {},
                        Answer::YesNo,
                        {{u'Y', "true", trField("Yes, confirmed")}, {u'N', "false", trField("No")}},
                        0});
    return list;
}

FieldSpec specOf(const Need &need, const QString &key, JobSession &desk)
{
    const FactField *found = findField(fieldsOf(*need.kind), key);
    FactField field = found ? *found : FactField{""};
    if (field.type == FieldType::Value)
        field = valueFieldOf(fromText<AnalogQuantity>(need.preset.value("quantity").toString())
                                 .value_or(AnalogQuantity::LoopCurrent));
    FieldSpec spec{key, wordName(key.section('.', -1)), QString::fromUtf8(field.unit),
                   answerOf(field)};
    if (field.words)
        spec.options = keyedOptions(field.words());
    if (const FieldWords *words = wordsOf(*need.kind, key)) {
        spec.label = trField(words->label);
        spec.hint = trField(words->hint);
        if (words->limit)
            spec.hint = spec.hint.arg(localizedFigure(desk.limits().value(words->limit)));
        spec.aside = words->aside;
    }
    if (key.contains('.'))
        sayVoltage(spec, desk.limits());
    if (*need.kind == FactKind::MadeWith && key == u"instrument") {
        spec.answer = Answer::OpenList;
        spec.options = instrumentOptions(desk);
        spec.span = 2;
    }
    spec.optional = need.optional.contains(key) || spec.answer == Answer::Clock;
    spec.asked = askedWhen(*need.kind, key);
    const bool wide = spec.answer == Answer::Choice && spec.options.size() > 3;
    if (wide || key == u"office_connected")
        spec.span = 0;
    else if (spec.answer == Answer::Text && field.maxLength > 300)
        spec.span = 2;
    return spec;
}

} // namespace

QString wordName(const QString &word)
{
    static const QMap<QString, QString> named{{"ok", "OK"}, {"nt", "NT"}, {"tei", "TEI"}};
    if (const auto found = named.find(word); found != named.end())
        return *found;
    QString name = word;
    name.replace(u'_', u' ');
    if (!name.isEmpty())
        name[0] = name[0].toUpper();
    return localizedWord(name);
}

std::vector<KeyedOption> keyedOptions(const QStringList &words)
{
    std::vector<KeyedOption> options;
    QString used;
    const auto keyFor = [&used](const QString &word) {
        QString letters; // first those that begin a word, then any
        for (const QString &part : word.split(u'_'))
            letters += part.left(1);
        letters += word;
        for (const QChar letter : letters.toUpper())
            if (letter.isLetter() && !used.contains(letter))
                return letter;
        return QChar(u'1' + int(used.size()));
    };
    for (const QString &word : words) {
        const QChar key = keyFor(word);
        used += key;
        options.push_back({key, word, wordName(word)});
    }
    return options;
}

std::vector<KeyedOption> peopleOptions(const QList<Person> &people)
{
    std::vector<KeyedOption> options;
    for (const Person &person : people)
        options.push_back({{}, person.key, nameOf(person)});
    return options;
}

QString instrumentText(const Instrument &instrument, QDate today)
{
    const auto &calibrations = instrument.calibrations;
    const auto due = calibrations.isEmpty() ? std::nullopt : calibrations.last().due;
    const QString calibration = !instrument.calibratedOn(today)
                                    ? trField("not within its calibration")
                                : due ? trField("calibrated until %1").arg(dayText(*due, today))
                                      : trField("needs no calibration");
    QStringList parts{instrument.key, instrument.kind, calibration};
    if (instrument.asLabelled)
        parts << trField("as labelled");
    return parts.join(" · ");
}

std::vector<KeyedOption> instrumentOptions(JobSession &desk)
{
    std::vector<KeyedOption> options;
    const QDate today = desk.now().localDate();
    for (const Instrument &each : desk.instruments())
        options.push_back({{}, each.key, instrumentText(each, today)});
    return options;
}

std::vector<FieldSpec> fieldSpecsOf(const Need &need, JobSession &desk)
{
    std::vector<FieldSpec> specs;
    for (const QString &key : need.fields) {
        const FactField *field = findField(fieldsOf(*need.kind), key);
        if (field && field->type == FieldType::Words)
            std::ranges::move(confirmations(), std::back_inserter(specs));
        else
            specs.push_back(specOf(need, key, desk));
    }
    return specs;
}

FactObjects factsOf(const Need &need, const QJsonObject &values, const Moment &now)
{
    QJsonObject fact = need.preset;
    fact.insert("kind", toText(*need.kind));
    bool any = false;
    for (const QString &key : need.fields) {
        const QString head = key.section('.', 0, 0);
        const FactField *field = findField(fieldsOf(*need.kind), key);
        if (field && field->type == FieldType::Moment && !values.contains(key)) {
            fact.insert(key, now.text());
            any = true;
        } else if (field && field->type == FieldType::Words && values.contains(key)) {
            QJsonArray chosen;
            const QJsonObject answers = values.value(key).toObject();
            for (const QString &word : field->words())
                if (answers.value(word).toBool())
                    chosen << word;
            fact.insert(key, chosen);
            any = true;
        } else if (values.contains(head)) {
            fact.insert(head, values.value(head));
            any = true;
        }
    }
    return any ? FactObjects{fact} : FactObjects{};
}

} // namespace loopwright
