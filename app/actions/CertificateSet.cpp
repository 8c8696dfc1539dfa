#include "app/actions/CertificateSet.h"

#include "app/actions/Acting.h"
#include "app/actions/CertificateSetCover.h"
#include "app/actions/OutFile.h"
#include "app/actions/VerifyCertificate.h"

#include <QDir>
#include <QRegularExpression>

#include <algorithm>
#include <memory>

namespace loopwright {

namespace {

/// "certificate-A-1001.pdf": nothing of an order's number can lead into another folder.
QString fileName(const char *what, const QString &order)
{
    static const QRegularExpression unsafe("[^A-Za-z0-9._-]");
    return QString("%1-%2.pdf").arg(what, QString(order).replace(unsafe, "_"));
}

/// Two orders whose numbers differ only in what a file's name cannot hold.
QString freeName(const QString &wanted, const QStringList &taken)
{
    QString name = wanted;
    for (int n = 2; taken.contains(name, Qt::CaseInsensitive); ++n)
        name = QString(wanted).replace(".pdf", QString("-%1.pdf").arg(n));
    return name;
}

/// What is put together while the set is made.
struct Making
{
    Records &records;
    Transaction &transaction;
    const SetRequest &request;
    std::vector<SetMember> members;
    std::vector<std::optional<MadeIssue>> made; ///< by member
    SetPapers papers;
    IssuedSet set;

