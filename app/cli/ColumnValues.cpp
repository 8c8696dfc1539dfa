#include "app/cli/ColumnValues.h"

namespace loopwright {

Result<OrderFields> columnValues(const QStringList &words, const QString &place)
{
    OrderFields fields;
    for (const QString &word : words) {
        const qsizetype at = word.indexOf(u'=');
        if (at <= 0)
            return failure(ErrorCode::Usage,
                           QString("\"%1\" is not COLUMN=VALUE").arg(word.left(60)), place);
        fields.insert(word.left(at).trimmed(), word.mid(at + 1).trimmed());
    }
    return fields;
}

} // namespace loopwright
