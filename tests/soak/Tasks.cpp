#include "tests/soak/Tasks.h"

#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/LimitChanges.h"
#include "app/actions/Maintenance.h"
#include "app/actions/OutFile.h"
#include "core/base/Json.h"
#include "db/EventStore.h"
#include "tests/soak/VanTasks.h"
#include "tests/support/Office.h"

namespace loopwright::soak {

namespace {

QByteArray recordOf(const Task &task)
{
    QList<QJsonObject> facts;
    for (const QString &id : factsOf(task))
        facts << QJsonObject{{"id", id},
                             {"kind", "note"},
                             {"at", task.now.text()},
                             {"text", QString("said in task %1").arg(task.number)}};
    return jobs::recordBytes(concernsCertified(task) ? jobs::briFields() : jobs::analogFields(),
                             facts);
}

QByteArray importOf(const Task &task)
{
    QList<OrderFields> orders;
    for (const QString &number : ordersOf(task)) {
        OrderFields fields = jobs::analogFields();
        fields["order_number"] = number;
        fields["circuit_number"] = "C" + number;
        fields["pair"] = QString("40-%1").arg(task.number * 3 + orders.size());
        fields["dn_1"] =
            QString("217-556-%1").arg(task.number * 3 + orders.size(), 4, 10, QChar('0'));
        orders << fields;
    }
    return jobs::csv(orders);
}

Result<void> import(Records &records, const Task &task)
{
    LOOPWRIGHT_ASSIGN(const auto report, importOrders(records, importOf(task), {"orders.csv"}));
    return report.clean() ? Result<void>()
                          : failure(ErrorCode::BadInput, "rows were refused", "orders.csv");
}

/// Where the log of other records ends.
Result<qint64> endOf(const QString &path)
{
    LOOPWRIGHT_ASSIGN(const auto database, Database::open(path, Database::Access::ReadOnly));
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(database).logHead());
    return head.position;
}

Result<qint64> create(const Place &place)
{
    LOOPWRIGHT_ASSIGN(const auto records, Records::open(place.fresh()));
    LOOPWRIGHT_TRY(bringShippedLimits(*records));
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(records->database()).logHead());
    return head.position;
}

Result<QString> issue(Records &records, const Place &place)
{
    QString sum;
    IssueRequest request;
    request.order = certifiedOrder;
    request.mayDeliver = [&place] { return checkOut(place.certificate(), FileKind::Pdf); };
    request.deliver = [&place, &sum](const CertificatePaper &paper) {
        sum = sha256Hex(paper.pdf);
        return writeOut(place.certificate(), FileKind::Pdf, paper.pdf);
    };
    LOOPWRIGHT_TRY(issueCertificate(records, request));
    return sum;
}

void require(const Result<void> &done)
{
    if (!done)
        qFatal("%s", qPrintable(done.error().text()));
}

QString written(const QString &path, const QByteArray &content)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
        qFatal("cannot write %s", qPrintable(path));
    return path;
}

} // namespace

QStringList factsOf(const Task &task)
{
    if (task.work != Work::Record)
        return {};
    return {jobs::uuid(1000 + 2 * task.number), jobs::uuid(1001 + 2 * task.number)};
}

QStringList ordersOf(const Task &task)
{
    if (task.work != Work::Import)
        return {};
    const QString stem = QString("S-%1").arg(task.number);
    return {stem + "-1", stem + "-2", stem + "-3"};
}

bool concernsCertified(const Task &task)
{
    return task.work == Work::Record && task.number % 2 == 0;
}

void makeStart(const Place &place, bool certified)
{
    const auto records = jobs::office(place.records());
    const auto imported = importOrders(
        *records, jobs::csv({jobs::briFields(), jobs::analogFields()}), {"orders.csv"});
    if (!imported || !imported->clean())
        qFatal("the orders to begin with are not taken in");
    require(recordFile(*records, jobs::recordBytes(jobs::briFields(), jobs::briFacts()), "job.json")
                .map([](const RecordReport &) {}));
    if (certified) {
        require(issue(*records, place).map([](const QString &) {}));
        makeVans(*records, place);
    }
    require(backupTo(*records, place.backup()));
}

Result<Acknowledged> doTask(Records &records, const Place &place, const Task &task)
{
    records.actAs(whoActs);
    records.setNow(task.now);
    Acknowledged done{task.number, 0, 0, {}};
    const EventStore log(records.database());
    if (const auto before = log.logHead())
        done.position = before->position;
    switch (task.work) {
    case Work::Record:
        LOOPWRIGHT_TRY(recordFile(records, recordOf(task), "facts.json"));
        break;
    case Work::Import:
        LOOPWRIGHT_TRY(import(records, task));
        break;
    case Work::Issue: {
        LOOPWRIGHT_ASSIGN(done.file, issue(records, place));
        break;
    }
    case Work::BackUp:
        LOOPWRIGHT_TRY(backupTo(records, place.backup()));
        done.copied = done.position; // what came later need not be in it
        break;
    case Work::Create: {
        LOOPWRIGHT_ASSIGN(done.copied, create(place));
        break;
    }
    case Work::Restore:
        LOOPWRIGHT_TRY(restoreFrom(place.backup(), place.restored(), {whoActs}));
        done.copied = endOf(place.restored()).value_or(0);
        break;
    case Work::Take:
    case Work::Open:
    case Work::Bring:
    case Work::Receive: {
        LOOPWRIGHT_ASSIGN(done.file, doVanTask(records, place, task));
        break;
    }
    }
    if (const auto after = log.logHead())
        done.position = after->position;
    return done;
}

QStringList wordsFor(const Place &place, const Task &task)
{
    const QStringList common{"--by", whoActs, "--now", task.now.text()};
    QStringList words =
        QStringList{"--db", isInVan(task.work) ? place.van() : place.records()} + common;
    switch (task.work) {
    case Work::Record:
        return words << "record" << written(place.input(task.number), recordOf(task));
    case Work::Import:
        return words << "order"
                     << "import" << written(place.input(task.number), importOf(task));
    case Work::Issue:
        return words << "certificate"
                     << "issue" << certifiedOrder << "--out" << place.certificate();
    case Work::Create: // nobody is registered there
        return {"--db", place.fresh(), "order", "list"};
    case Work::Restore:
        return QStringList{"--db", place.restored()} + common << "restore" << place.backup();
    case Work::Take:
    case Work::Open:
    case Work::Bring:
    case Work::Receive:
        return words + vanWords(place, task);
    case Work::BackUp:
        break;
    }
    return words << "backup" << place.backup();
}

} // namespace loopwright::soak
