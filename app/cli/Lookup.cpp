#include "app/cli/Lookup.h"

namespace loopwright {

Result<const ProtocolVariant *> variantOf(const QString &key)
{
    if (const ProtocolVariant *variant = findVariant(key))
        return variant;
    const QString meant = nearestVariantKey(key);
    return failure(ErrorCode::Usage,
                   QString("there is no protocol variant \"%1\"").arg(key) +
                       (meant.isEmpty() ? QString(" (see: loopwright-cli variants)")
                                        : QString("; did you mean \"%1\"?").arg(meant)),
                   "--variant");
}

} // namespace loopwright
