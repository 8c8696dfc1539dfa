#include "app/desktop/job/StepForm.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/FactText.h"
#include "app/desktop/job/StepFields.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/Review.h"

#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

/// What is asked at once; the rest depends on an answer or is passed by.
std::ptrdiff_t askedAtOnce(const std::vector<FieldSpec> &specs)
{
    return std::ranges::count_if(specs,
                                 [](const FieldSpec &each) { return !each.asked && !each.aside; });
}

/// Only after a trouble is it asked how it was mended.
bool isAskedOnlyIfOpen(const Need &need)
{
    return need.kind == FactKind::Cleared || need.kind == FactKind::HazardClosed;
}

Findings reviewOf(JobSession &desk, const Need &need, const QJsonObject &values)
{
    return review(need, values, desk.view().input, desk.limits());
}

/// What is worth knowing is longer than a field is wide, and stands below the form.
bool standsBelow(const Finding &finding)
{
    return finding.severity == Severity::Note;
}

QString sentence(const Text &text)
{
    return localized(text);
}

QString headOf(const Need &need)
{
    QString label = sentence(need.label);
    label[0] = label[0].toUpper();
    return label;
}

/// Answered by one key: the button waits until there is more to say.
bool isOneKey(const Form &form)
{
    const Answer answer = form.fields().front()->spec().answer;
    return (answer == Answer::Choice || answer == Answer::YesNo) &&
           std::ranges::count_if(form.fields(), &Field::isAsked) == 1;
}

} // namespace

Status statusOf(StepState state)
{
    switch (state) {
    case StepState::Done:
        return Status::Done;
    case StepState::Failed:
        return Status::Failed;
    case StepState::Open:
        return Status::Open;
    case StepState::Closed:
        return Status::NotNeeded;
    case StepState::NotNeeded:
        break;
    }
    return Status::NotNeeded;
}

QString stateName(StepState state)
{
    switch (state) {
    case StepState::Done:
        return StepEditor::tr("done");
    case StepState::Failed:
        return StepEditor::tr("failed");
    case StepState::Open:
        return StepEditor::tr("open");
    case StepState::Closed:
        return StepEditor::tr("waits");
    case StepState::NotNeeded:
        break;
    }
    return StepEditor::tr("not needed");
}

std::pair<Status, QString> standingOf(const Step &step, const Moment &now)
{
    const bool untouched = !step.counts && step.before.empty();
    const QString hint = sentence(step.need.hint);
    if (step.need.isOffer() && step.counts)
        return {Status::Note,
                StepEditor::tr("recorded at %1").arg(timeText(step.counts->at, now.localDate()))};
    if (step.state == StepState::NotNeeded && untouched)
        return {Status::None, hint};
    if (step.state == StepState::Open && untouched && !hint.isEmpty())
        return {Status::Open, StepEditor::tr("open: %1").arg(hint)};
    QString word = stateName(step.state);
    if (step.counts && step.state != StepState::Open && step.state != StepState::Closed)
        word += StepEditor::tr(" at %1").arg(timeText(step.counts->at, now.localDate()));
    QStringList said{sentence(step.because)};
    if (step.state == StepState::Failed)
        said << sentence(step.next);
    said.removeAll(QString());
    return {statusOf(step.state),
            said.isEmpty() ? word : QString("%1: %2").arg(word, said.join(u' '))};
}

bool StepEditor::isSaidAbove(const Step &step) const
{
    const QString because = localized(step.because);
    return step.state == StepState::Closed && !because.isEmpty() && m_saidAbove.contains(because);
}

QString partOf(const QString &panel, const QString &need)
{
    return need == panel || need.startsWith(panel + '.') ? need : panel + '.' + need;
}

StepForm::StepForm(JobSession &desk, const QString &part, const Need &need, const StepFormUse &use,
                   QWidget *parent)
    : StepEditor(desk, parent)
    , m_need(need.key)
{
    std::vector<FieldSpec> specs = fieldSpecsOf(need, desk);
    if (use.adapt)
        use.adapt(specs);
    m_isRow = askedAtOnce(specs) <= 2;
    m_isShort = m_isRow && askedAtOnce(specs) == 1 && specs.front().span == 1;
    if (m_isRow && specs.front().answer == Answer::Number) // its standing takes the unit's place
        specs.front().label = QString("%1, %2").arg(specs.front().label, specs.front().hint);
    else if (m_isRow)
        specs.front().label = headOf(need);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    whenThemed(this, [column] { column->setSpacing(em(0.3)); });
    if (!m_isRow) {
        m_state = new SignLine;
        m_hint = makeMuted(sentence(need.hint));
        column->addWidget(m_state);
        column->addWidget(m_hint);
    }
    FactUse factUse;
    factUse.facts = [this](const QJsonObject &values) { return facts(values); };
    factUse.judge = [this](const QJsonObject &values) {
        Findings found = reviewOf(this->desk(), step()->need, values);
        std::erase_if(found, standsBelow);
        return found;
    };
    factUse.refusal = use.refusal;
    factUse.isUrgent = use.isUrgent;
    m_form = makeFactForm(desk, part, use.button.isEmpty() ? tr("Record") : use.button, specs,
                          factUse, m_isRow ? FormShape::Line : FormShape::Block, m_isRow ? 17 : 13);
    m_form->setAnswerConfirms(m_isRow || need.kind == FactKind::Detector);
    if (use.confirm)
        m_form->setConfirm([this, confirm = use.confirm] { return confirm(*m_form); });
    column->addWidget(m_form);
    connect(m_form, &Form::edited, this, &StepForm::sayReview);
    connect(m_form, &Form::confirmed, this, [this] { emit recorded(m_need); });
    sayReview();
}

