#include "app/desktop/job/StepPanel.h"

#include "app/desktop/Language.h"
#include "app/desktop/job/FactText.h"
#include "app/desktop/job/StepForm.h"
#include "app/desktop/widgets/FieldGrid.h"

#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

std::vector<StepEditor *> formForEach(JobSession &desk, StepGroup group)
{
    std::vector<StepEditor *> forms;
    for (const Step &step : desk.steps())
        if (step.need.group == group && step.need.kind)
            forms.push_back(new StepForm(desk, partOf(toText(group), step.need.key), step.need));
    return forms;
}

bool stillCounts(const Step &step)
{
    return step.state == StepState::Done || step.state == StepState::Failed;
}

/// "Dial tone: …" where neither the sentence nor the panel's title says what it is about.
QString told(const Step &step, const Text &sentence, const QString &title)
{
    const QString label = localized(step.need.label), text = localized(sentence);
    return text.isEmpty()                             ? label + '.'
           : text.startsWith(label) || title == label ? text
                                                      : QString("%1: %2").arg(label, text);
}

std::pair<Status, QString> standingAs(const Step *step, bool excepted)
{
    if (!step)
        return {Status::None, {}};
    const QString word = stateName(step->state), because = localized(step->because);
    return {excepted ? Status::Doubtful : statusOf(step->state),
            because.isEmpty() ? word : QString("%1: %2").arg(word, because)};
}

} // namespace

StepPanel::StepPanel(const PanelInfo &info, JobSession &desk, QWidget *parent)
    : StationPanel(info, desk, parent)
    , m_editors(info.editors ? info.editors(desk, key()) : formForEach(desk, *info.group))
{
    if (info.above)
        body()->addWidget(info.above(desk, key()));
    FieldGrid *row = nullptr; // of the short ones that follow each other
    for (StepEditor *editor : m_editors) {
        if (editor->isShort() && !row) {
            row = new FieldGrid(19);
            body()->addLayout(row);
        }
        if (editor->isShort()) {
            row->add(editor);
        } else {
            body()->addWidget(editor);
            row = nullptr;
        }
        connect(editor, &StepEditor::recorded, this, &StationPanel::recorded);
    }
}

std::vector<const Step *> StepPanel::steps() const
{
    std::vector<const Step *> own;
    for (const Step &step : desk().steps())
        if (step.need.group == *info().group)
            own.push_back(&step);
    return own;
}

void StepPanel::showOrder()
{
    const QString said = standing().second;
    for (StepEditor *editor : m_editors) {
        editor->setSaidAbove(said);
        editor->showSteps();
    }
    StationPanel::showOrder();
}

QWidget *StepPanel::entry(const QString &need)
{
    for (StepEditor *editor : m_editors)
        if (editor->needs().contains(need))
            return editor->entry(need);
    for (const Step *step : steps()) // the first that is to be done
        if (step->isToDo())
            return entry(step->need.key);
    return m_editors.empty() ? nullptr
                             : m_editors.front()->entry(m_editors.front()->needs().front());
}

bool StepPanel::enters(const QString &need, const QWidget *widget) const
{
    return std::ranges::any_of(m_editors, [&](const StepEditor *each) {
        return each->isAncestorOf(widget) && each->enters(need, widget);
    });
}

std::pair<Status, QString> StepPanel::standing() const
{
    if (info().standing)
        return info().standing(desk());
    const QString title = StationPanel::tr(info().title);
    const auto own = steps();
    const auto first = [&own](auto is) {
        const auto found = std::ranges::find_if(own, is);
        return found == own.end() ? nullptr : *found;
    };
    if (const Step *toDo = first([](const Step *each) { return each->isToDo(); }))
        return {statusOf(toDo->state),
                QString("%1: %2").arg(
                    stateName(toDo->state),
                    told(*toDo, toDo->next.isEmpty() ? toDo->because : toDo->next, title))};
    if (const Step *waits =
            first([](const Step *each) { return each->state == StepState::Closed; }))
        return {statusOf(waits->state),
                QString("%1: %2").arg(stateName(waits->state), localized(waits->because))};
    QStringList results;
    bool excepted = false;
    for (const Step *each : own)
        if (each->counts && stillCounts(*each))
            results << told(*each, each->because, title);
        else if (each->state == StepState::NotNeeded && !each->need.isOffer() &&
                 !each->because.isEmpty())
            excepted = true;
    results.removeDuplicates();
    const bool offers =
        std::ranges::all_of(own, [](const Step *each) { return each->need.isOffer(); });
    if (!results.isEmpty())
        return {offers ? Status::None : Status::Done,
                QString("%1: %2").arg(stateName(StepState::Done), results.join(u' '))};
    if (offers)
        return {Status::None, {}};
    const Step *done = first([](const Step *each) { return each->state == StepState::Done; });
    return standingAs(done ? done : own.empty() ? nullptr : own.front(), excepted);
}

/// Null if it can be corrected in none.
StepEditor *StepPanel::editorFor(const Fact &fact) const
{
    const auto found = std::ranges::find_if(
        m_editors, [&fact](const StepEditor *each) { return each->corrects(fact); });
    return found == m_editors.end() ? nullptr : *found;
}

bool StepPanel::corrects(const Fact &fact) const
{
    return editorFor(fact);
}

QWidget *StepPanel::refill(const Fact &fact)
{
    StepEditor *editor = editorFor(fact);
    QWidget *place = editor ? editor->refill(fact) : nullptr;
    showOrder(); // what is closed to a new entry is open to a correction
    return place;
}

bool StepPanel::lists(const Fact &fact) const
{
    return StationPanel::lists(fact) || std::ranges::any_of(steps(), [&fact](const Step *each) {
               return each->need.kind == fact.kind() && each->need.matches(fact);
           });
}

} // namespace loopwright
