#pragma once
// Signatures, paper, preview and issue of the certificate. What was signed is kept as a draft until
// the certificate is issued.

#include "app/actions/Certificates.h"
#include "app/desktop/job/EntryForm.h"
#include "app/desktop/job/SignaturePad.h"
#include "app/print/Sheet.h"
#include "core/certificate/CertificateContent.h"

#include <QLabel>

namespace loopwright {

class CertificateEntry : public QWidget
{
    Q_OBJECT
public:
    CertificateEntry(JobDesk &desk, const QString &panel, QWidget *parent = nullptr);

    void showOrder();
    QWidget *entry() const { return m_form->firstEmpty(); }

signals:
    void recorded();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    QWidget *signing();
    Signatures signatures() const;
    Paper paper() const;
    void showPreview();
    void placePages();
    void keepStrokes();
    std::optional<IssuedCertificate>
    issue(const std::function<Result<void>(const QByteArray &)> &deliver);
    void print();

    JobDesk &m_desk;
    QString m_part;
    EntryForm *m_form;
    SignaturePad *m_installer;
    SignaturePad *m_customer;
    QPushButton *m_print;
    QLabel *m_pages[2];
    QImage m_images[2];
    QString m_shown; ///< digest of what the preview shows
};

} // namespace loopwright
