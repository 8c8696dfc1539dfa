#include "app/cli/commands/IssueCertificate.h"

#include "app/actions/Certificates.h"
#include "app/cli/Files.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class IssueCertificate : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_request.order, "The order", Given::Always);
        options.text("--out", m_out, "The PDF", Given::Always);
        options.word("--paper", m_paper, allWords<Paper>(), "a4 (else) or letter");
    }

    Result<Answer> run(CommandContext &context) override
    {
        const auto records = context.records();
        if (!records)
            return failure(records.error());
        m_request.paper = fromText<Paper>(m_paper).value_or(Paper::A4);
        m_request.deliver = [this](const QByteArray &pdf) { return writeFile(m_out, pdf); };
        const auto issued = issueCertificate(**records, m_request);
        if (!issued)
            return failure(issued.error());
        const QString text = LabelledLines()
                                 .add("Certificate", issued->number)
                                 .add("Code", issued->code)
                                 .add("Digest", issued->digest)
                                 .add("File", m_out)
                                 .add("Copy", issued->copy ? "yes: it was issued before" : "")
                                 .text();
        return Answer::of(issued->toJson(), text);
    }

private:
    IssueRequest m_request;
    QString m_out, m_paper;
};

} // namespace

std::unique_ptr<Command> makeIssueCertificate()
{
    return std::make_unique<IssueCertificate>();
}

} // namespace loopwright
