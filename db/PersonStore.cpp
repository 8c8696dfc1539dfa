#include "db/PersonStore.h"

#include "db/Statement.h"

namespace loopwright {

namespace {

Person readPerson(const Statement &row)
{
    return {row.text("installer"), row.text("name"), row.word<Role>("role"), row.text("login")};
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

Result<QString> PersonStore::pinOf(const QString &key) const
{
    Statement statement(m_database, "person.pin");
    statement.bind("installer", key);
    LOOPWRIGHT_ASSIGN(const auto found,
                      firstRow(statement, [](const Statement &row) { return row.text("pin"); }));
    return found.value_or(QString());
}

Result<void> PersonStore::put(Transaction &transaction, const Person &person)
{
    LOOPWRIGHT_ASSIGN(const auto pin, PersonStore(transaction.database()).pinOf(person.key));
    return setPin(transaction, person, pin);
}

Result<void> PersonStore::setPin(Transaction &transaction, const Person &person,
                                 const QString &hash)
{
    const QString digest = digestOf(QJsonObject{{"installer", person.key},
                                                {"name", person.name},
                                                {"role", toText(person.role)},
                                                {"login", person.login},
                                                {"pin", hash}});
    Statement put(transaction, "person.put");
    put.bind("installer", person.key)
        .bind("name", person.name)
        .bind("role", person.role)
        .bind("login", person.login)
        .bind("pin", hash)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(put.write());
    transaction.seal(registerSubject(), {"installer", person.key, digest});
    return {};
}

} // namespace loopwright
