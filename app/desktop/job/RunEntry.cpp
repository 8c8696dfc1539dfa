#include "app/desktop/job/RunEntry.h"

#include "app/actions/InFile.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/StepEditor.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/Review.h"
#include "core/errortest/Bounds.h"
#include "core/errortest/RunEvaluation.h"
#include "core/errortest/SecondsFile.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QVBoxLayout>

namespace loopwright {

namespace {

constexpr std::size_t findingsShown = 12; ///< of a file of seconds, before the panel grows too long

/// Counts of a summary under the keys of a run fact.
constexpr std::pair<const char *, qint64 ErrorCounts::*> totals[] = {
    {"bit_errors", &ErrorCounts::bitErrors},
    {"errored_seconds", &ErrorCounts::erroredSeconds},
    {"severely_errored_seconds", &ErrorCounts::severelyErroredSeconds},
    {"sync_losses", &ErrorCounts::syncLosses}};

} // namespace

RunEntry::RunEntry(JobSession &desk, const QString &panel, QWidget *parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_state(new SignLine)
    , m_start(makeButton(tr("Start the run"), panel + ".start", [this] { start(); }))
    , m_totals(makeButton(tr("Enter a run made without this clock"), panel + ".totals",
                          [this] { enterTotals(); }))
    , m_file(makeButton(tr("Take seconds from a file…"), panel + ".file", [this] { chooseFile(); }))
    , m_clock(new RunClock([&desk] { return desk.now(); }, desk.limits()))
    , m_counts(makeFactForm(desk, panel + ".counts", tr("Record the run"), asks(),
                            {[this](const QJsonObject &values) { return facts(values); },
                             {},
                             [this](const QJsonObject &values) {
                                 return review(m_need, facts(values).front(), m_desk.view().input,
                                               m_desk.limits());
                             }}))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_state);
    layout->addWidget(makeButtonRow({m_start, m_totals, m_file}));
    layout->addWidget(m_clock);
    layout->addWidget(m_counts);
    m_clock->setObjectName(panel + ".clock");
    m_start->setAutoDefault(true);
    whenThemed(m_start, [this] {
        m_start->setMinimumHeight(em(3));
        m_start->setFont(sized(1.15, QFont::DemiBold));
    });
    connect(m_clock, &RunClock::logged, this, [this] {
        keepLog();
        showState();
    });
    connect(m_clock, &RunClock::over, this, [this] {
        const bool watching = m_clock->hasFocus();
        showState();
        if (watching)
            takeFocus();
    });
    m_counts->setConfirm([this] { return confirm(); });
    m_clock->setLog(RunLog::fromJson(desk.draft(runPart)));
}

std::vector<FieldSpec> RunEntry::asks() const
{
    // Asked where the clock did not run: a run that is entered afterwards.
    const auto afterwards = [this](const QJsonObject &) {
        return !m_clock || !m_clock->log().isStarted();
    };
    const auto count = [](const char *key, const QString &label, const QString &hint) {
        return FieldSpec{key, label, hint, Answer::Whole};
    };
    const LimitSet &limits = m_desk.limits();
    return {
        {"started", tr("Started at"), tr("HH:MM:SS"), Answer::Clock, {}, 1, afterwards, {}},
        {"ended", tr("Ended at"), tr("HH:MM:SS"), Answer::Clock, {}, 1, afterwards, {}},
        count("bit_errors", tr("Bit errors"),
              tr("bit error ratio at most %1").arg(localizedFigure(limits.value("run_ber_max")))),
        count("errored_seconds", tr("Errored seconds"),
              tr("s; at most %1 % of the seconds")
                  .arg(localizedFigure(limits.value("run_esr_max") * 100))),
        count("severely_errored_seconds", tr("Severely errored seconds"),
              tr("s; at most %1").arg(localizedFigure(limits.value("run_ses_max")))),
        count("sync_losses", tr("Losses of sync"),
              tr("at most %1").arg(localizedFigure(limits.value("run_sync_losses_max"))))};
}

void RunEntry::setRun(const Step &step, const QJsonObject &head, qint64 plannedSeconds)
{
    m_need = step.need;
    m_head = head;
    m_planned = plannedSeconds;
    m_clock->setRate(head.value("rate").toInteger(m_desk.order().dataRate));
    const auto [sign, text] = standingOf(step, m_desk.now());
    m_state->show(sign, QString("%1: %2").arg(localized(step.need.label), text));
    for (QPushButton *button : {m_start, m_totals, m_file})
        button->setEnabled(step.closedBy.isEmpty());
    showState();
}

