#include "app/desktop/job/CertificateEntry.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"
#include "app/print/CertificateDocument.h"

#include <QDir>
#include <QHBoxLayout>
#include <QStandardPaths>

namespace loopwright {

namespace {

/// Fine enough that letters keep the widths that they have on paper, and for a scaled screen.
constexpr double previewDotsPerInch = 220;

/// In the person's documents folder.
QString proposedPath(const QString &fileName)
{
    return QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
        .filePath(fileName);
}

} // namespace

CertificateEntry::CertificateEntry(JobSession &desk, const QString &panel, QWidget *parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_part(panel)
    , m_form(makeFactForm(desk, panel, tr("Issue it and save the PDF"), asks(m_set), {}))
    , m_setLines(new SignList(panel + ".set", tr("Lines of the set")))
    , m_signing(new SigningRow(panel + ".sign"))
    , m_lacks(new SignLine)
    , m_print(makeButton(tr("Issue it and print…"), panel + ".print", [this] { print(); }))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_signing);
    layout->addWidget(m_lacks);
    layout->addWidget(m_form);
    layout->addWidget(m_print, 0, Qt::AlignLeft);
    offerPrint(this, m_print);
    layout->addWidget(m_setLines);
    m_setLines->setStill();
    auto *pages = new QHBoxLayout;
    for (QLabel *&page : m_pages) {
        page = new QLabel;
        page->setFrameShape(QFrame::Box); // white paper on a white page has no edge of its own
        page->setAlignment(Qt::AlignTop | Qt::AlignLeft);
        page->setMinimumWidth(1); // it follows the width of the part, and does not hold it
        pages->addWidget(page);
    }
    m_pages[0]->setAccessibleName(tr("Preview, first page"));
    m_pages[1]->setAccessibleName(tr("Preview, second page"));
    pages->addStretch(1);
    layout->addLayout(pages);
    m_form->setConfirm([this] { return save(); });
    connect(m_form, &Form::edited, this, [this] {
        dressButtons();
        showSet();
        showPreview();
    });
    connect(m_signing, &SigningRow::edited, this, [this] {
        m_desk.keepDraft(m_part + ".strokes", m_signing->strokes());
        dressButtons();
        showPreview();
    });
    m_signing->setStrokes(m_desk.draft(m_part + ".strokes"));
}

std::vector<FieldSpec> CertificateEntry::asks(const std::vector<SetLine> &set)
{
    const auto all = [](const QJsonObject &typed) {
        return typed.value("lines").toString() == u"all";
    };
    return {{"installer_name", tr("Signs for the installer"), {}, Answer::Text},
            {"customer_name", tr("Signs for the customer"), {}, Answer::Text},
            {"paper",
             tr("Paper"),
             {},
             Answer::Choice,
             {{u'A', toText(Paper::A4), tr("A4")}, {u'L', toText(Paper::Letter), tr("US Letter")}},
             1},
            {"card",
             tr("Settings card with it"),
             tr("printed behind it; saved beside it"),
             Answer::YesNo,
             {},
             1,
             {},
             {},
             false,
             QStringLiteral("false"),
             {},
             true},
            {"lines",
             tr("Certificates of"),
             {},
             Answer::Choice,
             {{u'T', "this", tr("This line")}, {u'P', "all", tr("All lines at these premises")}},
             0,
             [&set](const QJsonObject &) { return set.size() > 1; }},
            {"path",
             tr("PDF"),
             tr("where it is saved"),
             Answer::PdfPath,
             {},
             0,
             [&set, all](const QJsonObject &typed) { return set.size() < 2 || !all(typed); }},
            {"folder",
             tr("Folder"),
             tr("a file for each line, and a cover that lists them all"),
             Answer::FolderPath,
             {},
             0,
             [&set, all](const QJsonObject &typed) { return set.size() > 1 && all(typed); }}};
}

bool CertificateEntry::allLines() const
{
    return m_set.size() > 1 && m_form->typed().value("lines").toString() == u"all";
}

void CertificateEntry::showSet()
{
    std::vector<SignItem> items;
    for (const SetLine &line : m_set) {
        if (!allLines())
            break;
        const QString kind = kindName(line.kind);
        items.push_back({line.order,
                         line.mayHave ? Status::Done : Status::Open,
                         {},
                         line.mayHave
                             ? tr("%1, %2: its certificate is in the set").arg(line.order, kind)
                             : tr("%1, %2, at %3: only on the cover. %4")
                                   .arg(line.order, kind, localizedWord(stageName(line.stage)),
                                        localizedSentence(line.why))});
    }
    m_setLines->setItems(std::move(items));
}

void CertificateEntry::dressButtons()
{
    if (allLines()) {
        m_form->button()->setText(tr("Issue the set and save it"));
        m_print->setText(tr("Issue the set and print…"));
        return;
    }
    m_form->button()->setText(!m_stands        ? tr("Issue it and save the PDF")
                              : countersigns() ? tr("Issue it signed and save the PDF")
                                               : tr("Save a copy as PDF"));
    m_print->setText(!m_stands        ? tr("Issue it and print…")
                     : countersigns() ? tr("Issue it signed and print…")
                                      : tr("Print a copy…"));
}

