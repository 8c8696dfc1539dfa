#include "app/cli/commands/OrderPlans.h"

#include "app/actions/Plans.h"
#include "app/cli/AnywayOption.h"
#include "app/cli/ColumnValues.h"
#include "app/cli/commands/Import.h"

namespace loopwright {

namespace {

QString changedText(const PlanStep &step)
{
    QString text = step.order + '\n';
    const auto orNone = [](const QString &value) { return value.isEmpty() ? "(none)" : value; };
    for (auto column = step.columns.begin(); column != step.columns.end(); ++column)
        text += QString("    %1: %2 -> %3\n")
                    .arg(column.key(), orNone(column->first), orNone(column->second));
    return text;
}

Answer answerOf(const PlanReport &report)
{
    QString text;
    for (const PlanStep &step : report.changed)
        text += changedText(step);
    for (const QString &order : report.unchanged)
        text += order + " is so already\n";
    Answer answer = Answer::of(report.toJson(), text, report.held.isEmpty());
    answer.tell(report.findings);
    return answer;
}

class AssignOrders : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("numbers", m_assigning.orders, "The orders", Given::Always);
        options.text("--installer", m_assigning.installer,
                     "Key of who goes there (nobody any more: order set NUMBER installer=)",
                     Given::Always);
        options.date("--on", m_assigning.on, "Another day; the first one is kept beside it");
        options.text("--because", m_assigning.because, "Why it is another day");
        m_anyway.declare(options);
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (!m_assigning.because.isEmpty() && !m_assigning.on.isValid())
            return failure(ErrorCode::Usage, "goes with --on", "--because");
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        m_anyway.tell(*records);
        LOOPWRIGHT_ASSIGN(const auto report, assignOrders(*records, m_assigning));
        return answerOf(report);
    }

private:
    Assigning m_assigning;
    AnywayOption m_anyway;
};

class SetOrder : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("values", m_words,
                      "The order, and COLUMN=VALUE with columns of an order file", Given::IfWanted,
                      Separation::None);
        options.flag("--same-wires", m_sameWires,
                     "The pair bears another name and is the same: what was measured counts");
        m_anyway.declare(options);
        m_import.declare(options); // --in: order_number,column,value
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (m_import.isAsked() != m_words.isEmpty())
            return failure(ErrorCode::Usage, "names an order and its values, or a file by --in",
                           "order set");
        if (m_import.isAsked()) {
            LOOPWRIGHT_ASSIGN(const auto opened, context.records());
            m_anyway.tell(*opened);
            return m_import.run(context);
        }
        LOOPWRIGHT_ASSIGN(const auto values, columnValues(m_words.mid(1), "order set"));
        if (values.isEmpty())
            return failure(ErrorCode::Usage, "nothing is said to be set: COLUMN=VALUE",
                           "order set");
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        m_anyway.tell(*records);
        LOOPWRIGHT_ASSIGN(const auto report,
                          changePlans(*records, {{m_words.front(), values}}, m_sameWires));
        return answerOf(report);
    }

private:
    QStringList m_words;
    AnywayOption m_anyway;
    bool m_sameWires = false;
    ImportFile m_import{importPlans, "--in", true};
};

class HoldOrders : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("numbers", m_orders, "The orders", Given::Always);
        options.word("--waiting-on", m_waitingOn, allWords<WaitingOn>(), "Who has to act first",
                     Given::Always);
        options.text("--because", m_because, "What is missing", Given::Always);
        m_anyway.declare(options);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        m_anyway.tell(*records);
        LOOPWRIGHT_ASSIGN(
            const auto report,
            holdOrders(*records, m_orders, *fromText<WaitingOn>(m_waitingOn), m_because));
        return answerOf(report);
    }

private:
    QStringList m_orders;
    QString m_waitingOn, m_because;
    AnywayOption m_anyway;
};

class ResumeOrders : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("numbers", m_orders, "The orders", Given::Always);
        m_anyway.declare(options);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        m_anyway.tell(*records);
        LOOPWRIGHT_ASSIGN(const auto report, resumeOrders(*records, m_orders));
        return answerOf(report);
    }

private:
    QStringList m_orders;
    AnywayOption m_anyway;
};

} // namespace

std::unique_ptr<Command> makeOrderAssign()
{
    return std::make_unique<AssignOrders>();
}

std::unique_ptr<Command> makeOrderSet()
{
    return std::make_unique<SetOrder>();
}

std::unique_ptr<Command> makeOrderHold()
{
    return std::make_unique<HoldOrders>();
}

std::unique_ptr<Command> makeOrderResume()
{
    return std::make_unique<ResumeOrders>();
}

} // namespace loopwright
