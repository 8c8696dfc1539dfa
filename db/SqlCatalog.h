#pragma once
// The labelled statements of db/queries/*.sql, which are built into the program. In a file x.sql a
// line `-- name: find` begins the statement "x.find"; a line `-- part: by_stage` begins the part
// "x.by_stage" that is put after a statement by `compose`. Values are always bound; nothing that
// was typed ever becomes part of a statement.

#include <QByteArray>
#include <QList>

#include <initializer_list>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace loopwright {

class SqlCatalog
{
public:
    /// What is built into the program; read once and never changed.
    static const SqlCatalog &embedded();
    /// Adds the statements of one file. What is wrong with it goes to `troubles()`.
    void add(const QByteArray &fileText, const std::string &fileStem)
    {
        read(fileText, fileStem, false);
    }
    /// Puts the statements and parts of another engine in the place of those of the same label; one
    /// that takes nobody's place is a trouble.
    void layOver(const QByteArray &fileText, const std::string &fileStem)
    {
        read(fileText, fileStem, true);
    }

    /// The text under a label; nullptr if there is none.
    const std::string *statement(std::string_view label) const;
    const std::string *part(std::string_view label) const;
    /// Statement and parts, one after the other; empty if one of them does not exist.
    std::string compose(std::string_view label, const std::vector<std::string_view> &parts) const;

    std::vector<std::string> statementLabels() const;
    const QList<QByteArray> &troubles() const { return m_troubles; }

private:
    using Texts = std::map<std::string, std::string, std::less<>>;

    void read(const QByteArray &fileText, const std::string &fileStem, bool over);

    Texts m_statements;
    Texts m_parts;
    QList<QByteArray> m_troubles; ///< a label twice, a text without one; empty in a sound build
};

/// The bytes of a file of db/ that is built into the program, e.g. "migrations/0001_initial.sql".
QByteArray embeddedSql(const QString &name);
/// The names of the files in a folder of db/ that are built into the program, sorted.
QStringList embeddedSqlFiles(const QString &folder);

} // namespace loopwright
