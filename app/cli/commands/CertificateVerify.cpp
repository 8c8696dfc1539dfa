#include "app/cli/commands/CertificateVerify.h"

#include "app/actions/VerifyCertificate.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Files.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class VerifyCertificate : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file, "The PDF");
        options.text("--number", m_number, "The number that stands on the paper, with --code");
        options.text("--code", m_code, "The code beside it, or the whole digest");
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (m_file.isEmpty() == m_number.isEmpty() || m_number.isEmpty() != m_code.isEmpty())
            return failure(ErrorCode::Usage, "give a PDF, or --number and --code");
        LOOPWRIGHT_ASSIGN(const auto check, m_file.isEmpty() ? byNumber(context) : byFile(context));
        LabelledLines lines;
        lines.add("Verdict", toText(check.verdict))
            .add("Certificate", check.certificate)
            .add("Order", check.order)
            .add("Why", check.reason);
        QString text = lines.text();
        if (!check.later.empty())
            text += "\nRecorded on the circuit since then\n" + eventsText(check.later);
        return Answer::of(check.toJson(), text, check.verdict == CertificateVerdict::Genuine);
    }

private:
    Result<CertificateCheck> byFile(CommandContext &context) const
    {
        LOOPWRIGHT_ASSIGN(const auto pdf, readFile(m_file, largestCertificate));
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        return verifyCertificateFile(*records, pdf);
    }

    Result<CertificateCheck> byNumber(CommandContext &context) const
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        return verifyCertificateNumber(*records, m_number, m_code);
    }

    static constexpr qint64 largestCertificate = 100'000'000;
    QString m_file, m_number, m_code;
};

} // namespace

std::unique_ptr<Command> makeCertificateVerify()
{
    return std::make_unique<VerifyCertificate>();
}

} // namespace loopwright
