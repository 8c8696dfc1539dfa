// The error test as one sequence: how it is made, ten quiet seconds, errors sent and seen, counters
// cleared, and the run with its clock. How it is made is preset by the plan and may be answered
// otherwise; it stands in the check and the run alike.

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/RunEntry.h"
#include "app/desktop/job/StepForm.h"
#include "app/desktop/job/TestSetup.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/Judging.h"

#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

/// Counts the quiet seconds for whoever watches the test set; Enter takes them.
class QuietClock : public QPushButton
{
public:
    QuietClock(JobSession &desk, const QString &name, std::function<void(qint64)> take)
        : m_desk(desk)
    {
        setObjectName(name);
        setAutoDefault(true);
        m_timer.setInterval(250);
        connect(&m_timer, &QTimer::timeout, this, [this] { say(); });
        connect(this, &QPushButton::clicked, this, [this, take = std::move(take)] {
            if (m_since) {
                const auto seconds = qint64(m_since->secondsUntil(m_desk.now()));
                m_since.reset();
                m_timer.stop();
                take(seconds);
            } else {
                m_since = m_desk.now();
                m_timer.start();
            }
            say();
        });
        say();
    }

private:
    void say()
    {
        setText(m_since ? StepEditor::tr("Quiet for %1 s — Enter takes it")
                              .arg(qint64(m_since->secondsUntil(m_desk.now())))
                        : StepEditor::tr("Count the quiet seconds"));
        setAccessibleName(text());
    }

    JobSession &m_desk;
    QTimer m_timer;
    std::optional<Moment> m_since;
};

class ErrorTestEditor : public StepEditor
{
public:
    ErrorTestEditor(JobSession &desk, const QString &panel, const QStringList &needs)
        : StepEditor(desk)
        , m_needs(needs)
        , m_setup(makeFactForm(desk, panel + ".setup", tr("Take it"),
                               setupSpecs(desk.order(), desk.limits()),
                               {{},
                                {},
                                [this](const QJsonObject &answers) {
                                    Findings found = findingsOf(answers);
                                    std::ranges::move(selfCall(), std::back_inserter(found));
                                    return found;
                                }}))
        , m_check(new StepForm(desk, panel + ".detector", desk.step(checkKey())->need))
        , m_run(new RunEntry(desk, panel))
        , m_testLines(makeMuted({}, 1))
        , m_how(makeMuted({}, 1))
    {
        auto *column = new QVBoxLayout(this);
        column->setContentsMargins(0, 0, 0, 0);
        whenThemed(this, [column] { column->setSpacing(em(0.6)); });
        column->addWidget(m_how);
        column->addWidget(m_check);
        auto *quiet = new QuietClock(desk, panel + ".quiet", [this](qint64 seconds) {
            Field *field = m_check->form()->field("quiet_seconds");
            field->setTyped(QString::number(seconds));
            m_check->form()->keep();
            m_check->form()->field("quiet_bit_errors")->goTo();
        });
        column->addWidget(quiet, 0, Qt::AlignLeft);
        column->addWidget(m_run);
        column->addWidget(makeHeading(tr("How the test is made"), 1.05));
        if (const QString why = whyNoSelfCall(desk.order()); !why.isEmpty())
            column->addWidget(makeMuted(why));
        column->addWidget(m_testLines);
        column->addWidget(m_setup);
        m_setup->button()->parentWidget()->hide(); // what is chosen holds at once
        QJsonObject typed = setupDefaults(runStep()->need.preset, desk.limits());
        const QJsonObject draft = desk.draft(panel + ".setup");
        for (auto it = draft.begin(); it != draft.end(); ++it)
            typed.insert(it.key(), it.value());
        m_setup->setTyped(typed);
        connect(m_setup, &Form::edited, this, [this] { takeSetup(); });
        connect(m_check, &StepEditor::recorded, this, &StepEditor::recorded);
        connect(m_run, &RunEntry::recorded, this, [this] { emit recorded(runKey()); });
        takeSetup();
    }

    QStringList needs() const override { return m_needs; }

    QWidget *entry(const QString &need) override
    {
        if (const QString channel = need.section('.', 1); !channel.isEmpty())
            choose(channel);
        return need.startsWith(u"run") || m_run->isStarted() ? m_run->entry()
                                                             : m_check->entry(need);
    }

