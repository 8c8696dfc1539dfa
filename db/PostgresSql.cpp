#include "db/PostgresSql.h"

#include <QFileInfo>

#include <algorithm>
#include <cctype>

namespace loopwright {

namespace {

bool isWordLetter(char c)
{
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

/// Cuts a statement into words, quoted texts and single characters; comments are left out.
class Pieces
{
public:
    explicit Pieces(std::string_view sql)
        : m_rest(sql)
    {
    }
    /// Empty at the end.
    std::string_view next()
    {
        while (m_rest.starts_with("--"))
            m_rest.remove_prefix(std::min(m_rest.find('\n'), m_rest.size()));
        if (m_rest.empty())
            return {};
        const char first = m_rest.front();
        if (first == '\'' || first == '"')
            return take(std::min(m_rest.find(first, 1), m_rest.size() - 1) + 1);
        if (m_rest.starts_with("::"))
            return take(2);
        const auto letters = [this](std::size_t from) {
            return std::size_t(std::find_if_not(m_rest.begin() + std::ptrdiff_t(from), m_rest.end(),
                                                isWordLetter) -
                               m_rest.begin());
        };
        if (first == ':')
            return take(letters(1));
        return take(std::max<std::size_t>(letters(0), 1));
    }

private:
    std::string_view take(std::size_t length)
    {
        const std::string_view taken = m_rest.substr(0, length);
        m_rest.remove_prefix(taken.size());
        return taken;
    }

    std::string_view m_rest;
};

/// Of the words CROSS JOIN, INDEXED BY x and NOT INDEXED only JOIN is left.
std::string withoutHints(std::string sql)
{
    const auto erase = [&sql](std::string_view hint, bool withName) {
        for (auto at = sql.find(hint); at != std::string::npos; at = sql.find(hint, at)) {
            auto end = at + hint.size();
            while (withName && end < sql.size() && isWordLetter(sql[end]))
                ++end;
            sql.erase(at, end - at);
        }
    };
    erase(" INDEXED BY ", true);
    erase(" NOT INDEXED", false);
    erase("CROSS ", false);
    return sql;
}

} // namespace

PostgresSql toPostgres(std::string_view sql)
{
    PostgresSql made;
    std::string first;
    Pieces pieces(sql);
    for (auto piece = pieces.next(); !piece.empty(); piece = pieces.next()) {
        if (piece.size() > 1 && piece.front() == ':' && piece != "::") {
            const std::string name(piece.substr(1));
            auto known = std::ranges::find(made.parameters, name);
            if (known == made.parameters.end())
                known = made.parameters.insert(known, name);
            made.text += '$' + std::to_string(known - made.parameters.begin() + 1);
            continue;
        }
        if (first.empty() && isWordLetter(piece.front()))
            first = piece;
        made.text += piece;
    }
    made.text = withoutHints(std::move(made.text));
    made.changesRows = first == "INSERT" || first == "UPDATE" || first == "DELETE";
    return made;
}

const SqlCatalog &postgresCatalog()
{
    static const SqlCatalog catalog = [] {
        SqlCatalog made = SqlCatalog::embedded();
        const QString folder = QStringLiteral("postgresql/queries");
        for (const QString &file : embeddedSqlFiles(folder))
            made.layOver(embeddedSql(folder + '/' + file),
                         QFileInfo(file).completeBaseName().toStdString());
        return made;
    }();
    return catalog;
}

} // namespace loopwright
