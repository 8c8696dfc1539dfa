#include "app/cli/commands/CheckIdentifiers.h"

#include "app/actions/OutFile.h"
#include "app/cli/Files.h"
#include "app/cli/Layout.h"
#include "core/identifiers/IdentifierList.h"

namespace loopwright {

namespace {

QJsonObject countsJson(const IdentifierListCount &count)
{
    return {{"rows", count.rows},
            {"ok", count.ok},
            {"warnings", count.warnings},
            {"errors", count.errors}};
}

QString countsText(const IdentifierListCount &count)
{
    return QString("%1 rows: %2 ok, %3 with a warning, %4 in error\n")
        .arg(count.rows)
        .arg(count.ok)
        .arg(count.warnings)
        .arg(count.errors);
}

QString text(std::string_view utf8)
{
    return QString::fromUtf8(utf8.data(), qsizetype(utf8.size()));
}

QJsonObject rowJson(const IdentifierListRow &row)
{
    return {{"row", row.line},
            {"variant", text(row.variant)},
            {"spid", text(row.spid)},
            {"dn", text(row.dn)},
            {"verdict", text(row.verdict)},
            {"code", text(row.code)},
            {"reason", text(row.reason)},
            {"repair", text(row.repair)}};
}

class CheckIdentifiers : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("--in", m_in, "CSV with the columns variant, spid, dn", Given::Always);
        options.text("--out", m_out, "Where the rows go with their verdicts (else the screen)");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(auto file, MappedFile::open(m_in));
        const IdentifierListProgress progress = context.progress("checking");
        if (!m_out.isEmpty())
            return toFile(file, progress);
        return context.common().json ? toJson(file, progress) : toText(file, progress);
    }

private:
    Result<Answer> toFile(const MappedFile &file, const IdentifierListProgress &progress) const
    {
        LOOPWRIGHT_TRY(checkNotInput(m_out, m_in));
        LOOPWRIGHT_ASSIGN(auto out, OutFile::open(m_out, FileKind::Csv));
        LOOPWRIGHT_ASSIGN(const auto count,
                          checkIdentifierList(
                              file.bytes(), fileNameOf(m_in),
                              [&out](QByteArrayView piece) { return out.write(piece); }, progress));
        LOOPWRIGHT_TRY(out.commit());
        return Answer::of(countsJson(count), countsText(count), count.errors == 0);
    }

    /// The whole list is kept until it is checked, so that a list which is refused in the middle
    /// leaves nothing on standard output.
    Result<Answer> toText(const MappedFile &file, const IdentifierListProgress &progress) const
    {
        QByteArray rows;
        auto count = checkIdentifierList(
            file.bytes(), fileNameOf(m_in),
            [&rows](QByteArrayView piece) -> Result<void> {
                rows.append(piece);
                return {};
            },
            progress);
        if (!count)
            return failure(std::move(count).error());
        Answer answer;
        answer.yes = count->errors == 0;
        answer.text = [rows](QIODevice &out) { out.write(rows); };
        answer.note(countsText(*count));
        return answer;
    }

    Result<Answer> toJson(const MappedFile &file, const IdentifierListProgress &progress) const
    {
        QByteArray rows = "[";
        auto count = checkIdentifierRows(
            file.bytes(), fileNameOf(m_in),
            [&rows](const IdentifierListRow &row) {
                if (rows.size() > 1)
                    rows += ',';
                rows += canonicalJson(rowJson(row));
            },
            progress);
        if (!count)
            return failure(std::move(count).error());
        QByteArray head = canonicalJson(countsJson(*count));
        head.chop(1);
        Answer answer;
        answer.yes = count->errors == 0;
        answer.json = [head, rows](QIODevice &out) {
            out.write(head);
            out.write(",\"results\":");
            out.write(rows);
            out.write("]}");
        };
        return answer;
    }

    QString m_in, m_out;
};

} // namespace

std::unique_ptr<Command> makeCheckIdentifiers()
{
    return std::make_unique<CheckIdentifiers>();
}

} // namespace loopwright
