#include "app/actions/OrderPapers.h"

#include "app/actions/Cards.h"
#include "app/actions/Certificates.h"
#include "app/actions/DayList.h"
#include "app/actions/OutFile.h"
#include "app/actions/Refusals.h"
#include "app/actions/SheetFile.h"
#include "db/OrderStore.h"

#include <QDir>
#include <QRegularExpression>

namespace loopwright {

namespace {

void addPages(OrderPapers &papers, const Sheet &sheet)
{
    papers.sheet.pages.insert(papers.sheet.pages.end(), sheet.pages.begin(), sheet.pages.end());
    papers.sheet.texts << sheet.texts;
    ++papers.papers;
}

/// "certificate-O-1001.pdf", "card-O-1001.pdf": nothing of a number can lead into another folder.
/// Numbers that differ in what a file's name cannot hold get names that differ.
QString paperPath(const QString &folder, const char *kind, const QString &order)
{
    static const QRegularExpression unsafe("[^A-Za-z0-9._-]");
    QString name = QString(order).replace(unsafe, "_");
    if (name != order)
        name += '-' + QString::fromLatin1(order.toUtf8().toHex().right(8));
    return QDir(folder).filePath(QString("%1-%2.pdf").arg(QLatin1StringView(kind), name));
}

QString titleOf(OrderPaper kind)
{
    switch (kind) {
    case OrderPaper::Certificates:
        return "Certificates";
    case OrderPaper::DayLists:
        return "Day lists";
    case OrderPaper::LeaveBehind:
        return "Slips for customers";
    case OrderPaper::CloseOut:
        return "Slips for the desk";
    case OrderPaper::Settings:
        break;
    }
    return "Settings cards";
}

/// A copy of the certificate that stands; refused if there is none.
Result<void> addCertificate(Records &records, const QString &order, const PapersRequest &request,
                            OrderPapers &papers)
{
    LOOPWRIGHT_ASSIGN(const auto standing, previewCertificate(records, order, {}));
    if (standing.number.isEmpty())
        return failure(ErrorCode::Refused, "its certificate was not issued yet");
    IssueRequest issue{order, request.paper};
    const QString path = paperPath(request.folder, "certificate", order);
    if (!request.folder.isEmpty())
        issue.mayDeliver = [&path] { return checkOut(path, FileKind::Pdf); };
    issue.deliver = [&](const CertificatePaper &paper) -> Result<void> {
        if (!request.folder.isEmpty())
            LOOPWRIGHT_TRY(writeOut(path, FileKind::Pdf, paper.pdf));
        addPages(papers, paper.sheet);
        return {};
    };
    LOOPWRIGHT_ASSIGN(const auto issued, issueCertificate(records, issue));
    if (const QString doubt = issued.doubt(); !doubt.isEmpty())
        papers.doubts << doubt;
    return {};
}

/// With the beginning of its file's name.
std::pair<CardKind, const char *> cardKind(OrderPaper kind)
{
    if (kind == OrderPaper::LeaveBehind)
        return {CardKind::LeaveBehind, "leave-behind"};
    if (kind == OrderPaper::CloseOut)
        return {CardKind::CloseOut, "close-out"};
    return {CardKind::Settings, "card"};
}

Result<void> addOne(Records &records, const QString &order, const PapersRequest &request,
                    OrderPapers &papers)
{
    if (request.kind == OrderPaper::Certificates)
        return addCertificate(records, order, request, papers);
    const auto [kind, name] = cardKind(request.kind);
    LOOPWRIGHT_ASSIGN(const auto card, cardOf(records, order, kind, request.paper));
    if (request.folder.isEmpty()) {
        addPages(papers, card);
        return {};
    }
    LOOPWRIGHT_TRY(writeSheet(card, paperPath(request.folder, name, order), records.now()));
    ++papers.papers;
    return {};
}

/// With what stands all the same.
tl::unexpected<Error> wasStopped(const OrderPapers &papers, const PapersRequest &request)
{
    QString what = "It was stopped; nothing was written.";
    if (papers.papers > 0 && !request.folder.isEmpty())
        what = QString("It was stopped; papers in the folder: %1 of %2.")
                   .arg(papers.papers)
                   .arg(request.orders.size());
    else if (papers.papers > 0 && request.kind == OrderPaper::Certificates)
        what = QString("It was stopped; nothing was printed. Copies that are recorded: %1.")
                   .arg(papers.papers);
    return failure(ErrorCode::Refused, what);
}

/// One for each installer, in the order in which they come first.
Result<void> addDayLists(Records &records, const PapersRequest &request, OrderPapers &papers,
                         const Progress &progress)
{
    QStringList installers;
    for (const QString &number : request.orders) {
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(number));
        if (stored.order.installer.isEmpty())
            papers.without << number + ": nobody is assigned";
        else if (!installers.contains(stored.order.installer))
            installers << stored.order.installer;
    }
    for (const QString &installer : installers) {
        LOOPWRIGHT_ASSIGN(const auto list,
                          daySheet(records, installer, request.day, request.paper, progress));
        addPages(papers, list.sheet);
    }
    return {};
}

} // namespace

Result<OrderPapers> papersOf(Records &records, const PapersRequest &request,
                             const Progress &progress)
{
    OrderPapers papers;
    papers.sheet.paper = request.paper;
    papers.sheet.title = titleOf(request.kind);
    if (!request.folder.isEmpty())
        LOOPWRIGHT_TRY(makeFolder(request.folder));
    if (request.kind == OrderPaper::DayLists)
        LOOPWRIGHT_TRY(addDayLists(records, request, papers, progress));
    qint64 done = 0;
    for (const QString &order : request.orders) {
        if (request.kind == OrderPaper::DayLists)
            break;
        if (progress && !progress(done++, request.orders.size()))
            return wasStopped(papers, request);
        const auto added = addOne(records, order, request, papers);
        if (!added && !Refusals::isOfOne(added.error().code))
            return failure(added.error());
        if (!added)
            papers.without << order + ": " + added.error().message;
    }
    if (papers.papers == 0)
        return failure(
            ErrorCode::Refused,
            QString("None of these has such a paper. %1").arg(papers.without.join("; ")));
    return papers;
}

} // namespace loopwright
