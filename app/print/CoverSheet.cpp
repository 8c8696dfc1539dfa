#include "app/print/CoverSheet.h"

#include "app/print/Document.h"
#include "app/print/PdfFile.h"
#include "core/base/PaperTime.h"

#include <algorithm>

namespace loopwright {

using namespace doc;

namespace {

/// A cover has this subject and a certificate does not.
const QString coverSubject = QStringLiteral("The lines at one premises; no certificate");

QString outcomeName(OrderOutcome outcome)
{
    if (outcome == OrderOutcome::AcceptedWithException)
        return "Accepted by exception"; // as the certificate says it
    QString text = toText(outcome).replace('_', ' ');
    text[0] = text[0].toUpper();
    return text;
}

StationState outcomeMark(OrderOutcome outcome)
{
    const StationMark mark = outcome == OrderOutcome::Incomplete    ? StationMark::Open
                             : outcome == OrderOutcome::NotAccepted ? StationMark::Failed
                                                                    : StationMark::Done;
    return {Station::Acceptance, mark, outcome == OrderOutcome::AcceptedWithException, false};
}

QString countText(const CoverContent &content)
{
    const auto issued = std::count_if(content.lines.begin(), content.lines.end(),
                                      [](const CoverLine &l) { return !l.certificate.isEmpty(); });
    if (issued == qsizetype(content.lines.size()))
        return issued == 1 ? QString("One line, with its certificate.")
                           : QString("%1 lines, each with a certificate of its own.").arg(issued);
    return QString("%1 of %2 lines have a certificate; for each other it is said why not.")
        .arg(issued)
        .arg(content.lines.size());
}

/// Left and right text, line by line.
std::vector<std::pair<QString, QString>> lineTexts(const CoverLine &line)
{
    QStringList left{line.numbers, QString("Circuit %1, order %2").arg(line.circuit, line.order)};
    QStringList right;
    if (line.certificate.isEmpty()) {
        if (!line.stage.isEmpty())
            right << "Stands at: " + line.stage;
        right << "No certificate";
    } else {
        right << QString("%1, code %2").arg(line.certificate, line.code)
              << QString("%1 page%2%3%4")
                     .arg(line.pages)
                     .arg(line.pages == 1 ? "" : "s",
                          line.tested.isEmpty() ? QString() : ", tested " + line.tested,
                          line.copy ? ", a copy" : "");
    }
    left.removeAll(QString());
    std::vector<std::pair<QString, QString>> texts;
    for (qsizetype i = 0; i < std::max(left.size(), right.size()); ++i)
        texts.emplace_back(left.value(i), right.value(i));
    return texts;
}

Blocks coverLineBlocks(const CoverLine &line)
{
    Table table{{0.56, 0.44},
                {},
                {{{{line.kind, Tone::Strong}, {outcomeName(line.outcome), Tone::Strong}},
                  outcomeMark(line.outcome)}},
                mm(0.7),
                mm(7)};
    for (const auto &[left, right] : lineTexts(line))
        table.rows.push_back({{{left}, {right}}, {}, false});
    if (!line.reason.isEmpty())
        table.rows.push_back({{{line.reason, Tone::Body, Align::Left, 2}}, {}, false});
    return {std::move(table), Gap{mm(1.5)}};
}

Document coverDocument(const CoverContent &content)
{
    Document document;
    document.typed = QStringList{content.customer, content.premises} + content.premises.split(", ");
    document.title = "Cover, " + content.premises;
    document.continued = "Lines at one premises, continued";
    document.foot = "A list of the set; it is no certificate";
    document.end = "End of cover";
    std::vector<CertificateLine> facts{{"Customer", content.customer},
                                       {"Premises", content.premises}};
    for (std::size_t i = 0; i < std::size_t(content.visits.size()); ++i)
        facts.push_back({i > 0                        ? QString()
                         : content.visits.size() == 1 ? QString("Visit")
                                                      : QString("Visits"),
                         content.visits[qsizetype(i)]});
    facts.push_back({"Set made", paperTime(content.made)});
    document.blocks = {Paragraph{"Lines at one premises", Tone::Title, mm(2)},
                       Paragraph{countText(content) +
                                     " Each certificate stands for itself and is checked by its "
                                     "own number and code.",
                                 Tone::Body, mm(3)},
                       Facts{std::move(facts), 1, mm(28)}, Gap{mm(3)}};
    // Each line is kept on one page, and the last one with the one before it, so that none stands
    // on a page alone.
    for (std::size_t i = 0; i < content.lines.size(); ++i) {
        Together together{coverLineBlocks(content.lines[i]), {}};
        if (i + 2 == content.lines.size())
            append(together.inside, coverLineBlocks(content.lines[++i]));
        document.blocks.push_back(std::move(together));
    }
    document.blocks.push_back(Rule{});
    return document;
}

} // namespace

Sheet coverSheet(const CoverContent &content, Paper paper)
{
    return layOut(coverDocument(content), paper);
}

Result<QByteArray> coverPdf(const Sheet &cover, const Moment &made)
{
    return sheetPdf(cover, {cover.title, coverSubject, made});
}

bool isCover(const PdfContents &contents)
{
    return contents.subject == coverSubject;
}

} // namespace loopwright
