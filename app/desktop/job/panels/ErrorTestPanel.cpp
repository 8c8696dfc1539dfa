// The error test as one sequence: the set-up with its call, ten quiet seconds, errors sent and
// seen, counters cleared, and the run with its clock. What was set up once fills the calls, the
// detector check and the run.

#include "app/desktop/Theme.h"
#include "app/desktop/job/DetectorEntry.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/RunEntry.h"
#include "app/desktop/job/TestSetup.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/turnup/Cause.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

class ErrorTestPanel : public StationPanel
{
public:
    ErrorTestPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_setup(makeFactForm(desk, key() + ".setup", tr("Go on to the detector check"),
                               setupAsks(desk.order(), desk.limits()),
                               {[this](const QJsonObject &values) {
                                   return setupCalls(this->desk().order(), values);
                               }}))
        , m_detector(new DetectorEntry(desk, key()))
        , m_run(new RunEntry(desk, key()))
    {
        const QString why = whyNoSelfCall(desk.order());
        if (!why.isEmpty())
            body()->addWidget(makeMuted(why));
        addStep(tr("1  Set up the call"), m_setup);
        m_testLines = makeMuted({}, 1);
        body()->addWidget(m_testLines);
        addStep(tr("2  Detector check: quiet, inject, seen, cleared"), m_detector);
        addStep(tr("3  Run"), m_run);
        m_setup->setConfirm([this] { return setUp(); });
        connect(m_setup, &Form::edited, this, [this] { takeSetup(); });
        correctIn(m_detector->form(),
                  [](const Fact &fact) { return fact.as<DetectorFact>() != nullptr; });
        connect(m_detector, &DetectorEntry::recorded, this, [this] { m_run->takeFocus(); });
        connect(m_run, &RunEntry::recorded, this, [this] {
            forgetCall();
            emit recorded();
        });
        if (desk.draft(key() + ".setup").isEmpty())
            m_setup->setTyped(setupDefaults(desk.order(), desk.limits()));
        takeSetup();
    }

    QWidget *entry(const QString &criterion) const override
    {
        if (m_run->isStarted() || criterion == u"run" || checkAwaitsRun())
            return m_run->entry();
        const bool chosen = !m_setup->typed().value("call").toString().isEmpty();
        return chosen ? m_detector->entry() : m_setup->field("path")->field();
    }

    void showOrder() override
    {
        StationPanel::showOrder();
        QStringList lines;
        for (const TestLine &line : desk().view().testLines)
            lines << QString("%1  %2").arg(line.label, line.number.forInstallersOnly());
        m_testLines->setText(tr("Test lines of %1, for installers only: %2")
                                 .arg(desk().view().office.name, lines.join(" · ")));
        m_testLines->setVisible(!lines.isEmpty());
        m_run->showOrder();
    }

private:
    /// The newest of checks and runs is a check of today: what is open then is its run.
    bool checkAwaitsRun() const
    {
        const auto &facts = desk().view().facts;
        const auto newest = std::find_if(facts.rbegin(), facts.rend(), [](const FactView &each) {
            return !each.voided && (each.fact.as<DetectorFact>() || each.fact.as<RunFact>());
        });
        return newest != facts.rend() && newest->fact.as<DetectorFact>() &&
               newest->fact.at.localDate() == desk().now().localDate();
    }

    void addStep(const QString &title, QWidget *step)
    {
        body()->addWidget(makeHeading(title, 1.1));
        body()->addWidget(step);
    }

    void takeSetup()
    {
        const QJsonObject answers = m_setup->values();
        m_detector->setSetup(answers);
        m_run->setSetup(answers);
        const auto cause = answers.value("call").toString() == u"failed"
                               ? causeOf(answers.value("cause").toInt())
                               : std::nullopt;
        m_setup->tell(cause ? Status::Doubtful : Status::None,
                      cause ? tr("%1, %2. Check first: %3")
                                  .arg(cause->name, cause->classText, cause->checkFirst)
                            : QString());
    }

    /// The next run is another call.
    void forgetCall()
    {
        QJsonObject typed = m_setup->typed();
        typed.remove("call");
        m_setup->setTyped(typed);
        m_setup->keep();
        takeSetup();
    }

    /// Records the calls that the set-up says are up, keeps the set-up for what follows.
    bool setUp()
    {
        const QJsonObject answers = m_setup->values();
        if (!m_setup->check())
            return false;
        const QJsonObject head = runHead(desk().order(), answers);
        if (head.contains("from_dn") && head.value("from_dn") == head.value("to_dn")) {
            tell(*m_setup, Error{ErrorCode::BadInput,
                                 tr("A self-call needs two numbers: call another than it is from."),
                                 "facts[0].to_dn"});
            return false;
        }
        const FactObjects calls = setupCalls(desk().order(), answers);
        m_setup->keep();
        takeSetup();
        if (!calls.empty())
            if (const auto report = desk().record(key() + ".call", calls); !report) {
                tell(*m_setup, report.error());
                return false;
            }
        if (answers.value("call").toString() == u"failed")
            return true;
        m_detector->entry()->setFocus(Qt::TabFocusReason);
        return true;
    }

    Form *m_setup;
    DetectorEntry *m_detector;
    RunEntry *m_run;
    QLabel *m_testLines;
};

} // namespace

StationPanel *makeErrorTestPanel(const PanelInfo &info, JobSession &desk)
{
    return new ErrorTestPanel(info, desk);
}

} // namespace loopwright
