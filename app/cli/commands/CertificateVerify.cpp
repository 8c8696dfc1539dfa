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
        options.text("file", m_file, "The PDF, or a text that holds what the square on it says");
        options.text("--key", m_key,
                     "Without any records: by the public keys in this file, as key export writes "
                     "them");
        options.text("--number", m_number, "The number that stands on the paper, with --code");
        options.text("--code", m_code, "The code beside it, or the whole digest");
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (m_file.isEmpty() == m_number.isEmpty() || m_number.isEmpty() != m_code.isEmpty())
            return failure(ErrorCode::Usage, "give a PDF, or --number and --code");
        if (!m_key.isEmpty() && m_file.isEmpty())
            return failure(ErrorCode::Usage, "goes with a file", "--key");
        LOOPWRIGHT_ASSIGN(const auto check, m_file.isEmpty()  ? byNumber(context)
                                            : m_key.isEmpty() ? byFile(context)
                                                              : byKey());
        return Answer::of(check.toJson(), textOf(check), check.isGood());
    }

private:
    static QString textOf(const CertificateCheck &check)
    {
        LabelledLines lines;
        lines.add("Verdict", toText(check.verdict))
            .add("Why", check.reason)
            .add("Stands", !check.stands   ? QString("not known")
                           : *check.stands ? QString("yes")
                                           : QString("no"))
            .add("Because", check.because)
            .add("Record", toText(check.record))
            .add("Certificate", check.certificate)
            .add("Order", check.order)
            .add("Signed by", check.signedBy);
        QString text = lines.text();
        if (check.claims)
            text += "\nWhat was certified; compare it with the paper\n" + claimsText(*check.claims);
        for (const Trouble &trouble : check.troubles)
            text += "\nTrouble since then: " + trouble.sentence() + '\n';
        if (!check.later.empty())
            text += "\nRecorded on the circuit since then\n" + eventsText(check.later);
        return text;
    }

    static QString claimsText(const CertificateClaims &claims)
    {
        return LabelledLines()
            .add("Number", claims.number)
            .add("Date", claims.date.toString(Qt::ISODate))
            .add("Outcome", plainWord(toText(claims.outcome)))
            .add("Circuit", claims.circuit)
            .add("Numbers", claims.numbers.join(", "))
            .add("Exceptions",
                 claims.exceptions.isEmpty() ? QString("none") : claims.exceptions.join(", "))
            .add("Digest", claims.digest)
            .text();
    }

    Result<CertificateCheck> byFile(CommandContext &context) const
    {
        LOOPWRIGHT_ASSIGN(const auto pdf, readFile(m_file, largestCertificate));
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        return verifyCertificateFile(*records, pdf);
    }

    Result<CertificateCheck> byKey() const
    {
        LOOPWRIGHT_ASSIGN(const auto pdf, readFile(m_file, largestCertificate));
        LOOPWRIGHT_ASSIGN(const auto text, readFile(m_key, largestKeyFile));
        LOOPWRIGHT_ASSIGN(const auto keys, readPublicKeys(text, fileNameOf(m_key)));
        return verifyByKeys(pdf, keys);
    }

    Result<CertificateCheck> byNumber(CommandContext &context) const
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        return verifyCertificateNumber(*records, m_number, m_code);
    }

    static constexpr qint64 largestKeyFile = 100'000;
    QString m_file, m_key, m_number, m_code;
};

} // namespace

std::unique_ptr<Command> makeCertificateVerify()
{
    return std::make_unique<VerifyCertificate>();
}

} // namespace loopwright
