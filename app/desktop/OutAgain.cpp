#include "app/desktop/OutAgain.h"

#include "app/desktop/Language.h"

#include <QCoreApplication>

#include <utility>

namespace loopwright {

bool OutAgain::isAgain(const QString &what)
{
    return !what.isEmpty() && std::exchange(m_refused, {}) == what;
}

QString OutAgain::refused(const Error &error, const QString &what)
{
    if (error.code != ErrorCode::OrderOut)
        return localized(error);
    m_refused = what;
    return localizedSentence(error.message) + ' ' +
           QCoreApplication::translate("OutAgain", "Do it once more to change it all the same.");
}

} // namespace loopwright
