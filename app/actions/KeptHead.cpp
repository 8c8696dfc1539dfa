#include "app/actions/KeptHead.h"

#include "app/actions/Keys.h"
#include "core/base/Json.h"
#include "db/EventStore.h"
#include "db/MetaStore.h"

namespace loopwright {

Result<std::optional<SignedHead>> keptHead(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto station, MetaStore(records.database()).station());
    LOOPWRIGHT_ASSIGN(const auto kept, records.keys().keptHead(station));
    if (!kept)
        return std::optional<SignedHead>();
    const QString path = records.keys().headPath(station);
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(*kept, path));
    LOOPWRIGHT_ASSIGN(auto head, SignedHead::fromJson(object, path));
    return std::optional(std::move(head));
}

Result<void> keepHead(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto signer, signerAtHand(records));
    if (!signer)
        return {};
    LOOPWRIGHT_ASSIGN(const auto now, EventStore(records.database()).logHead());
    LOOPWRIGHT_ASSIGN(const auto before, keptHead(records));
    if (before && before->head.position >= now.position)
        return {}; // another program was faster
    return records.keys().keepHead(now.station,
                                   canonicalJson(signedHead(now, *signer).toJson()) + '\n');
}

Result<void> checkNotOlder(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto kept, keptHead(records));
    if (!kept)
        return {};
    LOOPWRIGHT_ASSIGN(const auto found, EventStore(records.database()).headAt(kept->head.position));
    if (found && found->digest == kept->head.digest)
        return {};
    return failure(ErrorCode::Refused,
                   QString("These records are an older copy, or were changed: they lack event %1 "
                           "of station %2, for which this machine signed at %3. A number could be "
                           "given twice. Put the newer file back; if it is lost, restore from this "
                           "one (restore FILE), and it becomes a station of its own.")
                       .arg(kept->head.position)
                       .arg(kept->head.station, kept->head.at.text()));
}

} // namespace loopwright
