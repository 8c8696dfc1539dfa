#include "app/desktop/job/RunClock.h"

#include "app/desktop/Language.h"
#include "app/desktop/PictureLook.h"
#include "app/print/SecondsStrip.h"
#include "core/errortest/Bounds.h"
#include "core/errortest/RunEvaluation.h"

#include <QApplication>
#include <QKeyEvent>
#include <QPainter>

namespace loopwright {

namespace {

constexpr int tickMs = 250;
constexpr int flashMs = 350;
constexpr int flashesAtEnd = 6; ///< on and off in turn

} // namespace

RunClock::RunClock(std::function<Moment()> now, const LimitSet &limits, QWidget *parent)
    : QWidget(parent)
    , m_now(std::move(now))
    , m_confidence(limits.value("run_confidence"))
    , m_target(limits.value("run_ber_max"))
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Run clock"));
    m_timer.setInterval(tickMs);
    connect(&m_timer, &QTimer::timeout, this, &RunClock::tick);
    whenThemed(this, [this] { updateGeometry(); });
}

void RunClock::setLog(const RunLog &log)
{
    m_log = log;
    m_wasRunning = isRunning();
    m_timer.start();
    describe();
    tick();
}

void RunClock::setRate(qint64 bitsPerSecond)
{
    m_rate = bitsPerSecond;
    describe();
    update();
}

void RunClock::setGaps(std::vector<Stretch> gaps)
{
    m_log.setGaps(std::move(gaps));
    describe();
    update();
}

bool RunClock::isRunning() const
{
    return m_log.isStarted() && !m_log.isOver(m_now());
}

ErrorSummary RunClock::summary() const
{
    return evaluateSeconds(m_log.seconds(m_now()), m_rate);
}

QString RunClock::clockText() const
{
    return m_log.isStarted() ? durationText(m_log.remaining(m_now())) : QStringLiteral("–:––");
}

QString RunClock::sentence() const
{
    if (const qint64 missed = m_log.notWatchedSeconds())
        return tr("Nobody watched %1 of it while the program was not running: what the run proves, "
                  "only the counters of the test set say.")
            .arg(durationText(missed));
    const ErrorSummary sum = summary();
    const QString proven = localized(provenSentence(sum, m_rate, m_confidence));
    if (sum.bits <= 0 || m_target <= 0)
        return proven;
    return proven + "; " +
           localizedSentence(proofText(
               prove(sum.bitErrors, sum.bits, double(m_rate), m_target, m_confidence), m_target));
}

QString RunClock::stateText() const
{
    const Moment now = m_now();
    if (!m_log.isStarted())
        return m_log.isImported() ? tr("Seconds taken from a file") : QString();
    if (m_log.stoppedEarly())
        return tr(m_log.canGoOn(now) ? "STOPPED EARLY after %1 — X goes on"
                                     : "STOPPED EARLY after %1 — does not count")
            .arg(durationText(m_log.elapsed(now)));
    if (m_log.isOver(now))
        return tr("TIME IS UP — read the counters of the test set");
    if (!m_log.inSync())
        return tr("OUT OF SYNC — S when it is back");
    return tr("left of %1; started at %2")
        .arg(durationText(m_log.plannedSeconds()), m_log.started().text().mid(11, 8));
}

QString RunClock::countsText() const
{
    const ErrorSummary sum = summary();
    QString text = tr("Bit errors %1 · errored seconds %2 · severely errored %3 · sync losses %4")
                       .arg(sum.bitErrors)
                       .arg(sum.erroredSeconds)
                       .arg(sum.severelyErroredSeconds)
                       .arg(sum.syncLosses);
    if (sum.unavailableSeconds > 0)
        text += tr(" · unavailable %1").arg(sum.unavailableSeconds);
    if (const qint64 missed = m_log.notWatchedSeconds())
        text += tr(" · not watched %1").arg(durationText(missed));
    if (isRunning() && sum.provisionalSeconds > 0)
        text += tr(" · last %1 s provisional").arg(sum.provisionalSeconds);
    return text;
}

QSize RunClock::sizeHint() const
{
    return {em(38), em(22)};
}

void RunClock::tick()
{
    const bool running = isRunning();
    if (!running && !m_log.canGoOn(m_now()))
        m_timer.stop();
    if (m_wasRunning && !running && !m_log.stoppedEarly()) {
        flash();
        emit over();
    }
    m_wasRunning = running;
    if (stateText() != m_toldState || minutesLeft() != m_toldMinutes)
        describe();
    update();
}

qint64 RunClock::minutesLeft() const
{
    return (m_log.remaining(m_now()) + 59) / 60;
}

