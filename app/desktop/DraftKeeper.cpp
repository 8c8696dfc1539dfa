#include "app/desktop/DraftKeeper.h"

#include "app/desktop/Language.h"

#include <utility>

namespace loopwright {

namespace {

/// While one types: the window stands still so long.
constexpr int typingPatienceMs = 100;
constexpr int closingPatienceMs = 2500;

} // namespace

DraftKeeper::DraftKeeper(Records &records)
    : m_records(records)
{
    m_timer.setSingleShot(true);
    m_timer.setInterval(tryAgainMs);
    connect(&m_timer, &QTimer::timeout, this, [this] { tryNow(typingPatienceMs); });
    for (const Draft &each : takeDraftsSetAside(m_records.database().path()))
        m_pending.insert({each.order, each.part}, each.content);
    m_waits = !m_pending.isEmpty(); // its file is there
    if (!m_pending.isEmpty())
        tryNow(typingPatienceMs);
}

DraftKeeper::~DraftKeeper()
{
    if (!m_pending.isEmpty())
        tryNow(typingPatienceMs); // closing the window has waited already
}

void DraftKeeper::keep(const QString &order, const QString &part, const QJsonObject &content)
{
    m_pending.insert({order, part}, content);
    tryNow(typingPatienceMs);
}

Result<QMap<QString, QJsonObject>> DraftKeeper::ofOrder(const QString &order) const
{
    LOOPWRIGHT_ASSIGN(auto kept, drafts(m_records, order));
    for (const Draft &each : pending()) {
        if (each.order != order)
            continue;
        if (each.content.isEmpty())
            kept.remove(each.part);
        else
            kept.insert(each.part, each.content);
    }
    return kept;
}

bool DraftKeeper::settle()
{
    if (!m_pending.isEmpty())
        tryNow(closingPatienceMs);
    return m_isAside;
}

void DraftKeeper::tryNow(int patienceMs)
{
    m_timer.stop();
    const QString path = m_records.database().path();
    const auto saved = saveDrafts(m_records, pending(), patienceMs);
    if (saved) {
        m_pending.clear();
        m_isAside = true;
        if (std::exchange(m_waits, false)) {
            (void)setDraftsAside(path, {}); // removes the file
            emit caughtUp();
        }
        return;
    }
    m_waits = true;
    const auto aside = setDraftsAside(path, pending());
    m_isAside = aside.has_value();
    m_timer.start();
    emit waiting(m_isAside ? tr("What you typed waits to be saved, and is kept beside the records "
                                "until then: %1")
                                 .arg(localized(saved.error()))
                           : tr("What you typed is only in this window until it can be saved: %1")
                                 .arg(localized(saved.error())));
}

std::vector<Draft> DraftKeeper::pending() const
{
    std::vector<Draft> drafts;
    for (auto it = m_pending.begin(); it != m_pending.end(); ++it)
        drafts.push_back({it.key().first, it.key().second, it.value()});
    return drafts;
}

} // namespace loopwright