FactObjects StepForm::facts(const QJsonObject &values) const
{
    return factsOf(step()->need, values, desk().now());
}

void StepForm::setNeed(const QString &key)
{
    m_need = key;
    showSteps();
}

bool StepForm::corrects(const Fact &fact) const
{
    return step() && step()->need.kind == fact.kind() && step()->need.matches(fact);
}

QWidget *StepForm::refill(const Fact &fact)
{
    QStringList asked;
    for (const QString &key : step()->need.fields)
        asked << key.section('.', 0, 0);
    return correctIn(desk(), *m_form, fact, asked);
}

void StepForm::showSteps()
{
    const Step *now = step();
    if (!now)
        return;
    const bool corrects = !desk().corrects(m_form->objectName()).isEmpty();
    setVisible(corrects || !(now->state == StepState::NotNeeded && isAskedOnlyIfOpen(now->need)));
    m_form->setEnabled(corrects || now->closedBy.isEmpty());
    m_form->button()->parentWidget()->setVisible(!isOneKey(*m_form));
    auto [sign, text] = standingOf(*now, desk().now());
    const QString hint = sentence(now->need.hint);
    if (m_isRow && isSaidAbove(*now)) {
        m_form->fields().front()->setHint(hint, Status::None, text);
        return;
    }
    if (m_isRow) {
        m_form->fields().front()->setHint(text, sign);
        return;
    }
    if (isSaidAbove(*now))
        text = stateName(now->state);
    const QString label = headOf(now->need);
    const bool saysHint = text.endsWith(hint); // it stands below
    m_state->show(
        sign == Status::None ? Status::Open : sign,
        QString("%1: %2").arg(label, saysHint && !hint.isEmpty() ? stateName(now->state) : text));
    m_hint->setVisible(!hint.isEmpty() && now->state != StepState::Done);
}

void StepForm::sayReview()
{
    const Step *now = step();
    QStringList said;
    if (now)
        for (const Finding &finding : reviewOf(desk(), now->need, m_form->values()))
            if (standsBelow(finding))
                said << localized(finding.reason);
    m_form->tell(said.isEmpty() ? Status::None : Status::Doubtful, said.join(u' '));
    m_form->button()->parentWidget()->setVisible(!isOneKey(*m_form));
}

JointForm::JointForm(JobSession &desk, const QString &part, const std::vector<Need> &needs,
                     QWidget *parent)
    : StepEditor(desk, parent)
{
    std::vector<FieldSpec> specs;
    for (const Need &need : needs) {
        FieldSpec spec = fieldSpecsOf(need, desk).front();
        spec.key = need.key.section('.', 1);
        spec.label = sentence(need.label);
        m_needs << need.key;
        specs.push_back(spec);
    }
    FactUse use;
    use.facts = [this](const QJsonObject &values) { return facts(values); };
    use.judge = [this](const QJsonObject &values) { return marks(values); };
    use.fieldOf = [this](int fact, const QString &) {
        return given(m_form->values()).value(fact).section('.', 1);
    };
    m_form =
        makeFactForm(desk, part, tr("Record what was measured"), specs, use, FormShape::Block, 17);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_form);
    connect(m_form, &Form::confirmed, this, [this] { emit recorded(m_needs.last()); });
}

QStringList JointForm::given(const QJsonObject &values) const
{
    QStringList keys;
    for (const QString &need : m_needs)
        if (values.contains(need.section('.', 1)))
            keys << need;
    return keys;
}

FactObjects JointForm::facts(const QJsonObject &values) const
{
    FactObjects list;
    for (const QString &key : given(values))
        if (const Step *step = desk().step(key))
            std::ranges::move(
                factsOf(step->need,
                        {{step->need.fields.front(), values.value(key.section('.', 1))}},
                        desk().now()),
                std::back_inserter(list));
    return list;
}

Findings JointForm::marks(const QJsonObject &values) const
{
    Findings all;
    for (const QString &key : given(values))
        for (Finding finding : reviewOf(
                 desk(), desk().step(key)->need,
                 {{desk().step(key)->need.fields.front(), values.value(key.section('.', 1))}})) {
            finding.field = key.section('.', 1);
            all.push_back(finding);
        }
    return all;
}

void JointForm::showSteps()
{
    bool closed = false;
    for (const QString &key : m_needs) {
        const Step *step = desk().step(key);
        if (!step)
            continue;
        closed = closed || !step->closedBy.isEmpty();
        const auto [sign, text] = standingOf(*step, desk().now());
        // Before the entry it is the unit and the limit that must be read, whatever it waits for.
        const bool untouched = !step->counts && step->before.empty();
        m_form->field(key.section('.', 1))
            ->setHint(untouched ? sentence(step->need.hint) : text,
                      untouched && !step->isToDo() ? Status::None : sign);
    }
    m_form->setEnabled(!closed || !desk().corrects(m_form->objectName()).isEmpty());
}

QWidget *JointForm::entry(const QString &need)
{
    const Field *field = m_form->field(need.section('.', 1));
    return field ? field->field() : m_form->firstEmpty();
}

bool JointForm::enters(const QString &need, const QWidget *widget) const
{
    const Field *field = m_form->field(need.section('.', 1));
    const bool atField = std::ranges::any_of(
        m_form->fields(), [widget](const Field *each) { return each->isAncestorOf(widget); });
    return field && (!atField || field->isAncestorOf(widget));
}

bool JointForm::corrects(const Fact &fact) const
{
    const auto *analog = fact.as<AnalogFact>();
    return analog && m_form->field(toText(analog->quantity));
}

QWidget *JointForm::refill(const Fact &fact)
{
    return correctIn(desk(), *m_form, fact, {"value"});
}

} // namespace loopwright
