#include "app/desktop/screens/HandoffScreen.h"

#include "app/actions/HandOn.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/Theme.h"
#include "app/desktop/form/Form.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SheetView.h"
#include "app/print/HandoffDocument.h"
#include "core/base/PaperTime.h"

#include <QSplitter>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace loopwright {

namespace {

QString referralText(const HandoffReferral &referred)
{
    QStringList parts{HandoffScreen::tr("to %1").arg(referred.to)};
    if (!referred.reference.isEmpty())
        parts << HandoffScreen::tr("reference %1").arg(referred.reference);
    if (!referred.waitingOn.isEmpty())
        parts << HandoffScreen::tr("waits on %1").arg(localizedWord(referred.waitingOn));
    parts << paperTime(referred.at);
    if (!referred.by.isEmpty())
        parts << HandoffScreen::tr("by %1").arg(referred.by);
    return parts.join(QStringLiteral(", "));
}

/// What is not known leaves no comma behind.
QString commaJoined(QStringList parts)
{
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

/// A line each, e.g. "Safety: 50 V (at most 54 V), met".
QString readingsText(const Handoff &handoff)
{
    QStringList readings;
    for (const HandoffReading &reading : handoff.readings) {
        const QString limit = localizedSentence(reading.limit);
        const QString value =
            localizedSentence(reading.value) + (limit.isEmpty() ? limit : " (" + limit + ')');
        readings << QString("%1: %2").arg(
            localizedSentence(reading.name),
            commaJoined({value.trimmed(), localizedSentence(reading.word())}));
    }
    return readings.join(u'\n');
}

std::vector<KeyedOption> waitingOptions()
{
    std::vector<KeyedOption> options{{}};
    for (const auto &[word, code] : EnumCodes<WaitingOn>::table)
        options.push_back(
            {{}, QString::fromLatin1(code), localizedWord(QString::fromLatin1(code))});
    return options;
}

} // namespace

HandoffScreen::HandoffScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_worker(workplace.questions())
    , m_heading(makeHeading({}, 1.5))
    , m_referral(makeReferral())
    , m_words(new QTextBrowser)
    , m_print(makeButton(tr("Print…"), QStringLiteral("handoff.print"), [this] { print(); }))
    , m_save(makeButton(tr("Save as PDF…"), QStringLiteral("handoff.save"), [this] { save(); }))
    , m_view(new SheetView)
{
    m_words->setObjectName(QStringLiteral("handoff.words"));
    m_words->setAccessibleName(tr("To read aloud"));
    m_words->setFrameShape(QFrame::NoFrame);
    m_words->setOpenLinks(false);
    m_words->setTabChangesFocus(true);
    auto *splitter = new QSplitter;
    splitter->addWidget(m_words);
    splitter->addWidget(m_view);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    splitter->setChildrenCollapsible(false);
    splitter->setSizes({550, 450}); // shares, not pixels

    printByKey(this, m_print);
    QWidget *buttons = makeButtonRow(
        {m_print, m_save, makeButton(tr("Back to the job"), QStringLiteral("handoff.job"), [this] {
             emit openOrder(m_order);
         })});
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(m_heading);
    layout->addWidget(buttons);
    layout->addWidget(m_referral);
    layout->addWidget(splitter, 1);
    whenThemed(buttons, [this] {
        m_words->document()->setDocumentMargin(em(1.2));
        m_words->setMinimumWidth(em(18));
        m_view->setMinimumWidth(em(14));
        showWords();
    });
}

/// The same fields that the command line has.
Form *HandoffScreen::makeReferral()
{
    FieldSpec to{QStringLiteral("to"), tr("Handed on to")};
    to.answer = Answer::Text;
    to.hint = tr("whoever takes it over");
    FieldSpec reference{QStringLiteral("reference"), tr("Reference")};
    reference.answer = Answer::Text;
    reference.hint = tr("the number that they gave it");
    reference.optional = true;
    FieldSpec waiting{QStringLiteral("waiting_on"), tr("Waits on")};
    waiting.answer = Answer::List;
    waiting.options = waitingOptions();
    waiting.hint = tr("may be left empty");
    waiting.optional = true;
    FormUse use;
    use.now = [this] { return records().now(); };
    use.confirm = [this] { return recordReferral(); };
    return new Form(QStringLiteral("handoff.refer"), tr("Record that it is handed on"),
                    {{{}, {to, reference, waiting}}}, use, FormShape::Line, 12);
}

bool HandoffScreen::recordReferral()
{
    const QJsonObject values = m_referral->values();
    ReferredFact referred{values.value("to").toString().trimmed(), {}, {}};
    if (const QString reference = values.value("reference").toString().trimmed();
        !reference.isEmpty())
        referred.reference = reference;
    referred.waitingOn = fromText<WaitingOn>(values.value("waiting_on").toString());
    if (referred.to.isEmpty()) {
        m_referral->tell({Severity::Error,
                          "empty",
                          Text::verbatim(tr("say to whom the job is handed on")),
                          {},
                          QStringLiteral("to"),
                          0});
        return false;
    }
    if (const auto done = refer(records(), m_order, referred); !done) {
        m_referral->tell(Status::Failed, localized(done.error()));
        return false;
    }
    m_referral->clear();
    emit said(tr("Recorded: handed on to %1.").arg(referred.to));
    refresh();
    return true;
}

QString HandoffScreen::title() const
{
    return m_order.isEmpty() ? tr("Hand on") : tr("Hand on order %1").arg(m_order);
}

void HandoffScreen::open(const QString &order)
{
    if (m_order != order)
        m_referral->clear();
    m_order = order;
    for (QPushButton *each : {m_print, m_save}) // until it is read: else there is another's page
        each->setEnabled(false);
    m_heading->setText(title());
    emit titleChanged();
    emit placeChanged();
}

void HandoffScreen::refresh()
{
    if (m_order.isEmpty())
        return;
    m_worker.supersede();
    m_worker.ask<Handoff>(
        [order = m_order](Records &records, const Progress &) { return handoffOf(records, order); },
        [this](const Result<Handoff> &handoff) { showHandoff(handoff); });
}

void HandoffScreen::showHandoff(const Result<Handoff> &handoff)
{
    m_handoff = handoff.value_or(Handoff());
    m_sheet = {};
    m_said.clear();
    if (handoff) {
        m_sheet = handoffPage(m_handoff, localPaper());
        sayHandoff(*handoff);
    } else {
        addWords({}, localized(handoff.error()));
    }
    showWords();
    m_view->show(m_sheet, handoff ? localizedSentence(handoff->reason) : QString());
    m_referral->setEnabled(handoff.has_value());
    m_print->setEnabled(handoff.has_value());
    m_save->setEnabled(handoff.has_value());
}

void HandoffScreen::addWords(const QString &head, const QString &text)
{
    if (!text.isEmpty())
        m_said.push_back({head, text});
}

void HandoffScreen::addSaid(const QString &head, const QString &english)
{
    addWords(head, localizedSentence(english));
}

void HandoffScreen::showWords()
{
    QString page;
    for (const Words &each : m_said) {
        const QColor ink = each.isHazard ? colours().bad : palette().color(QPalette::Text);
        page += QString("<div style=\"%7\"><p style=\"margin:0; color:%1; font-size:%2px\">%3</p>"
                        "<p style=\"margin:0 0 %4px 0; color:%8; font-size:%5px\">%6</p></div>")
                    .arg((each.isHazard ? ink : colours().muted).name())
                    .arg(QFontInfo(sized(each.isHazard ? 1.4 : 0.95)).pixelSize())
                    .arg(each.head.toHtmlEscaped())
                    .arg(em(0.9))
                    .arg(QFontInfo(sized(each.isHazard ? 2 : 1.25)).pixelSize())
                    .arg(each.text.toHtmlEscaped().replace(u'\n', QStringLiteral("<br>")),
                         each.isHazard ? QString("font-weight:700; background-color:%1")
                                             .arg(colours().badGround.name())
                                       : QString(),
                         ink.name());
    }
    m_words->setHtml(page);
}

void HandoffScreen::sayHandoff(const Handoff &handoff)
{
    for (const HandoffHazard &hazard : handoff.hazards)
        m_said.push_back(
            {tr("HAZARD: do not touch the pair"),
             localizedSentences(hazard.volts).join(u'\n') + u'\n' + paperTime(hazard.at), true});
    if (const auto &referred = handoff.referred)
        addWords(tr("Handed on"), referralText(*referred));
    if (handoff.criterion.isEmpty())
        addWords(tr("State"), tr("By these records nothing is open on this order."));
    addSaid(tr("Call"), handoff.call);
    addWords(tr("Telephone"), handoff.telephone);
    addSaid(tr("Whose part"), handoff.part);
    addSaid(handoff.isMissing ? tr("What is missing") : tr("What failed"), handoff.whatFailed());
    addSaid(tr("What was seen"), handoff.reason);
    addSaid(tr("Cause"), handoff.cause);
    addSaid(tr("Cause came"), handoff.causeWhere);
    addSaid(tr("What it means"), handoff.meaning);
    addSaid(tr("Check, first things first"), handoff.check.join(u'\n'));
    addSaid(tr("Next on this job"), handoff.next);
    addWords(tr("Readings"), readingsText(handoff));
    addSaid(tr("Done already"), handoff.done.join(u'\n'));
    addSaid(tr("Failed too"), handoff.alsoFailed.join(u'\n'));
    addSaid(tr("Only not tried yet"), handoff.notTried.join(u'\n'));
    addWords(
        tr("The line"),
        commaJoined(
            {tr("Order %1, circuit %2, pair %3").arg(handoff.order, handoff.circuit, handoff.pair),
             handoff.office, handoff.variant}));
    addWords(tr("The customer"),
             handoff.customer + "\n" + handoff.premises +
                 (handoff.contact.isEmpty() ? QString() : "\n" + handoff.contact));
}

void HandoffScreen::takeFocus()
{
    m_print->setFocus();
}

void HandoffScreen::print()
{
    const auto printed = printSheet(
        this, [this](Paper paper) -> Result<Sheet> { return handoffPage(m_handoff, paper); });
    if (!printed)
        emit said(localized(printed.error()));
    else if (*printed)
        emit said(tr("Sent to the printer."));
}

void HandoffScreen::save()
{
    const auto saved =
        saveSheet(this, m_sheet, QStringLiteral("handoff-%1.pdf").arg(m_order), records().now());
    if (!saved)
        emit said(localized(saved.error()));
    else if (!saved->isEmpty())
        emit said(tr("Saved as %1.").arg(*saved));
}

} // namespace loopwright
