#pragma once
// Stands between a program and a server, and ends both connections when the program says COMMIT.

#include <QByteArray>
#include <QFile>
#include <QTemporaryDir>

#include <array>
#include <atomic>
#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <thread>
#include <unistd.h>

namespace loopwright {

class CuttingProxy
{
public:
    enum class Cut
    {
        BeforeCommit, ///< the server never hears it
        AfterCommit,  ///< the server does it, and its answer is lost
    };

    /// `serverSocket` is the file of the server's socket. All connections after the cut one pass.
    CuttingProxy(const QString &serverSocket, Cut cut)
        : m_serverSocket(QFile::encodeName(serverSocket))
        , m_cut(cut)
        , m_listener(socketAt(m_folder.filePath(".s.PGSQL.54329"), ::bind))
    {
        ::listen(m_listener, 8);
        m_thread = std::thread([this] { work(); });
    }
    ~CuttingProxy()
    {
        m_over = true;
        m_thread.join();
        ::close(m_listener);
    }
    CuttingProxy(const CuttingProxy &) = delete;
    CuttingProxy &operator=(const CuttingProxy &) = delete;

    QString folder() const { return m_folder.path(); }
    bool hasCut() const { return m_hasCut; }

private:
    template<class Call>
    static int socketAt(const QString &path, Call call)
    {
        sockaddr_un address{};
        address.sun_family = AF_UNIX;
        qstrncpy(address.sun_path, QFile::encodeName(path).constData(), sizeof address.sun_path);
        const int made = ::socket(AF_UNIX, SOCK_STREAM, 0);
        if (call(made, reinterpret_cast<const sockaddr *>(&address), sizeof address) != 0)
            qFatal("the socket %s cannot be used", address.sun_path);
        return made;
    }
    /// False when it has ended.
    static bool pass(int from, int to, QByteArray *seen)
    {
        std::array<char, 65536> bytes;
        const auto size = ::read(from, bytes.data(), bytes.size());
        if (size <= 0)
            return false;
        if (seen)
            *seen = QByteArray(bytes.data(), size);
        return ::write(to, bytes.data(), std::size_t(size)) == size;
    }
    void work()
    {
        struct Pair
        {
            int program, server;
        };
        std::vector<Pair> pairs;
        while (!m_over) {
            std::vector<pollfd> waiting{{m_listener, POLLIN, 0}};
            for (const Pair &each : pairs) {
                waiting.push_back({each.program, POLLIN, 0});
                waiting.push_back({each.server, POLLIN, 0});
            }
            constexpr int patienceMs = 20;
            ::poll(waiting.data(), waiting.size(), patienceMs);
            for (std::size_t i = pairs.size(); i-- > 0;)
                if (!serve(pairs[i].program, pairs[i].server, waiting[1 + 2 * i].revents,
                           waiting[2 + 2 * i].revents)) {
                    ::close(pairs[i].program);
                    ::close(pairs[i].server);
                    pairs.erase(pairs.begin() + std::ptrdiff_t(i));
                }
            if (waiting[0].revents != 0)
                pairs.push_back({::accept(m_listener, nullptr, nullptr),
                                 socketAt(QFile::decodeName(m_serverSocket), ::connect)});
        }
        for (const Pair &each : pairs) {
            ::close(each.program);
            ::close(each.server);
        }
    }
    bool serve(int program, int server, short said, short answered)
    {
        if (said != 0) {
            std::array<char, 65536> bytes;
            const auto size = ::recv(program, bytes.data(), bytes.size(), MSG_PEEK);
            // Its text ends there; "ON COMMIT" stands in the middle of another.
            static const QByteArray commit("COMMIT", sizeof "COMMIT");
            const bool commits =
                size > 0 && !m_hasCut && QByteArrayView(bytes.data(), size).contains(commit);
            if (commits) {
                m_hasCut = true;
                if (m_cut == Cut::BeforeCommit)
                    return false;
                QByteArray seen;
                pass(program, server, &seen);
                return false; // the server hears it all the same
            }
            if (!pass(program, server, nullptr))
                return false;
        }
        return answered == 0 || pass(server, program, nullptr);
    }

    QTemporaryDir m_folder;
    QByteArray m_serverSocket;
    Cut m_cut;
    int m_listener;
    std::atomic<bool> m_over = false, m_hasCut = false;
    std::thread m_thread;
};

} // namespace loopwright
