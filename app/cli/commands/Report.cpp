#include "app/cli/commands/Report.h"

#include "app/actions/OutFile.h"
#include "app/actions/ReportFiles.h"
#include "app/cli/Layout.h"
#include "app/cli/PaperOptions.h"
#include "core/acceptance/Criteria.h"

#include <tuple>

namespace loopwright {

namespace {

class ReportCommand : public Command
{
public:
    void declare(Options &options) override
    {
        options.word("report", m_kind, allWords<ReportKind>(),
                     "first_visit, failing (criteria), open_age, exceptions, calibration, troubles",
                     Given::Always);
        options.date("--from", m_query.from, "From this day on");
        options.date("--to", m_query.to, "Until this day, which belongs to it");
        options.word("--per", m_per, allWords<ReportPer>(),
                     "Counted by office (else), installer, cable, variant or month");
        options.flag("--rows", m_rows, "The orders behind the figures");
        options.texts("--key", m_keys, "With --rows: only those counted under this key",
                      Given::IfWanted, Separation::None);
        options.word("--criterion", m_criterion, criterionKeys(),
                     "With --rows, of failing: only those whose first open criterion it is");
        options.text("--instrument", m_instrument,
                     "With --rows, of calibration: only those that name it");
        options.text("--out", m_out, "Also writes it: F.csv, or F.svg or F.pdf as a picture");
        options.word("--format", m_format, reportFormats(),
                     "csv, svg or pdf (else as the name of the file ends)");
        options.flag("--spreadsheet", m_spreadsheet,
                     "Make the cells of a CSV safe for a spreadsheet, which would take some for "
                     "formulas");
        m_paper.declare(options, "a4 (else) or letter; of the PDF");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_TRY(readWords());
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        if (m_rows)
            return orders(*records);
        LOOPWRIGHT_ASSIGN(const auto report, makeReport(*records, m_query));
        const PaperLanguageHere speaking = m_paper.speaking();
        if (!m_out.isEmpty())
            LOOPWRIGHT_TRY(
                writeReport(*records, report, m_out, m_format, m_paper.paper(), m_spreadsheet));
        QJsonArray json;
        for (const ReportRow &row : report.rows)
            json << row.values;
        ColumnLayout table(headings(report.columns()));
        for (const ReportRow &row : report.rows)
            table.add(cells(report.columns(), row.values));
        return Answer::of(json, report.title() + '\n' +
                                    (table.isEmpty() ? QString() : '\n' + table.text()) + '\n' +
                                    report.sum.english() + '\n');
    }

private:
    Result<void> readWords()
    {
        m_query.kind = fromText<ReportKind>(m_kind).value_or(ReportKind::FirstVisit);
        m_query.per = fromText<ReportPer>(m_per).value_or(describe(m_query.kind).per);
        if (!m_rows && !m_keys.isEmpty())
            return failure(ErrorCode::Usage, "goes with --rows", "--key");
        if (m_keys.size() > 1)
            return failure(ErrorCode::Usage, "is said once", "--key");
        for (const auto &[option, said, kind] :
             {std::tuple("--criterion", m_criterion, ReportKind::Failing),
              std::tuple("--instrument", m_instrument, ReportKind::Calibration)})
            if (!said.isEmpty() && (!m_rows || m_query.kind != kind))
                return failure(ErrorCode::Usage,
                               QString("goes with %1 and --rows").arg(toText(kind)), option);
        return {};
    }

    Result<Answer> orders(Records &records) const
    {
        ReportFigureKey behind;
        if (!m_keys.isEmpty())
            behind.per = m_keys.front();
        if (const QString detail = m_criterion + m_instrument; !detail.isEmpty())
            behind.detail = detail; // one of them, or none
        LOOPWRIGHT_ASSIGN(auto found, ordersBehind(records, m_query, behind));
        if (!m_out.isEmpty()) {
            if (m_format.isEmpty() ? !m_out.endsWith(".csv", Qt::CaseInsensitive)
                                   : m_format != "csv")
                return failure(ErrorCode::Usage, "orders go into a .csv", "--out");
            LOOPWRIGHT_TRY(
                writeOut(m_out, FileKind::Csv, ordersCsv(found, m_query.kind, m_spreadsheet)));
        }
        const auto list = std::make_shared<std::vector<ReportOrder>>(std::move(found));
        Answer answer;
        answer.json =
            Answer::jsonArray(qsizetype(list->size()), [list, kind = m_query.kind](qsizetype i) {
                return QJsonValue(toJson((*list)[std::size_t(i)], kind));
            });
        answer.text = [list, query = m_query](QIODevice &out) {
            const std::vector<ReportColumn> columns = columnsBehind(query.kind);
            ColumnLayout table(headings(columns));
            for (const ReportOrder &order : *list)
                table.add(cells(columns, toJson(order, query.kind)));
            out.write((list->empty() ? QString("no orders\n") : table.text()).toUtf8());
        };
        return answer;
    }

    static QStringList headings(const std::vector<ReportColumn> &columns)
    {
        QStringList list;
        for (const ReportColumn &column : columns)
            list << (isText(column.form) || column.form == ReportForm::Yes
                         ? QString(column.name)
                         : '>' + QString(column.name));
        return list;
    }
    static QStringList cells(const std::vector<ReportColumn> &columns, const QJsonObject &values)
    {
        QStringList list;
        for (const ReportColumn &column : columns)
            list << cellText(column, values);
        return list;
    }

    ReportQuery m_query;
    QString m_kind, m_per, m_out, m_format, m_criterion, m_instrument;
    PaperOptions m_paper;
    QStringList m_keys; ///< an empty one is a key too: of those without installer, cable
    bool m_rows = false, m_spreadsheet = false;
};

} // namespace

std::unique_ptr<Command> makeReportCommand()
{
    return std::make_unique<ReportCommand>();
}

} // namespace loopwright
