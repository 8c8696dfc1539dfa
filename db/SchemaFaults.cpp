#include "db/SchemaFaults.h"

#include "db/RawStatement.h"

namespace loopwright {

Result<Schema> readSchema(Connection &connection)
{
    LOOPWRIGHT_ASSIGN(auto statement, RawStatement::of(connection, "schema.all"));
    Schema schema;
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, statement.next());
        if (!more)
            return schema;
        schema.insert(statement.bytes(0).toByteArray(), statement.bytes(1).toByteArray());
    }
}

QStringList schemaDifferences(const Schema &wanted, const Schema &there)
{
    QStringList faults;
    for (auto it = wanted.begin(); it != wanted.end(); ++it)
        if (!there.contains(it.key()))
            faults << QString("the %1 is missing").arg(QString::fromUtf8(it.key()));
        else if (there.value(it.key()) != it.value())
            faults << QString("the %1 was changed").arg(QString::fromUtf8(it.key()));
    for (auto it = there.begin(); it != there.end(); ++it)
        if (!wanted.contains(it.key()))
            faults << QString("the %1 was put in").arg(QString::fromUtf8(it.key()));
    return faults;
}

} // namespace loopwright
