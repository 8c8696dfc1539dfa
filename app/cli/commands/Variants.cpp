#include "app/cli/commands/Variants.h"

#include "app/cli/Layout.h"
#include "app/cli/Lookup.h"

namespace loopwright {

namespace {

QJsonObject variantJson(const ProtocolVariant &variant)
{
    QJsonArray settings;
    for (const TerminalSetting &setting : variant.settings)
        settings.append(QJsonObject{{"name", setting.name}, {"value", setting.value}});
    return {{"key", variant.key},
            {"name", variant.name},
            {"region", variant.region},
            {"spid", toText(variant.spid)},
            {"spid_shapes", variant.spidShapes},
            {"tei", toText(variant.tei)},
            {"settings", settings}};
}

QString variantText(const ProtocolVariant &variant)
{
    LabelledLines lines;
    lines.add("Key", variant.key)
        .add("Region", variant.region)
        .add("SPID", toText(variant.spid))
        .add("Its shape", variant.spidShapes)
        .add("TEI", variant.teiWords)
        .add("Rate", variant.rateHabit);
    for (const BearerService &bearer : variant.bearers)
        lines.add(bearer.service, bearer.name);
    for (const TerminalSetting &setting : variant.settings)
        lines.add(setting.name, setting.value);
    return heading(variant.name) + lines.text();
}

class ListVariants : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("key", m_key, "Only this one, with all that is known of it");
    }

    Result<Answer> run(CommandContext &) override
    {
        if (m_key.isEmpty())
            return all();
        LOOPWRIGHT_ASSIGN(const auto variant, variantOf(m_key));
        return Answer::of(variantJson(*variant), variantText(*variant));
    }

private:
    static Answer all()
    {
        QJsonArray json;
        ColumnLayout table({"key", "SPID", "TEI", "name"});
        for (const ProtocolVariant &variant : allVariants()) {
            json.append(variantJson(variant));
            table.add({variant.key, toText(variant.spid), toText(variant.tei), variant.name});
        }
        return Answer::of(json, table.text());
    }

    QString m_key;
};

} // namespace

std::unique_ptr<Command> makeVariants()
{
    return std::make_unique<ListVariants>();
}

} // namespace loopwright
