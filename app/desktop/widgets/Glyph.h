#pragma once
// The few signs that the program has of its own (resources/icons), in the colours and at the size
// that are asked for. Each is drawn into a square.

#include <QIcon>
#include <QPainter>

namespace loopwright {

enum class GlyphShape
{
    Board,       ///< rows of a table
    Job,         ///< a line with stations
    Form,        ///< a sheet with a pen
    Circuit,     ///< two ends and a pair between
    Identifiers, ///< a number in its parts
    Audit,       ///< a lens
    Import,      ///< an arrow into a tray
    Register,    ///< a book
    Certificate, ///< a sheet with a seal
    Loops,       ///< a curve that falls
    Reports,     ///< bars on an axis
    Done,        ///< a disc with a tick
    Failed,      ///< a diamond with a cross
    Open,        ///< a ring
    NotNeeded,   ///< a short bar
    Doubtful,    ///< a triangle with a bar
    Away,        ///< a van
    Note,        ///< a small square with a dot
};

/// Draws `shape` in `colour`; `inner` is the colour of what is cut out of a filled sign.
void drawGlyph(QPainter &painter, GlyphShape shape, const QRectF &square, const QColor &colour,
               const QColor &inner);

/// An icon that paints itself at any size, in the text colour of the palette it is drawn with.
QIcon glyphIcon(GlyphShape shape, const QColor &colour, const QColor &inner);

} // namespace loopwright
