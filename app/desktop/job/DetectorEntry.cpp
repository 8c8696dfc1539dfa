#include "app/desktop/job/DetectorEntry.h"

#include "app/desktop/Theme.h"
#include "app/desktop/job/TestSetup.h"
#include "app/desktop/widgets/PageElements.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

std::vector<FieldSpec> asks(const LimitSet &limits)
{
    const auto whole = [](const char *key, const QString &label, const QString &hint) {
        return FieldSpec{key, label, hint, Answer::Whole};
    };
    return {
        whole("quiet_seconds", DetectorEntry::tr("Quiet seconds"),
              DetectorEntry::tr("s; at least %1").arg(limits.value("detector_quiet_seconds_min"))),
        whole("quiet_bit_errors", DetectorEntry::tr("Bit errors in them"),
              DetectorEntry::tr("must be 0")),
        whole("injections", DetectorEntry::tr("Errors sent: how often"),
              DetectorEntry::tr("at least 1")),
        whole("injected", DetectorEntry::tr("Errors sent: bits in all"),
              DetectorEntry::tr("where it is known")),
        whole("seen_bit_errors", DetectorEntry::tr("Bit errors seen"),
              DetectorEntry::tr("at least as many as were sent")),
        whole("seen_errored_seconds", DetectorEntry::tr("Errored seconds seen"),
              DetectorEntry::tr("s; at least 1")),
        {"cleared",
         DetectorEntry::tr("Are the counters cleared?"),
         {},
         Answer::YesNo,
         {},
         1,
         {},
         "true"}};
}

} // namespace

DetectorEntry::DetectorEntry(JobSession &desk, const QString &panel, QWidget *parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_form(makeFactForm(desk, panel + ".detector", tr("Record the check"), asks(desk.limits()),
                          {[this](const QJsonObject &values) { return facts(values); }}))
    , m_quiet(makeButton({}, panel + ".quiet", [this] { quiet(); }))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_quiet, 0, Qt::AlignLeft);
    layout->addWidget(m_form);
    whenThemed(m_quiet, [this] { m_quiet->setMinimumHeight(em(2.4)); });
    m_quiet->setAutoDefault(true);
    m_timer.setInterval(250);
    connect(&m_timer, &QTimer::timeout, this, &DetectorEntry::showQuiet);
    connect(m_form, &Form::confirmed, this, &DetectorEntry::recorded);
    showQuiet();
}

QWidget *DetectorEntry::entry() const
{
    return m_form->firstEmpty();
}

FactObjects DetectorEntry::facts(const QJsonObject &values) const
{
    if (values.isEmpty())
        return {};
    QJsonObject fact = pathAndChannels(m_desk.order(), m_setup);
    fact.insert("kind", "detector");
    for (auto it = values.begin(); it != values.end(); ++it)
        fact.insert(it.key(), it.value());
    return {fact};
}

void DetectorEntry::quiet()
{
    if (m_quietSince) {
        const auto seconds = qint64(m_quietSince->secondsUntil(m_desk.now()));
        m_form->field("quiet_seconds")->setTyped(QString::number(seconds));
        m_form->keep();
        m_quietSince.reset();
        m_timer.stop();
        m_form->field("quiet_bit_errors")->field()->setFocus(Qt::TabFocusReason);
    } else {
        m_quietSince = m_desk.now();
        m_timer.start();
    }
    showQuiet();
}

void DetectorEntry::showQuiet()
{
    m_quiet->setText(m_quietSince ? tr("Quiet for %1 s — Enter takes it")
                                        .arg(qint64(m_quietSince->secondsUntil(m_desk.now())))
                                  : tr("Count the quiet seconds"));
    m_quiet->setAccessibleName(m_quiet->text());
}

} // namespace loopwright
