// How the certificate leaves the job page: issued into files or onto a printer, with its settings
// card if that is wished.

#include "app/actions/OrderPapers.h"
#include "app/actions/OutFile.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/job/CertificateEntry.h"

#include <QFileInfo>

namespace loopwright {

/// Of the lines that get a certificate, if they are wished with it.
QStringList CertificateEntry::cardOrders() const
{
    if (m_form->typed().value("card").toString() != u"true")
        return {};
    if (!allLines())
        return {m_desk.order().number};
    QStringList orders;
    for (const SetLine &line : m_set)
        if (line.mayHave)
            orders << line.order;
    return orders;
}

/// Into the folder; empty: into the sheet. Once the certificates are recorded, for a card names its
/// own.
Result<Sheet> CertificateEntry::cards(const QStringList &orders, Paper paper,
                                      const QString &folder) const
{
    if (orders.isEmpty())
        return Sheet();
    LOOPWRIGHT_ASSIGN(
        auto papers, papersOf(m_desk.records(), {orders, OrderPaper::Settings, paper, {}, folder}));
    if (!papers.without.isEmpty())
        return failure(ErrorCode::Refused, papers.without.join(u' '));
    return std::move(papers.sheet);
}

bool CertificateEntry::save()
{
    if (!mayIssue())
        return false;
    if (allLines()) {
        const QString folder = m_form->typed().value("folder").toString();
        return issueSet(
            {{},
             paper(),
             {},
             [this, folder](const SetPapers &papers) -> Result<void> {
                 LOOPWRIGHT_TRY(writeSet(folder, papers.files));
                 LOOPWRIGHT_TRY(cards(cardOrders(), paper(), folder));
                 return {};
             },
             [folder](const SetPapers &papers) { return checkSet(folder, papers.files); }},
            tr("Saved in %1.").arg(folder));
    }
    const QString path = m_form->typed().value("path").toString();
    const QStringList withCards = cardOrders();
    return issue({{},
                  paper(),
                  {},
                  [&](const CertificatePaper &made) -> Result<void> {
                      LOOPWRIGHT_TRY(writeOut(path, FileKind::Pdf, made.pdf));
                      LOOPWRIGHT_TRY(cards(withCards, paper(), QFileInfo(path).absolutePath()));
                      return {};
                  },
                  [&] { return checkOut(path, FileKind::Pdf); }},
                 (withCards.isEmpty() ? tr("Saved as %1.")
                                      : tr("Saved as %1, and its settings card beside it."))
                     .arg(path));
}

bool CertificateEntry::issue(IssueRequest request, const QString &where)
{
    request.order = m_desk.order().number;
    request.signatures = signatures();
    const auto issued = issueCertificate(m_desk.records(), request);
    if (!issued) {
        notIssued(issued.error());
        return false;
    }
    this->issued(issued->mark.countersigns
                     ? tr("Certificate %1 was issued again, signed: issue %2.")
                           .arg(issued->number)
                           .arg(issued->mark.copy + 1)
                 : issued->copy ? tr("A copy of certificate %1 was issued.").arg(issued->number)
                                : tr("Certificate %1 was issued.").arg(issued->number),
                 tr("Certificate %1, code %2.").arg(issued->number, issued->code) + ' ' + where,
                 localizedSentence(issued->doubt()));
    return true;
}

void CertificateEntry::notIssued(const Error &error)
{
    // Then only the paper is missing, and the order has its certificate.
    if (error.code == ErrorCode::DiskTrouble)
        m_desk.wasChanged(tr("The paper of a certificate is missing."));
    m_form->tell(Status::Failed, localized(error));
}

bool CertificateEntry::issueSet(SetRequest request, const QString &where)
{
    request.order = m_desk.order().number;
    request.signatures = signatures();
    const auto set = issueCertificateSet(m_desk.records(), request);
    if (!set) {
        notIssued(set.error());
        return false;
    }
    QStringList numbers;
    for (const SetCertificate &each : set->certificates)
        numbers << each.issued.number;
    const bool one = numbers.size() == 1;
    QString told = (one ? tr("Certificate %1.") : tr("Certificates %1.")).arg(numbers.join(", "));
    if (!set->without.empty()) {
        QStringList without;
        for (const SetLine &line : set->without)
            without << line.order;
        told += tr(" Without one: %1; the cover says why.").arg(without.join(", "));
    }
    issued(one ? tr("Certificate %1 was issued.").arg(numbers.first())
               : tr("%1 certificates were issued.").arg(numbers.size()),
           told + ' ' + where, localizedSentences(set->doubts()).join(u' '));
    return true;
}

void CertificateEntry::issued(const QString &sentence, const QString &told, const QString &doubt)
{
    m_signing->clear();
    m_desk.keepDraft(m_part + ".strokes", {});
    m_desk.keepDraft(m_part, {});
    m_desk.wasChanged(QStringList{sentence, doubt}.join(u' ').trimmed());
    m_form->tell(doubt.isEmpty() ? Status::Done : Status::Doubtful,
                 QStringList{told.trimmed(), doubt}.join(u' ').trimmed());
    emit recorded();
}

void CertificateEntry::print()
{
    if (!mayIssue())
        return;
    const bool all = allLines(); // as it was when the dialog came
    const QStringList withCards = cardOrders();
    const auto printer = choosePrinter(this, paper());
    if (!printer)
        return;
    const Paper chosen = paperOf(*printer); // what is printed is what is issued
    // One job for the printer: painting begins anew with each sheet.
    const auto onPaper = [&](const QString &title, std::vector<Sheet> sheets) -> Result<void> {
        LOOPWRIGHT_ASSIGN(auto cards, this->cards(withCards, chosen, {}));
        sheets.push_back(std::move(cards));
        Sheet whole{chosen, title, {}, {}};
        for (const Sheet &sheet : sheets)
            whole.pages.insert(whole.pages.end(), sheet.pages.begin(), sheet.pages.end());
        return printOn(*printer, whole);
    };
    if (all)
        issueSet({{}, chosen, {}, [&](const SetPapers &papers) {
                      return onPaper(tr("Certificates"), papers.sheets);
                  }});
    else
        issue({{}, chosen, {}, [&](const CertificatePaper &made) {
                   return onPaper(made.sheet.title, {made.sheet});
               }});
}

} // namespace loopwright
