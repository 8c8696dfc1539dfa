#include "app/cli/commands/Bulk.h"

#include "app/actions/BulkChange.h"
#include "app/actions/OutFile.h"
#include "app/actions/SheetFile.h"
#include "app/cli/Files.h"
#include "app/cli/PaperOptions.h"

namespace loopwright {

namespace {

/// Where the settings cards of the customers go.
class CardsOut
{
public:
    void declare(Options &options)
    {
        options.text("--out", m_file, "The settings cards of all customers concerned, one PDF");
        options.text("--cards", m_folder, "The same, a PDF each in this folder");
        m_paper.declare(options);
    }
    bool isAsked() const { return !m_file.isEmpty() || !m_folder.isEmpty(); }

    /// Before anything is changed.
    Result<void> check() const
    {
        if (!m_file.isEmpty() && !m_folder.isEmpty())
            return failure(ErrorCode::Usage, "one file or a folder of files: give one of them",
                           "--out");
        LOOPWRIGHT_TRY(checkNotStandardStream(m_folder, "the cards go to a folder"));
        LOOPWRIGHT_TRY(checkFolder(m_folder));
        return checkOut(m_file, FileKind::Pdf);
    }

    Result<OrderPapers> write(Records &records, CommandContext &context) const
    {
        const PaperLanguageHere speaking = m_paper.speaking();
        LOOPWRIGHT_ASSIGN(auto cards, cardsOfLastBulk(records, m_paper.paper(), m_folder,
                                                      context.progress("making cards")));
        if (m_file.isEmpty())
            return cards;
        LOOPWRIGHT_TRY(
            writeSheet(cards.sheet, m_file, records.now(), context.progress("painting pages")));
        return cards;
    }
    QString place() const { return m_file.isEmpty() ? m_folder : m_file; }

private:
    QString m_file, m_folder;
    PaperOptions m_paper;
};

QJsonObject cardsJson(const OrderPapers &cards, const CardsOut &out)
{
    return {{"cards", cards.papers},
            {"to", out.place()},
            {"without", QJsonArray::fromStringList(cards.without)}};
}

QString orNone(const QString &value)
{
    return value.isEmpty() ? QString("(none)") : value;
}

/// A list may have an entry for each line of a large office.
void writeReport(QIODevice &out, const BulkReport &report, const QJsonObject &cards)
{
    const auto member = [&out](const char *name, const QByteArray &value) {
        out.write(",\"" + QByteArray(name) + "\":" + value);
    };
    out.write(QByteArray("{\"applied\":") + (report.applied ? "true" : "false"));
    member("bulk", report.id.isEmpty() ? QByteArray("null") : '"' + report.id.toLatin1() + '"');
    member("change", canonicalJson(report.change.toJson()));
    member("circuits", QByteArray::number(qint64(report.circuits)));
    member("orders", QByteArray::number(qint64(report.orders)));
    member("office_too", report.officeToo ? "true" : "false");
    member("certificates", QByteArray::number(qint64(report.certificates)));
    member("out", QByteArray::number(qint64(report.out)));
    member("cards", cards.isEmpty() ? QByteArray("null") : canonicalJson(cards));
    out.write(",\"changes\":");
    Answer::jsonArray(qsizetype(report.changes.size()), [&report](qsizetype i, QByteArray &json) {
        report.changes[std::size_t(i)].appendTo(json);
    })(out);
    out.write(",\"cannot\":");
    Answer::jsonArray(qsizetype(report.cannot.size()), [&report](qsizetype i, QByteArray &json) {
        report.cannot[std::size_t(i)].appendTo(json);
    })(out);
    out.write("}\n");
}

QString summary(const BulkReport &report)
{
    QString text =
        QString("%1 on %2 of %3 %4")
            .arg(report.orders == 1 ? QString("1 order") : QString("%1 orders").arg(report.orders),
                 report.circuits == 1 ? QString("1 circuit")
                                      : QString("%1 circuits").arg(report.circuits),
                 QString("office ") + report.change.office,
                 report.applied ? "changed" : "would be changed");
    if (!report.cannot.empty())
        text += QString("; %1 %2 cannot be, each named above")
                    .arg(report.cannot.size())
                    .arg(report.cannot.size() == 1 ? "value" : "values");
    text += '\n';
    if (report.officeToo)
        text += QString("new orders of the office %1 %2\n")
                    .arg(report.applied ? "take" : "would take", report.change.to);
    if (report.certificates > 0)
        text +=
            QString("%1 %2 no longer\n")
                .arg(report.certificates == 1 ? QString("1 certificate")
                                              : QString("%1 certificates").arg(report.certificates),
                     !report.applied            ? "will stand"
                     : report.certificates == 1 ? "stands"
                                                : "stand");
    if (report.out > 0)
        text += QString("%1 with vans, which will not know of it until they are home\n")
                    .arg(report.out == 1 ? QString("1 order is")
                                         : QString("%1 orders are").arg(report.out));
    if (!report.applied)
        text += "nothing was changed: --apply does it\n";
    else if (!report.id.isEmpty())
        text += "bulk undo takes it back, as long as nothing is built on it\n";
    return text;
}

void writeText(QIODevice &out, const BulkReport &report, const OrderPapers &cards,
               const CardsOut &place)
{
    for (const BulkLine &line : report.changes)
        out.write(oneLine(QString("%1 %2 %3: %4 -> %5")
                              .arg(line.circuit, line.order, line.value.what,
                                   orNone(line.value.old), orNone(line.value.now)))
                      .toUtf8() +
                  '\n');
    for (const BulkKept &line : report.cannot)
        out.write(oneLine(QString("%1 %2 %3 stays %4: %5")
                              .arg(line.circuit, line.order, line.value.what,
                                   orNone(line.value.old), line.value.because.english()))
                      .toUtf8() +
                  '\n');
    out.write(summary(report).toUtf8());
    if (cards.papers > 0)
        out.write(QString("%1 cards: %2\n").arg(cards.papers).arg(place.place()).toUtf8());
}

class BulkCommand : public Command
{
public:
    explicit BulkCommand(OfficeChangeKind kind)
        : m_isSplit(kind == OfficeChangeKind::AreaCode)
    {
        m_change.kind = kind;
    }

