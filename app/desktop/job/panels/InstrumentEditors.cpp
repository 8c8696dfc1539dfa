// With which instrument the readings are made: said before the first, remembered for the person.
// Readings that were recorded without one are mended by the same answer. One that the register does
// not know is asked for what stands on its label.

#include "app/actions/InstrumentLabels.h"
#include "app/desktop/Language.h"
#include "app/desktop/job/StepFields.h"
#include "app/desktop/job/StepForm.h"
#include "app/desktop/job/panels/Panels.h"

#include <algorithm>
#include <memory>

namespace loopwright {

namespace {

constexpr const char *ofLabel[] = {"serial", "kind", "calibrated_on", "calibration_due"};

InstrumentLabel labelFrom(const QJsonObject &values)
{
    const auto text = [&values](const char *key) { return values.value(key).toString().trimmed(); };
    return {text("instrument"), text("serial"), text("kind"), text("calibrated_on"),
            text("calibration_due")};
}

bool isLabelTyped(const QJsonObject &values)
{
    return std::ranges::any_of(
        ofLabel, [&values](const char *key) { return !values.value(key).toString().isEmpty(); });
}

/// Those that a form knows; more of them once a label was taken.
using KnownKeys = std::shared_ptr<QStringList>;

/// What an instrument is asked for that the register does not know.
void askForLabel(std::vector<FieldSpec> &fields, const KnownKeys &known)
{
    for (const KeyedOption &option : fields.front().options)
        *known << option.code;
    const auto isUnknown = [known](const QJsonObject &typed) {
        const QString key = typed.value("instrument").toString().trimmed();
        return !key.isEmpty() && !known->contains(key);
    };
    const auto add = [&](const char *key, const QString &label, const QString &hint,
                         Answer answer) {
        FieldSpec spec{key, label, hint, answer};
        spec.asked = isUnknown;
        spec.optional = true;
        fields.push_back(spec);
    };
    const auto tr = [](const char *text) { return StationPanel::tr(text); };
    add("serial", tr("Serial number"), tr("on its label"), Answer::Text);
    add("kind", tr("What it is"), tr("e.g. loss set"), Answer::Text);
    add("calibrated_on", tr("Calibrated on"), {}, Answer::Date);
    add("calibration_due", tr("Calibration due"), tr("or not_required"), Answer::Date);
}

class InstrumentForm : public StepForm
{
public:
    InstrumentForm(JobSession &desk, const QString &panel, const Need &need,
                   const KnownKeys &known = std::make_shared<QStringList>())
        : StepForm(desk, partOf(panel, need.key), need,
                   {{},
                    [known](std::vector<FieldSpec> &fields) { askForLabel(fields, known); },
                    [this](Form &form) { return take(form); },
                    tr("Measure with it")})
        , m_known(known)
    {
        form()->setCheck([this](const QJsonObject &values) {
            return isLabelTyped(values)
                       ? checkLabel(labelFrom(values), this->desk().now().localDate())
                       : Findings();
        });
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
        const bool fromLabel = isLabelTyped(form.values());
        if (fromLabel && !takeLabel(form))
            return false;
        // What was recorded without one, before the plan forgets which those were.
        const Step *now = desk().step(needs().front());
        const bool corrects = !desk().corrects(form.objectName()).isEmpty();
        const bool mends = corrects || (now && now->need.preset.contains("facts"));
        const FactObjects facts =
            mends ? factsOf(now->need, {{"instrument", key}}, desk().now()) : FactObjects();
        const QJsonObject typed = form.typed();
        form.clear();
        if (fromLabel) {
            *m_known << key;
            form.fields().front()->setOptions(instrumentOptions(desk()));
        }
        if (!corrects) {
            form.keep();
            desk().setInstrument(key);
        }
        if (facts.empty())
            return true;
        if (const auto report = desk().record(form.objectName(), facts); !report) {
            form.setTyped(typed);
            form.tell(Status::Failed, localized(report.error()));
            return false;
        }
        return true;
    }

    bool takeLabel(Form &form)
    {
        if (!form.check())
            return false;
        const auto labelled = labelInstrument(desk().records(), labelFrom(form.values()));
        if (!labelled)
            form.tell(Status::Failed, localized(labelled.error()));
        desk().instrumentsChanged();
        return bool(labelled);
    }

    KnownKeys m_known;
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
                                                                  ? localized(step->because)
                                                                  : localized(step->next))};
    const QString key = desk.instrument();
    if (key.isEmpty())
        return {Status::None, StationPanel::tr("none is said yet")};
    const QList<Instrument> &list = desk.instruments();
    const auto found = std::ranges::find(list, key, &Instrument::key);
    if (found == list.end())
        return {Status::Doubtful, StationPanel::tr("%1 is not registered: what it measures does "
                                                   "not count")
                                      .arg(key)};
    return {found->calibratedOn(desk.now().localDate()) ? Status::Done : Status::Doubtful,
            instrumentText(*found, desk.now().localDate())};
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
