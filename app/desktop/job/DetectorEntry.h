#pragma once
// The detector check of the error test: a clock for the quiet seconds, and what was sent and seen.

#include "app/desktop/job/FactForm.h"

#include <QTimer>

namespace loopwright {

class DetectorEntry : public QWidget
{
    Q_OBJECT
public:
    /// `panel`: key of the panel; the draft is `panel`.detector.
    DetectorEntry(JobSession &desk, const QString &panel, QWidget *parent = nullptr);

    /// Answers of the set-up (TestSetup.h).
    void setSetup(const QJsonObject &answers) { m_setup = answers; }
    QWidget *entry() const;
    Form *form() const { return m_form; }

signals:
    void recorded();

private:
    FactObjects facts(const QJsonObject &values) const;
    void quiet();
    void showQuiet();

    JobSession &m_desk;
    QJsonObject m_setup;
    Form *m_form;
    QPushButton *m_quiet;
    QTimer m_timer;
    std::optional<Moment> m_quietSince;
};

} // namespace loopwright
