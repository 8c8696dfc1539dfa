#include "app/desktop/widgets/SheetView.h"

#include "app/desktop/Theme.h"

#include <algorithm>

namespace loopwright {

namespace {

/// A page is never shown wider than this, in em.
constexpr double widestEm = 62;

} // namespace

class SheetView::Pages : public QWidget
{
public:
    explicit Pages(const Sheet &sheet)
        : m_sheet(sheet)
    {
        setObjectName(QStringLiteral("sheet.pages"));
    }

    /// Height that the pages need at a width.
    int heightFor(int width) const
    {
        const QSizeF paper = paperSize(m_sheet.paper);
        const double page = width * paper.height() / paper.width();
        return int(double(m_sheet.pages.size()) * (page + gap()));
    }

protected:
    void paintEvent(QPaintEvent *) override
    {
        const QSizeF paper = paperSize(m_sheet.paper);
        const double scale = width() / paper.width();
        QPainter painter(this);
        for (std::size_t page = 0; page < m_sheet.pages.size(); ++page) {
            const double top = double(page) * (paper.height() * scale + gap());
            const QRectF rect(0, top, width(), paper.height() * scale);
            painter.fillRect(rect, Qt::white);
            painter.setPen(QPen(colours().frame, 1));
            painter.drawRect(rect.adjusted(0.5, 0.5, -0.5, -0.5));
            painter.save();
            painter.setClipRect(rect);
            painter.setRenderHint(QPainter::Antialiasing);
            painter.translate(rect.topLeft());
            painter.scale(scale, scale);
            m_sheet.paintPage(painter, page);
            painter.restore();
        }
    }

private:
    static double gap() { return em(1.2); }

    const Sheet &m_sheet;
};

SheetView::SheetView(QWidget *parent)
    : QScrollArea(parent)
    , m_pages(new Pages(m_sheet))
{
    setObjectName(QStringLiteral("sheet"));
    setAccessibleName(tr("Preview"));
    setFrameShape(QFrame::NoFrame);
    setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    setWidget(m_pages);
    whenThemed(this, [this] { fit(); });
}

void SheetView::show(const Sheet &sheet, const QString &spoken)
{
    m_sheet = sheet;
    setAccessibleName(tr("Preview: %1").arg(sheet.title));
    setAccessibleDescription(spoken);
    fit();
    m_pages->update();
}

void SheetView::fit()
{
    const int width = std::min(viewport()->width(), em(widestEm));
    m_pages->resize(width, std::max(1, m_pages->heightFor(width)));
}

void SheetView::resizeEvent(QResizeEvent *event)
{
    QScrollArea::resizeEvent(event);
    fit();
}

} // namespace loopwright
