// The safety card of the visit: six voltages, four confirmations. The readings are judged while
// they are typed, so that a hazard stops the hand before anything is recorded; and one that is
// confirmed is recorded at once, whatever else is empty. What does not fit is recorded when the
// card is complete, and asked again.

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/StepForm.h"
#include "app/desktop/job/panels/Panels.h"
#include "core/acceptance/Review.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

class CardForm : public StepForm
{
public:
    CardForm(JobSession &desk, const QString &part, const Need &need)
        : StepForm(desk, part, need,
                   {[this](const QJsonObject &) { return refusal(); },
                    [this](std::vector<FieldSpec> &specs) { stopAtHazards(this, specs); },
                    {},
                    tr("Record the card"),
                    [this](const QJsonObject &values) { return !hazardsIn(values).empty(); }})
        , m_alarm(new QLabel)
    {
        static_cast<QVBoxLayout *>(layout())->insertWidget(0, m_alarm);
        m_alarm->setObjectName(part + ".alarm");
        m_alarm->setTextFormat(Qt::PlainText);
        m_alarm->setWordWrap(true);
        m_alarm->setAutoFillBackground(true);
        m_alarm->setBackgroundRole(QPalette::Window); // else the panel's white, and black on it
        m_alarm->setForegroundRole(QPalette::WindowText);
        m_alarm->hide();
        whenThemed(m_alarm, [this] { dressAlarm(); });
        form()->setAnswerConfirms(false);
        connect(form(), &Form::edited, this, [this] { judgeTyped(); });
    }

    void showSteps() override
    {
        StepForm::showSteps();
        judgeTyped();
    }

private:
    /// What stops the work; what does not fit or is to be cleared is told at its field.
    Findings hazardsIn(const QJsonObject &values) const
    {
        const Step *card = desk().step(needs().front());
        Findings found = review(card->need, values, desk().view().input, desk().limits());
        std::erase_if(found, [](const Finding &each) { return each.code != u"hazard"; });
        return found;
    }
    Findings hazards() const { return hazardsIn(form()->values()); }

    /// Called while the form is made, before there is a card: it is asked only later.
    static void stopAtHazards(const CardForm *card, std::vector<FieldSpec> &specs)
    {
        for (FieldSpec &spec : specs)
            if (spec.key.contains("_v."))
                spec.confirms = [card, key = spec.key](const QJsonObject &) {
                    const Findings found = card->hazards();
                    return std::ranges::find(found, key, &Finding::field) != found.end();
                };
    }

    /// A card that is not complete proves nothing; one with a hazard stops the work as it is.
    std::optional<Finding> refusal() const
    {
        if (!hazards().empty())
            return std::nullopt;
        for (const Field *field : form()->fields())
            if (field->isAsked() && !field->spec().optional && field->typed().isEmpty())
                return Finding{Severity::Error,
                               "empty",
                               Text::verbatim(tr(
                                   "is needed before the card is recorded; what is typed is kept")),
                               {},
                               field->key(),
                               0};
        return std::nullopt;
    }

    void dressAlarm()
    {
        QPalette palette = m_alarm->palette();
        palette.setColor(QPalette::Window, colours().badGround);
        palette.setColor(QPalette::WindowText, colours().bad);
        m_alarm->setPalette(palette);
        m_alarm->setFont(sized(1.25, QFont::Bold));
        m_alarm->setContentsMargins(em(0.8), em(0.6), em(0.8), em(0.6));
    }

    /// Above the card, and in the head that never scrolls.
    void judgeTyped()
    {
        QStringList alarms;
        for (const Finding &hazard : hazards())
            alarms << tr("HAZARD. %1").arg(localized(hazard.reason));
        alarms.removeDuplicates();
        m_alarm->setText(alarms.join(u'\n'));
        m_alarm->setAccessibleName(m_alarm->text());
        m_alarm->setVisible(!alarms.isEmpty());
        desk().setAlarm(alarms.value(0));
    }

    QLabel *m_alarm;
};

} // namespace

std::vector<StepEditor *> safetyEditors(JobSession &desk, const QString &panel)
{
    std::vector<StepEditor *> editors;
    for (const Step &step : desk.steps())
        if (step.need.group == StepGroup::Safety) {
            const QString part = partOf(panel, step.need.key);
            if (step.need.kind == FactKind::Safety)
                editors.push_back(new CardForm(desk, part, step.need));
            else
                editors.push_back(new StepForm(desk, part, step.need));
        }
    return editors;
}

} // namespace loopwright
