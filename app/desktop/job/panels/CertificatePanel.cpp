// The certificate: both signatures, the preview, save as PDF and print, the copies that were
// issued; the slip that stays behind; and the completion of the order.

#include "app/actions/Certificates.h"
#include "app/actions/Troubles.h"
#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/OutAgain.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/CertificateEntry.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/SlipEntry.h"
#include "app/desktop/job/StepFields.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

class CertificatePanel : public StationPanel
{
public:
    CertificatePanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_entry(new CertificateEntry(desk, key()))
        , m_slip(new SlipEntry(desk, key() + ".slip"))
        , m_issued(new SignList(key() + ".issued", tr("Issued")))
        , m_complete(
              makeButton(tr("Complete the order"), key() + ".complete", [this] { complete(); }))
        , m_told(new SignLine)
        , m_closing(makeFactForm(desk, key() + ".closing", tr("Close the trouble"),
                                 {{"found", tr("What was wrong"), {}, Answer::Text, {}, 2},
                                  {"cleared",
                                   tr("What was done about it"),
                                   tr("at least two words"),
                                   Answer::Text,
                                   {},
                                   2},
                                  {"cause",
                                   tr("What it was"),
                                   {},
                                   Answer::Choice,
                                   keyedOptions(allWords<ClearedWhat>())}},
                                 {}))
    {
        body()->addWidget(m_entry);
        body()->addWidget(m_slip);
        body()->addWidget(m_issued);
        m_issued->setStill();
        body()->addWidget(m_complete, 0, Qt::AlignLeft);
        body()->addWidget(m_closing);
        m_closing->setConfirm([this] { return close(); });
        body()->addWidget(m_told);
        m_told->hide();
        m_complete->setAutoDefault(true);
        whenThemed(m_complete, [this] {
            m_complete->setMinimumHeight(em(2.5));
            m_complete->setFont(sized(1, QFont::DemiBold));
        });
        connect(m_entry, &CertificateEntry::recorded, this, [this] { emit recorded({}); });
    }

    QWidget *entry(const QString &) override
    {
        if (isRepair())
            return m_closing->firstEmpty();
        if (!needsCertificate() || !isAccepted())
            return m_complete;
        if (!m_entry->stands())
            return m_entry->entry();
        // The pad that is left unsigned with intent is not asked for twice in a row.
        QWidget *pad = m_entry->unsignedPad();
        return pad && !pad->hasFocus() && !lacks().isEmpty() ? pad : m_complete;
    }

    void showOrder() override
    {
        m_entry->setVisible(needsCertificate() && isAccepted());
        m_entry->showOrder(); // first: the standing follows from it
        StationPanel::showOrder();
        m_slip->showOrder();
        const bool open = desk().view().status == OrderStatus::Open;
        m_closing->setVisible(isRepair() && open);
        m_complete->setVisible(!isRepair());
        m_complete->setEnabled(desk().view().status == OrderStatus::Open && isAccepted());
        std::vector<SignItem> issued;
        for (const CertificateView &each : desk().view().certificates)
            issued.push_back(
                {each.number,
                 Status::Note,
                 {},
                 tr("Certificate %1, code %2, issued %3%4; %5")
                     .arg(each.number, each.code, dayText(each.issuedAt.localDate()),
                          each.copies == 0   ? QString()
                          : each.copies == 1 ? tr(", 1 further issue")
                                             : tr(", %1 further issues").arg(each.copies),
                          signersOf(each))});
        m_issued->setItems(std::move(issued));
    }

protected:
    std::pair<Status, QString> standing() const override
    {
        if (desk().view().status != OrderStatus::Open)
            return {Status::Done,
                    joined(tr("The order is %1.").arg(statusName(desk().view().status)), lacks())};
        if (isRepair())
            return {Status::Open,
                    isAccepted() ? tr("The line is good again. Close the trouble.")
                                 : tr("It can be closed as it is; what is not shown is told.")};
        if (!isAccepted())
            return {Status::Open, tr("It can be issued when the order is accepted.")};
        if (!needsCertificate())
            return {Status::Open, tr("This order needs no certificate; complete it.")};
        if (desk().view().certificates.empty())
            return {Status::Open, tr("Let both sign, look at it, issue it.")};
        if (!m_entry->stands())
            return {Status::Open,
                    tr("Issued, and the evidence is another one since: issue it anew; "
                       "the new one takes the place of that one.")};
        return lacks().isEmpty()
                   ? std::pair(Status::Done, tr("Issued. Complete the order; a further issue is a "
                                                "copy with the same number."))
                   : std::pair(Status::Doubtful,
                               joined(tr("Issued. Complete the order."), lacks()));
    }

private:
    static QString joined(const QString &one, const QString &other)
    {
        return other.isEmpty() ? one : one + ' ' + other;
    }

    static QString signersOf(const CertificateView &certificate)
    {
        QStringList names;
        for (const Signature &each : certificate.signatures)
            names << each.name;
        return names.isEmpty() ? tr("not signed") : tr("signed by %1").arg(names.join(", "));
    }

    /// Who has not signed the certificate that stands, and what to do; empty if both did.
    QString lacks() const
    {
        return desk().view().status == OrderStatus::Cancelled ? QString() : m_entry->lacks();
    }

    bool isRepair() const { return desk().order().type == OrderType::Repair; }

    bool close()
    {
        const QJsonObject values = m_closing->values();
        const auto cause = fromText<ClearedWhat>(values.value("cause").toString());
        if (!cause) {
            m_closing->tell({Severity::Error,
                             "cause",
                             Text::verbatim(tr("Choose what it was.")),
                             {},
                             "cause",
                             0});
            return false;
        }
        const auto closed =
            closeTrouble(desk().records(), {desk().order().number, values.value("found").toString(),
                                            values.value("cleared").toString(), *cause});
        if (!closed) {
            tell(*m_closing, closed.error());
            return false;
        }
        m_closing->clear();
        m_closing->keep();
        desk().wasChanged(
            closed->lacks.isEmpty()
                ? tr("The trouble is closed, and the line is good.")
                : tr("The trouble is closed. Not shown: %1")
                      .arg(localizedSentences(closed->lacks).join(QStringLiteral(" "))));
        emit recorded({});
        return true;
    }

    bool isAccepted() const { return loopwright::isAccepted(desk().decision().outcome); }

    bool needsCertificate() const { return getsCertificate(desk().view().input.scope); }

    void complete()
    {
        const QString &number = desk().order().number;
        const ChangingOut changing(desk().records(), m_outAgain.isAgain(number));
        if (const auto done = completeOrder(desk().records(), number); !done) {
            m_told->tell(Status::Failed, m_outAgain.refused(done.error(), number));
            return;
        }
        m_told->hide();
        desk().wasChanged(tr("The order is completed: its numbers are working now."));
        emit recorded({});
    }

    CertificateEntry *m_entry;
    SlipEntry *m_slip;
    SignList *m_issued;
    QPushButton *m_complete;
    SignLine *m_told;
    OutAgain m_outAgain;
    Form *m_closing; ///< of a repair
};

} // namespace

StationPanel *makeCertificatePanel(const PanelInfo &info, JobSession &desk)
{
    return new CertificatePanel(info, desk);
}

} // namespace loopwright
