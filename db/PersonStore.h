#pragma once
// The registered people: installers, dispatchers, supervisors.

#include "core/office/Office.h"
#include "db/Transaction.h"

namespace loopwright {

class PersonStore
{
public:
    explicit PersonStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::optional<Person>> find(const QString &key) const;
    Result<std::vector<Person>> all() const; ///< by key
    /// As app/trust/Pin.h makes it; empty if none is set. It leaves the records by no export.
    Result<QString> pinOf(const QString &key) const;

    /// Adds the person, or changes the one of this key.
    static Result<void> put(Transaction &transaction, const Person &person);
    static Result<void> setPin(Transaction &transaction, const Person &person, const QString &hash);

private:
    const Database &m_database;
};

} // namespace loopwright
