#include "app/print/Document.h"

namespace loopwright::doc {

namespace {

using Visit = std::function<void(QString &)>;

void visitTexts(Blocks &blocks, const Visit &visit);

struct TextVisitor
{
    const Visit &visit;

    void operator()(Paragraph &part) const { visit(part.text); }
    void operator()(Table &part) const
    {
        visit(part.heading);
        for (Words &words : part.head)
            visit(words.text);
        for (TableRow &row : part.rows)
            for (Words &words : row.cells)
                visit(words.text);
    }
    void operator()(Facts &part) const
    {
        for (CertificateLine &line : part.lines)
            visit(line.name), visit(line.value);
    }
    void operator()(Box &part) const { visitTexts(part.inside, visit); }
    void operator()(Together &part) const
    {
        visitTexts(part.inside, visit);
        visitTexts(part.ifLater, visit);
    }
    void operator()(SideBySide &part) const
    {
        visitTexts(part.left, visit);
        visitTexts(part.right, visit);
    }
    void operator()(SignatureFields &part) const
    {
        for (SignatureField &field : part.fields)
            visit(field.declares), visit(field.caption);
    }
    void operator()(FillIn &part) const { visit(part.label), visit(part.already); }
    void operator()(Picture &) const {}
    void operator()(Gap &) const {}
    void operator()(Rule &) const {}
    void operator()(NewPage &) const {}
};

void visitTexts(Blocks &blocks, const Visit &visit)
{
    for (Block &block : blocks)
        std::visit(TextVisitor{visit}, block.body);
}

} // namespace

void append(Blocks &to, Blocks more)
{
    to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

Blocks paragraphs(const QStringList &texts, Tone role)
{
    Blocks blocks;
    for (const QString &text : texts)
        blocks.push_back(Paragraph{text, role});
    return blocks;
}

Blocks section(const QString &heading, Blocks blocks)
{
    if (blocks.empty())
        return {};
    // The heading stays with what it heads; of a table that may be long with its first rows.
    Blocks whole;
    if (auto *table = std::get_if<Table>(&blocks.front().body)) {
        table->heading = heading;
        whole.push_back(std::move(blocks.front()));
    } else {
        whole.push_back(Together{
            {Gap{mm(2.5)}, Paragraph{heading, Tone::Heading, mm(1)}, std::move(blocks.front())},
            {}});
    }
    whole.insert(whole.end(), std::make_move_iterator(blocks.begin() + 1),
                 std::make_move_iterator(blocks.end()));
    return whole;
}

void eachText(Document &document, const std::function<void(QString &)> &visit)
{
    visit(document.title);
    visitTexts(document.blocks, visit);
    visit(document.continued);
    visit(document.foot);
    visit(document.end);
}

} // namespace loopwright::doc
