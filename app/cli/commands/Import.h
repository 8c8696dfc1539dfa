#pragma once
// `order import`, `office import`, `installer import`, `instrument import`, and the files of `order
// set`: files in. One class serves all of them; each has its line in the register.

#include "app/actions/Import.h"
#include "app/cli/Command.h"

namespace loopwright {

class ImportFile : public Command
{
public:
    using Import = Result<ImportReport> (*)(Records &, const QByteArray &, const ImportOptions &);

    /// `from`: the argument, or if it begins with "--" the option, that names the file.
    /// `changesOnly`: its rows only change what is there.
    explicit ImportFile(Import import, const char *from = "file", bool changesOnly = false)
        : m_import(import)
        , m_from(from)
        , m_changesOnly(changesOnly)
    {
    }

    void declare(Options &options) override;
    Result<Answer> run(CommandContext &context) override;
    bool isAsked() const { return !m_file.isEmpty(); }

private:
    void keepRejects(const ImportReport &report, Answer &answer) const;

    Import m_import;
    const char *m_from;
    bool m_changesOnly;
    ImportOptions m_options;
    QString m_file, m_rejects, m_map;
};

std::unique_ptr<Command> makeOrderImport();
std::unique_ptr<Command> makeOfficeImport();
std::unique_ptr<Command> makeIssuerImport();
std::unique_ptr<Command> makeInstallerImport();
std::unique_ptr<Command> makeInstrumentImport();

} // namespace loopwright
