#pragma once
// Serving offices, and who issues their certificates. The unpublished numbers of their test lines
// are kept and asked for apart; they are in no seal and no event.

#include "core/office/Office.h"
#include "db/Transaction.h"

namespace loopwright {

class OfficeStore
{
public:
    explicit OfficeStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::optional<ServingOffice>> find(const QString &key) const;
    Result<std::vector<ServingOffice>> all() const; ///< by key
    /// For installers; by label.
    Result<QList<TestLine>> testLines(const QString &key) const;

    /// Who issues the certificates; nothing until it is said.
    Result<std::optional<Issuer>> issuer() const;

    /// Says who issues, or changes it: there is one.
    static Result<void> putIssuer(Transaction &transaction, const Issuer &issuer);
    /// Adds the office, or changes the one of this key; the test lines become these.
    static Result<void> put(Transaction &transaction, const ServingOffice &office,
                            const QList<TestLine> &testLines);

private:
    const Database &m_database;
};

} // namespace loopwright
