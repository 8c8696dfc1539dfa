#include "app/cli/commands/PersonPin.h"

#include "app/actions/Acting.h"
#include "app/cli/PinInput.h"

namespace loopwright {

namespace {

class PersonPin : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("person", m_person, "The person's key", Given::Always);
        options.text("--old-pin-file", m_oldFile, "Holds the present PIN in its first line");
        options.flag("--remove", m_remove, "No PIN is asked of him any more");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        // Elsewhere --pin-file is the present PIN; here it is the new one.
        std::optional<QString> old;
        if (!m_oldFile.isEmpty()) {
            LOOPWRIGHT_ASSIGN(old, pinFromFile(m_oldFile));
        }
        records->setPinSource([old](const Person &person) {
            return old ? old : pinFromTerminal(QString("Present PIN of %1:").arg(person.name));
        });
        LOOPWRIGHT_ASSIGN(const auto pin, m_remove ? Result<QString>(QString()) : newPin(context));
        LOOPWRIGHT_TRY(setPin(*records, m_person, pin));
        return Answer::of(
            QJsonObject{{"installer", m_person}, {"pin", !pin.isEmpty()}},
            QString(pin.isEmpty() ? "%1 has no PIN\n" : "the PIN of %1 is set\n").arg(m_person));
    }

private:
    Result<QString> newPin(const CommandContext &context) const
    {
        if (context.common().pin)
            return *context.common().pin;
        const auto first = pinFromTerminal(QString("New PIN of %1:").arg(m_person));
        if (!first)
            return failure(ErrorCode::Usage, "say the new PIN on a terminal, or with --pin-file",
                           "--pin-file");
        if (pinFromTerminal("The same again:") != first)
            return failure(ErrorCode::Usage, "the two are not the same; nothing was changed");
        return *first;
    }

    QString m_person, m_oldFile;
    bool m_remove = false;
};

} // namespace

std::unique_ptr<Command> makePersonPin()
{
    return std::make_unique<PersonPin>();
}

} // namespace loopwright