/// At what happens, and once a minute: a screen reader reads it out where the clock has the
/// keyboard.
void RunClock::describe()
{
    m_toldState = stateText();
    m_toldMinutes = minutesLeft();
    const QString clock = QString(clockText() + ' ' + m_toldState).trimmed();
    setAccessibleDescription(
        QStringList{clock, countsText(), sentence()}.join(QStringLiteral(". ")));
}

void RunClock::flash()
{
    m_flashes = flashesAtEnd;
    for (int i = 1; i <= flashesAtEnd; ++i)
        QTimer::singleShot(i * flashMs, this, [this] {
            --m_flashes;
            update();
        });
}

bool RunClock::event(QEvent *event)
{
    // The keys of the run are no shortcuts of the window while it has the keyboard.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto *key = static_cast<QKeyEvent *>(event);
        if (key->modifiers() == Qt::NoModifier && !key->text().isEmpty() &&
            key->text()[0].isLetterOrNumber()) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

void RunClock::keyPressEvent(QKeyEvent *event)
{
    if (event->isAutoRepeat()) // a key held down with cold hands is one key
        return;
    const Moment now = m_now();
    const bool running = isRunning();
    const int key = event->key();
    const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    if (plain && running && (key == Qt::Key_E || (key >= Qt::Key_1 && key <= Qt::Key_9)))
        m_log.addErrors(now, key == Qt::Key_E ? 1 : key - Qt::Key_0);
    else if (plain && running && key == Qt::Key_Backspace)
        m_log.takeBack();
    else if (plain && running && key == Qt::Key_S)
        m_log.toggleSync(now);
    else if (plain && running && key == Qt::Key_X)
        m_log.stop(now);
    else if (plain && m_log.canGoOn(now) && key == Qt::Key_X)
        m_log.goOn(now);
    else
        return QWidget::keyPressEvent(event);
    setLog(RunLog(m_log));
    emit logged();
}

void RunClock::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours &c = colours();
    const bool lit = m_flashes % 2 == 1;
    painter.setPen(QPen(lit ? c.accent : c.frame, lit ? 3 : 1));
    painter.setBrush(lit ? c.selected : c.window);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), em(0.3), em(0.3));
    const QRectF room = QRectF(rect()).adjusted(em(1), em(0.6), -em(1), -em(0.6));
    const double words = paintWords(painter, room);
    paintSeconds(painter, room.adjusted(0, words, 0, 0));
}

double RunClock::paintWords(QPainter &painter, const QRectF &room) const
{
    const Colours &c = colours();
    constexpr int flags = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap;
    const auto line = [&](const QRectF &where, const QFont &font, const QColor &ink,
                          const QString &text) {
        painter.setFont(font);
        painter.setPen(ink);
        painter.drawText(where, flags, text);
    };
    const QFont large = digitsFont(3.6, QFont::Bold);
    const double clock = QFontMetrics(large).horizontalAdvance("00:00") + em(1.2);
    line(QRectF(room.left(), room.top(), clock, em(4.6)), large, c.text, clockText());
    line(QRectF(room.left() + clock, room.top(), room.width() - clock, em(4.6)),
         sized(1.15, QFont::DemiBold), m_log.inSync() && !m_log.stoppedEarly() ? c.text : c.bad,
         stateText());
    double used = em(4.6);
    const auto below = [&](const QFont &font, const QColor &ink, const QString &text) {
        const QRectF rest = room.adjusted(0, used, 0, 0);
        const double height = QFontMetricsF(font).boundingRect(rest, flags, text).height();
        const double taken = std::max<double>(em(1.6), height + em(0.2)); // a line or more
        line(QRectF(rest.topLeft(), QSizeF(rest.width(), taken)), font, ink, text);
        used += taken;
    };
    below(sized(1.05, QFont::DemiBold), c.text, countsText());
    below(sized(1.05), c.text, sentence());
    if (isRunning())
        below(sized(0.92), c.muted,
              tr("E: one error · 1–9: so many · Backspace: take it back · S: sync lost, back · X: "
                 "stop early"));
    return used + em(0.2);
}

void RunClock::paintSeconds(QPainter &painter, const QRectF &room) const
{
    const SecondList seconds = m_log.seconds(m_now());
    const std::vector<SecondMark> marks = classify(seconds, m_rate);
    const std::vector<Stretch> gaps = m_log.gaps();
    paintStrip(painter, room, {seconds, marks, m_rate, m_log.plannedSeconds(), isRunning(), gaps},
               screenPictureStyle(colours().window, 0.85));
}

} // namespace loopwright
