#include "db/PostgresPipeline.h"

#include <algorithm>
#include <libpq-fe.h>

namespace loopwright {

namespace {

constexpr int textFormat = 0;

bool sendMessage(PGconn *handle, const PostgresMessage &message)
{
    const PostgresQuestion &question = message.question;
    const int count = int(question.values.size());
    const std::vector<const char *> values = pointersTo(question.values);
    if (message.prepares)
        return PQsendPrepare(handle, message.name.c_str(), question.text.c_str(),
                             int(question.types.size()), question.types.data()) == 1;
    if (!message.name.empty())
        return PQsendQueryPrepared(handle, message.name.c_str(), count, values.data(), nullptr,
                                   nullptr, textFormat) == 1;
    return PQsendQueryParams(handle, question.text.c_str(), count, question.types.data(),
                             values.data(), nullptr, nullptr, textFormat) == 1;
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

PostgresMessage plainMessage(const char *sql, const QString &doing)
{
    return {.question = {sql, {}, {}}, .doing = doing, .once = true};
}

void PostgresPrepared::add(std::vector<PostgresMessage> &messages, PostgresMessage message)
{
    constexpr int runsBeforeItIsPrepared = 2;
    if (message.once) {
        messages.push_back(std::move(message));
        return;
    }
    const PostgresQuestion &question = message.question;
    std::string key = question.text;
    for (const unsigned type : question.types)
        key += ' ' + std::to_string(type);
    Known &known = m_known[key];
    if (++known.runs > runsBeforeItIsPrepared && known.name.empty()) {
        known.name = "s" + std::to_string(++m_named);
        messages.push_back({.question = {question.text, question.types, {}},
                            .name = known.name,
                            .prepares = true,
                            .doing = message.doing});
    }
    message.name = known.name;
    messages.push_back(std::move(message));
}

std::optional<std::vector<PostgresAnswer>>
sendTogether(pg_conn *handle, const std::vector<PostgresMessage> &messages)
{
    if (PQenterPipelineMode(handle) != 1)
        return std::nullopt;
    const bool sent = std::ranges::all_of(
        messages, [handle](const auto &each) { return sendMessage(handle, each); });
    if (!sent || PQpipelineSync(handle) != 1)
        return std::nullopt;
    std::vector<PostgresAnswer> answers = answersOf(handle);
    if (PQexitPipelineMode(handle) != 1 || answers.size() != messages.size())
        return std::nullopt;
    return answers;
}

} // namespace loopwright
