#include "app/cli/commands/PairSpare.h"

#include "app/actions/SparePairs.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class PairSpare : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("order", m_order, "The order whose pair must be swapped", Given::Always);
        options.integer("--limit", m_limit, 1, 1000, "So many at the most; 10 unless said");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(const auto found, sparePairs(*records, m_order, int(m_limit)));
        QJsonArray list;
        ColumnLayout table(
            {"pair", ">away", "last order", ">loss dB", "make-up of", "verdict", "against it"});
        for (const SparePair &spare : found.spares) {
            list << spare.toJson();
            const bool known = !spare.makeupOf.isEmpty();
            table.add({spare.pair, QString::number(spare.away),
                       spare.lastOrder.isEmpty() ? QString("nobody yet") : spare.lastOrder,
                       known ? QString::number(spare.lossDb, 'f', 1) : QString(), spare.makeupOf,
                       known ? plainWord(toText(spare.verdict)) : QString(),
                       spare.against.join(' ')});
        }
        return Answer::of(
            QJsonObject{{"pair", found.pair}, {"cable", found.cable}, {"spares", list}},
            found.spares.empty()
                ? QString("no pair of cable %1 is known to be free\n").arg(found.cable)
                : table.text());
    }

private:
    QString m_order;
    qint64 m_limit = 10;
};

} // namespace

std::unique_ptr<Command> makePairSpare()
{
    return std::make_unique<PairSpare>();
}

} // namespace loopwright
