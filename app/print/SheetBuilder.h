#pragma once
// Lays out a sheet from top to bottom: a cursor, wrapped text, rows of cells, hairlines, and a page
// break if the next piece does not fit. Lengths are sheet units (tenths of a point).

#include "app/print/Sheet.h"

#include <optional>

namespace loopwright {

enum class Align
{
    Left,
    Right
};

/// One piece of text in a row; pieces of a row share their first base line.
struct Cell
{
    double x = 0;
    double width = 0;
    QString text;
    TextStyle style;
    Align align = Align::Left;
};

/// Free space around the printed area.
struct Margins
{
    double left = mm(19), top = mm(15), right = mm(19), bottom = mm(17);

    /// Letter is 18 mm shorter than A4.
    static Margins of(Paper paper)
    {
        return paper == Paper::A4 ? Margins() : Margins{mm(20), mm(11.5), mm(20), mm(15)};
    }
};

class SheetBuilder
{
public:
    SheetBuilder(Paper paper, const QString &title);

    double left() const { return m_left; }
    double right() const { return m_right; }
    double width() const { return right() - left(); }
    double top() const { return m_margins.top; }
    double bottom() const { return m_size.height() - m_margins.bottom; }
    /// Everything from here on stands between these, until it is said again.
    void setFrame(double left, double right) { m_left = left, m_right = right; }
    /// A builder of the same frame whose page never ends, to measure with.
    SheetBuilder endless() const;

    double y = 0; ///< the cursor

    /// Where this page begins, below what every further page begins with.
    double contentTop() const { return m_contentTop; }
    std::size_t pageCount() const { return m_sheet.pages.size(); }
    void newPage();
    /// Begins a page if `height` does not fit on this one; true if it did. `onNewPage` draws
    /// what every further page begins with.
    bool ensure(double height);
    /// Where the page is folded when it is a letter: such a place is kept clear by clearFold().
    void setFolds(std::vector<double> folds) { m_folds = std::move(folds); }
    /// Moves the cursor below a fold that would lie within `height`.
    void clearFold(double height);
    void setOnNewPage(std::function<void(SheetBuilder &)> draw) { m_onNewPage = std::move(draw); }

    void draw(SheetMark mark); ///< on this page
    void drawOn(std::size_t page, SheetMark mark);
    /// One line of text with its base line at `baseline`.
    void textAt(double x, double baseline, const QString &text, const TextStyle &style,
                Align align = Align::Left);
    void rule(double x1, double x2, double atY, const QColor &colour, double weight = 5);

    /// Height that the cells take; the tallest counts.
    static double rowHeight(const std::vector<Cell> &cells);
    /// Draws the cells at the cursor, piece by piece from left to right, and moves it below them.
    void row(const std::vector<Cell> &cells);
    /// A paragraph over the given width from the left margin plus `indent`.
    void paragraph(const QString &text, const TextStyle &style, double indent = 0,
                   std::optional<double> width = {});
    static double paragraphHeight(const QString &text, const TextStyle &style, double width);

    /// Draws "page n of m" and the foot's text on every page, `end` on the last one, and gives the
    /// sheet away.
    Sheet finish(const QString &foot, const QString &end, const TextStyle &style);

    static double lineHeight(const TextStyle &style);
    static double textWidth(const QString &text, const TextStyle &style);

private:
    Sheet m_sheet;
    QSizeF m_size;
    Margins m_margins;
    double m_left, m_right;
    double m_contentTop = 0;
    bool m_endless = false;
    std::vector<double> m_folds;
    std::function<void(SheetBuilder &)> m_onNewPage;
};

/// The text in lines no wider than `width`; a word that is too long for a line is broken.
QStringList wrapped(const QString &text, const QFont &font, double width);
} // namespace loopwright
