#include "tests/soak/Looking.h"

#include "app/actions/Audit.h"
#include "app/actions/History.h"
#include "app/actions/VerifyCertificate.h"
#include "core/base/Json.h"
#include "db/CertificateStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/HistoryCheck.h"
#include "db/OrderStore.h"
#include "tests/soak/VanTasks.h"

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include <algorithm>
#include <cstdio>
#include <functional>

namespace loopwright::soak {

namespace {

using Access = Database::Access;

/// Of a Result that must be there, for the records were opened and read through before.
template<class T>
T there(Result<T> result)
{
    if (!result)
        qFatal("%s", qPrintable(result.error().text()));
    return *std::move(result);
}

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

Papers papersOf(Records &records, const Place &place)
{
    Papers papers;
    const CertificateStore store(records.database());
    for (const StoredCertificate &certificate : there(store.ofOrder(certifiedOrder))) {
        for (const CertificateIssue &issue : there(store.issuesOf(certificate.number)))
            papers.sums << issue.fileSha256;
        papers.isDue = there(store.dueOf(certificate.number)).has_value();
    }
    if (QFile::exists(place.certificate()))
        papers.file = sha256Hex(contentOf(place.certificate()));
    return papers;
}

Result<HistoryFindings> historyOf(const QString &path, Access access)
{
    if (!QFile::exists(path))
        return failure(ErrorCode::NotFound, "is not there", path);
    LOOPWRIGHT_ASSIGN(const auto database, Database::open(path, access));
    return checkHistory(database);
}

/// How far a file must reach that several processes put there one after the other, if the
/// acknowledged tasks brought it so far (-1: not at all): the last one counts, and of two at once
/// either may have been the last. -1 if it need not be there.
qint64 mustReach(const Begun &begun, const std::function<qint64(const Acknowledged &)> &reached)
{
    qint64 least = -1;
    for (std::size_t i = 0; i < begun.told.size(); ++i) {
        qint64 most = -1;
        for (const Acknowledged &each : begun.told[i].done)
            most = std::max(most, reached(each));
        const bool either = begun.atOnce && i == 1 && least >= 0 && most >= 0;
        least = either ? std::min(least, most) : std::max(least, most);
    }
    return least;
}

} // namespace

std::vector<Acknowledged> Begun::acknowledged() const
{
    std::vector<Acknowledged> all;
    for (const Told &each : told)
        all.insert(all.end(), each.done.begin(), each.done.end());
    return all;
}

bool Begun::isAcknowledged(int number) const
{
    return std::ranges::any_of(told, [number](const Told &each) {
        return std::ranges::find(each.done, number, &Acknowledged::number) != each.done.end();
    });
}

qint64 Begun::position(bool inVan) const
{
    qint64 position = 0;
    for (const Told &each : told)
        for (const Acknowledged &done : each.done)
            if (isInVan(taskOf(done).work) == inVan)
                position = std::max(position, done.position);
    return position;
}

bool Begun::saidNothingChanged(int number) const
{
    for (const Told &each : told)
        for (const Failed &failed : each.failed)
            if (failed.number == number && failed.why.contains("nothing was changed"))
                return true;
    return false;
}

const Task &Begun::taskOf(const Acknowledged &each) const
{
    return *std::ranges::find(tasks, each.number, &Task::number);
}

QString Tally::line() const
{
    if (!skipped.isEmpty())
        return QString("%1: skipped, %2").arg(kind, skipped);
    return QString("%1: %2 rounds (%3 hit), %4 acknowledged, %5 lost, %6 half done, "
                   "%7 left over, %8 untrue, %9 wrong")
        .arg(kind)
        .arg(rounds)
        .arg(struck)
        .arg(acknowledged)
        .arg(lost)
        .arg(halfDone)
        .arg(leftOver)
        .arg(untrue)
        .arg(wrong);
}

void Looking::count(int &faults, const QString &what)
{
    ++faults;
    std::fprintf(stderr, "%s: %s\n", qPrintable(m_round), qPrintable(what));
}

void Looking::atRecords(const Begun &begun, Access access)
{
    const auto opened = Records::open(m_place.records(), access);
    if (!opened)
        return count(m_tally.lost, "the records cannot be opened: " + opened.error().text());
    Records &records = **opened;
    atWhole(records, begun.position(false));
    for (const Task &task : begun.tasks)
        atTask(records, begun, task);
    atCertificate(records, begun);
    atOther(begun, Work::BackUp, m_place.backup());
    atOther(begun, Work::Create, m_place.fresh());
    atOther(begun, Work::Restore, m_place.restored());
}

void Looking::atWhole(Records &records, qint64 position)
{
    if (const auto whole = records.database().checkIntegrity(); !whole)
        return count(m_tally.halfDone, whole.error().text());
    atHistory(records);
    if (there(EventStore(records.database()).logHead()).position < position)
        count(m_tally.lost, QString("the log ends before %1").arg(position));
}

void Looking::atHistory(Records &records)
{
    const auto verdict = verifyHistory(records);
    if (!verdict)
        return count(m_tally.halfDone, verdict.error().text());
    for (const BrokenLink &link : verdict->broken)
        count(m_tally.halfDone, link.subject + ": " + link.what);
    const auto faults = auditDerived(records);
    if (!faults)
        return count(m_tally.halfDone, faults.error().text());
    for (const DerivedFault &fault : *faults)
        count(m_tally.halfDone, fault.subject + ": " + fault.what);
}

void Looking::atTask(Records &records, const Begun &begun, const Task &task)
{
    const QStringList facts = factsOf(task), orders = ordersOf(task);
    const qsizetype all = facts.size() + orders.size();
    const auto found =
        std::ranges::count_if(facts,
                              [&](const QString &id) {
                                  return there(FactStore(records.database()).find(id)).has_value();
                              }) +
        std::ranges::count_if(orders, [&](const QString &number) {
            return there(OrderStore(records.database()).find(number)).has_value();
        });
    const bool told = begun.isAcknowledged(task.number);
    if (found != 0 && found != all)
        count(m_tally.halfDone, QString("task %1 is half done").arg(task.number));
    if (told && found < all)
        count(m_tally.lost, QString("task %1 is lost").arg(task.number));
    if (!told && found > 0 && begun.saidNothingChanged(task.number))
        count(m_tally.untrue, QString("task %1 changed something").arg(task.number));
}

void Looking::atCertificate(Records &records, const Begun &begun)
{
    const Papers papers = papersOf(records, m_place);
    const auto place = papers.sums.indexOf(papers.file);
    if (QSet<QString>(papers.sums.begin(), papers.sums.end()).size() != papers.sums.size())
        count(m_tally.halfDone, "two issues are the same");
    const auto isIssue = [&begun](const Acknowledged &each) {
        return !each.file.isEmpty() && begun.taskOf(each).work == Work::Issue;
    };
    for (const Acknowledged &each : begun.acknowledged())
        if (isIssue(each) && !papers.sums.contains(each.file))
            count(m_tally.lost, QString("the issue of task %1 is lost").arg(each.number));
    const auto reached = [&](const Acknowledged &each) -> qint64 {
        return isIssue(each) ? papers.sums.indexOf(each.file) : -1;
    };
    if (place < mustReach(begun, reached))
        count(m_tally.lost, "the paper that was issued last is lost");
    if (papers.file.isEmpty())
        return;
    if (place < 0)
        return count(m_tally.halfDone, "the certificate is none that the records know");
    const auto check = verifyCertificateFile(records, contentOf(m_place.certificate()));
    if (!check || (check->verdict != CertificateVerdict::Genuine &&
                   check->verdict != CertificateVerdict::Superseded))
        count(m_tally.halfDone,
              "the certificate: " + (check ? check->reason : check.error().text()));
}

/// A file that a task puts in its place whole, or not at all.
void Looking::atOther(const Begun &begun, Work work, const QString &path)
{
    const auto name = QFileInfo(path).fileName();
    const bool isBackup = work == Work::BackUp; // there from the beginning
    const auto findings = historyOf(path, isBackup ? Access::ReadOnly : Access::ReadWrite);
    if ((isBackup || QFile::exists(path)) && (!findings || !findings->faults.empty()))
        return count(m_tally.halfDone,
                     name + ": " +
                         (findings ? findings->faults.front().what : findings.error().text()));
    const auto reached = [&begun, work](const Acknowledged &each) -> qint64 {
        return begun.taskOf(each).work == work ? each.copied : -1;
    };
    const qint64 least = mustReach(begun, reached);
    if (least >= 0 && (!findings || findings->events < least))
        count(m_tally.lost, QString("%1 does not reach %2").arg(name).arg(least));
}

std::optional<Papers> Looking::papers() const
{
    const auto records = Records::open(m_place.records());
    return records ? std::optional(papersOf(**records, m_place)) : std::nullopt;
}

void Looking::atLeftOvers()
{
    // Input of the round, and what a restore keeps of what was there before.
    static const QRegularExpression known(
        "^(records.sqlite|certificate.pdf|backup.sqlite|backup.sqlite.head|fresh.sqlite|"
        "restored.sqlite(.before-restore(-[0-9]+)?)?|input-[0-9]+|van.sqlite|"
        "(for-van|from-van|to-open-[0-9]|to-receive-[0-9]).json)$");
    constexpr auto files = QDir::Files | QDir::Hidden | QDir::System;
    const QStringList all = m_place.folder.entryList(files) + m_place.stick().entryList(files);
    for (const QString &name : all)
        if (!known.match(name).hasMatch())
            count(m_tally.leftOver, name + " is left over");
}

} // namespace loopwright::soak
