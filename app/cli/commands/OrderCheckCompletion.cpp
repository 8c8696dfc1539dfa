#include "app/cli/commands/OrderCheckCompletion.h"

#include "app/actions/Completion.h"

namespace loopwright {

namespace {

QString sentence(SpokenNumber what)
{
    switch (what) {
    case SpokenNumber::Stands:
        return "It is the completion number of order %1, and it stands.";
    case SpokenNumber::Superseded:
        return "It was the completion number of order %1; what it was accepted on has changed "
               "since. "
               "Ask for the present one.";
    case SpokenNumber::Misheard:
        return "A digit was misheard: that is no completion number. Have it read again.";
    case SpokenNumber::Another:
        return "It is not the completion number of order %1.";
    }
    return {};
}

class CheckCompletion : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order", Given::Always);
        options.texts("completion", m_told, "The ten digits, in groups or not", Given::Always,
                      Separation::None);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        const QString told = m_told.join(u' ');
        LOOPWRIGHT_ASSIGN(const auto what, checkCompletion(*records, m_number, told));
        const QString text = sentence(what);
        return Answer::of(
            QJsonObject{
                {"order", m_number}, {"completion_number", told}, {"verdict", toText(what)}},
            (text.contains("%1") ? text.arg(m_number) : text) + '\n', what == SpokenNumber::Stands);
    }

private:
    QString m_number;
    QStringList m_told;
};

} // namespace

std::unique_ptr<Command> makeOrderCheckCompletion()
{
    return std::make_unique<CheckCompletion>();
}

} // namespace loopwright
