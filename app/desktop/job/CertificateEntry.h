#pragma once
// Signatures, paper, preview and issue of the certificate, or of the certificates of all lines at
// the premises. What was signed is kept as a draft until the certificate is issued.

#include "app/actions/CertificateSet.h"
#include "app/actions/Certificates.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/SigningRow.h"
#include "app/print/Sheet.h"
#include "core/certificate/CertificateContent.h"

#include <QLabel>

namespace loopwright {

class SignList;

class CertificateEntry : public QWidget
{
    Q_OBJECT
public:
    CertificateEntry(JobSession &desk, const QString &panel, QWidget *parent = nullptr);

    void showOrder();
    QWidget *entry() const;
    /// The certificate that was issued last says what would be said now: a further issue is the
    /// same one.
    bool stands() const { return m_stands; }
    /// The first that nobody signed, on the paper or here; null if both did.
    QWidget *unsignedPad() const { return m_signing->emptyPad(); }
    /// Who has not signed the one that stands, and what signing does; empty if none stands or both
    /// signed.
    QString lacks() const;

signals:
    void recorded();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    bool countersigns() const;
    static std::vector<FieldSpec> asks(const std::vector<SetLine> &set);
    bool allLines() const;
    void showSet();
    void dressButtons();
    bool mayIssue();
    bool save();
    Signatures signatures() const;
    Paper paper() const;
    void showPreview();
    void placePages();
    QStringList cardOrders() const;
    Result<Sheet> cards(const QStringList &orders, Paper paper, const QString &folder) const;
    // Order and signatures are filled in.
    // `where`: a sentence that says where the paper is.
    bool issue(IssueRequest request, const QString &where = {});
    bool issueSet(SetRequest request, const QString &where = {});
    void notIssued(const Error &error);
    /// `doubt`: of a copy that stands no longer; else empty.
    void issued(const QString &sentence, const QString &told, const QString &doubt);
    void print();

    JobSession &m_desk;
    QString m_part;
    std::vector<SetLine> m_set; ///< the lines at the premises, this one first
    Form *m_form;
    SignList *m_setLines;
    SigningRow *m_signing;
    SignLine *m_lacks; ///< who has not signed what stands
    bool m_stands = false;
    QPushButton *m_print;
    bool m_askedUnsigned = false; ///< that it would be issued unsigned was said
    QLabel *m_pages[2];
    QImage m_images[2];
};

} // namespace loopwright
