#include "app/cli/commands/Card.h"

#include "app/actions/Cards.h"
#include "app/actions/SheetFile.h"
#include "app/cli/PaperOptions.h"

namespace loopwright {

namespace {

class PrintCard : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order", Given::Always);
        options.text("--out", m_out, "The PDF", Given::Always);
        options.word("--kind", m_kind, allWords<CardKind>(),
                     "settings (else): for the terminal equipment; leave_behind: for the customer "
                     "of a line that was not accepted; close_out: for the desk");
        m_paper.declare(options);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        const PaperLanguageHere speaking = m_paper.speaking();
        const CardKind kind = fromText<CardKind>(m_kind).value_or(CardKind::Settings);
        LOOPWRIGHT_ASSIGN(const auto sheet, cardOf(*records, m_number, kind, m_paper.paper()));
        LOOPWRIGHT_TRY(writeSheet(sheet, m_out, records->now()));
        return Answer::of(QJsonObject{{"order", m_number}, {"kind", toText(kind)}, {"card", m_out}},
                          m_out + "\n");
    }

private:
    QString m_number, m_out, m_kind;
    PaperOptions m_paper;
};

} // namespace

std::unique_ptr<Command> makeCard()
{
    return std::make_unique<PrintCard>();
}

} // namespace loopwright
