#pragma once
// A statement of a PostgresSession. All rows of an answer are here at once, so that others can be
// run between two of them; walks over whole tables come in pieces, by a cursor.

#include "db/Connection.h"
#include "db/PostgresReads.h"
#include "db/PostgresSession.h"
#include "db/PostgresSql.h"

namespace loopwright {

class PostgresStatement final : public PreparedStatement
{
public:
    PostgresStatement(PostgresSession &session, std::string label, PostgresSql sql);
    ~PostgresStatement() override = default;

    bool changesRows() const override { return m_sql.changesRows; }
    const std::vector<std::string> &columns() override;

    void bind(int parameter, qint64 value) override;
    void bind(int parameter, double value) override;
    void bind(int parameter, QByteArrayView utf8) override;
    void bindNull(int parameter) override;

    Result<bool> step() override;
    Result<void> write() override;
    qint64 changed() const override { return m_changed; }
    void rewind() override;
    void clear() override;

    Type type(int column) const override;
    QByteArrayView text(int column) const override;
    qint64 integer(int column) const override;
    double real(int column) const override;

private:
    void set(int parameter, const QByteArray &text, unsigned type);
    Result<void> ask();
    Result<void> mayChange() const;
    /// It changes rows where others read.
    void noteChange();
    PostgresMessage message() const;
    bool comesInPieces() const;
    Result<PostgresAnswer> askForPieces();
    Result<PostgresAnswer> nextPiece();
    /// What was read in this change already, or is asked later with others; nothing: ask.
    std::optional<PostgresAnswer> askedBefore() const;
    PostgresQuestion question() const { return {m_sql.text, m_types, m_values}; }

    PostgresSession &m_session;
    PostgresSql m_sql;
    std::vector<QByteArray> m_values; ///< null: NULL
    std::vector<unsigned> m_types;
    std::string m_cursor; ///< of its pieces; empty: it comes whole
    PostgresAnswer m_answer;
    std::vector<std::string> m_columns;
    int m_row = -1, m_rows = 0;
    qint64 m_changed = 0;
};

} // namespace loopwright