    bool enters(const QString &need, const QWidget *widget) const override
    {
        const QString here = m_check->isAncestorOf(widget) ? checkKey() : runKey();
        const Step *asked = desk().step(need), *shown = desk().step(here);
        // One check and one run of a self-call show both channels.
        return asked && shown && asked->need.kind == shown->need.kind &&
               asked->need.preset == shown->need.preset;
    }

    bool corrects(const Fact &fact) const override { return stepOf(fact); }

    QWidget *refill(const Fact &fact) override
    {
        choose(stepOf(fact)->need.key.section('.', 1));
        return fact.as<RunFact>() ? m_run->refill(fact) : m_check->refill(fact);
    }

    void showSteps() override
    {
        QStringList lines;
        for (const TestLine &line : desk().view().testLines)
            lines << QString("%1  %2").arg(line.label, line.number.forInstallersOnly());
        m_testLines->setText(tr("Test lines of %1, for installers only: %2")
                                 .arg(desk().view().office.name, lines.join(" · ")));
        m_testLines->setVisible(!lines.isEmpty());
        m_check->showSteps();
        takeHead();
    }

private:
    /// The check, or the run, of a channel of the order.
    const Step *stepOf(const Fact &fact) const
    {
        for (const QString &key : m_needs)
            if (const Step *step = desk().step(key);
                step && step->need.kind == fact.kind() && step->need.matches(fact))
                return step;
        return nullptr;
    }

    QString checkKey() const { return "detector." + m_channel; }
    QString runKey() const { return "run." + m_channel; }
    const Step *runStep() const { return desk().step(runKey()); }

    void choose(const QString &channel)
    {
        if (!desk().step("run." + channel))
            return;
        m_channel = channel;
        QJsonObject typed = m_setup->typed();
        typed.insert("channel", channel);
        m_setup->setTyped(typed);
        m_check->setNeed(checkKey());
        takeHead();
    }

    void takeSetup()
    {
        const QJsonObject answers = m_setup->values();
        if (const QString channel = answers.value("channel").toString(); !channel.isEmpty())
            choose(channel);
        if (const auto path = fromText<Path>(answers.value("path").toString()))
            desk().setPath(*path); // the plan is made anew, and shown
        const Findings wrong = selfCall();
        m_setup->tell(wrong.empty() ? Status::None : Status::Failed,
                      wrong.empty() ? QString() : localized(wrong.front().reason));
        takeHead();
    }

    void takeHead()
    {
        const QJsonObject answers = m_setup->values();
        QStringList said;
        for (const Field *field : m_setup->fields())
            for (const KeyedOption &option : field->spec().options)
                if (field->isAsked() && option.code == field->typed())
                    said << (field->key() == u"path" ? option.label
                                                     : field->spec().label + ' ' + option.label);
        m_how->setText(tr("%1 — to be changed below.").arg(said.join(" · ")));
        m_run->setRun(*runStep(), runHead(runStep()->need.preset, answers),
                      plannedSeconds(answers, desk().limits()));
    }

    /// Before it is made: what cannot be a call between two numbers of the line.
    Findings selfCall() const
    {
        if (!runStep())
            return {};
        const QJsonObject head = runHead(runStep()->need.preset, m_setup->values());
        RunFact run;
        run.path = fromText<Path>(head.value("path").toString()).value_or(run.path);
        if (head.contains("from_dn"))
            run.fromDn = head.value("from_dn").toString();
        if (head.contains("to_dn"))
            run.toDn = head.value("to_dn").toString();
        const Text trouble = selfCallTrouble(run, desk().order());
        if (trouble.isEmpty())
            return {};
        return {{Severity::Error, "self_call", trouble, {}, "to_dn", 0}};
    }

    QStringList m_needs;
    QString m_channel = m_needs.first().section('.', 1);
    Form *m_setup;
    StepForm *m_check;
    RunEntry *m_run;
    QLabel *m_testLines;
    QLabel *m_how; ///< in one line, before the work; changed below it
};

} // namespace

std::vector<StepEditor *> errorTestEditors(JobSession &desk, const QString &panel)
{
    std::vector<StepEditor *> editors;
    QStringList needs;
    for (const Step &step : desk.steps())
        if (step.need.group == StepGroup::ErrorTest) {
            if (step.need.kind == FactKind::Cleared)
                editors.push_back(new StepForm(desk, partOf(panel, step.need.key), step.need));
            else
                needs << step.need.key;
        }
    if (!needs.isEmpty())
        editors.push_back(new ErrorTestEditor(desk, panel, needs));
    return editors;
}

} // namespace loopwright
