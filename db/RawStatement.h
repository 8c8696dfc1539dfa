#pragma once
// A prepared statement for the walks over whole tables: columns by place, texts as they lie in the
// page, nothing converted. Everything else uses Statement.

#include "core/base/Result.h"
#include "db/Connection.h"

#include <QByteArrayView>

#include <memory>
#include <string>

namespace loopwright {

class RawStatement
{
public:
    static Result<RawStatement> of(Connection &connection, const std::string &label,
                                   const std::string &sql);
    /// The statement of SqlCatalog with this label.
    static Result<RawStatement> of(Connection &connection, const std::string &label);
    ~RawStatement();
    RawStatement(RawStatement &&other) noexcept = default;
    RawStatement &operator=(RawStatement &&) = delete;

    /// Starts anew with the only parameter bound.
    void restart(qint64 first);
    Result<bool> next();
    /// Valid until the next step.
    QByteArrayView bytes(int column) const;
    qint64 integer(int column) const;
    /// Appends the columns from `first` on, each with its type and length, so that two rows give
    /// the same bytes only if they are the same.
    void appendColumns(QByteArray &out, int first) const;

private:
    RawStatement(Connection &connection, std::unique_ptr<PreparedStatement> statement);

    Connection *m_connection;
    std::unique_ptr<PreparedStatement> m_statement;
};

} // namespace loopwright
