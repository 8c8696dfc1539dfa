#include "app/actions/Drafts.h"

#include "app/actions/InFile.h"
#include "app/actions/OutFile.h"
#include "core/base/Json.h"
#include "db/DraftStore.h"
#include "db/LeftOvers.h"
#include "db/PrivateFiles.h"

#include <QFileInfo>
#include <QJsonArray>

#include <unistd.h>

namespace loopwright {

namespace {

constexpr qint64 longestAside = 50'000'000; // bytes

/// What another waiter would have waited is put back as it goes.
class Patience
{
public:
    Patience(Database &database, int ms)
        : m_database(database)
        , m_before(database.setPatience(ms))
    {
    }
    ~Patience() { m_database.setPatience(m_before); }
    Patience(const Patience &) = delete;
    Patience &operator=(const Patience &) = delete;

private:
    Database &m_database;
    int m_before;
};

/// Beside the records; of a server's among the user's own files.
QString stemOfAside(const QString &databasePath)
{
    if (!isServerAddress(databasePath))
        return databasePath + ".drafts-";
    return QFileInfo(defaultDatabasePath()).path() + "/server-" +
           sha256Hex(databasePath.toUtf8()).left(16) + ".drafts-";
}

/// What one types at a desk of a server is shown at no other one's: before the name of the part.
QString markOf(const Records &records)
{
    return records.isOnServer() ? records.login() + '/' : QString();
}

std::vector<Draft> draftsIn(const QString &path)
{
    std::vector<Draft> drafts;
    const auto bytes = readFile(path, longestAside);
    const auto list = bytes ? parseJson(*bytes, path) : failure(bytes.error());
    if (!list)
        return drafts;
    const QJsonArray all = list->toArray();
    for (const QJsonValue &each : all)
        drafts.push_back(
            {each["order"].toString(), each["part"].toString(), each["content"].toObject()});
    return drafts;
}

} // namespace

Result<void> saveDrafts(Records &records, const std::vector<Draft> &drafts, int patienceMs)
{
    const Patience patience(records.database(), patienceMs);
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const QString mark = markOf(records);
    for (const Draft &each : drafts)
        LOOPWRIGHT_TRY(
            each.content.isEmpty()
                ? DraftStore::remove(transaction, each.order, mark + each.part)
                : DraftStore::put(transaction, each.order, mark + each.part, each.content));
    return transaction.commitDraft();
}

Result<void> setDraftsAside(const QString &databasePath, const std::vector<Draft> &drafts)
{
    const QString path = stemOfAside(databasePath) + QString::number(getpid());
    if (drafts.empty()) {
        QFile::remove(path);
        return {};
    }
    QJsonArray list;
    for (const Draft &each : drafts)
        list << QJsonObject{{"order", each.order}, {"part", each.part}, {"content", each.content}};
    if (isServerAddress(databasePath)) // nothing else may have been kept there yet
        makePrivateFolder(QFileInfo(path).path());
    LOOPWRIGHT_ASSIGN(auto out, OutFile::open(path, FileKind::Json, true));
    LOOPWRIGHT_TRY(out.write(canonicalJson(list)));
    return out.commit();
}

std::vector<Draft> takeDraftsSetAside(const QString &databasePath)
{
    const QString stem = stemOfAside(databasePath);
    const QStringList others = leftOvers(stem);
    std::vector<Draft> drafts = draftsIn(stem + QString::number(getpid()));
    for (const QString &path : others) {
        const auto some = draftsIn(path);
        drafts.insert(drafts.end(), some.begin(), some.end());
    }
    if (!others.isEmpty() && setDraftsAside(databasePath, drafts))
        for (const QString &path : others)
            QFile::remove(path);
    return drafts;
}

Result<QMap<QString, QJsonObject>> drafts(Records &records, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto all, DraftStore(records.database()).ofOrder(order));
    const QString mark = markOf(records);
    QMap<QString, QJsonObject> own;
    for (auto each = all.begin(); each != all.end(); ++each)
        if (each.key().startsWith(mark))
            own.insert(each.key().sliced(mark.size()), each.value());
    return own;
}

Result<QMap<QString, QJsonObject>> draftsOfPart(Records &records, const QString &part)
{
    return DraftStore(records.database()).ofPart(markOf(records) + part);
}

} // namespace loopwright