QWidget *RunEntry::entry() const
{
    const RunLog &log = m_clock->log();
    if (!log.isStarted() && !log.isImported())
        return m_start;
    if (log.isStarted() && !log.isOver(m_desk.now()))
        return m_clock;
    return log.isStarted() ? m_counts->field("bit_errors")->field() : m_counts->firstEmpty();
}

/// The program may have been dead for a while; what watches the runs says for which.
void RunEntry::lookForGaps()
{
    const RunLog &log = m_clock->log();
    if (!log.isStarted())
        return;
    if (log.isOver(m_desk.now()))
        emit m_desk.runChanged(); // it says up to which second, before that is read
    const auto kept = m_desk.drafts();
    const WatchedTime watched =
        kept ? WatchedTime::fromJson(kept->value(watchedPart)) : WatchedTime();
    if (watched.isOf(log.started()))
        m_clock->setGaps(watched.gaps(log.elapsed(m_desk.now())));
}

void RunEntry::showState()
{
    lookForGaps();
    const RunLog &log = m_clock->log();
    const bool running = log.isStarted() && !log.isOver(m_desk.now());
    const bool any = log.isStarted() || log.isImported();
    m_counts->keepPending();
    const bool drafted = !m_desk.draft(m_counts->objectName()).isEmpty();
    m_start->setVisible(!any);
    m_totals->setVisible(!any);
    m_file->setVisible(!running &&
                       !corrected()); // its seconds would take the place of those still to come
    m_clock->setVisible(any);
    m_counts->setVisible(any ? !running : m_entering || drafted);
    m_counts->showAsked();
    if (any && !running && !drafted && log.sawAnything() && log.gaps().empty())
        fillCounts();
}

void RunEntry::start()
{
    m_clock->setLog(RunLog(m_desk.now(), m_planned));
    keepLog();
    showState();
    takeFocus();
}

void RunEntry::enterTotals()
{
    m_entering = true;
    showState();
    m_counts->firstEmpty()->setFocus(Qt::TabFocusReason);
}

void RunEntry::keepLog()
{
    m_desk.keepDraft(runPart, m_clock->log().toJson());
}

/// What was keyed or imported during the run stands in the counts; the test set's own counters may
/// correct it. Nothing else fills them: nobody saw that there was no error. Nor does a run that
/// nobody watched for a while.
void RunEntry::fillCounts()
{
    const ErrorSummary sum = m_clock->summary();
    QJsonObject typed = m_counts->typed();
    for (const auto &[key, member] : totals)
        typed.insert(key, QString::number(sum.*member));
    m_counts->setTyped(typed);
}

bool RunEntry::sameAsSeen(const QJsonObject &values) const
{
    const ErrorSummary sum = m_clock->summary();
    return std::ranges::all_of(totals, [&](const auto &total) {
        return values.value(total.first).toInteger(-1) == sum.*total.second;
    });
}

/// The recorded run that is being corrected; null if none is.
const Fact *RunEntry::corrected() const
{
    const QString id = m_desk.corrects(m_counts->objectName());
    const auto &facts = m_desk.view().facts;
    const auto found =
        std::ranges::find_if(facts, [&id](const FactView &each) { return each.fact.id == id; });
    return id.isEmpty() || found == facts.end() ? nullptr : &found->fact;
}

QWidget *RunEntry::refill(const Fact &fact)
{
    if (m_clock->log().isStarted() || m_clock->log().isImported()) {
        emit m_desk.troubled(tr("A run is counting or waits to be recorded: record it first."));
        return entry();
    }
    const RunFact &run = *fact.as<RunFact>();
    const RunEvaluation seen = evaluateRun(run, usualConfidence);
    QJsonObject typed{{"started", run.started.text()}, {"ended", run.ended.text()}};
    for (const auto &[key, member] : totals)
        if (!seen.notRecorded.contains(key))
            typed.insert(key, QString::number(seen.summary.*member));
    QStringList asked{"started", "ended", "seconds"};
    for (const auto &[key, member] : totals)
        asked << key;
    m_entering = true;
    QWidget *place = correctIn(m_desk, *m_counts, fact, asked, typed);
    showState();
    return place;
}

