#include "app/cli/commands/Help.h"

#include "app/actions/FileForms.h"
#include "app/cli/Layout.h"
#include "core/acceptance/Criteria.h"
#include "core/acceptance/PartHelp.h"
#include "core/base/Glossary.h"
#include "core/safety/Cautions.h"

namespace loopwright {

namespace {

QJsonValue textOrNull(const QString &text)
{
    return text.isEmpty() ? QJsonValue() : QJsonValue(text);
}

/// Codes of the stations, then those parts that are called otherwise.
QStringList stationWords()
{
    QStringList words = allWords<Station>();
    for (const PartHelp &part : partHelps())
        if (!words.contains(QLatin1StringView(part.key)))
            words << QString::fromLatin1(part.key);
    return words;
}

class HelpStation : public Command
{
public:
    void declare(Options &options) override
    {
        options.word("name", m_name, stationWords(), "A station of the job, or a part of one");
    }

    Result<Answer> run(CommandContext &) override
    {
        std::vector<const PartHelp *> parts = partHelpsOf(m_name);
        if (m_name.isEmpty())
            for (const PartHelp &part : partHelps())
                parts.push_back(&part);
        QJsonArray json;
        QString text;
        for (const PartHelp *part : parts) {
            json.append(partJson(*part));
            text += (text.isEmpty() ? QString() : QString("\n")) + partText(*part);
        }
        return Answer::of(json, text);
    }

private:
    static QStringList cautionsOf(const PartHelp &part)
    {
        QStringList lines;
        if (part.station != Station::Safety)
            return lines;
        for (const Caution &caution : cautions())
            lines << QString::fromUtf8(caution.title) + ": " + QString::fromUtf8(caution.text);
        return lines << cautionsDisclaimer();
    }

    static QJsonObject partJson(const PartHelp &part)
    {
        return {{"key", part.key},
                {"name", part.name},
                {"station", toText(part.station)},
                {"what_for", part.whatFor().english()},
                {"when_it_fails", part.whenItFails().english()},
                {"cautions", QJsonArray::fromStringList(cautionsOf(part))}};
    }

    static QString partText(const PartHelp &part)
    {
        QString text = heading(part.name) + wrapped(part.whatFor().english()) + '\n' +
                       wrapped("When it fails: " + part.whenItFails().english()) + '\n';
        for (const QString &caution : cautionsOf(part))
            text += '\n' + wrapped(caution) + '\n';
        return text;
    }

    QString m_name;
};

class HelpGlossary : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("term", m_term, "A word, or a part of one");
    }

    Result<Answer> run(CommandContext &) override
    {
        const std::vector<const Term *> terms = termsCalled(m_term);
        if (terms.empty())
            return failure(ErrorCode::BadInput,
                           QString("\"%1\" is not among the words that are explained; help "
                                   "glossary lists them all")
                               .arg(m_term.left(60)),
                           "term");
        QJsonArray json;
        QString text;
        for (const Term *term : terms) {
            const QString also = QString::fromLatin1(term->also);
            json.append(QJsonObject{
                {"term", term->word}, {"also", textOrNull(also)}, {"meaning", term->meaning}});
            const QString named = also.isEmpty() ? QString() : QString(" (%1)").arg(also);
            text += wrapped(QString(term->word) + named + ": " + term->meaning, 4) + '\n';
        }
        return Answer::of(json, text);
    }

private:
    QString m_term;
};

class HelpColumns : public Command
{
public:
    void declare(Options &options) override
    {
        options.word("file", m_file, fileFormKeys(), "Which file; else all of them are listed");
        options.flag("--sample", m_sample, "A file of that kind as an example, and nothing else");
    }

    Result<Answer> run(CommandContext &) override
    {
        const FileForm *form = findFileForm(m_file);
        if (!form && m_sample)
            return failure(ErrorCode::Usage, "goes with the name of a file", "--sample");
        if (!form)
            return all();
        return Answer::of(formJson(*form),
                          m_sample ? QString::fromUtf8(sampleOf(*form)) : formText(*form));
    }

private:
    static Answer all()
    {
        QJsonArray json;
        ColumnLayout table({"file", "what it holds", "taken by"});
        for (const FileForm &form : fileForms()) {
            json.append(formJson(form));
            table.add({form.key, form.name, form.command});
        }
        return Answer::of(json, table.text());
    }

    static QJsonObject formJson(const FileForm &form)
    {
        QJsonArray columns;
        for (const FileColumn &column : columnsOf(form))
            columns.append(QJsonObject{{"column", column.name},
                                       {"required", column.required},
                                       {"words", QJsonArray::fromStringList(column.words)},
                                       {"meaning", column.meaning.english()}});
        return {{"file", form.key},
                {"name", form.name},
                {"command", form.command},
                {"columns", columns},
                {"sample", QString::fromUtf8(sampleOf(form))}};
    }

    static QString formText(const FileForm &form)
    {
        ColumnLayout table({"column", "", "meaning"});
        for (const FileColumn &column : columnsOf(form)) {
            QString meaning = column.meaning.english();
            if (!column.words.isEmpty())
                meaning += " (" + column.words.join(", ") + ')';
            table.add({column.name, column.required ? "required" : "", meaning});
        }
        return heading(QString("%1: %2").arg(form.name, form.command)) + table.text() +
               wrapped("CSV in UTF-8 with a header; columns in any order.") + '\n';
    }

    QString m_file;
    bool m_sample = false;
};

} // namespace

std::unique_ptr<Command> makeHelpStation()
{
    return std::make_unique<HelpStation>();
}

std::unique_ptr<Command> makeHelpGlossary()
{
    return std::make_unique<HelpGlossary>();
}

std::unique_ptr<Command> makeHelpColumns()
{
    return std::make_unique<HelpColumns>();
}

} // namespace loopwright
