#include "db/SealedRows.h"

#include "db/RowSeals.h"

#include <algorithm>
#include <charconv>

namespace loopwright {

namespace {

constexpr qint64 mostApart = 1'000'000;

} // namespace

SealedRows::Seal &SealedRows::Seals::of(qint64 id)
{
    if (id < 1 || id > qint64(near.size()) + mostApart)
        return far[id];
    if (id > qint64(near.size()))
        near.resize(std::size_t(id));
    return near[std::size_t(id - 1)];
}

SealedRows::Seal *SealedRows::Seals::find(qint64 id)
{
    Seal *found = nullptr;
    if (id >= 1 && id <= qint64(near.size()))
        found = &near[std::size_t(id - 1)];
    else if (const auto it = far.find(id); it != far.end())
        found = &it->second;
    return found && found->position > 0 && !found->removed ? found : nullptr;
}

SealedRows::Seals &SealedRows::sealsOf(QByteArrayView table)
{
    for (auto &[name, seals] : m_tables)
        if (name == table)
            return seals;
    m_tables.emplace_back(table.toByteArray(), Seals());
    return m_tables.back().second;
}

bool SealedRows::takeLine(QByteArrayView line, qint64 position)
{
    const auto space = line.indexOf(' ');
    const auto second = space < 0 ? -1 : line.indexOf(' ', space + 1);
    if (second < 0)
        return false;
    qint64 id = 0;
    const QByteArrayView number = line.sliced(space + 1, second - space - 1);
    const auto [end, error] = std::from_chars(number.begin(), number.end(), id);
    if (error != std::errc() || end != number.end())
        return false;
    Seal seal;
    seal.position = position;
    const QByteArrayView digest = line.sliced(second + 1);
    seal.removed = digest.size() == 1 && digest[0] == removedRow;
    if (!seal.removed && !Sha256::read(digest, seal.digest))
        return false;
    sealsOf(line.first(space)).of(id) = seal;
    return true;
}

bool SealedRows::take(QByteArrayView lines, qint64 position)
{
    while (!lines.isEmpty()) {
        const auto end = lines.indexOf('\n');
        if (end < 0 || !takeLine(lines.first(end), position))
            return false;
        lines = lines.sliced(end + 1);
    }
    return true;
}

Result<std::vector<SealedRows::Fault>> SealedRows::compare(const QByteArray &table,
                                                           std::size_t most)
{
    Seals &seals = sealsOf(table);
    std::vector<Fault> faults;
    // By the table itself: an index may have been changed so that it hides a row.
    const std::string name = table.toStdString();
    const QString sql = QStringLiteral("SELECT %1, * FROM \"%2\" NOT INDEXED ORDER BY %1")
                            .arg(QString::fromStdString(keyOf(name)), QString::fromUtf8(table));
    LOOPWRIGHT_ASSIGN(auto rows, RawStatement::of(m_connection, "rows." + name, sql.toStdString()));
    QByteArray bytes;
    while (faults.size() < most) {
        LOOPWRIGHT_ASSIGN(const auto more, rows.next());
        if (!more)
            break;
        const qint64 id = rows.integer(0);
        Seal *seal = seals.find(id);
        if (!seal) {
            faults.push_back({table, id, 0, Fault::Unsealed});
            continue;
        }
        seal->seen = true;
        bytes.resize(0);
        rows.appendColumns(bytes, 1);
        if (m_sha.of(bytes) != seal->digest)
            faults.push_back({table, id, seal->position, Fault::Changed});
    }
    if (faults.size() < most)
        addGone(table, seals, faults);
    return faults;
}

void SealedRows::addGone(const QByteArray &table, Seals &seals, std::vector<Fault> &faults) const
{
    const auto look = [&](qint64 id, const Seal &seal) {
        if (seal.position > 0 && !seal.removed && !seal.seen)
            faults.push_back({table, id, seal.position, Fault::Gone});
    };
    for (std::size_t i = 0; i < seals.near.size(); ++i)
        look(qint64(i) + 1, seals.near[i]);
    for (const auto &[id, seal] : seals.far)
        look(id, seal);
}

} // namespace loopwright
