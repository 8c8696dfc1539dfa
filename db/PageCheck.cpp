#include "db/PageCheck.h"

#include <QFileInfo>

namespace loopwright {

namespace {

/// Below, another thread gains nothing, and what is done is the same every time.
constexpr qint64 leastBytesBeside = 32'000'000;

} // namespace

PageCheck::PageCheck(const Database &database)
{
    const QString path = database.path();
    if (database.isFile() && QFileInfo(path).size() > leastBytesBeside) {
        m_found = std::async(std::launch::async, [this, path] { return look(path); });
        return;
    }
    std::promise<Result<QStringList>> found;
    found.set_value(database.damagedPages());
    m_found = found.get_future();
}

PageCheck::~PageCheck()
{
    const std::lock_guard lock(m_mutex);
    m_unwanted = true;
    if (m_other)
        m_other->interrupt();
}

Result<QStringList> PageCheck::take()
{
    return m_found.get();
}

Result<QStringList> PageCheck::look(const QString &path)
{
    LOOPWRIGHT_ASSIGN(auto database, Database::open(path, Database::Access::ReadOnly));
    {
        const std::lock_guard lock(m_mutex);
        if (m_unwanted)
            return QStringList();
        m_other = &database;
    }
    auto found = database.damagedPages();
    const std::lock_guard lock(m_mutex);
    m_other = nullptr;
    return found;
}

} // namespace loopwright
