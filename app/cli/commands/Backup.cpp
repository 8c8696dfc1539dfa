#include "app/cli/commands/Backup.h"

#include "app/actions/Maintenance.h"
#include "app/cli/Files.h"

namespace loopwright {

namespace {

class MakeBackup : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file, "Where the copy goes", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_TRY(checkNotStandardStream(m_file, "a backup is read through where it lies"));
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_TRY(backupTo(*records, m_file, context.progress("copying")));
        return Answer::of(QJsonObject{{"backup", m_file}},
                          QString("backed up to %1 and verified\n").arg(m_file));
    }

private:
    QString m_file;
};

class RestoreBackup : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file, "The backup", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_TRY(checkNotStandardStream(m_file, "a backup is read where it lies"));
        const QString database = context.databasePath();
        const auto kept = restoreFrom(m_file, database, {context.common().by, context.pinSource()},
                                      context.progress("restoring"));
        if (!kept)
            return failure(kept.error());
        QString text = QString("%1 holds the records of %2 again\n").arg(database, m_file);
        if (!kept->isEmpty())
            text += QString("what it held before is kept in %1\n").arg(*kept);
        return Answer::of(QJsonObject{{"database", database},
                                      {"backup", m_file},
                                      {"kept", kept->isEmpty() ? QJsonValue() : *kept}},
                          text);
    }

private:
    QString m_file;
};

} // namespace

std::unique_ptr<Command> makeBackup()
{
    return std::make_unique<MakeBackup>();
}

std::unique_ptr<Command> makeRestore()
{
    return std::make_unique<RestoreBackup>();
}

} // namespace loopwright
