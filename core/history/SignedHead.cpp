#include "core/history/SignedHead.h"

#include "core/base/Json.h"

namespace loopwright {

QJsonObject SignedHead::toJson() const
{
    QJsonObject object = head.toJson();
    if (!signature.isEmpty()) {
        object.insert("key", key);
        object.insert("signature", QString::fromLatin1(signature));
    }
    return object;
}

Result<SignedHead> SignedHead::fromJson(QJsonObject object, const QString &place)
{
    SignedHead read;
    const QJsonValue key = object.take("key"), signature = object.take("signature");
    LOOPWRIGHT_ASSIGN(read.head, LogHead::fromJson(object, place));
    if (key.isUndefined() && signature.isUndefined())
        return read;
    if (!key.isString() || !signature.isString())
        return failure(ErrorCode::BadInput, "is signed with \"key\" and \"signature\", both texts",
                       place);
    read.key = key.toString();
    read.signature = signature.toString().toLatin1();
    return read;
}

} // namespace loopwright
