#include "app/desktop/OneWindow.h"

#include "app/actions/Records.h"
#include "core/base/Json.h"

#include <QDir>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocalSocket>
#include <QStandardPaths>
#include <QUrl>

namespace loopwright {

namespace {

constexpr int connectMs = 1000, answerMs = 3000;
/// Nobody has so much to say; it comes from this user alone, but from whatever program.
constexpr qint64 longestWish = 65'536;
constexpr const char *done = "done\n";

/// In the folder that no other user may enter; a name in /tmp could be taken by anybody.
QString socketOf(const QString &database)
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation);
    return folder.isEmpty() ? QString() : folder + "/loopwright-" + keyOfDatabase(database);
}

QString keyOf(const QString &place)
{
    return sha256Hex(place.toUtf8()).left(16);
}

} // namespace

QString keyOfDatabase(const QString &path)
{
    // On a server two logins are two windows, and a password makes no difference.
    if (isServerAddress(path))
        return keyOf(shownPlace(path) + ' ' + QUrl(path).userName());
    const QFileInfo file(path);
    const QString folder = QFileInfo(file.absolutePath()).canonicalFilePath();
    const QString whole = file.exists()      ? file.canonicalFilePath()
                          : folder.isEmpty() ? file.absoluteFilePath()
                                             : QDir(folder).filePath(file.fileName());
    return keyOf(whole);
}

OneWindow::OneWindow(QObject *parent)
    : QObject(parent)
{
    m_server.setSocketOptions(QLocalServer::UserAccessOption);
    connect(&m_server, &QLocalServer::newConnection, this, [this] {
        while (QLocalSocket *socket = m_server.nextPendingConnection()) {
            connect(socket, &QLocalSocket::readyRead, this, [this, socket] { answer(*socket); });
            connect(socket, &QLocalSocket::disconnected, socket, &QObject::deleteLater);
        }
    });
}

bool OneWindow::handOver(const QString &database, const Wish &wish)
{
    QLocalSocket socket;
    socket.connectToServer(socketOf(database));
    if (!socket.waitForConnected(connectMs))
        return false;
    const QJsonObject said{{"order", wish.order}, {"screen", wish.screen}, {"file", wish.file}};
    socket.write(QJsonDocument(said).toJson(QJsonDocument::Compact) + '\n');
    while (!socket.canReadLine())
        if (!socket.waitForReadyRead(answerMs))
            return false;
    return socket.readLine() == done;
}

void OneWindow::answerFor(const QString &database)
{
    const QString path = socketOf(database);
    if (path.isEmpty() || m_server.fullServerName() == path)
        return;
    m_server.close();
    // First, for to listen would take the name from whoever has it.
    QLocalSocket other;
    other.connectToServer(path);
    if (other.waitForConnected(connectMs))
        return;
    QLocalServer::removeServer(path); // of one that was killed
    m_server.listen(path);
}

void OneWindow::answer(QLocalSocket &socket)
{
    if (!socket.canReadLine()) {
        if (socket.bytesAvailable() > longestWish)
            socket.abort();
        return;
    }
    const QJsonObject said = QJsonDocument::fromJson(socket.readLine(longestWish)).object();
    socket.write(done);
    socket.disconnectFromServer(); // once that is written
    emit wished({said["order"].toString(), said["screen"].toString(), said["file"].toString()});
}

} // namespace loopwright
