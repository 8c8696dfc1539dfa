#include "app/cli/commands/Day.h"

#include "app/actions/DayList.h"
#include "app/actions/OutFile.h"
#include "app/actions/SheetFile.h"
#include "app/cli/PaperOptions.h"

namespace loopwright {

namespace {

class PrintDay : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("--installer", m_installer, "Jobs of this installer; else of all");
        options.date("--on", m_day, "What is due by this day; else by today");
        options.text("--out", m_out, "The PDF", Given::Always);
        m_paper.declare(options);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        const QDate day = m_day.isValid() ? m_day : records->now().localDate();
        const PaperLanguageHere speaking = m_paper.speaking();
        LOOPWRIGHT_TRY(checkOut(m_out, FileKind::Pdf));
        LOOPWRIGHT_ASSIGN(const auto list, daySheet(*records, m_installer, day, m_paper.paper(),
                                                    context.progress("reading orders")));
        LOOPWRIGHT_TRY(
            writeSheet(list.sheet, m_out, records->now(), context.progress("painting pages")));
        return Answer::of(QJsonObject{{"installer", m_installer},
                                      {"day", day.toString(Qt::ISODate)},
                                      {"orders", QJsonArray::fromStringList(list.orders)},
                                      {"list", m_out}},
                          m_out + "\n");
    }

private:
    QString m_installer, m_out;
    PaperOptions m_paper;
    QDate m_day;
};

} // namespace

std::unique_ptr<Command> makeDay()
{
    return std::make_unique<PrintDay>();
}

} // namespace loopwright
