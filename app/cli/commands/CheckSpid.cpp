#include "app/cli/commands/CheckSpid.h"

#include "app/cli/Layout.h"
#include "app/cli/Lookup.h"
#include "core/identifiers/Spid.h"

namespace loopwright {

namespace {

QJsonArray partsJson(const SpidCheck &check)
{
    QJsonArray parts;
    for (const SpidPart &part : check.parts)
        parts.append(QJsonObject{{"kind", toText(part.kind)},
                                 {"from", part.from},
                                 {"length", part.length},
                                 {"digits", part.digits},
                                 {"meaning", part.meaning}});
    return parts;
}

class CheckSpid : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("--variant", m_variant, "Protocol variant (see: variants)", Given::Always);
        options.text("--dn", m_dn, "Directory number of the terminal, to compare with");
        options.text("spid", m_spid, "The SPID as it is written on the order");
        // An empty SPID is a question too: a variant may want none.
    }

    Result<Answer> run(CommandContext &) override
    {
        LOOPWRIGHT_ASSIGN(const auto variant, variantOf(m_variant));
        const SpidCheck check = checkSpid(*variant, m_spid, m_dn);
        const bool inError = check.worst() == Severity::Error;
        Answer answer = Answer::of(json(check), text(check), !inError);
        return answer;
    }

private:
    /// The worst finding gives the code; the further reasons follow it, as in a list.
    QJsonObject json(const SpidCheck &check) const
    {
        QStringList reasons;
        for (const Finding &finding : check.findings)
            reasons << finding.reason.english();
        return QJsonObject{
            {"variant", m_variant},
            {"spid", m_spid},
            {"dn", m_dn},
            {"verdict", check.verdict()},
            {"code", check.findings.empty() ? QString() : check.findings.front().code},
            {"reason", reasons.join("; ")},
            {"repair", check.repair()},
            {"grouped", check.grouped()},
            {"parts", partsJson(check)}};
    }

    QString text(const SpidCheck &check) const
    {
        LabelledLines lines;
        lines.add("SPID", m_spid)
            .add("Verdict", check.verdict())
            .add("Taken apart", check.inWords())
            .add("To read aloud", check.grouped());
        for (const Finding &finding : check.findings)
            lines.add(severityName(finding.severity), finding.reason.english());
        return lines.add("Repair", check.repair()).text();
    }

    QString m_variant, m_dn, m_spid;
};

} // namespace

std::unique_ptr<Command> makeCheckSpid()
{
    return std::make_unique<CheckSpid>();
}

} // namespace loopwright
