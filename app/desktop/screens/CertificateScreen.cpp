#include "app/desktop/screens/CertificateScreen.h"

#include "app/actions/InFile.h"
#include "app/desktop/Files.h"
#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/form/Form.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileDialog>
#include <QFileInfo>

namespace loopwright {

namespace {

Status signOf(const CertificateCheck &check)
{
    switch (check.verdict) {
    case CertificateVerdict::Genuine:
        return Status::Done;
    case CertificateVerdict::Superseded:
    case CertificateVerdict::Unknown:
        return Status::Doubtful;
    case CertificateVerdict::Altered:
        break;
    }
    return Status::Failed;
}

QString verdictText(const CertificateCheck &check)
{
    switch (check.verdict) {
    case CertificateVerdict::Genuine:
        return CertificateScreen::tr("Genuine. %1").arg(localizedSentence(check.reason));
    case CertificateVerdict::Superseded:
        return CertificateScreen::tr("Superseded. %1").arg(localizedSentence(check.reason));
    case CertificateVerdict::Unknown:
        return CertificateScreen::tr("Not known. %1").arg(localizedSentence(check.reason));
    case CertificateVerdict::Altered:
        break;
    }
    return CertificateScreen::tr("Altered. %1").arg(localizedSentence(check.reason));
}

/// They stand beside it and unmake nothing.
QString troublesText(const CertificateCheck &check)
{
    QString text;
    for (const Trouble &trouble : check.troubles)
        text += ' ' + CertificateScreen::tr("Trouble since then: %1")
                          .arg(localizedSentence(trouble.sentence()));
    return text;
}

std::vector<TextRow> rowsOf(const CertificateCheck &check)
{
    std::vector<TextRow> rows;
    const auto add = [&rows](const QString &what, const QString &value) {
        rows.push_back({{what, value}, Status::None, {}, false});
    };
    const CertificateClaims &claims = *check.claims;
    add(CertificateScreen::tr("Number"), claims.number);
    add(CertificateScreen::tr("Date"), dayText(claims.date));
    add(CertificateScreen::tr("Outcome"), outcomeName(claims.outcome));
    add(CertificateScreen::tr("Circuit"), claims.circuit);
    add(CertificateScreen::tr("Numbers"), claims.numbers.join(QStringLiteral(", ")));
    add(CertificateScreen::tr("Exceptions"), claims.exceptions.isEmpty()
                                                 ? CertificateScreen::tr("none")
                                                 : claims.exceptions.join(QStringLiteral(", ")));
    add(CertificateScreen::tr("Digest of its record"), claims.digest);
    add(CertificateScreen::tr("Signed by"), localizedSentence(check.signedBy));
    return rows;
}

} // namespace

CertificateScreen::CertificateScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_worker(workplace.questions())
    , m_file(new SignLine)
    , m_answer(makeAnswer())
{
    setAcceptDrops(true);
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(makeHeading(tr("Check a certificate"), 1.5));
    layout->addWidget(makeAsking());
    layout->addWidget(m_answer, 1);
    layout->addStretch(0);
    layout->setAlignment(Qt::AlignTop);
    m_answer->hide();
}

QWidget *CertificateScreen::makeAsking()
{
    m_file->setObjectName(QStringLiteral("certificate.file"));
    m_file->show(Status::None,
                 tr("Drop the file of a certificate here, or a text with what its square says."));
    auto *choose = makeButton(tr("Choose a file…"), QStringLiteral("certificate.choose"), [this] {
        const QString path = QFileDialog::getOpenFileName(
            this, tr("Check a certificate"), {},
            tr("Certificates (*.pdf);;Text of a square (*.txt);;All files (*)"));
        if (!path.isEmpty())
            openFile(path);
    });
    FormUse use;
    use.confirm = [this] { return askByNumber(); };
    m_form = new Form(QStringLiteral("certificate.paper"), tr("Check"),
                      {{tr("Or by what stands on the paper"),
                        {{"number", tr("Number"), tr("at the top of page 1"), Answer::Identifier},
                         {"code", tr("Code"), tr("beside it"), Answer::Identifier}}}},
                      use, FormShape::Line, 18);
    auto *asking = new QWidget;
    auto *column = new QVBoxLayout(asking);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_file);
    column->addWidget(choose, 0, Qt::AlignLeft);
    column->addWidget(m_form);
    whenThemed(asking, [choose, column] {
        choose->setMinimumHeight(em(2.3));
        column->setSpacing(em(0.6));
    });
    return asking;
}

