#pragma once
// The first two pages of a certificate as it would be issued now. They are painted beside the
// window's thread; until then those before stay.

#include "app/actions/Orders.h"
#include "app/desktop/Lanes.h"
#include "app/print/Paper.h"
#include "core/certificate/CertificateContent.h"

#include <QImage>
#include <QWidget>

#include <array>

class QLabel;

namespace loopwright {

class CertificatePreview : public QWidget
{
    Q_OBJECT
public:
    struct Wish
    {
        QString order;
        Signatures drawn;
        Paper paper = {};
        std::optional<CertificateView> stands; ///< the certificate that was issued last
        bool countersigns = false;             ///< somebody signs who did not sign that one
    };
    using Pages = std::array<QImage, 2>;

    explicit CertificatePreview(Lane &lane, QWidget *parent = nullptr);

    void show(const Wish &wish);

signals:
    void troubled(const loopwright::Error &error);

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void place();

    Asker m_painter;
    std::array<QLabel *, 2> m_labels;
    Pages m_pages;
};

} // namespace loopwright
