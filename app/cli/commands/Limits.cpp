#include "app/cli/commands/Limits.h"

#include "app/actions/LimitChanges.h"
#include "app/actions/LimitSets.h"
#include "app/cli/Layout.h"
#include "app/cli/LimitsFile.h"

namespace loopwright {

namespace {

class ShowLimits : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("--set", m_version, "This version; else the one that is in force today");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto limits, m_version.isEmpty() ? limitsInForce(*records)
                                                                 : limitSet(*records, m_version));
        ColumnLayout table({"key", "limit", ">value", "unit", "source"});
        for (const Limit &limit : limits.all())
            table.add(
                {limit.key, limit.name, shortNumber(limit.value, 6), limit.unit, limit.source});
        return Answer::of(limits.toJson(),
                          QString("Limit set %1, valid from %2\n\n")
                                  .arg(limits.version(), limits.validFrom().toString(Qt::ISODate)) +
                              table.text());
    }

private:
    QString m_version;
};

class AddLimits : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file, "JSON, as `limits show --json` prints it", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        const auto set = readLimitsFile(m_file);
        if (!set)
            return failure(set.error());
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        const auto added = addLimitSet(*records, *set);
        if (!added)
            return failure(added.error().code, added.error().message,
                           added.error().place.isEmpty()
                               ? m_file
                               : QString("%1: limit \"%2\"").arg(m_file, added.error().place));
        const QString day = set->validFrom().toString(Qt::ISODate);
        return Answer::of(
            QJsonObject{{"version", set->version()}, {"valid_from", day}, {"added", *added}},
            (*added ? QString("Limit set %1 is added, valid from %2.\n")
                    : QString("Limit set %1 is there already, valid from %2.\n"))
                .arg(set->version(), day));
    }

private:
    QString m_file;
};

} // namespace

std::unique_ptr<Command> makeLimitsShow()
{
    return std::make_unique<ShowLimits>();
}

std::unique_ptr<Command> makeLimitsAdd()
{
    return std::make_unique<AddLimits>();
}

} // namespace loopwright