QWidget *CertificateScreen::makeAnswer()
{
    m_verdict = new SignLine;
    m_verdict->setObjectName(QStringLiteral("certificate.verdict"));
    m_verdict->setSelectable(true);
    m_standing = new SignLine;
    m_standing->setObjectName(QStringLiteral("certificate.standing"));
    m_standing->setSelectable(true);
    m_claims =
        new TextTable({tr("What was certified"), tr("Hold it beside the paper")}, -1, {1}, this);
    m_table = new Table(QStringLiteral("certificate.claims"), tr("What was certified"));
    m_table->setModel(m_claims);
    m_table->setColumnEms({14, 60});
    m_open = makeButton(tr("Open the order"), QStringLiteral("certificate.open"),
                        [this] { emit openOrder(m_order); });
    auto *answer = new QWidget;
    auto *column = new QVBoxLayout(answer);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_verdict);
    column->addWidget(m_standing);
    column->addWidget(m_table, 1);
    column->addWidget(m_open, 0, Qt::AlignLeft);
    whenThemed(answer, [this, column] {
        column->setSpacing(em(0.6));
        m_table->setMinimumHeight(em(15));
        m_open->setMinimumHeight(em(2.3));
    });
    return answer;
}

void CertificateScreen::refresh()
{
    if (m_last && !m_worker.isBusy())
        ask(m_last);
}

void CertificateScreen::takeFocus()
{
    m_form->firstEmpty()->setFocus();
}

void CertificateScreen::openFile(const QString &path)
{
    m_file->show(Status::None, QFileInfo(path).fileName());
    forget();
    const auto bytes = readFile(path, largestCertificate);
    if (!bytes)
        tell(failure(bytes.error()));
    else
        ask([file = *bytes](Records &records) { return verifyCertificateFile(records, file); });
}

bool CertificateScreen::askByNumber()
{
    const QJsonObject typed = m_form->typed();
    const QString number = typed.value("number").toString(), code = typed.value("code").toString();
    if (number.isEmpty() || code.isEmpty()) {
        m_form->tell(Status::Failed, tr("Both are needed: the number and the code beside it."));
        return false;
    }
    m_file->show(Status::None,
                 tr("Drop the file of a certificate here, or a text with what its square says."));
    forget();
    ask([number, code](Records &records) {
        return verifyCertificateNumber(records, number, code);
    });
    return true;
}

/// What is asked now is another paper: the answer on the last one goes.
void CertificateScreen::forget()
{
    m_answer->hide();
    m_verdict->forgetTold();
    m_standing->forgetTold();
}

void CertificateScreen::ask(Question question)
{
    m_last = std::move(question);
    m_worker.supersede();
    m_worker.ask<CertificateCheck>(
        [ask = m_last](Records &records, const Progress &) { return ask(records); },
        [this](const Result<CertificateCheck> &check) { tell(check); });
}

void CertificateScreen::tell(const Result<CertificateCheck> &check)
{
    m_answer->show();
    m_order = check ? check->order : QString();
    m_open->setVisible(!m_order.isEmpty());
    m_table->setVisible(check && check->claims);
    m_standing->setVisible(check.has_value());
    if (!check) {
        m_verdict->tellIfNew(Status::Failed, localized(check.error()));
        return;
    }
    m_verdict->tellIfNew(signOf(*check), verdictText(*check));
    tellStanding(*check);
    if (check->claims)
        m_claims->show(rowsOf(*check));
}

void CertificateScreen::tellStanding(const CertificateCheck &check)
{
    if (!check.stands)
        m_standing->tellIfNew(Status::Open, localizedSentence(check.because));
    else if (*check.stands)
        m_standing->tellIfNew(Status::Done,
                              tr("What was certified still holds.") + troublesText(check));
    else
        m_standing->tellIfNew(Status::Failed,
                              tr("It holds no longer. %1").arg(localizedSentence(check.because)));
}

void CertificateScreen::dragEnterEvent(QDragEnterEvent *event)
{
    if (!droppedFile(event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void CertificateScreen::dropEvent(QDropEvent *event)
{
    openFile(droppedFile(event->mimeData()));
    event->acceptProposedAction();
}

} // namespace loopwright
