#pragma once
// What is being typed and is not confirmed yet: the content of each part of a page. Drafts have no
// history; Transaction::commitDraft commits them.

#include "db/Transaction.h"

#include <QJsonObject>
#include <QMap>

namespace loopwright {

class DraftStore
{
public:
    explicit DraftStore(const Database &database)
        : m_database(database)
    {
    }

    /// `order` is empty for an order that has no number yet.
    Result<std::optional<QJsonObject>> find(const QString &order, const QString &part) const;
    Result<QMap<QString, QJsonObject>> ofOrder(const QString &order) const; ///< part to content
    Result<QMap<QString, QJsonObject>> ofPart(const QString &part) const;   ///< order to content

    static Result<void> put(Transaction &transaction, const QString &order, const QString &part,
                            const QJsonObject &content);
    /// Nothing happens if there is none.
    static Result<void> remove(Transaction &transaction, const QString &order, const QString &part);

private:
    const Database &m_database;
};

} // namespace loopwright
