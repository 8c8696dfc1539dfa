#include "app/desktop/job/CertificatePreview.h"

#include "app/actions/Certificates.h"
#include "app/desktop/Theme.h"
#include "app/print/CertificateDocument.h"

#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>

namespace loopwright {

namespace {

using Pages = CertificatePreview::Pages;

/// Fine enough that letters keep the widths that they have on paper, and for a scaled screen.
constexpr double dotsPerInch = 220;

/// A certificate that stands is shown as the issue that would follow.
Result<Pages> paint(Records &records, const CertificatePreview::Wish &wish)
{
    LOOPWRIGHT_ASSIGN(const auto content, previewCertificate(records, wish.order, wish.drawn));
    IssueMark mark{0, records.now()};
    if (wish.stands) {
        mark = {wish.stands->copies + 1, records.now(), wish.countersigns, wish.stands->signatures};
        mark.later.insert(mark.later.end(), wish.drawn.begin(), wish.drawn.end());
        std::erase_if(mark.later, [&content](const Signature &each) {
            return signatureOf(content.signatures, each.role);
        });
    }
    const Sheet sheet = certificateSheet(content, mark, wish.paper);
    Pages pages;
    for (std::size_t page = 0; page < std::min(pages.size(), sheet.pages.size()); ++page)
        pages[page] = sheet.image(page, dotsPerInch);
    return pages;
}

} // namespace

CertificatePreview::CertificatePreview(Lane &lane, QWidget *parent)
    : QWidget(parent)
    , m_painter(lane)
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    for (QLabel *&label : m_labels) {
        label = new QLabel;
        label->setFrameShape(QFrame::Box); // white paper on a white page has no edge of its own
        label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
        label->setMinimumWidth(1); // it follows the width of the part, and does not hold it
        label->hide();
        layout->addWidget(label);
    }
    m_labels[0]->setAccessibleName(tr("Preview, first page"));
    m_labels[1]->setAccessibleName(tr("Preview, second page"));
    layout->addStretch(1);
}

void CertificatePreview::show(const Wish &wish)
{
    m_painter.supersede();
    m_painter.ask<Pages>(
        [wish](Records &records, const Progress &) { return paint(records, wish); },
        [this](const Result<Pages> &pages) {
            m_pages = pages.value_or(Pages());
            place();
            if (!pages)
                emit troubled(pages.error());
        });
}

void CertificatePreview::place()
{
    const int wide = std::min(em(42), (width() - em(2)) / 2);
    for (std::size_t page = 0; page < m_pages.size(); ++page) {
        m_labels[page]->setVisible(!m_pages[page].isNull() && wide > 0);
        if (m_labels[page]->isHidden())
            continue;
        // In the dots of the screen, so that it is as sharp as the rest of the window.
        QImage image =
            m_pages[page].scaledToWidth(int(wide * devicePixelRatioF()), Qt::SmoothTransformation);
        image.setDevicePixelRatio(devicePixelRatioF());
        m_labels[page]->setPixmap(QPixmap::fromImage(image));
    }
}

void CertificatePreview::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    place();
}

} // namespace loopwright
