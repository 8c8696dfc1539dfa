#include "db/PostgresReads.h"

#include <algorithm>
#include <string_view>

namespace loopwright {

namespace {

/// A long import does not fill the memory with what it read.
constexpr std::size_t mostKept = 2000;

/// What a view reads does not stand in the statement.
constexpr std::string_view views[] = {"wanted_value", "calibration_in_force"};

} // namespace

std::string tableWritten(const std::string &statement)
{
    for (const std::string_view begin : {"INSERT INTO ", "UPDATE ", "DELETE FROM "}) {
        const auto at = statement.find(begin);
        if (at == std::string::npos)
            continue;
        const auto from = at + begin.size();
        return statement.substr(from, statement.find_first_of(" \n(", from) - from);
    }
    return {};
}

std::string PostgresQuestion::key() const
{
    std::string key = text;
    for (const QByteArray &value : values) {
        key += '\0';
        key += value.isNull() ? "-" : "=" + value.toStdString();
    }
    return key;
}

std::vector<const char *> pointersTo(const std::vector<QByteArray> &values)
{
    std::vector<const char *> pointers;
    for (const QByteArray &value : values)
        pointers.push_back(value.isNull() ? nullptr : value.constData());
    return pointers;
}

void PostgresReads::endChange()
{
    m_keeps = m_foresees = false;
    m_kept.clear();
    m_wanted.clear();
}

const PostgresAnswer *PostgresReads::find(const std::string &key) const
{
    const auto found = m_kept.find(key);
    return found == m_kept.end() ? nullptr : &found->second.answer;
}

void PostgresReads::keep(const PostgresQuestion &question, PostgresAnswer answer)
{
    const bool ofView = std::ranges::any_of(views, [&](std::string_view view) {
        return question.text.find(view) != std::string::npos;
    });
    if (ofView)
        return;
    if (m_kept.size() >= mostKept)
        m_kept.clear();
    m_kept.insert_or_assign(question.key(), Kept{question.text, std::move(answer)});
}

void PostgresReads::forget(const std::string &statement)
{
    const std::string table = tableWritten(statement);
    if (table.empty()) {
        m_kept.clear();
        return;
    }
    // A trigger counts the orders of the board.
    const bool ofBoard = table == "order_state";
    std::erase_if(m_kept, [&](const auto &each) {
        const std::string &text = each.second.text;
        return text.find(table) != std::string::npos ||
               (ofBoard && text.find("board_tally") != std::string::npos);
    });
}

void PostgresReads::want(PostgresQuestion question)
{
    const auto same = [key = question.key()](const PostgresQuestion &each) {
        return each.key() == key;
    };
    if (std::ranges::none_of(m_wanted, same))
        m_wanted.push_back(std::move(question));
}

std::vector<PostgresQuestion> PostgresReads::takeWanted()
{
    m_foresees = false;
    return std::exchange(m_wanted, {});
}

} // namespace loopwright
