#include "app/print/CertificateDocument.h"

#include "app/print/CertificateResults.h"
#include "app/print/PaperLanguage.h"
#include "app/print/PdfFile.h"
#include "app/print/QrCode.h"
#include "app/print/SettingsDocument.h"
#include "core/base/PaperTime.h"
#include "core/certificate/CertificateNumber.h"

#include <algorithm>

namespace loopwright {

using namespace doc;

namespace {

const QString notIssued = QStringLiteral("Preview, not issued");
constexpr double leastSquare = mm(33), leastModule = mm(0.43); ///< quiet zone included

/// A content has its number only once it is issued.
bool isPreview(const CertificateContent &content)
{
    return content.number.isEmpty();
}

/// A long list of numbers or exceptions makes a larger square, not finer modules: a phone must read
/// them from a folded sheet.
double squareSide(const QrCode &code)
{
    return std::max(leastSquare, code.modules * leastModule);
}

Block squareBlock(const QrCode &code)
{
    return Picture{squareSide(code) - mm(6),
                   [code, side = squareSide(code)](QPainter &painter, const QRectF &rect) {
                       // The quiet zone may lie in the margin, so that the code itself stands on
                       // the right edge.
                       const double zone = side * quietZoneModules / code.modules;
                       painter.setRenderHint(QPainter::Antialiasing, false);
                       painter.fillPath(code.in(QRectF(rect.right() - side + zone,
                                                       rect.top() - zone, side, side)),
                                        Qt::black);
                   }};
}

/// Title, number and verdict at the left, the square at the right; a preview has none.
Block besideSquare(Blocks left, const IssueMark &mark)
{
    const auto code = mark.proof ? qrCode(QString::fromUtf8(mark.proof->claims.text()))
                                 : failure(ErrorCode::NotFound, {});
    if (!code) // else certificatePaper() has refused it
        return SideBySide{std::move(left), {}, 0.8};
    const double share = 0.8 - (squareSide(*code) - leastSquare) / mm(180); // of the text's width
    return SideBySide{std::move(left), {squareBlock(*code)}, share};
}

QString issueText(const IssueMark &mark)
{
    const QString day = paperDay(mark.issuedAt.localDate());
    if (mark.copy == 0)
        return {};
    return mark.countersigns ? QString("Issue %1, signed on %2").arg(mark.copy + 1).arg(day)
                             : QString("Copy %1, issued on %2").arg(mark.copy).arg(day);
}

QString footText(const CertificateContent &content, const IssueMark &mark)
{
    if (isPreview(content))
        return notIssued;
    QStringList parts{"Certificate " + content.number, "code " + shortCode(content.digest()),
                      QString("issue %1").arg(mark.copy + 1)};
    if (mark.copy > 0 && !mark.countersigns)
        parts.last() += QString(", copy %1").arg(mark.copy);
    return parts.join("  ·  ");
}

StationState verdictMark(const CertificateContent &content)
{
    return {Station::Acceptance, StationMark::Done,
            content.outcome == OrderOutcome::AcceptedWithException, false};
}

Blocks verdictBlocks(const CertificateContent &content)
{
    return {Paragraph{content.verdict(), Tone::Verdict, mm(1), 0, verdictMark(content)},
            Paragraph{content.verdictSentence(), Tone::Body, mm(1)}};
}

/// Title, number and code, verdict; beside them the QR code.
Block headBlock(const CertificateContent &content, const IssueMark &mark)
{
    Blocks left{Paragraph{"Line certificate", Tone::Title, mm(1)}};
    if (isPreview(content)) {
        left.push_back(Paragraph{notIssued, Tone::Bad});
    } else {
        left.push_back(Table{{0.36, 0.64},
                             {},
                             {{{{content.number, Tone::Number},
                                {"code " + shortCode(content.digest()), Tone::Digits}},
                               {},
                               false}},
                             mm(0.4)});
        left.push_back(Paragraph{
            QString("Issued on %1 for order %2").arg(paperTime(content.issuedAt), content.order),
            Tone::Muted, mm(0.8)});
        left.push_back(Paragraph{issueText(mark), Tone::Bad, mm(0.8)});
    }
    append(left, verdictBlocks(content));
    return besideSquare(std::move(left), mark);
}

/// Where the window of an envelope shows it: DL and C5/6 for A4, US no. 10 for Letter, the sheet
/// folded in three.
Blocks addressBlocks(const CertificateContent &content)
{
    QStringList from{content.issuer.name, content.issuer.address};
    from.removeAll(QString());
    return {Paragraph{from.join(", "), Tone::Muted, mm(1.4), mm(6)},
            Paragraph{content.customer + '\n' + QString(content.premises).replace(", ", "\n"),
                      Tone::Body, mm(2), mm(6)}};
}

Block factsBlock(const CertificateContent &content, int across)
{
    const QDate from = QDate::fromString(content.testedFrom, Qt::ISODate);
    const QDate to = QDate::fromString(content.testedTo, Qt::ISODate);
    QStringList tested{to.isValid() ? paperDays(from, to) : QString(),
                       content.installers.isEmpty() ? QString()
                                                    : "by " + content.installers.join(", ")};
    tested.removeAll(QString());
    return Facts{{{"Customer", content.customer},
                  {"Premises", content.premises},
                  {"Contact", content.contact},
                  {"Circuit", content.circuit},
                  {"Order", content.order + ", " + content.orderType},
                  {"Serving office", content.office},
                  {"Tested", tested.join(", ")}},
                 across};
}

Blocks customerBlocks(const CertificateContent &content, Paper paper)
{
    const double window = paper == Paper::A4 ? mm(60) : mm(57);
    const Blocks box = exceptionBlocks(content);
    if (box.empty())
        return {
            SideBySide{
                addressBlocks(content), {Gap{mm(3)}, factsBlock(content, 1)}, 0.46, mm(6), window},
            Gap{mm(1)}};
    Blocks left = addressBlocks(content);
    left.push_back(Gap{mm(8)});
    left.push_back(factsBlock(content, 1));
    return {SideBySide{std::move(left), {Box{box}}, 0.46, mm(6), window, true}, Gap{mm(1)}};
}

Blocks replacedBlocks(const CertificateContent &content)
{
    if (!content.replaces)
        return {};
    return {Paragraph{QString("It takes the place of certificate %1, issued on %2, because: %3.")
                          .arg(content.replaces->number, paperTime(content.replaces->issuedAt),
                               content.replaces->because.join("; ")),
                      Tone::Strong}};
}

Block deliveryTable(const CertificateContent &content)
{
    Table table{{0.16, 0.34, 0.5},
                {{"", Tone::Muted}, {"Ordered", Tone::Muted}, {"Delivered", Tone::Muted}},
                {},
                mm(0.5)};
    for (const CertificateDelivery &row : content.delivery)
        table.rows.push_back({{{row.name, Tone::Muted}, {row.ordered}, {row.delivered}}});
    return table;
}

Block callBlock(const CertificateContent &content)
{
    const CertificateCall &call = content.call;
    const QString name = "and name " + call.name + '.';
    if (call.telephone.isEmpty())
        return Paragraph{"Call the issuer of this certificate, " + name};
    return Paragraph{
        QString("If the line fails, call %1%2, %3")
            .arg(call.telephone, call.hours.isEmpty() ? QString() : " (" + call.hours + ")", name),
        Tone::Large};
}

Block issuerBlock(const CertificateContent &content)
{
    if (content.issuer.name.isEmpty())
        return Paragraph{"The records do not say who issues this certificate."};
    return Facts{{{"Name", content.issuer.name},
                  {"Address", content.issuer.address},
                  {"Telephone", content.issuer.telephone}}};
}

SignatureField fieldOf(const CertificateContent &content, const IssueMark &mark,
                       const QString &role, const QString &who, const QString &declares)
{
    const Signature *signature = signatureOf(content.signatures, role);
    const bool later = !signature;
    if (later)
        signature = signatureOf(mark.later, role);
    if (!signature)
        return {declares,
                who + QString(": not signed when this was issued. Name, date, signature")};
    return {declares,
            QString("%1: %2, %3%4")
                .arg(who, signature->name,
                     later ? QString("signed after the first issue, on ") : QString(),
                     paperTime(signature->at)),
            signature->strokes};
}

/// Both declarations; on a page after the first, with what they speak of above them.
Block signatureBlock(const CertificateContent &content, const IssueMark &mark)
{
    const bool excepted = content.outcome == OrderOutcome::AcceptedWithException;
    Together block;
    block.inside = {
        Gap{mm(3)},
        SignatureFields{
            {fieldOf(content, mark, "installer", "Installer",
                     QString("I have tested this line; the results stated here are those that were "
                             "read%1.")
                         .arg(excepted ? ", and the exceptions stand as stated" : "")),
             fieldOf(content, mark, "customer", "Customer",
                     QString("I have received this line, this certificate and the settings for my "
                             "equipment%1.")
                         .arg(excepted ? ", and I know the exceptions" : ""))}}};
    block.ifLater = {Gap{mm(3)}, Rule{}, Paragraph{"What is declared here", Tone::Heading},
                     Facts{{{"Customer", content.customer}, {"Circuit", content.circuit}}, 2}};
    append(block.ifLater, verdictBlocks(content));
    if (const Blocks box = exceptionBlocks(content); !box.empty())
        block.ifLater.push_back(Box{box});
    return block;
}

Blocks howToCheck(const CertificateContent &content, const IssueMark &mark)
{
    if (isPreview(content))
        return {};
    Blocks blocks{
        Paragraph{QString("Keep this certificate. Whoever issued it can tell at any time "
                          "whether it is genuine and still stands: give the number %1 and the "
                          "code %2. The square on page 1 says what is certified, signed; anybody "
                          "can check the signature who has the issuer's public key. The file of "
                          "this certificate holds its record; the code is the beginning of the "
                          "record's SHA-256:")
                      .arg(content.number, shortCode(content.digest())),
                  Tone::Muted, mm(0.6)},
        Paragraph{content.digest(), Tone::Muted}};
    if (paperLanguage().say)
        blocks.push_back(Paragraph{"The record of this certificate is in English, and counts; this "
                                   "is the same in another language.",
                                   Tone::Muted});
    if (!mark.proof)
        return blocks;
    for (const PublicKey &station : mark.proof->stations)
        blocks.push_back(
            Paragraph{QString("Key of station %1: %2. Endorsed by the issuer's key: %3.")
                          .arg(station.holder, groupedFingerprint(station.fingerprint()),
                               groupedFingerprint(station.endorsedBy)),
                      Tone::Muted, mm(0.6)});
    blocks.push_back(Paragraph{mark.proof->head.head.paperText(), Tone::Muted, mm(0.6)});
    return blocks;
}

/// What people typed, and names and keys of the register.
QStringList typedIn(const CertificateContent &content)
{
    QStringList typed{
        content.customer,         content.premises,       content.contact,
        content.circuit,          content.office,         content.order,
        content.limitSet,         content.issuer.name,    content.issuer.address,
        content.issuer.telephone, content.call.telephone, content.installers.join(", ")};
    typed << content.installers << content.premises.split(", ");
    for (const CertificateDelivery &line : content.delivery)
        if (isFigure(line.ordered)) // numbers and the pair
            typed << line.ordered;
    for (const CertificateInstrument &instrument : content.instruments)
        typed << instrument.key << instrument.kind << instrument.serial;
    for (const Signature &signature : content.signatures)
        typed << signature.name;
    for (const CertificateCriterion &criterion : content.criteria)
        if (criterion.excepted)
            typed << criterion.excepted->by;
    return typed;
}

} // namespace

Document certificateDocument(const CertificateContent &content, const IssueMark &mark, Paper paper)
{
    Document document;
    document.typed = typedIn(content);
    document.title = isPreview(content) ? notIssued : "Certificate " + content.number;
    document.continued = isPreview(content)
                             ? notIssued
                             : QString("Line certificate %1, continued").arg(content.number);
    document.foot = footText(content, mark);
    document.end = "End of certificate";
    document.folds = true;
    Blocks &blocks = document.blocks;
    blocks.push_back(headBlock(content, mark));
    append(blocks, customerBlocks(content, paper));
    append(blocks, replacedBlocks(content));
    blocks.push_back(deliveryTable(content));
    append(blocks, section("Dangerous voltage", paragraphs(content.hazards, Tone::Strong)));
    append(blocks, section("Results", resultBlocks(content)));
    append(blocks, section("Error test", runBlocks(content)));
    append(blocks, section("Measured with", instrumentBlocks(content)));
    append(blocks, section("Recorded later", paragraphs(content.late)));
    append(blocks, section("Remarks", paragraphs(content.notes)));
    append(blocks, section("What is not covered", paragraphs(content.notCovered)));
    append(blocks, section("What you must know", paragraphs(content.mustKnow)));
    append(blocks, section("When the line fails", {callBlock(content)}));
    append(blocks, section("Issued by", {issuerBlock(content)}));
    blocks.push_back(signatureBlock(content, mark));
    blocks.push_back(Together{section("To check this certificate", howToCheck(content, mark)), {}});
    blocks.push_back(NewPage{});
    append(blocks,
           settingsBlocks({content.kind,
                           content.variantName,
                           content.settings,
                           content.terminals,
                           {{"Circuit", content.circuit},
                            {"Order", content.order},
                            {"Date", isPreview(content) ? QString() : paperTime(content.issuedAt)},
                            {"Issue", isPreview(content) ? notIssued
                                                         : QString("certificate %1, issue %2")
                                                               .arg(content.number)
                                                               .arg(mark.copy + 1)}}}));
    return document;
}

Sheet certificateSheet(const CertificateContent &content, const IssueMark &mark, Paper paper)
{
    return layOut(certificateDocument(content, mark, paper), paper);
}

namespace {

void attach(const CertificateProof &proof, PdfInfo &info)
{
    QByteArray keys;
    for (const PublicKey &station : proof.stations)
        keys += station.line(true).toUtf8() + '\n';
    info.attachments.push_back({"claims.txt", proof.claims.text(), "text/plain"});
    info.attachments.push_back({"keys.txt", keys, "text/plain"});
    info.attachments.push_back(
        {"head.json", canonicalJson(proof.head.toJson()), "application/json"});
}

} // namespace

Result<CertificatePaper> certificatePaper(const CertificateContent &content, const IssueMark &mark,
                                          Paper paper)
{
    PdfInfo info{"Certificate " + content.number,
                 QString("Circuit %1, order %2").arg(content.circuit, content.order),
                 mark.issuedAt};
    info.attachments = {{"record.json", content.record(), "application/json"}};
    info.author = content.issuer.name;
    if (mark.proof) {
        LOOPWRIGHT_TRY(qrCode(QString::fromUtf8(mark.proof->claims.text())));
        attach(*mark.proof, info);
    }
    Sheet sheet = certificateSheet(content, mark, paper);
    LOOPWRIGHT_TRY(checkCharacters(sheet));
    LOOPWRIGHT_ASSIGN(auto pdf, sheetPdf(sheet, info));
    return CertificatePaper{std::move(sheet), std::move(pdf)};
}

} // namespace loopwright
