#include "core/acceptance/Fact.h"

#include <array>
#include <functional>

namespace loopwright {

namespace {

using ReadBody = FactBody (*)(JsonReader &);

template<std::size_t... I>
constexpr std::array<ReadBody, sizeof...(I)> readersOf(std::index_sequence<I...>)
{
    return {[](JsonReader &reader) -> FactBody {
        return std::variant_alternative_t<I, FactBody>::read(reader);
    }...};
}

using FieldsOfBody = std::span<const FactField> (*)();

template<class T>
std::span<const FactField> fieldsOfBody()
{
    if constexpr (requires { T::fields(); })
        return T::fields();
    return {};
}

template<std::size_t... I>
constexpr std::array<FieldsOfBody, sizeof...(I)> tablesOf(std::index_sequence<I...>)
{
    return {fieldsOfBody<std::variant_alternative_t<I, FactBody>>...};
}

constexpr auto kindCount = std::variant_size_v<FactBody>;
constexpr auto bodyReaders = readersOf(std::make_index_sequence<kindCount>());
constexpr auto bodyFields = tablesOf(std::make_index_sequence<kindCount>());
static_assert(std::size(EnumCodes<FactKind>::table) == kindCount);

bool isRecorded(FactKind kind)
{
    return kind != FactKind::Void && kind != FactKind::Exception;
}

std::optional<FactKind> readKind(JsonReader &reader, bool stored)
{
    const QString word = reader.text("kind", 40);
    const auto kind = fromText<FactKind>(word);
    if (reader.failed() || (kind && (stored || isRecorded(*kind))))
        return kind;
    QStringList words;
    for (const FactKind recorded : recordedKinds())
        words << toText(recorded);
    reader.fail("kind", QString("\"%1\" is not one of %2").arg(word, words.join(", ")));
    return std::nullopt;
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
    const auto kind = readKind(reader, defaults.stored);
    fact.at = reader.moment("at");
    fact.order = defaults.stored ? reader.text("order") : defaults.order;
    fact.installer = reader.optionalName("installer").value_or(defaults.installer);
    fact.instrument = reader.optionalName("instrument").value_or(defaults.instrument);
    fact.pair = reader.optionalName("pair", longestOrderName).value_or(defaults.pair);
    if (kind && !reader.failed())
        fact.body = bodyReaders[std::size_t(*kind)](reader);
    // What a kind says of an instrument, the fact says itself: the record's head names that of its
    // own readings.
    if (const FactField *own = kind ? findField(fieldsOf(*kind), u"instrument") : nullptr)
        fact.instrument = reader.text(*own);
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

const char *factName(FactKind kind)
{
    // In the order of the kinds.
    constexpr const char *names[] = {QT_TRANSLATE_NOOP("core", "Visit"),
                                     QT_TRANSLATE_NOOP("core", "Safety card"),
                                     QT_TRANSLATE_NOOP("core", "Change"),
                                     QT_TRANSLATE_NOOP("core", "Self-test"),
                                     QT_TRANSLATE_NOOP("core", "Loop reading"),
                                     QT_TRANSLATE_NOOP("core", "Layer record"),
                                     QT_TRANSLATE_NOOP("core", "Call"),
                                     QT_TRANSLATE_NOOP("core", "Detector check"),
                                     QT_TRANSLATE_NOOP("core", "Run"),
                                     QT_TRANSLATE_NOOP("core", "Reading"),
                                     QT_TRANSLATE_NOOP("core", "Cleared trouble"),
                                     QT_TRANSLATE_NOOP("core", "Closed hazard"),
                                     QT_TRANSLATE_NOOP("core", "Referral"),
                                     QT_TRANSLATE_NOOP("core", "Instrument said"),
                                     QT_TRANSLATE_NOOP("core", "Desk entry"),
                                     QT_TRANSLATE_NOOP("core", "Note"),
                                     QT_TRANSLATE_NOOP("core", "Strike-out"),
                                     QT_TRANSLATE_NOOP("core", "Exception")};
    static_assert(std::size(names) == std::variant_size_v<FactBody>);
    return names[std::size_t(kind)];
}

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

QStringList idsOf(const std::vector<Fact> &facts)
{
    QStringList ids;
    for (const Fact &fact : facts)
        ids << fact.id;
    return ids;
}

QJsonObject Fact::toJson() const
{
    QJsonObject object{{"id", id}, {"kind", toText(kind())}, {"at", at.text()}, {"order", order}};
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
    const Defaults defaults{record.order, reader.optionalName("installer").value_or(QString()),
                            reader.optionalName("instrument").value_or(QString()),
                            reader.optionalName("pair", longestOrderName).value_or(QString()),
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

std::span<const FactField> fieldsOf(FactKind kind)
{
    return bodyFields[std::size_t(kind)]();
}

QList<FactKind> recordedKinds()
{
    QList<FactKind> kinds;
    for (const auto &entry : EnumCodes<FactKind>::table)
        if (isRecorded(entry.first))
            kinds << entry.first;
    return kinds;
}

} // namespace loopwright
