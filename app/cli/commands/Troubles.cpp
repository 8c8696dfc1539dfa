#include "app/cli/commands/Troubles.h"

#include "app/actions/Troubles.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Layout.h"
#include "core/base/PaperTime.h"

namespace loopwright {

namespace {

QString troubleText(const Trouble &trouble)
{
    LabelledLines lines;
    lines.add("Trouble", trouble.order + ", " + toText(trouble.status))
        .add("Circuit", trouble.circuit)
        .add("Customer", QStringList{trouble.customer, trouble.premises}.join(", "))
        .add("Symptom", trouble.symptom)
        .add("From the desk", trouble.deskTest)
        .add("Opened", paperTime(trouble.opened))
        .add("Repeats", trouble.previous)
        .add("Found", trouble.found)
        .add("Cleared", trouble.cleared)
        .add("Cause", trouble.cause ? plainWord(toText(*trouble.cause)) : QString())
        .add("Closed", trouble.closed ? paperTime(*trouble.closed) : QString());
    return lines.text();
}

class OpenTrouble : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("circuit", m_opening.circuit, "The circuit in service", Given::Always);
        options.text("--symptom", m_opening.symptom, "What the customer says", Given::Always);
        options.text("--desk-test", m_opening.deskTest, "What a test from the desk showed");
        options.text("--installer", m_opening.installer, "Key of who goes there");
        options.date("--due", m_opening.due, "The day; today unless said");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto opened, openTrouble(*records, m_opening));
        Answer answer = Answer::of(opened.trouble.toJson(), troubleText(opened.trouble));
        answer.tell(opened.findings);
        return answer;
    }

private:
    OpeningTrouble m_opening;
};

class CloseTrouble : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("trouble", m_closing.order, "The trouble", Given::Always);
        options.text("--found", m_closing.found, "What was wrong", Given::Always);
        options.text("--cleared", m_closing.cleared, "What was done about it", Given::Always);
        options.word("--cause", m_cause, allWords<ClearedWhat>(), "What it was", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        m_closing.cause = *fromText<ClearedWhat>(m_cause);
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto closed, closeTrouble(*records, m_closing));
        QJsonObject json = closed.trouble.toJson();
        json.insert("lacks", QJsonArray::fromStringList(closed.lacks));
        QString text = troubleText(closed.trouble);
        for (const QString &lack : closed.lacks)
            text += "Not shown: " + wrapped(lack, 4) + '\n';
        return Answer::of(json, text);
    }

private:
    ClosingTrouble m_closing;
    QString m_cause;
};

class ListTroubles : public Command
{
public:
    void declare(Options &options) override
    {
        options.flag("--open", m_openOnly, "Only those that are not closed");
        options.text("--circuit", m_circuit, "Only those of this circuit");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        auto list =
            m_circuit.isEmpty() ? troubles(*records, m_openOnly) : troublesOf(*records, m_circuit);
        if (!list)
            return failure(list.error());
        if (m_openOnly)
            std::erase_if(*list, [](const Trouble &trouble) { return !trouble.isOpen(); });
        QJsonArray json;
        ColumnLayout table(
            {"trouble", "circuit", "state", "opened", "cause", "repeats", "symptom"});
        for (const Trouble &trouble : *list) {
            json << trouble.toJson();
            table.add({trouble.order, trouble.circuit, toText(trouble.status),
                       paperTime(trouble.opened),
                       trouble.cause ? plainWord(toText(*trouble.cause)) : QString(),
                       trouble.previous, trouble.symptom});
        }
        return Answer::of(json, !list->empty() ? table.text()
                                : m_openOnly   ? QString("no trouble is open\n")
                                               : QString("no trouble was opened\n"));
    }

private:
    bool m_openOnly = false;
    QString m_circuit;
};

} // namespace

std::unique_ptr<Command> makeTroubleOpen()
{
    return std::make_unique<OpenTrouble>();
}

std::unique_ptr<Command> makeTroubleClose()
{
    return std::make_unique<CloseTrouble>();
}

std::unique_ptr<Command> makeTroubleList()
{
    return std::make_unique<ListTroubles>();
}

} // namespace loopwright