    void declare(Options &options) override
    {
        options.text("--office", m_change.office, "The serving office", Given::Always);
        if (m_isSplit) {
            options.text("--from", m_change.from, "The area code that is split", Given::Always);
            options.text("--to", m_change.to, "The new area code", Given::Always);
            options.flag(
                "--spids", m_change.spids,
                "SPIDs that hold the old code are made anew; else they are kept and named");
        } else {
            options.text("--to", m_change.to, "Key of the protocol variant that the switch has now",
                         Given::Always);
            options.text("--from", m_change.from,
                         "Lines of this variant, e.g. of those that were left; else the office's");
        }
        options.flag("--apply", m_apply,
                     "Change what can be changed, in one transaction; else only "
                     "show what would be");
        m_cards.declare(options);
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (m_cards.isAsked() && !m_apply)
            return failure(ErrorCode::Usage, "cards are of what was changed: goes with --apply",
                           "--out, --cards");
        LOOPWRIGHT_TRY(m_cards.check());
        return m_apply ? apply(context) : preview(context);
    }

private:
    Result<Answer> preview(CommandContext &context) const
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(auto report,
                          previewBulk(*records, m_change, context.progress("looking")));
        return answerOf(std::move(report), {});
    }
    Result<Answer> apply(CommandContext &context) const
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(auto report, applyBulk(*records, m_change, context.progress("changing")));
        OrderPapers cards;
        if (m_cards.isAsked() && !report.id.isEmpty()) {
            auto made = m_cards.write(*records, context);
            if (!made)
                return failure(
                    ErrorCode::DiskTrouble,
                    "The change stands, but its cards could not be made: " +
                        made.error().message.chopped(made.error().message.endsWith('.')) +
                        ". Print them with \"bulk cards\", --out F.pdf or --cards DIR.",
                    made.error().place);
            cards = std::move(*made);
        }
        return answerOf(std::move(report), std::move(cards));
    }
    Answer answerOf(BulkReport made, OrderPapers madeCards) const
    {
        const auto report = std::make_shared<const BulkReport>(std::move(made));
        const auto cards = std::make_shared<const OrderPapers>(std::move(madeCards));
        Answer answer;
        answer.yes = report->cannot.empty();
        answer.json = [report, cards, place = m_cards](QIODevice &out) {
            writeReport(out, *report, cards->papers > 0 ? cardsJson(*cards, place) : QJsonObject());
        };
        answer.text = [report, cards, place = m_cards](QIODevice &out) {
            writeText(out, *report, *cards, place);
        };
        if (!report->doubt.isEmpty())
            answer.note(report->doubt.english());
        for (const QString &without : cards->without)
            answer.lack("no card: " + without);
        return answer;
    }

    const bool m_isSplit;
    OfficeChange m_change;
    bool m_apply = false;
    CardsOut m_cards;
};

class UndoBulk : public Command
{
public:
    void declare(Options &) override {}

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto done, undoBulk(*records, {}, context.progress("taking back")));
        QJsonObject json = done.toJson();
        json.insert("undone", true);
        return Answer::of(json, "taken back: " + done.sentence() + '\n');
    }
};

class CardsOfBulk : public Command
{
public:
    void declare(Options &options) override { m_cards.declare(options); }

    Result<Answer> run(CommandContext &context) override
    {
        if (!m_cards.isAsked())
            return failure(ErrorCode::Usage, "names the PDF by --out, or a folder by --cards",
                           "bulk cards");
        LOOPWRIGHT_TRY(m_cards.check());
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto cards, m_cards.write(*records, context));
        Answer answer =
            Answer::of(cardsJson(cards, m_cards),
                       QString("%1 cards: %2\n").arg(cards.papers).arg(m_cards.place()));
        for (const QString &without : cards.without)
            answer.lack("no card: " + without);
        return answer;
    }

private:
    CardsOut m_cards;
};

} // namespace

std::unique_ptr<Command> makeBulkAreaCode()
{
    return std::make_unique<BulkCommand>(OfficeChangeKind::AreaCode);
}

std::unique_ptr<Command> makeBulkVariant()
{
    return std::make_unique<BulkCommand>(OfficeChangeKind::Variant);
}

std::unique_ptr<Command> makeBulkUndo()
{
    return std::make_unique<UndoBulk>();
}

std::unique_ptr<Command> makeBulkCards()
{
    return std::make_unique<CardsOfBulk>();
}

} // namespace loopwright
