#include "db/PostgresSession.h"

#include "db/PostgresError.h"
#include "db/PostgresReads.h"

#include <QElapsedTimer>
#include <QThread>

#include <algorithm>
#include <libpq-fe.h>

namespace loopwright {

namespace {

/// For how long a lost connection is tried again.
constexpr int reconnectMs = 30'000;
constexpr int betweenTriesMs = 200;

/// More do not wait: the memory is not filled with them.
constexpr std::size_t mostWaiting = 200;

/// Values of the address, and how each session is set, in the place of what the environment says.
PGconn *connectTo(const QByteArray &address)
{
    const char *keywords[] = {"dbname", "client_encoding", "fallback_application_name", nullptr};
    const char *values[] = {address.constData(), "UTF8", "loopwright", nullptr};
    constexpr int dbnameIsAnAddress = 1;
    return PQconnectdbParams(keywords, values, dbnameIsAnAddress);
}

} // namespace

PostgresSession::PostgresSession(QByteArray address, QString path,
                                 std::function<Result<void>()> mayGoOn)
    : m_address(std::move(address))
    , m_path(std::move(path))
    , m_mayGoOn(std::move(mayGoOn))
    , m_reads(std::make_unique<PostgresReads>())
{
}

PostgresSession::~PostgresSession()
{
    PQfinish(m_handle);
}

Result<void> PostgresSession::connect()
{
    closeHandle();
    PGconn *handle = connectTo(m_address);
    {
        const std::lock_guard lock(m_handleLock);
        m_handle = handle;
    }
    ++m_news; // whoever was away must read again
    m_within = m_lost = false;
    forgetWaiting();
    m_prepared.forget();
    if (PQstatus(m_handle) != CONNECTION_OK) {
        const QString said = QString::fromUtf8(PQerrorMessage(m_handle)).simplified();
        // Of a connection that fails libpq tells no SQLSTATE.
        if (said.contains(u"password") || said.contains(u"authentication"))
            return failure(postgresError("28000", {}, m_path, {}));
        return failure(ErrorCode::ConnectionLost, "the server cannot be reached", m_path);
    }
    PQsetNoticeProcessor(
        m_handle, [](void *, const char *) {}, nullptr);
    return setUp();
}

Result<void> PostgresSession::setUp()
{
    constexpr int oldestServer = 15'00'00;
    if (PQserverVersion(m_handle) < oldestServer)
        return failure(ErrorCode::DatabaseTrouble, "the server must be PostgreSQL 15 or newer",
                       m_path);
    LOOPWRIGHT_ASSIGN(
        const auto order,
        execute("SET default_transaction_read_only = on; SET timezone = 'UTC';"
                "SET datestyle = 'ISO'; SET search_path = public; SET lock_timeout = 0;"
                "SET statement_timeout = 0; SET idle_in_transaction_session_timeout = 0;"
                "LISTEN loopwright; SELECT concat_ws(' ', pg_encoding_to_char(encoding), "
                "datlocprovider, datcollate,"
                " datctype) FROM pg_database WHERE datname = current_database()",
                "set up"));
    if (qstrcmp(PQgetvalue(order.get(), 0, 0), "UTF8 c C C") != 0)
        return failure(ErrorCode::DatabaseTrouble,
                       "the database must be made with the encoding UTF8 and the locale C "
                       "(createdb --template template0 --encoding UTF8 --locale C)",
                       m_path);
    return {};
}

Result<void> PostgresSession::beConnected()
{
    if (PQstatus(m_handle) == CONNECTION_OK)
        return {};
    if (m_within) {
        m_lost = true;
        return failure(postgresError({}, {}, m_path, {}));
    }
    QElapsedTimer since;
    since.start();
    for (;;) {
        const auto connected = connect();
        if (connected || connected.error().code != ErrorCode::ConnectionLost ||
            since.elapsed() > reconnectMs)
            return connected;
        LOOPWRIGHT_TRY(m_mayGoOn());
        QThread::msleep(betweenTriesMs);
    }
}

Result<PostgresAnswer> PostgresSession::checked(PostgresAnswer answer, const QString &doing)
{
    const auto status = PQresultStatus(answer.get());
    if (status == PGRES_COMMAND_OK || status == PGRES_TUPLES_OK)
        return answer;
    if (PQstatus(m_handle) != CONNECTION_OK) {
        m_lost = m_within;
        return failure(postgresError({}, {}, m_path, doing));
    }
    const char *said = PQresultErrorField(answer.get(), PG_DIAG_MESSAGE_PRIMARY);
    return failure(postgresError(PQresultErrorField(answer.get(), PG_DIAG_SQLSTATE),
                                 QString::fromUtf8(said), m_path, doing));
}

Result<PostgresAnswer> PostgresSession::execute(const QByteArray &sql, const QString &doing)
{
    if (!m_waiting.empty() && !sql.contains(';'))
        return ask(plainMessage(sql.constData(), doing));
    if (!m_waiting.empty() || m_trouble)
        LOOPWRIGHT_TRY(together({}));
    LOOPWRIGHT_TRY(beConnected());
    ++m_trips;
    return checked(PostgresAnswer(PQexec(m_handle, sql.constData())), doing);
}

Result<PostgresAnswer> PostgresSession::ask(const PostgresMessage &message)
{
    LOOPWRIGHT_TRY(beConnected()); // what was prepared in another connection is gone
    LOOPWRIGHT_TRY(noTrouble());
    std::vector<PostgresMessage> now;
    m_prepared.add(now, message);
    if (m_waiting.empty() && now.size() == 1)
        return askAlone(now.front());
    LOOPWRIGHT_ASSIGN(const auto answers, together(now));
    for (const PostgresAnswer &answer : answers)
        if (const auto done = checked(answer, message.doing); !done) {
            m_prepared.forget();
            return done;
        }
    return answers.back();
}

Result<PostgresAnswer> PostgresSession::askAlone(const PostgresMessage &message)
{
    constexpr int textFormat = 0;
    ++m_trips;
    const PostgresQuestion &question = message.question;
    const std::vector<const char *> values = pointersTo(question.values);
    const int count = int(values.size());
    return checked(
        PostgresAnswer(message.name.empty()
                           ? PQexecParams(m_handle, question.text.c_str(), count,
                                          question.types.data(), values.data(), nullptr, nullptr,
                                          textFormat)
                           : PQexecPrepared(m_handle, message.name.c_str(), count, values.data(),
                                            nullptr, nullptr, textFormat)),
        message.doing);
}

/// It is told once as what it is; then as what it is for whatever else is asked: the end of the
/// change, of which no order or row is to blame.
Result<void> PostgresSession::noTrouble()
{
    if (!m_trouble)
        return {};
    Error trouble = *m_trouble;
    if (std::exchange(m_troubleTold, true) && trouble.code == ErrorCode::BadInput)
        trouble.code = ErrorCode::DatabaseTrouble;
    return failure(trouble);
}

Result<void> PostgresSession::askLater(PostgresMessage message)
{
    LOOPWRIGHT_TRY(beConnected());
    LOOPWRIGHT_TRY(noTrouble());
    m_prepared.add(m_waiting, std::move(message));
    if (m_waiting.size() >= mostWaiting)
        LOOPWRIGHT_TRY(together({}));
    return {};
}

Result<std::vector<PostgresAnswer>>
PostgresSession::together(const std::vector<PostgresMessage> &now)
{
    LOOPWRIGHT_TRY(beConnected());
    LOOPWRIGHT_TRY(noTrouble());
    std::vector<PostgresMessage> messages = std::exchange(m_waiting, {});
    const std::size_t waited = messages.size();
    messages.insert(messages.end(), now.begin(), now.end());
    ++m_trips;
    auto answers = sendTogether(m_handle, messages);
    if (!answers)
        return giveUp();
    for (std::size_t i = 0; i < waited; ++i) {
        const auto answer = checked((*answers)[i], messages[i].doing);
        if (!answer) {
            m_prepared.forget(); // what was to be prepared after it was passed over
            m_troubleTold = true;
            if (inTransaction())
                m_trouble = answer.error();
            return failure(answer.error());
        }
        if (messages[i].changesRows)
            countChanged(QByteArray(PQcmdTuples(answer->get())).toLongLong());
    }
    answers->erase(answers->begin(), answers->begin() + std::ptrdiff_t(waited));
    return std::move(*answers);
}

qint64 PostgresSession::rowsChanged() const
{
    return m_rowsChanged + std::ranges::count_if(m_waiting, &PostgresMessage::changesRows);
}

void PostgresSession::forgetWaiting()
{
    if (!m_waiting.empty())
        m_prepared.forget(); // some of it may have been to prepare
    m_waiting.clear();
    m_trouble.reset();
}

/// breakOff() may ask for it from another thread.
void PostgresSession::closeHandle()
{
    PGconn *handle = nullptr;
    {
        const std::lock_guard lock(m_handleLock);
        std::swap(handle, m_handle);
    }
    PQfinish(handle);
}

tl::unexpected<Error> PostgresSession::giveUp()
{
    closeHandle();
    m_lost = m_within;
    return failure(postgresError({}, {}, m_path, {}));
}

/// Within a savepoint, so that a question that makes no sense does not end the change.
Result<void> PostgresSession::askAll(const std::vector<PostgresQuestion> &questions)
{
    LOOPWRIGHT_TRY(beConnected());
    LOOPWRIGHT_TRY(noTrouble());
    const QString doing = "foreseen";
    std::vector<PostgresMessage> messages{plainMessage("SAVEPOINT foreseen", doing)};
    for (const PostgresQuestion &each : questions)
        m_prepared.add(messages, {.question = each, .doing = doing});
    messages.push_back(plainMessage("RELEASE SAVEPOINT foreseen", doing));
    auto asked = together(messages);
    if (!asked) {
        m_troubleTold = false; // who foresees hears nothing of it
        return failure(asked.error());
    }
    const std::vector<PostgresAnswer> answers = std::move(*asked);
    const bool whole = std::ranges::all_of(answers, [](const PostgresAnswer &each) {
        const auto status = PQresultStatus(each.get());
        return status == PGRES_TUPLES_OK || status == PGRES_COMMAND_OK;
    });
    if (!whole) {
        m_prepared.forget();
        LOOPWRIGHT_TRY(
            execute("ROLLBACK TO SAVEPOINT foreseen; RELEASE SAVEPOINT foreseen", doing));
        return {};
    }
    for (std::size_t i = 1; i + 1 < messages.size(); ++i)
        if (!messages[i].prepares)
            m_reads->keep(messages[i].question, answers[i]);
    return {};
}

bool PostgresSession::inTransaction() const
{
    const auto status = PQtransactionStatus(m_handle);
    return m_within || status == PQTRANS_INTRANS || status == PQTRANS_INERROR;
}

qint64 PostgresSession::news()
{
    PQconsumeInput(m_handle);
    while (PGnotify *told = PQnotifies(m_handle)) {
        if (told->be_pid != PQbackendPID(m_handle))
            ++m_news;
        PQfreemem(told);
    }
    return m_news;
}

void PostgresSession::breakOff()
{
    const std::lock_guard lock(m_handleLock);
    if (PGcancel *cancel = PQgetCancel(m_handle)) {
        char said[256];
        PQcancel(cancel, said, sizeof said);
        PQfreeCancel(cancel);
    }
}

} // namespace loopwright
