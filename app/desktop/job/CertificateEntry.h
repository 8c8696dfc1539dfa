#pragma once
// Signatures, paper, preview and issue of the certificate, or of the certificates of all lines at
// the premises. What was signed is kept as a draft until the certificate is issued.

#include "app/actions/CertificateSet.h"
#include "app/actions/Certificates.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/SignaturePad.h"
#include "app/print/Sheet.h"
#include "core/certificate/CertificateContent.h"

#include <QLabel>

class QPrinter;

namespace loopwright {

class SignList;

class CertificateEntry : public QWidget
{
    Q_OBJECT
public:
    CertificateEntry(JobSession &desk, const QString &panel, QWidget *parent = nullptr);

    void showOrder();
    QWidget *entry() const;

signals:
    void recorded();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    QWidget *signing();
    static std::vector<FieldSpec> asks(const std::vector<SetLine> &set);
    bool allLines() const;
    void showSet();
    void dressButtons();
    SignaturePad *unsignedPad() const;
    bool mayIssue();
    bool save();
    Signatures signatures() const;
    Paper paper() const;
    void showPreview();
    void placePages();
    void keepStrokes();
    std::optional<IssuedCertificate>
    issue(const std::function<Result<void>(const QByteArray &)> &deliver);
    std::optional<IssuedSet>
    issueSet(const std::function<Result<void>(const std::vector<SetFile> &)> &deliver);
    void issued(const QString &sentence, const QString &told);
    void print();
    void printSet(QPrinter &printer);

    JobSession &m_desk;
    QString m_part;
    std::vector<SetLine> m_set; ///< the lines at the premises, this one first
    Form *m_form;
    SignList *m_setLines;
    SignaturePad *m_installer;
    SignaturePad *m_customer;
    QPushButton *m_print;
    bool m_askedUnsigned = false; ///< that it would be issued unsigned was said
    QLabel *m_pages[2];
    QImage m_images[2];
    QString m_shown; ///< digest of what the preview shows
};

} // namespace loopwright
