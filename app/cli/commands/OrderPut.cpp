#include "app/cli/commands/OrderPut.h"

#include "app/actions/Orders.h"
#include "app/cli/AnywayOption.h"
#include "app/cli/ColumnValues.h"

namespace loopwright {

namespace {

class PutOrder : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("--set", m_pairs, "COLUMN=VALUE, with the columns of an order file",
                      Given::Always, Separation::None);
        options.flag("--update", m_update, "Changes the order if it is there with other values");
        options.flag("--same-wires", m_sameWires,
                     "The pair bears another name and is the same: what was measured counts");
        m_anyway.declare(options);
        options.flag("--check", m_checkOnly, "Only says what would be said; changes nothing");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto fields, columnValues(m_pairs, "--set"));
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        m_anyway.tell(*records);
        LOOPWRIGHT_ASSIGN(const auto verdict,
                          m_checkOnly ? checkOrder(*records, fields)
                                      : putOrder(*records, fields, m_update, m_sameWires));
        return answer(verdict);
    }

private:
    static Answer answer(const OrderVerdict &verdict)
    {
        QJsonArray findings;
        for (const Finding &finding : verdict.findings)
            findings.append(QJsonObject{{"column", finding.field},
                                        {"code", finding.code},
                                        {"severity", severityName(finding.severity)},
                                        {"reason", finding.reason.english()},
                                        {"repair", finding.repair}});
        const QString state = verdict.malformed ? "malformed" : verdict.held ? "held" : "in order";
        Answer answer = Answer::of(QJsonObject{{"malformed", verdict.malformed},
                                               {"held", verdict.held},
                                               {"exists", verdict.exists},
                                               {"unchanged", verdict.unchanged},
                                               {"findings", findings}},
                                   state + "\n", !verdict.malformed && !verdict.held);
        answer.tell(verdict.findings);
        return answer;
    }

    QStringList m_pairs;
    bool m_update = false;
    AnywayOption m_anyway;
    bool m_sameWires = false;
    bool m_checkOnly = false;
};

} // namespace

std::unique_ptr<Command> makeOrderPut()
{
    return std::make_unique<PutOrder>();
}

} // namespace loopwright
