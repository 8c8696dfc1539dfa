#include "app/cli/commands/CheckCause.h"

#include "app/cli/Layout.h"
#include "core/turnup/Cause.h"

namespace loopwright {

namespace {

class CheckCause : public Command
{
public:
    void declare(Options &options) override
    {
        options.integer("number", m_number, 1, 127, "The cause, 1 to 127", Given::Always);
    }

    Result<Answer> run(CommandContext &) override
    {
        const Cause cause = known();
        const QJsonObject json{{"cause", cause.number},
                               {"name", cause.name.english()},
                               {"class", cause.classText.english()},
                               {"check_first", cause.checkFirst.english()}};
        const QString text = LabelledLines()
                                 .add(QString("Cause %1").arg(cause.number), cause.name.english())
                                 .add("Class", cause.classText.english())
                                 .add("Check first", cause.checkFirst.english())
                                 .text();
        return Answer::of(json, text, cause.inList);
    }

private:
    Cause known() const
    {
        if (auto cause = causeOf(int(m_number)))
            return *cause;
        Cause none;
        none.number = int(m_number);
        return none;
    }

    qint64 m_number = 0;
};

} // namespace

std::unique_ptr<Command> makeCheckCause()
{
    return std::make_unique<CheckCause>();
}

} // namespace loopwright
