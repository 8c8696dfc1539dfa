#include "app/cli/commands/CertificateIssue.h"

#include "app/actions/CertificateSet.h"
#include "app/actions/Certificates.h"
#include "app/actions/OutFile.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Files.h"
#include "app/cli/Layout.h"
#include "app/cli/PaperOptions.h"

namespace loopwright {

namespace {

class IssueCertificate : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_order, "The order");
        options.text("--out", m_out, "The PDF");
        options.text("--premises-of", m_premisesOf,
                     "In the place of the order: every accepted line at the premises of this one");
        options.text("--out-folder", m_folder,
                     "With --premises-of: the folder that the set goes to, a file for each line "
                     "and a cover");
        m_paper.declare(options);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_TRY(checkUsage());
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        return m_premisesOf.isEmpty() ? issueOne(*records) : issueSet(*records);
    }

private:
    Result<void> checkUsage() const
    {
        const auto wrong = [](const char *message, const char *place) {
            return failure(ErrorCode::Usage, message, place);
        };
        if (m_order.trimmed().isEmpty() && m_premisesOf.trimmed().isEmpty())
            return wrong("name the order, or all lines at its premises by --premises-of", "number");
        if (!m_order.isEmpty() && !m_premisesOf.isEmpty())
            return wrong("stands in the place of the order; give one of them", "--premises-of");
        if (m_premisesOf.isEmpty() && (m_out.trimmed().isEmpty() || !m_folder.isEmpty()))
            return wrong("the certificate of one order goes to the file that --out names", "--out");
        if (m_folder == standardStream)
            return wrong("a set goes to a folder, and not to standard output", "--out-folder");
        if (!m_premisesOf.isEmpty() && (m_folder.trimmed().isEmpty() || !m_out.isEmpty()))
            return wrong("a set of certificates goes to the folder that --out-folder names",
                         "--out-folder");
        return {};
    }

    Result<Answer> issueOne(Records &records) const
    {
        const PaperLanguageHere speaking = m_paper.speaking();
        IssueRequest request;
        request.order = m_order;
        request.paper = m_paper.paper();
        request.mayDeliver = [this] { return checkOut(m_out, FileKind::Pdf); };
        request.deliver = [this](const CertificatePaper &paper) {
            return writeOut(m_out, FileKind::Pdf, paper.pdf);
        };
        LOOPWRIGHT_ASSIGN(const auto issued, issueCertificate(records, request));
        const QString text = LabelledLines()
                                 .add("Certificate", issued.number)
                                 .add("Code", issued.code)
                                 .add("Digest", issued.digest)
                                 .add("File", m_out)
                                 .add("Copy", issued.copy ? "yes: it was issued before" : "")
                                 .text();
        Answer answer = Answer::of(issued.toJson(), text);
        if (const QString doubt = issued.doubt(); !doubt.isEmpty())
            answer.lack(doubt);
        return answer;
    }

    Result<Answer> issueSet(Records &records) const
    {
        const PaperLanguageHere speaking = m_paper.speaking();
        SetRequest request;
        request.order = m_premisesOf;
        request.paper = m_paper.paper();
        request.mayDeliver = [this](const SetPapers &papers) {
            return checkSet(m_folder, papers.files);
        };
        request.deliver = [this](const SetPapers &papers) {
            return writeSet(m_folder, papers.files);
        };
        LOOPWRIGHT_ASSIGN(const auto set, issueCertificateSet(records, request));
        QJsonObject json = set.toJson();
        json.insert("folder", m_folder);
        Answer answer = Answer::of(json, setText(set), set.without.empty());
        for (const QString &doubt : set.doubts())
            answer.lack(doubt);
        for (const SetLine &line : set.without)
            answer.lack(QString("order %1 has no certificate: %2").arg(line.order, line.why));
        return answer;
    }

    QString setText(const IssuedSet &set) const
    {
        ColumnLayout table({"order", "outcome", "certificate", "code", "file"});
        for (const SetCertificate &each : set.certificates)
            table.add({each.issued.content.order, plainWord(toText(each.issued.content.outcome)),
                       each.issued.number + (each.issued.copy ? " (copy)" : ""), each.issued.code,
                       each.file});
        for (const SetLine &line : set.without)
            table.add({line.order, plainWord(toText(line.outcome)), "none", "", ""});
        LabelledLines lines;
        lines.add("Premises", set.premises)
            .add("Folder", m_folder)
            .add("Cover", set.covers.join(", "));
        return lines.text() + "\n" + table.text();
    }

    QString m_order, m_out, m_premisesOf, m_folder;
    PaperOptions m_paper;
};

} // namespace

std::unique_ptr<Command> makeCertificateIssue()
{
    return std::make_unique<IssueCertificate>();
}

} // namespace loopwright