    QString add(const char *what, const QString &order, QByteArray pdf)
    {
        QStringList taken;
        for (const SetFile &file : papers.files)
            taken << file.name;
        papers.files.push_back({freeName(fileName(what, order), taken), std::move(pdf)});
        return papers.files.back().name;
    }
};

/// Equal for the same customer however the name was typed.
QString customerKey(const SetLine &line)
{
    return line.customer.simplified().toCaseFolded();
}

Signatures signaturesFor(const Making &making, const SetMember &member)
{
    Signatures signatures = making.request.signatures;
    if (customerKey(member.line) != customerKey(making.members.front().line))
        std::erase_if(signatures, [](const Signature &s) { return s.role != u"installer"; });
    return signatures;
}

Result<void> issueMembers(Making &making)
{
    for (const SetMember &member : making.members) {
        making.made.emplace_back();
        if (!member.line.mayHave) {
            making.set.without.push_back(member.line);
            continue;
        }
        LOOPWRIGHT_ASSIGN(auto made,
                          makeIssue(making.records, making.transaction, member.about,
                                    making.request.paper, signaturesFor(making, member)));
        making.set.certificates.push_back(
            {made.issued, making.add("certificate", member.line.order, made.paper.pdf)});
        making.made.back() = std::move(made);
    }
    return {};
}

/// The cover of one customer's lines, then their certificates.
Result<void> addCover(Making &making, const QString &customer)
{
    CoverContent cover;
    std::vector<Sheet> certificates;
    QString first;
    for (std::size_t i = 0; i < making.members.size(); ++i) {
        const SetMember &member = making.members[i];
        if (customerKey(member.line) != customer)
            continue;
        const MadeIssue *made = making.made[i] ? &*making.made[i] : nullptr;
        LOOPWRIGHT_ASSIGN(auto line, coverLine(making.records, member.line, member.about, made));
        cover.lines.push_back(std::move(line));
        if (made)
            certificates.push_back(made->paper.sheet);
        if (!first.isEmpty())
            continue;
        first = member.line.order;
        LOOPWRIGHT_TRY(putHead(making.records, member.about, cover));
    }
    cover.made = making.records.now();
    Sheet sheet = coverSheet(cover, making.request.paper);
    LOOPWRIGHT_ASSIGN(auto pdf, coverPdf(sheet, cover.made));
    making.set.covers << making.add("cover", first, std::move(pdf));
    making.papers.sheets.push_back(std::move(sheet));
    std::move(certificates.begin(), certificates.end(), std::back_inserter(making.papers.sheets));
    return {};
}

Result<void> checkAnyMay(const std::vector<SetMember> &members)
{
    QStringList reasons;
    for (const SetMember &member : members) {
        if (member.line.mayHave)
            return {};
        reasons << member.line.order + ": " + member.line.why;
    }
    return failure(
        ErrorCode::Refused,
        QString("No line at these premises can have a certificate. %1").arg(reasons.join(' ')));
}

} // namespace

namespace {

Result<void> recordThenDeliver(const Making &making)
{
    const auto &[mayDeliver, deliver] = std::tie(making.request.mayDeliver, making.request.deliver);
    std::vector<const MadeIssue *> issues;
    QStringList numbers;
    for (const auto &made : making.made)
        if (made) {
            issues.push_back(&*made);
            numbers << made->issued.number;
        }
    if (mayDeliver)
        LOOPWRIGHT_TRY(mayDeliver(making.papers));
    LOOPWRIGHT_TRY(commitIssues(making.records, std::move(making.transaction), issues));
    if (deliver)
        if (const auto done = deliver(making.papers); !done)
            return failure(paperMissing(numbers, done.error()));
    papersWritten(making.records, issues);
    return {};
}

} // namespace

Result<IssuedSet> issueCertificateSet(Records &records, const SetRequest &request)
{
    LOOPWRIGHT_TRY(allow(records, Act::IssueCertificate, request.order));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(auto members, membersOfSet(records, request.order));
    LOOPWRIGHT_TRY(checkAnyMay(members));
    Making making{records, transaction, request, std::move(members), {}, {}, {}};
    making.set.premises = making.members.front().about.stored.order.premises;
    LOOPWRIGHT_TRY(issueMembers(making));
    QStringList customers;
    for (const SetMember &member : making.members)
        if (!customers.contains(customerKey(member.line)))
            customers << customerKey(member.line);
    for (const QString &customer : customers)
        LOOPWRIGHT_TRY(addCover(making, customer));
    LOOPWRIGHT_TRY(recordThenDeliver(making));
    for (SetCertificate &each : making.set.certificates)
        tellStanding(records, each.issued);
    return std::move(making.set);
}

Result<void> writeSet(const QString &folder, const std::vector<SetFile> &files)
{
    LOOPWRIGHT_TRY(makeFolder(folder));
    std::vector<OutFile> open;
    for (const SetFile &file : files) {
        LOOPWRIGHT_ASSIGN(auto out, OutFile::open(QDir(folder).filePath(file.name), FileKind::Pdf));
        LOOPWRIGHT_TRY(out.write(file.pdf)); // those that are open are given up with it
        open.push_back(std::move(out));
    }
    for (OutFile &out : open)
        LOOPWRIGHT_TRY(out.commit()); // those that are there are true, and stay
    return {};
}

Result<void> checkSet(const QString &folder, const std::vector<SetFile> &files)
{
    LOOPWRIGHT_TRY(makeFolder(folder));
    for (const SetFile &file : files)
        LOOPWRIGHT_TRY(checkOut(QDir(folder).filePath(file.name), FileKind::Pdf));
    return {};
}

QStringList IssuedSet::doubts() const
{
    QStringList all;
    for (const SetCertificate &each : certificates)
        all << each.issued.doubt();
    all.removeAll(QString());
    return all;
}

QJsonObject IssuedSet::toJson() const
{
    QJsonArray issued, none;
    for (const SetCertificate &each : certificates) {
        QJsonObject object = each.issued.toJson();
        object.insert("file", each.file);
        issued << object;
    }
    for (const SetLine &line : without)
        none << QJsonObject{{"order", line.order},
                            {"circuit_number", line.circuit},
                            {"stage", toText(line.stage)},
                            {"outcome", toText(line.outcome)},
                            {"reason", line.why}};
    return {{"premises", premises},
            {"certificates", issued},
            {"without_certificate", none},
            {"covers", QJsonArray::fromStringList(covers)}};
}

} // namespace loopwright
