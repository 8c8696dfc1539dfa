#pragma once
// What came of the files of bundles that were opened or received.

#include "app/actions/Records.h"
#include "app/trust/BundleFile.h"
#include "core/base/Finding.h"
#include "db/StationStore.h"

namespace loopwright {

enum class BundleVerdict
{
    Taken,
    AlreadyThere,
    Refused
};

struct JoinedOrder
{
    QString order;
    BundleVerdict verdict = BundleVerdict::Taken;
    QString code, reason; ///< of a refusal
    QStringList added, alreadyThere, certificates, conflicts;
    Findings findings;
    bool isNew = false; ///< it was not in the records before

    /// What is to be read first.
    void tellFirst(const Findings &warnings);
    QJsonObject toJson() const;
};

struct TakenBundle
{
    QString file;
    BundleVerdict verdict = BundleVerdict::Taken;
    QString code, reason; ///< of a refusal
    QString bundle, station;
    std::vector<JoinedOrder> orders;
    bool begun = false; ///< something of it came in now

    bool refuses() const; ///< the file, or an order of it
    /// `taken`: what a file that was taken is called, "opened" or "received".
    QJsonObject toJson(const char *taken) const;
};

struct BundleInput
{
    QString name; ///< of the file
    QByteArray bytes;
};

/// The error's place is the code if it is one of an order's, else "damaged".
JoinedOrder refusedOrder(const QString &order, const Error &error);
TakenBundle refusedBundle(const QString &file, const QString &code, const QString &reason);
/// The file as it is, or why it is none.
tl::expected<BundleFile, TakenBundle> readBundleInput(const BundleInput &input, BundleKind kind);

/// How far the files are, in octets: how many orders they hold is known of those alone that were
/// read.
class BundleSteps
{
public:
    BundleSteps(const std::vector<BundleInput> &files, Progress progress);

    void begin(const BundleInput &file); ///< after the one before
    /// Before one of so many orders of the file. False once somebody wants to stop.
    bool goesOn(std::size_t order, std::size_t orders);
    bool isStopped() const { return m_stopped; }

private:
    Progress m_progress;
    qint64 m_total = 0, m_before = 0, m_size = 0;
    bool m_stopped = false;
};

/// Every order of the file was gone through. Until then it is not known, so that one that was left
/// in the middle is offered again.
Result<void> noteWhole(Records &records, const KnownBundle &bundle);

/// Each order by itself, with its place in the file; what is no trouble of one order ends it.
Result<void> takeOrders(
    TakenBundle &taken, const BundleFile &file, BundleSteps &steps,
    const std::function<Result<JoinedOrder>(const BundledOrder &, const QString &place)> &take);
/// `take` puts down what came of a file, also of one that it ends in the middle of: then the error
/// says that something is in. Refused when it is stopped, saying how many orders are in.
Result<std::vector<TakenBundle>> eachBundle(
    const std::vector<BundleInput> &files, const Progress &progress,
    const std::function<Result<void>(const BundleInput &, TakenBundle &taken, BundleSteps &steps)>
        &take);

} // namespace loopwright
