#pragma once
// The large clock of a run, the counts so far, the strip of its seconds, and the sentence of what
// is proven. While it has the keyboard: E or a digit enters errors as they are seen, Backspace
// takes the last entry back, S is a loss of synchronisation and its return, X stops early and,
// pressed again, goes on.

#include "core/base/LimitSet.h"
#include "core/errortest/G821.h"
#include "core/errortest/RunLog.h"

#include <QTimer>
#include <QWidget>

#include <functional>

namespace loopwright {

class RunClock : public QWidget
{
    Q_OBJECT
public:
    /// `now` is the clock of the records.
    RunClock(std::function<Moment()> now, const LimitSet &limits, QWidget *parent = nullptr);

    const RunLog &log() const { return m_log; }
    void setLog(const RunLog &log);
    void setRate(qint64 bitsPerSecond);
    /// What no program watched of the run.
    void setGaps(std::vector<Stretch> gaps);
    /// Counts as they stand now.
    ErrorSummary summary() const;
    /// "12:34"; what is left.
    QString clockText() const;
    QString sentence() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

signals:
    void logged(); ///< the log was changed by a key
    void over();   ///< the planned time has passed, while this program watched

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    bool event(QEvent *event) override;

private:
    bool isRunning() const;
    void tick();
    /// Begun ones count.
    qint64 minutesLeft() const;
    void describe();
    void flash();
    QString stateText() const;
    QString countsText() const;
    /// Returns the height that the words take.
    double paintWords(QPainter &painter, const QRectF &room) const;
    void paintSeconds(QPainter &painter, const QRectF &room) const;

    std::function<Moment()> m_now;
    double m_confidence;
    double m_target; ///< bit error ratio that the limits ask for
    qint64 m_rate = 64000;
    RunLog m_log;
    QTimer m_timer;
    bool m_wasRunning = false;
    QString m_toldState; ///< to a screen reader
    qint64 m_toldMinutes = 0;
    int m_flashes = 0;
};

} // namespace loopwright
