#pragma once
// The pages of a large database are looked through beside other work, by a thread and a connection
// of their own; those of a small one, or of one that lies in memory, at once.

#include "db/Database.h"

#include <QStringList>

#include <future>
#include <mutex>

namespace loopwright {

class PageCheck
{
public:
    /// Begins.
    explicit PageCheck(const Database &database);
    /// Breaks it off if nobody took what it found.
    ~PageCheck();
    PageCheck(const PageCheck &) = delete;
    PageCheck &operator=(const PageCheck &) = delete;

    /// As Database::damagedPages(); waits until it is done.
    Result<QStringList> take();

private:
    Result<QStringList> look(const QString &path);

    std::mutex m_mutex; ///< of the two below
    Database *m_other = nullptr;
    bool m_unwanted = false;
    std::future<Result<QStringList>> m_found;
};

} // namespace loopwright
