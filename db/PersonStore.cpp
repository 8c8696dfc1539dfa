#include "db/PersonStore.h"

#include "db/Statement.h"

namespace loopwright {

namespace {

Person readPerson(const Statement &row)
{
    return {row.text("installer"), row.text("name"), row.word<Role>("role")};
}

} // namespace

Result<std::optional<Person>> PersonStore::find(const QString &key) const
{
    Statement statement(m_database, "person.find");
    statement.bind("installer", key);
    return firstRow(statement, readPerson);
}

Result<std::vector<Person>> PersonStore::all() const
{
    Statement statement(m_database, "person.all");
    return rows(statement, readPerson);
}

Result<void> PersonStore::put(Transaction &transaction, const Person &person)
{
    const QString digest = digestOf(QJsonObject{
        {"installer", person.key}, {"name", person.name}, {"role", toText(person.role)}});
    Statement put(transaction, "person.put");
    put.bind("installer", person.key)
        .bind("name", person.name)
        .bind("role", person.role)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(put.run());
    transaction.seal(registerSubject(), {"installer", person.key, digest});
    return {};
}

} // namespace loopwright
