#pragma once
// What a paper says, as a list of blocks; one layout makes pages of it (layOut). Every paper of the
// program is a function that returns a Document; none draws itself. Lengths are sheet units
// (tenths of a point).

#include "app/print/SheetBuilder.h"
#include "core/acceptance/JobLine.h"
#include "core/certificate/CertificateContent.h"

#include <variant>

namespace loopwright::doc {

/// How a piece of text is set.
enum class Tone
{
    Title,   ///< the name of the paper
    Verdict, ///< the largest on most papers
    Alarm,   ///< larger still: a hazard
    Large,   ///< what is read first
    Heading,
    Body, ///< 9.2 points
    Strong,
    Bad,   ///< strong, in the colour of what failed
    Small, ///< 7.8 points: the technical row
    SmallBad,
    Muted,     ///< small, and less dark: labels and remarks
    Digits,    ///< of one width
    BigDigits, ///< to be read across a room
    Number,    ///< of a certificate
};

struct Words
{
    QString text;
    Tone role = Tone::Body;
    Align align = Align::Left;
    int span = 1; ///< columns of the table
};

struct Block;
using Blocks = std::vector<Block>;

struct Paragraph
{
    QString text;
    Tone role = Tone::Body;
    double after = mm(1.2);
    double indent = 0;
    std::optional<StationState> mark = {};
};

struct TableRow
{
    std::vector<Words> cells; ///< one for each column that is not spanned
    std::optional<StationState> mark = {};
    bool rule = true;      ///< a hairline above
    bool withNext = false; ///< stays on the page of the row below it
};

/// The head is repeated on each page; no row is cut in two.
struct Table
{
    std::vector<double> shares; ///< of the width, for each column
    std::vector<Words> head = {};
    std::vector<TableRow> rows = {};
    double gap = mm(1.1); ///< above and below a row
    double markWidth = 0; ///< room for marks in front of the first column
    QString heading = {}; ///< above it, on the page of its first rows
};

/// Labels and what stands beside them, `across` pairs in a row.
struct Facts
{
    std::vector<CertificateLine> lines;
    int across = 1;
    double label = mm(24);
    bool rules = false;
    Tone role = Tone::Body;
};

/// Blocks in a frame; goes on to a further page with a frame of its own.
struct Box
{
    Blocks inside;
    bool alarm = false; ///< thick, in the colour of what failed
};

/// Blocks that stay on one page. On a page after the first `ifLater` stands above them.
struct Together
{
    Blocks inside;
    Blocks ifLater;
};

/// Two columns side by side, from one height. The left one may begin at a height of the page.
struct SideBySide
{
    Blocks left, right;
    double leftShare = 0.5; ///< of the width
    double gap = mm(6);
    std::optional<double> leftFrom = {}; ///< from the page's upper edge
    bool rightFirst = false;             ///< which is read first
};

struct SignatureField
{
    QString declares; ///< "I have tested …"
    QString caption;  ///< below the line
    std::vector<std::vector<QPoint>> strokes = {};
};
struct SignatureFields
{
    std::vector<SignatureField> fields;
};

/// A line to write on, with its label.
struct FillIn
{
    QString label;
    QString already = {}; ///< what is known
};

struct Picture
{
    double height = 0;
    std::function<void(QPainter &, const QRectF &)> paint;
};

struct Gap
{
    double height = mm(4);
};
struct Rule
{
};
struct NewPage
{
};

struct Block
{
    using Body = std::variant<Paragraph, Table, Facts, Box, Together, SideBySide, SignatureFields,
                              FillIn, Picture, Gap, Rule, NewPage>;
    Body body;

    template<class T>
    requires(!std::is_same_v<T, Block>) Block(T part)
        : body(std::move(part))
    {
    }
};

struct Document
{
    QString title = {}; ///< of the file
    Blocks blocks = {};
    QString continued = {}; ///< at the head of every further page
    QString foot = {};      ///< on every page, beside "Page n of m"
    QString end = {};       ///< on the last page, beside the foot
    bool folds = false;     ///< no table row lies on a fold of the letter
    QStringList typed = {}; ///< by people: stays as it is in every language
};

/// A heading with what belongs to it.
Blocks section(const QString &heading, Blocks blocks);
void append(Blocks &to, Blocks more);
/// A paragraph for each.
Blocks paragraphs(const QStringList &texts, Tone role = Tone::Body);

/// Every text of the document, to be read or changed.
void eachText(Document &document, const std::function<void(QString &)> &visit);

/// Of a document in English, in the language of papers (PaperLanguage.h).
Sheet layOut(Document document, Paper paper);

} // namespace loopwright::doc