/// What the corrected run says of itself. Its seconds stay if the counts are still theirs.
QJsonObject RunEntry::correction(const QJsonObject &values) const
{
    QJsonObject fact{
        {"kind", "run"}, {"started", values.value("started")}, {"ended", values.value("ended")}};
    const RunFact &old = *corrected()->as<RunFact>();
    const ErrorSummary sum = evaluateRun(old, usualConfidence).summary;
    const bool same = old.seconds && fact.value("started") == old.started.text() &&
                      fact.value("ended") == old.ended.text() &&
                      std::ranges::all_of(totals, [&](const auto &total) {
                          return values.value(total.first).toInteger(-1) == sum.*total.second;
                      });
    if (same)
        fact.insert("seconds", corrected()->toJson().value("seconds"));
    for (const auto &[key, member] : totals)
        if (!same && values.contains(key))
            fact.insert(key, values.value(key));
    return fact;
}

FactObjects RunEntry::facts(const QJsonObject &values) const
{
    if (corrected())
        return {correction(values)};
    const RunLog &log = m_clock->log();
    const Moment now = m_desk.now();
    QJsonObject fact = m_head;
    fact.insert("kind", "run");
    if (log.isStarted()) {
        fact.insert("started", log.started().text());
        fact.insert("ended", log.ended(now).text());
        fact.insert("stopped_early", log.stoppedEarly() && log.remaining(now) > 0);
    } else {
        fact.insert("started", values.value("started"));
        fact.insert("ended", values.value("ended"));
        if (const auto from = Moment::parse(values.value("started").toString());
            from && log.isImported())
            fact.insert("ended", from->plusSeconds(double(log.seconds(now).size())).text());
    }
    if ((log.isStarted() || log.isImported()) && log.gaps().empty() && sameAsSeen(values)) {
        QJsonArray seconds;
        for (const Second second : log.seconds(now))
            seconds << (second.inSync() ? QJsonValue(second.bitErrors()) : QJsonValue());
        fact.insert("seconds", seconds);
    } else {
        for (const auto &[key, member] : totals)
            if (values.contains(key))
                fact.insert(key, values.value(key));
    }
    return {fact};
}

bool RunEntry::confirm()
{
    for (const Field *field : m_counts->fields())
        if (field->isAsked() && field->typed().isEmpty() && !corrected()) {
            m_counts->tell({Severity::Error,
                            "empty",
                            Text::verbatim(tr("Read it from the test set.")),
                            {},
                            field->key(),
                            0});
            return false;
        }
    const FactObjects made = facts(m_counts->values());
    const QString part = corrected() ? m_counts->objectName() : runPart;
    if (const auto read = m_desk.read(made, part); !read) {
        tell(*m_counts, read.error());
        return false;
    }
    // A run over its limits is a result; totals that contradict each other are a slip of the hand.
    const Findings found = review(m_need, made.front(), m_desk.view().input, m_desk.limits());
    if (const auto slip = std::ranges::find(found, "contradiction", &Finding::code);
        slip != found.end()) {
        m_counts->tell(*slip);
        return false;
    }
    const QJsonObject typed = m_counts->typed();
    const RunLog log = m_clock->log();
    m_clock->setLog({});
    m_counts->clear();
    if (const auto report = m_desk.record(part, made); !report) {
        m_clock->setLog(log);
        m_counts->setTyped(typed);
        m_counts->keep();
        tell(*m_counts, report.error());
        return false;
    }
    m_desk.keepDraft(m_counts->objectName(), {});
    m_entering = false;
    showState();
    emit recorded();
    return true;
}

void RunEntry::chooseFile()
{
    const QString path = QFileDialog::getOpenFileName(this, tr("Errors per second"), {},
                                                      tr("Seconds (*.csv *.txt)"));
    if (!path.isEmpty())
        takeFile(path);
}

bool RunEntry::takeFile(const QString &path)
{
    const QString name = QFileInfo(path).fileName();
    const auto bytes = readFile(path);
    const auto read =
        bytes
            ? readSecondsFile(*bytes, name, m_head.value("rate").toInteger(m_desk.order().dataRate))
            : Result<SecondsFile>(failure(bytes.error()));
    if (!read || !read->findings.empty()) {
        m_entering = true;
        showState();
        m_counts->tell(Status::Failed, read ? tr("%1 is not taken:").arg(name) + '\n' +
                                                  read->findingLines(findingsShown).join('\n')
                                            : localized(read.error()));
        return false;
    }
    RunLog log = m_clock->log();
    log.import(read->seconds);
    m_clock->setLog(log);
    keepLog();
    fillCounts();
    showState();
    const auto seconds = read->seconds.size();
    m_counts->tell(Status::Note, seconds == 1
                                     ? tr("1 second taken from %1.").arg(name)
                                     : tr("%1 seconds taken from %2.").arg(seconds).arg(name));
    takeFocus();
    return true;
}

} // namespace loopwright