QString CertificateEntry::lacks() const
{
    const QString who = m_signing->whoLacks();
    return m_stands && !who.isEmpty()
               ? tr("Not signed by %1: signing makes a further issue of the same certificate.")
                     .arg(who)
               : QString();
}

/// Somebody signs here who did not sign the certificate that stands.
bool CertificateEntry::countersigns() const
{
    return m_stands && m_signing->isDrawn();
}

QWidget *CertificateEntry::entry() const
{
    QWidget *pad = unsignedPad();
    return pad ? pad : m_form->firstEmpty();
}

/// Two slips of Enter issue nothing unsigned: it is asked once, and the hand is led to the pen.
bool CertificateEntry::mayIssue()
{
    QWidget *pad = m_stands ? nullptr : unsignedPad();
    if (!pad || m_askedUnsigned)
        return true;
    m_askedUnsigned = true;
    m_form->tell(Status::Doubtful,
                 tr("It is not signed yet: %1. Sign it, or issue it once more to leave it "
                    "unsigned; the paper then says so, and can be signed later as a further issue.")
                     .arg(pad->accessibleName()));
    pad->setFocus(Qt::OtherFocusReason);
    return false;
}

Paper CertificateEntry::paper() const
{
    return fromText<Paper>(m_form->typed().value("paper").toString()).value_or(localPaper());
}

Signatures CertificateEntry::signatures() const
{
    const QJsonObject typed = m_form->typed();
    return m_signing->drawn({{"installer", typed.value("installer_name").toString()},
                             {"customer", typed.value("customer_name").toString()}},
                            m_desk.now());
}

void CertificateEntry::showOrder()
{
    const OrderView &view = m_desk.view();
    const QString &number = view.order.number;
    m_form->propose(
        {{"installer_name", view.installerName.isEmpty() ? m_desk.installer() : view.installerName},
         {"customer_name", view.order.contact.isEmpty() ? view.order.customer : view.order.contact},
         {"paper", toText(localPaper())},
         {"path", proposedPath(QString("certificate-%1.pdf").arg(number))},
         {"lines", QStringLiteral("this")},
         {"folder", proposedPath(QString("certificates-%1").arg(number))}});
    const auto set = linesOfSet(m_desk.records(), number);
    m_set = set.value_or(std::vector<SetLine>());
    const auto &issued = view.certificates;
    const auto now = issued.empty() ? Result<CertificateContent>(CertificateContent())
                                    : previewCertificate(m_desk.records(), number, {});
    m_stands = now && !now->number.isEmpty();
    m_form->showAsked();
    m_signing->setSigned(m_stands ? issued.back().signatures : Signatures(),
                         m_desk.now().localDate());
    m_lacks->show(Status::Doubtful, lacks());
    m_lacks->setVisible(!lacks().isEmpty());
    dressButtons();
    showSet();
    showPreview();
}

void CertificateEntry::showPreview()
{
    if (!isVisibleTo(parentWidget()))
        return;
    const auto content = previewCertificate(m_desk.records(), m_desk.order().number, signatures());
    if (!content) {
        m_form->tell(Status::Failed, localized(content.error()));
        return;
    }
    // A certificate that stands is shown as the issue that would follow.
    IssueMark mark{0, m_desk.now()};
    if (m_stands) {
        const CertificateView &issued = m_desk.view().certificates.back();
        mark = {issued.copies + 1, m_desk.now(), countersigns(), issued.signatures};
        const Signatures drawn = signatures();
        mark.later.insert(mark.later.end(), drawn.begin(), drawn.end());
        std::erase_if(mark.later, [&content](const Signature &each) {
            return signatureOf(content->signatures, each.role);
        });
    }
    const Sheet sheet = certificateSheet(*content, mark, paper());
    for (std::size_t page = 0; page < std::size(m_pages); ++page)
        m_images[page] =
            page < sheet.pages.size() ? sheet.image(page, previewDotsPerInch) : QImage();
    placePages();
}

void CertificateEntry::placePages()
{
    const int wide = std::min(em(42), (width() - em(2)) / 2);
    for (std::size_t page = 0; page < std::size(m_pages); ++page) {
        m_pages[page]->setVisible(!m_images[page].isNull() && wide > 0);
        if (m_pages[page]->isHidden())
            continue;
        // In the dots of the screen, so that it is as sharp as the rest of the window.
        QImage image =
            m_images[page].scaledToWidth(int(wide * devicePixelRatioF()), Qt::SmoothTransformation);
        image.setDevicePixelRatio(devicePixelRatioF());
        m_pages[page]->setPixmap(QPixmap::fromImage(image));
    }
}

void CertificateEntry::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    placePages();
}

} // namespace loopwright
