#include "core/acceptance/Fact.h"

#include <functional>

namespace loopwright {

namespace {

struct Codec
{
    const char *kind;
    bool inRecords; ///< may stand in a job record
    FactBody (*read)(JsonReader &);
};

template<class T>
constexpr Codec codec(const char *kind, bool inRecords = true)
{
    return {kind, inRecords, [](JsonReader &reader) -> FactBody { return T::read(reader); }};
}

/// In the order of FactBody's alternatives.
constexpr Codec codecs[] = {
    codec<VisitFact>("visit"),       codec<SafetyFact>("safety"),
    codec<ChangedFact>("changed"),   codec<SelfTestFact>("self_test"),
    codec<LoopFact>("loop"),         codec<LayerFact>("layer"),
    codec<CallFact>("call"),         codec<DetectorFact>("detector"),
    codec<RunFact>("run"),           codec<AnalogFact>("analog"),
    codec<ClearedFact>("cleared"),   codec<HazardClosedFact>("hazard_closed"),
    codec<ReferredFact>("referred"), codec<MadeWithFact>("made_with"),
    codec<DeskFact>("desk"),         codec<NoteFact>("note"),
    codec<VoidFact>("void", false),  codec<ExceptionFact>("exception", false),
};
static_assert(std::size(codecs) == std::variant_size_v<FactBody>);

const Codec *findCodec(const QString &kind, bool stored)
{
    for (const Codec &entry : codecs)
        if (kind == QLatin1StringView(entry.kind) && (stored || entry.inRecords))
            return &entry;
    return nullptr;
}

struct Defaults
{
    QString order, installer, instrument, pair;
    bool stored = false;
};

Fact readFact(JsonReader &reader, const Defaults &defaults, const std::function<QString()> &newId)
{
    Fact fact;
    const auto id = reader.optionalUuid("id");
    fact.id = id ? *id : newId();
    const QString kind = reader.text("kind", 40);
    const Codec *found = findCodec(kind, defaults.stored);
    if (!reader.failed() && !found)
        reader.fail("kind",
                    QString("\"%1\" is not one of %2").arg(kind, recordedKinds().join(", ")));
    fact.at = reader.moment("at");
    fact.order = defaults.stored ? reader.text("order") : defaults.order;
    fact.installer = reader.optionalText("installer").value_or(defaults.installer);
    fact.instrument = reader.optionalText("instrument").value_or(defaults.instrument);
    fact.pair = reader.optionalText("pair", longestOrderName).value_or(defaults.pair);
    if (found && !reader.failed())
        fact.body = found->read(reader);
    // What it says, it says itself: the head names the instrument of the visit's own readings.
    if (fact.as<MadeWithFact>())
        fact.instrument = reader.filledText("instrument");
    reader.done();
    return fact;
}

void refuse(Result<void> &result, const QString &place, const QString &message)
{
    if (result)
        result = failure(ErrorCode::BadInput, message, place);
}

void checkChannel(Result<void> &result, const ServiceOrder &order, Channel channel,
                  const QString &place)
{
    const Services services = channel == Channel::B1   ? order.b1
                              : channel == Channel::B2 ? order.b2
                                                       : order.d;
    if (!services)
        refuse(result, place,
               QString("order %1 has no channel %2").arg(order.number, toText(channel)));
}

} // namespace

VoidFact VoidFact::read(JsonReader &reader)
{
    return {reader.text("fact", 60), reader.text("because", 2000), reader.text("by")};
}

void VoidFact::write(QJsonObject &object) const
{
    object.insert("fact", fact);
    object.insert("because", because);
    object.insert("by", by);
}

ExceptionFact ExceptionFact::read(JsonReader &reader)
{
    ExceptionFact exception;
    for (const QJsonValue &key : reader.array("criteria", 100))
        exception.criteria << key.toString();
    exception.because = reader.text("because", 2000);
    exception.by = reader.text("by");
    for (const QJsonValue &id : reader.array("known", 1'000'000))
        exception.known << id.toString();
    return exception;
}

void ExceptionFact::write(QJsonObject &object) const
{
    object.insert("criteria", QJsonArray::fromStringList(criteria));
    object.insert("because", because);
    object.insert("by", by);
    object.insert("known", QJsonArray::fromStringList(known));
}

QString Fact::kind() const
{
    return QString::fromLatin1(codecs[body.index()].kind);
}

QJsonObject Fact::toJson() const
{
    QJsonObject object{{"id", id}, {"kind", kind()}, {"at", at.text()}, {"order", order}};
    if (!installer.isEmpty())
        object.insert("installer", installer);
    if (!instrument.isEmpty())
        object.insert("instrument", instrument);
    if (!pair.isEmpty())
        object.insert("pair", pair);
    std::visit([&object](const auto &content) { content.write(object); }, body);
    return object;
}

Result<Fact> Fact::fromJson(const QJsonObject &object, const QString &place)
{
    JsonReader reader(object, place);
    Fact fact = readFact(reader, {{}, {}, {}, {}, true}, [] { return QString(); });
    LOOPWRIGHT_TRY(reader.result());
    return fact;
}

Result<JobRecord> readJobRecord(const QJsonObject &object, const QString &place,
                                const std::function<QString()> &newId)
{
    JsonReader reader(object, place);
    JobRecord record;
    record.order = reader.text("order");
    const Defaults defaults{record.order, reader.optionalText("installer").value_or(QString()),
                            reader.optionalText("instrument").value_or(QString()),
                            reader.optionalText("pair", longestOrderName).value_or(QString()),
                            false};
    const QJsonArray facts = reader.array("facts", 10000);
    for (int i = 0; i < facts.size() && !reader.failed(); ++i) {
        JsonReader item = reader.item("facts", i, facts[i]);
        record.facts.push_back(readFact(item, defaults, newId));
    }
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return record;
}

Result<void> checkFits(const Fact &fact, const ServiceOrder &order, const QString &place)
{
    Result<void> result;
    if (const auto *layer = fact.as<LayerFact>()) {
        if (order.kind == LineKind::Analog)
            refuse(result, place, "an analog line has no layers 1 to 3");
        if (layer->layer > 1 && !order.terminal(layer->terminalOrFirst()))
            refuse(result, place + ".terminal",
                   QString("order %1 has no terminal %2")
                       .arg(order.number, QString::number(layer->terminalOrFirst())));
    } else if (const auto *call = fact.as<CallFact>()) {
        checkChannel(result, order, call->channel, place + ".channel");
    } else if (const auto *run = fact.as<RunFact>()) {
        for (const Channel channel : run->channels)
            checkChannel(result, order, channel, place + ".channels");
    } else if (const auto *detector = fact.as<DetectorFact>()) {
        for (const Channel channel : detector->channels)
            checkChannel(result, order, channel, place + ".channels");
    }
    return result;
}

QStringList recordedKinds()
{
    QStringList kinds;
    for (const Codec &entry : codecs)
        if (entry.inRecords)
            kinds << QString::fromLatin1(entry.kind);
    return kinds;
}

} // namespace loopwright
