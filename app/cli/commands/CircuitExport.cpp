#include "app/cli/commands/CircuitExport.h"

#include "app/actions/ExportCircuit.h"
#include "app/cli/Files.h"

namespace loopwright {

namespace {

class ExportOneCircuit : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The circuit", Given::Always);
        options.text("--out", m_folder, "The folder that the files go to", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_TRY(checkNotStandardStream(m_folder, "the files go to a folder"));
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto made,
                          exportCircuit(*records, m_number, m_folder, context.progress("writing")));
        Answer answer =
            Answer::of(QJsonObject{{"circuit", m_number},
                                   {"folder", m_folder},
                                   {"orders", made.orders},
                                   {"certificates", made.certificates},
                                   {"files", QJsonArray::fromStringList(made.paths)},
                                   {"lacking", QJsonArray::fromStringList(made.lacking)}},
                       QString("%1 files of circuit %2 are in %3; manifest.json tells their sums\n")
                           .arg(QString::number(made.paths.size()), m_number, m_folder));
        for (const QString &line : made.lacking)
            answer.lack(line);
        return answer;
    }

private:
    QString m_number, m_folder;
};

} // namespace

std::unique_ptr<Command> makeCircuitExport()
{
    return std::make_unique<ExportOneCircuit>();
}

} // namespace loopwright
