#pragma once
// Is this certificate genuine, and does it still stand? A file is dropped or chosen, or the number
// and code are typed from the paper; the answer says what was certified, to be held beside it.

#include "app/actions/VerifyCertificate.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"

class QPushButton;

namespace loopwright {

class Form;
class SignLine;
class Table;
class TextTable;

class CertificateScreen : public Screen
{
    Q_OBJECT
public:
    explicit CertificateScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("certificate"); }
    QString title() const override { return tr("Certificates"); }
    /// What was told may be untrue by now: it is asked anew.
    void refresh() override;
    /// Of a file.
    void open(const QString &path) override { openFile(path); }
    void takeFocus() override;
    void openFile(const QString &path);

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    using Question = std::function<Result<CertificateCheck>(Records &)>;

    QWidget *makeAsking();
    QWidget *makeAnswer();
    bool askByNumber();
    void ask(Question question);
    void forget();
    void tell(const Result<CertificateCheck> &check);
    void tellStanding(const CertificateCheck &check);

    Asker m_worker;
    Question m_last; ///< none yet
    QString m_order; ///< of the certificate that is shown
    Form *m_form;
    SignLine *m_file;
    QWidget *m_answer;
    SignLine *m_verdict, *m_standing;
    TextTable *m_claims;
    Table *m_table;
    QPushButton *m_open;
};

} // namespace loopwright
