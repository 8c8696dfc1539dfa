#include "core/acceptance/FactList.h"

namespace loopwright {

QJsonArray listOf(const std::vector<Fact> &facts)
{
    QJsonArray list;
    for (const Fact &fact : facts)
        list << fact.toJson();
    return list;
}

Result<std::vector<Fact>> readFacts(JsonReader &reader, const QString &key)
{
    std::vector<Fact> list;
    const QJsonArray facts = reader.array(key, mostFacts);
    for (int i = 0; i < facts.size(); ++i) {
        LOOPWRIGHT_ASSIGN(
            auto fact,
            Fact::fromJson(facts[i].toObject(), QString("%1[%2]").arg(reader.place(key)).arg(i)));
        list.push_back(std::move(fact));
    }
    return list;
}

} // namespace loopwright
