#include "db/SqlCatalog.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

// The linker drops a resource of a static library that nobody names. The macro may not stand in a
// namespace.
static bool registerSqlResource()
{
    Q_INIT_RESOURCE(sql);
    return true;
}

namespace loopwright {

namespace {

QString resourcePath(const QString &name)
{
    static const bool registered = registerSqlResource();
    return registered ? ":/db/" + name : QString();
}

} // namespace

QByteArray embeddedSql(const QString &name)
{
    QFile file(resourcePath(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QStringList embeddedSqlFiles(const QString &folder)
{
    return QDir(resourcePath(folder)).entryList({"*.sql"}, QDir::Files, QDir::Name);
}

const SqlCatalog &SqlCatalog::embedded()
{
    static const SqlCatalog catalog = [] {
        SqlCatalog made;
        for (const QString &file : embeddedSqlFiles("queries"))
            made.add(embeddedSql("queries/" + file),
                     QFileInfo(file).completeBaseName().toStdString());
        return made;
    }();
    return catalog;
}

void SqlCatalog::read(const QByteArray &fileText, const std::string &fileStem, bool over)
{
    std::string *text = nullptr;
    for (const QByteArray &line : fileText.split('\n')) {
        const bool isName = line.startsWith("-- name: ");
        if (isName || line.startsWith("-- part: ")) {
            const std::string label = fileStem + '.' + line.mid(9).trimmed().toStdString();
            const auto [place, isNew] = (isName ? m_statements : m_parts).try_emplace(label);
            if (isNew == over)
                m_troubles << QByteArray::fromStdString(label) +
                                  (over ? " is not there to be replaced" : " stands there twice");
            text = &place->second;
            text->clear();
        } else if (text) {
            *text += line.toStdString() + '\n';
        } else if (!line.startsWith("--") && !line.trimmed().isEmpty()) {
            m_troubles << QByteArray::fromStdString(fileStem) + ": text without a label: " + line;
        }
    }
}

const std::string *SqlCatalog::statement(std::string_view label) const
{
    const auto found = m_statements.find(label);
    return found == m_statements.end() ? nullptr : &found->second;
}

const std::string *SqlCatalog::part(std::string_view label) const
{
    const auto found = m_parts.find(label);
    return found == m_parts.end() ? nullptr : &found->second;
}

std::string SqlCatalog::compose(std::string_view label,
                                const std::vector<std::string_view> &parts) const
{
    const std::string *whole = statement(label);
    if (!whole)
        return {};
    std::string text = *whole;
    for (const std::string_view name : parts) {
        const std::string *found = part(name);
        if (!found)
            return {};
        text += *found;
    }
    return text;
}

std::vector<std::string> SqlCatalog::statementLabels() const
{
    std::vector<std::string> labels;
    for (const auto &[label, text] : m_statements)
        labels.push_back(label);
    return labels;
}

} // namespace loopwright
