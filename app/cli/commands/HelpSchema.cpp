#include "app/cli/commands/HelpSchema.h"

#include "app/cli/Layout.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>

// Outside of any namespace, as Qt wants it: the schemas lie in a library.
static void initSchemaResource()
{
    Q_INIT_RESOURCE(schemas);
}

namespace loopwright {

namespace {

const QString schemaEnd = QStringLiteral(".schema.json");
/// Of answers, then of files.
const QStringList schemaFolders{QStringLiteral(":/schemas/answers"), QStringLiteral(":/schemas")};

QStringList schemaNames()
{
    QStringList names;
    for (const QString &folder : schemaFolders)
        for (const QString &file : QDir(folder).entryList({'*' + schemaEnd}, QDir::Files))
            names << file.chopped(schemaEnd.size());
    return names;
}

Result<QByteArray> schemaOf(const QString &name)
{
    for (const QString &folder : schemaFolders) {
        QFile file(folder + '/' + name + schemaEnd);
        if (schemaNames().contains(name) && file.open(QIODevice::ReadOnly))
            return file.readAll();
    }
    return failure(
        ErrorCode::BadInput,
        QString("there is no schema of \"%1\"; help schema lists them all").arg(name.left(60)),
        "of");
}

class HelpSchema : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("of", m_words, "The words of a command, error, common, job-record or loop",
                      Given::IfWanted, Separation::None);
    }

    Result<Answer> run(CommandContext &) override
    {
        initSchemaResource();
        if (m_words.isEmpty())
            return Answer::of(QJsonArray::fromStringList(schemaNames()),
                              schemaNames().join('\n') + '\n');
        LOOPWRIGHT_ASSIGN(const auto schema, schemaOf(m_words.join('-')));
        return Answer::of(QJsonDocument::fromJson(schema).object(), QString::fromUtf8(schema));
    }

private:
    QStringList m_words;
};

} // namespace

std::unique_ptr<Command> makeHelpSchema()
{
    return std::make_unique<HelpSchema>();
}

} // namespace loopwright
