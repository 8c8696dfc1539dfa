#include "app/cli/commands/VanConflicts.h"

#include "app/actions/StationConflicts.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Layout.h"
#include "core/base/PaperTime.h"

namespace loopwright {

namespace {

class VanConflicts : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("order", m_order, "Of this order alone");
        options.flag("--all", m_all, "Those that are settled too");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(const auto conflicts, stationConflicts(*records, m_order, m_all));
        QJsonArray list;
        QString text;
        for (const ShownConflict &each : conflicts) {
            list << each.toJson();
            text += each.conflict.id + "  " + each.conflict.order + "  " +
                    plainWord(toText(each.conflict.code)) + ", " + each.stations.join(", ") +
                    ", since " + paperTime(each.conflict.since) + '\n';
            for (const ShownConflict::Side &side : each.sides)
                text += "  " + side.side + ": " + wrapped(side.says.english(), 4) + '\n';
            if (each.conflict.settled)
                text += "  settled by " + each.conflict.settled->by + ": " +
                        each.conflict.settled->because + '\n';
        }
        return Answer::of(list, text.isEmpty() ? QString("no station says otherwise\n") : text);
    }

private:
    QString m_order;
    bool m_all = false;
};

class VanSettle : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("conflict", m_conflict, "As van conflicts names it", Given::Always);
        options.text("--side", m_side, "office, both, or the name of a station", Given::Always);
        options.text("--because", m_because, "Why", Given::Always);
        options.flag("--anew", m_anew, "It was settled before, and that was wrong");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto settled,
                          settleConflict(*records, m_conflict, m_side, m_because, m_anew));
        return Answer::of(
            QJsonObject{{"conflict", settled.id}, {"order", settled.order}, {"side", m_side}},
            settled.order + ": settled for " + m_side + '\n');
    }

private:
    QString m_conflict, m_side, m_because;
    bool m_anew = false;
};

} // namespace

std::unique_ptr<Command> makeVanConflicts()
{
    return std::make_unique<VanConflicts>();
}
std::unique_ptr<Command> makeVanSettle()
{
    return std::make_unique<VanSettle>();
}

} // namespace loopwright
