// With which instrument the readings are made: said before the first, remembered for the person.
// Readings that were recorded without one are mended by the same answer.

#include "app/desktop/job/StepFields.h"
#include "app/desktop/job/StepForm.h"
#include "app/desktop/job/panels/Panels.h"

#include <algorithm>

namespace loopwright {

namespace {

QString optionText(JobSession &desk, const QString &key)
{
    const auto options = instrumentOptions(desk);
    const auto found = std::ranges::find(options, key, &KeyedOption::code);
    return found == options.end() ? QString() : found->label;
}

class InstrumentForm : public StepForm
{
public:
    InstrumentForm(JobSession &desk, const QString &panel, const Need &need)
        : StepForm(desk, partOf(panel, need.key), need,
                   {{}, {}, [this](Form &form) { return take(form); }, tr("Measure with it")})
    {
        form()->setCheck([](const QJsonObject &) { return Findings(); });
    }

    void showSteps() override
    {
        StepForm::showSteps();
        const Step *now = desk().step(needs().front());
        Field *field = form()->fields().front();
        if (now && !now->isToDo() && !desk().instrument().isEmpty()) {
            const auto [sign, text] = instrumentStanding(desk());
            field->setHint(tr("now: %1").arg(text), sign);
        }
    }

private:
    bool take(Form &form)
    {
        const QString key = form.values().value("instrument").toString();
        if (key.isEmpty()) {
            form.fields().front()->mark(tr("Say which instrument it is."));
            return false;
        }
        // What was recorded without one, before the plan forgets which those were.
        const Step *now = desk().step(needs().front());
        const bool corrects = !desk().corrects(form.objectName()).isEmpty();
        const bool mends = corrects || (now && now->need.preset.contains("facts"));
        const FactObjects facts =
            mends ? factsOf(now->need, {{"instrument", key}}, desk().now()) : FactObjects();
        const QJsonObject typed = form.typed();
        form.clear();
        if (!corrects) {
            form.keep();
            desk().setInstrument(key);
        }
        if (facts.empty())
            return true;
        if (const auto report = desk().record(form.objectName(), facts); !report) {
            form.setTyped(typed);
            form.tell(Status::Failed, report.error().text());
            return false;
        }
        return true;
    }
};

} // namespace

std::vector<StepEditor *> instrumentEditors(JobSession &desk, const QString &panel)
{
    std::vector<StepEditor *> editors;
    for (const Step &step : desk.steps())
        if (step.need.group == StepGroup::Instrument)
            editors.push_back(new InstrumentForm(desk, panel, step.need));
    return editors;
}

std::pair<Status, QString> instrumentStanding(JobSession &desk)
{
    const Step *step = desk.step("instrument");
    if (step && step->isToDo())
        return {statusOf(step->state),
                QString("%1: %2").arg(stateName(step->state), step->next.isEmpty()
                                                                  ? step->because.english()
                                                                  : step->next.english())};
    const QString key = desk.instrument();
    if (key.isEmpty())
        return {Status::None, StationPanel::tr("none is said yet")};
    const auto known = instruments(desk.records());
    const QList<Instrument> list = known ? *known : QList<Instrument>();
    const auto found = std::ranges::find(list, key, &Instrument::key);
    if (found == list.end())
        return {Status::Doubtful, StationPanel::tr("%1 is not registered: what it measures does "
                                                   "not count")
                                      .arg(key)};
    return {found->calibratedOn(desk.now().localDate()) ? Status::Done : Status::Doubtful,
            optionText(desk, key)};
}

std::vector<StepEditor *> analogEditors(JobSession &desk, const QString &panel)
{
    std::vector<Need> needs;
    for (const Step &step : desk.steps())
        if (step.need.group == StepGroup::Analog)
            needs.push_back(step.need);
    return {new JointForm(desk, panel, needs)};
}

} // namespace loopwright
