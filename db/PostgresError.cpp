#include "db/PostgresError.h"

namespace loopwright {

namespace {

struct StateMeaning
{
    const char *state; ///< or the class that it begins with; the first row that fits is taken
    ErrorCode kind;
    const char *message;
};

constexpr StateMeaning stateMeanings[] = {
    {"55P03", ErrorCode::Busy, "the database is locked by another program; nothing was changed"},
    {"40P01", ErrorCode::Busy, "the database is locked by another program; nothing was changed"},
    {"57014", ErrorCode::Refused, "was cancelled"},
    {"53100", ErrorCode::DiskTrouble, "the disk is full; nothing was changed"},
    {"58030", ErrorCode::DiskTrouble, "the disk refused to write; nothing was changed"},
    {"53300", ErrorCode::DatabaseTrouble, "the server takes no more connections now"},
    {"57P", ErrorCode::ConnectionLost,
     "the connection to the server was lost; nothing was changed"},
    {"08", ErrorCode::ConnectionLost, "the connection to the server was lost; nothing was changed"},
    {"42501", ErrorCode::DatabaseTrouble, "the login may not do that in these records"},
    {"25006", ErrorCode::DatabaseTrouble, "the database cannot be written: it is read-only"},
    {"28", ErrorCode::DatabaseTrouble, "the server does not take this login or its password"},
    {"3D000", ErrorCode::DatabaseTrouble, "the server has no such database"},
    {"XX001", ErrorCode::DatabaseTrouble, "the database is damaged; restore it from a backup"},
    {"XX002", ErrorCode::DatabaseTrouble, "the database is damaged; restore it from a backup"},
    {"P0001", ErrorCode::BadInput, "the records refuse this value"}, // a trigger of ours
    {"22", ErrorCode::BadInput, "the records refuse this value"},
    {"23", ErrorCode::BadInput, "the records refuse this value"},
    {"54", ErrorCode::BadInput, "a value is too long for the records"},
};

} // namespace

Error postgresError(const QByteArray &state, const QString &detail, const QString &path,
                    const QString &doing)
{
    const QByteArray known = state.isEmpty() ? QByteArray("08") : state;
    for (const StateMeaning &meaning : stateMeanings) {
        if (!known.startsWith(meaning.state))
            continue;
        QString message = QString::fromLatin1(meaning.message);
        if (meaning.kind == ErrorCode::BadInput)
            message += QString(" (%1: %2)").arg(doing, detail.simplified());
        return {meaning.kind, message, path};
    }
    return {ErrorCode::DatabaseTrouble,
            QString("the database failed: %1 (%2)").arg(detail.simplified(), doing), path};
}

} // namespace loopwright
