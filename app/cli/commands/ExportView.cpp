#include "app/cli/commands/ExportView.h"

#include "app/actions/ExportView.h"
#include "app/cli/BoardOptions.h"

namespace loopwright {

namespace {

class ExportBoard : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("--out", m_view.path, "Where the table goes, as CSV", Given::Always);
        m_filters.declare(options, "--with-van");
        options.flag("--spreadsheet", m_view.spreadsheet,
                     "Make the cells safe for a spreadsheet, which would take some for formulas");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(m_view.filter, m_filters.filter());
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        m_view.progress = context.progress("writing");
        LOOPWRIGHT_ASSIGN(const auto orders, exportView(*records, m_view));
        return Answer::of(QJsonObject{{"file", m_view.path}, {"orders", orders}},
                          QString("%1 orders are in %2\n").arg(orders).arg(m_view.path));
    }

private:
    BoardOptions m_filters;
    ViewExport m_view;
};

} // namespace

std::unique_ptr<Command> makeExportView()
{
    return std::make_unique<ExportBoard>();
}

} // namespace loopwright
