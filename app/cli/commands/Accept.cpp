#include "app/cli/commands/Accept.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Orders.h"
#include "app/cli/DecisionText.h"

namespace loopwright {

namespace {

class AcceptOrder : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order", Given::Always);
        options.texts("--except", m_except, "Keys of the criteria that are excepted",
                      Given::Always);
        options.text("--because", m_because, "The reason; it stands on the certificate",
                     Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (context.common().by.trimmed().isEmpty())
            return failure(ErrorCode::Usage,
                           "an exception needs the name of who makes it: --by NAME");
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto decision,
                          acceptWithException(*records, m_number, m_except, m_because));
        LOOPWRIGHT_ASSIGN(const auto view, showOrder(*records, m_number));
        return answerOf(decision, nextSentenceOf(view).english());
    }

private:
    QString m_number, m_because;
    QStringList m_except;
};

} // namespace

std::unique_ptr<Command> makeAccept()
{
    return std::make_unique<AcceptOrder>();
}

} // namespace loopwright
