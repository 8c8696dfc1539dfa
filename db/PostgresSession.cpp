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
    PQfinish(m_handle);
    m_handle = connectTo(m_address);
    ++m_number;
    ++m_news; // whoever was away must read again
    m_within = m_lost = false;
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
    LOOPWRIGHT_TRY(beConnected());
    ++m_trips;
    return checked(PostgresAnswer(PQexec(m_handle, sql.constData())), doing);
}

Result<PostgresAnswer> PostgresSession::send(const Run &run, const QString &doing)
{
    constexpr int asText = 0;
    LOOPWRIGHT_TRY(beConnected());
    ++m_trips;
    const int count = int(run.values->size());
    return checked(
        PostgresAnswer(run.name
                           ? PQexecPrepared(m_handle, run.name->c_str(), count, run.values->data(),
                                            nullptr, nullptr, asText)
                           : PQexecParams(m_handle, run.text->c_str(), count, run.types->data(),
                                          run.values->data(), nullptr, nullptr, asText)),
        doing);
}

namespace {

/// Within a savepoint, so that a question that makes no sense does not end the change.
bool sendWithin(PGconn *handle, const std::vector<PostgresQuestion> &questions)
{
    const auto say = [handle](const char *sql) {
        return PQsendQueryParams(handle, sql, 0, nullptr, nullptr, nullptr, nullptr, 0) == 1;
    };
    bool sent = say("SAVEPOINT foreseen");
    for (const PostgresQuestion &each : questions)
        sent = sent && PQsendQueryParams(handle, each.text.c_str(), int(each.values.size()),
                                         each.types.data(), pointersTo(each.values).data(), nullptr,
                                         nullptr, 0) == 1;
    return sent && say("RELEASE SAVEPOINT foreseen") && PQpipelineSync(handle) == 1;
}

/// One for each that was sent, up to the end of the pipeline.
std::vector<PostgresAnswer> answersOf(PGconn *handle)
{
    std::vector<PostgresAnswer> answers;
    for (int nothing = 0; nothing < 2;) { // between two answers there is nothing once
        PostgresAnswer answer(PQgetResult(handle));
        nothing = answer.get() ? 0 : nothing + 1;
        if (!answer.get())
            continue;
        if (PQresultStatus(answer.get()) == PGRES_PIPELINE_SYNC)
            break;
        answers.push_back(std::move(answer));
    }
    return answers;
}

} // namespace

Result<void> PostgresSession::giveUp()
{
    PQfinish(std::exchange(m_handle, nullptr));
    return beConnected();
}

Result<void> PostgresSession::sendAll(const std::vector<PostgresQuestion> &questions)
{
    LOOPWRIGHT_TRY(beConnected());
    if (PQenterPipelineMode(m_handle) != 1)
        return {}; // each is asked by itself
    ++m_trips;
    if (!sendWithin(m_handle, questions))
        return giveUp(); // what the server heard of it nobody knows
    const std::vector<PostgresAnswer> answers = answersOf(m_handle);
    if (PQexitPipelineMode(m_handle) != 1)
        return giveUp();
    const bool whole = answers.size() == questions.size() + 2 &&
                       std::ranges::all_of(answers, [](const PostgresAnswer &each) {
                           const auto status = PQresultStatus(each.get());
                           return status == PGRES_TUPLES_OK || status == PGRES_COMMAND_OK;
                       });
    if (whole)
        for (std::size_t i = 0; i < questions.size(); ++i)
            m_reads->keep(questions[i], answers[i + 1]);
    else
        LOOPWRIGHT_TRY(
            execute("ROLLBACK TO SAVEPOINT foreseen; RELEASE SAVEPOINT foreseen", "foreseen"));
    return {};
}

Result<void> PostgresSession::prepare(const std::string &name, const std::string &text,
                                      const std::vector<unsigned> &types, const QString &doing)
{
    LOOPWRIGHT_TRY(beConnected());
    ++m_trips;
    LOOPWRIGHT_TRY(checked(PostgresAnswer(PQprepare(m_handle, name.c_str(), text.c_str(),
                                                    int(types.size()), types.data())),
                           doing));
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
    if (PGcancel *cancel = PQgetCancel(m_handle)) {
        char said[256];
        PQcancel(cancel, said, sizeof said);
        PQfreeCancel(cancel);
    }
}

} // namespace loopwright
