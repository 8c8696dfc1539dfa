#pragma once
// One window for each database: whoever starts the program again with records that it has open
// finds the window that is there, brought forward. Windows of other users are not meant: they work
// on the same records side by side.

#include <QLocalServer>
#include <QString>

namespace loopwright {

/// What a start wants to see besides the window.
struct Wish
{
    QString order;  ///< the job to open
    QString screen; ///< the key of a screen that takes a file
    QString file;   ///< for the screen; without one it is a bundle to be taken in
};

/// The same for every way in which a database can be named.
QString keyOfDatabase(const QString &path);

class OneWindow : public QObject
{
    Q_OBJECT
public:
    explicit OneWindow(QObject *parent = nullptr);

    /// Hands the wish to the window that works on these records. False if none is there, or none
    /// answers: two windows do the records no harm, a start that does nothing helps nobody.
    static bool handOver(const QString &database, const Wish &wish);
    /// From now on answers who starts with these records; unless another window does so already.
    void answerFor(const QString &database);

signals:
    void wished(const loopwright::Wish &wish);

private:
    void answer(QLocalSocket &socket);

    QLocalServer m_server;
};

} // namespace loopwright
