#include "app/trust/Pin.h"

#include <QByteArray>

#include <sodium.h>

namespace loopwright {

Result<QString> pinHash(const QString &pin)
{
    if (pin.size() < shortestPin || pin.size() > longestPin || pin.contains(u'\n'))
        return failure(
            ErrorCode::Usage,
            QString("A PIN is a line of %1 to %2 characters.").arg(shortestPin).arg(longestPin),
            "pin");
    if (sodium_init() < 0)
        return failure(ErrorCode::DiskTrouble, "The machine gives no random numbers.");
    const QByteArray bytes = pin.toUtf8();
    char hash[crypto_pwhash_STRBYTES];
    // The least that the library calls interactive: a PIN is asked on a laptop at the van.
    if (crypto_pwhash_str(hash, bytes.constData(), qulonglong(bytes.size()),
                          crypto_pwhash_OPSLIMIT_INTERACTIVE,
                          crypto_pwhash_MEMLIMIT_INTERACTIVE) != 0)
        return failure(ErrorCode::DiskTrouble, "There is too little memory to keep a PIN.");
    return QString::fromLatin1(hash);
}

bool pinMatches(const QString &hash, const QString &pin)
{
    if (hash.isEmpty() || pin.size() > longestPin || sodium_init() < 0)
        return false;
    const QByteArray bytes = pin.toUtf8();
    return crypto_pwhash_str_verify(hash.toLatin1().constData(), bytes.constData(),
                                    qulonglong(bytes.size())) == 0;
}

} // namespace loopwright
