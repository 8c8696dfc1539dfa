#include "app/desktop/job/FactForm.h"

#include "app/desktop/Language.h"
#include "app/desktop/form/TypedNumber.h"
#include "app/desktop/job/FactText.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

namespace loopwright {

namespace {

QString keyAt(const Form &form, const QString &place, const FactUse &use)
{
    static const QRegularExpression within(QStringLiteral("(?:^|\\.)facts\\[(\\d+)\\]\\.?(.*)$"));
    const auto match = within.match(place);
    if (!match.hasMatch())
        return {};
    const QString rest = match.captured(2);
    if (use.fieldOf)
        return use.fieldOf(match.captured(1).toInt(), rest);
    for (const Field *field : form.fields())
        if (rest == field->key() || rest.startsWith(field->key() + '['))
            return field->key();
    return {};
}

Findings checkFacts(const JobSession &desk, const Form &form, const QJsonObject &values,
                    const FactUse &use)
{
    Findings findings = use.judge ? use.judge(values) : Findings();
    if (use.facts)
        if (const auto read = desk.read(use.facts(values), form.objectName()); !read)
            findings.push_back(findingOf(form, read.error(), use));
    return findings;
}

void leaveOut(QJsonObject &values, const QString &key)
{
    const qsizetype dot = key.indexOf(u'.');
    if (dot < 0) {
        values.remove(key);
        return;
    }
    QJsonObject inner = values.value(key.left(dot)).toObject();
    inner.remove(key.mid(dot + 1));
    values.insert(key.left(dot), inner);
}

/// The values without those that cannot be read, as long as they stay urgent; `left` takes what was
/// left out, in words.
QJsonObject readableOf(const JobSession &desk, const Form &form, const FactUse &use,
                       QStringList &left)
{
    QJsonObject values = form.values();
    if (!use.isUrgent || !use.isUrgent(values))
        return values;
    for (std::size_t i = 0; i < form.fields().size(); ++i) {
        const auto read = desk.read(use.facts(values), form.objectName());
        if (read)
            return values;
        const Field *field = form.field(findingOf(form, read.error(), use).field);
        if (!field)
            break;
        leaveOut(values, field->key());
        left << QString("%1 (%2)").arg(field->spec().spoken.isEmpty() ? field->spec().label
                                                                      : field->spec().spoken,
                                       field->typed());
        if (!use.isUrgent(values)) // it is the hazard itself that cannot be recorded
            break;
    }
    left.clear();
    return form.values();
}

bool record(JobSession &desk, Form &form, const FactUse &use)
{
    QStringList left;
    const FactObjects facts = use.facts(readableOf(desk, form, use, left));
    if (const auto read = desk.read(facts, form.objectName()); !read) {
        tell(form, read.error(), use);
        return false;
    }
    if (facts.empty()) {
        form.tell(Status::Open, QCoreApplication::translate("Form", "Nothing is entered yet."));
        return false;
    }
    if (const auto refused = use.refusal ? use.refusal(form.values()) : std::nullopt) {
        form.tell(*refused);
        return false;
    }
    const QJsonObject before = form.typed();
    form.clear(); // first: recording reads the page anew, and what is shown then is no draft any
                  // more
    if (const auto report = desk.record(form.objectName(), facts); !report) {
        form.setTyped(before);
        form.keep();
        tell(form, report.error(), use);
        return false;
    }
    if (!left.isEmpty())
        form.tell(Status::Doubtful,
                  QCoreApplication::translate(
                      "Form", "Recorded without what could not be read: %1. Do not go back for it.")
                      .arg(left.join(QStringLiteral(", "))));
    return true;
}

/// Text of a value as it is typed into a field of this kind.
QString textOf(const QJsonValue &value)
{
    return value.isBool()     ? QString(value.toBool() ? "true" : "false")
           : value.isDouble() ? numberAsTyped(value.toVariant().toString())
                              : value.toVariant().toString();
}

/// A time of today without its day.
QString shortClock(const QString &time, const Moment &now)
{
    const QString clock = time.mid(11, 8);
    return clockText(clock, now) == time ? clock : time;
}

/// What of a fact would have been typed into the form: key to text.
QJsonObject typedOf(const Form &form, const Fact &fact)
{
    const QJsonObject object = fact.toJson();
    if (const auto *analog = fact.as<AnalogFact>()) // one of many in its form
        return {{toText(analog->quantity), textOf(object.value("value"))}};
    QJsonObject typed;
    for (const Field *field : form.fields()) {
        const QString head = field->key().section(u'.', 0, 0), rest = field->key().section(u'.', 1);
        const QJsonValue outer = object.value(head);
        if (outer.isArray()) // of what was confirmed
            typed.insert(field->key(), textOf(outer.toArray().contains(rest)));
        else if (const QJsonValue value = rest.isEmpty() ? outer : outer.toObject().value(rest);
                 !value.isUndefined())
            typed.insert(field->key(), textOf(value));
    }
    return typed;
}

} // namespace

QWidget *correctIn(JobSession &desk, Form &form, const Fact &fact, const QStringList &asked)
{
    return correctIn(desk, form, fact, asked, typedOf(form, fact));
}

QWidget *correctIn(JobSession &desk, Form &form, const Fact &fact, const QStringList &asked,
                   const QJsonObject &typed)
{
    QJsonObject shown = typed;
    for (const Field *field : form.fields())
        if (field->spec().answer == Answer::Clock && shown.contains(field->key()))
            shown.insert(field->key(),
                         shortClock(shown.value(field->key()).toString(), desk.now()));
    form.setTyped(shown);
    desk.setCorrects(form.objectName(), fact, asked);
    form.keep();
    form.tell(Status::Note,
              QCoreApplication::translate(
                  "Form", "Filled with the entry of %1. What you record takes its place; that one "
                          "stays on record as corrected.")
                  .arg(timeText(fact.at, desk.now().localDate())));
    const auto filled = std::ranges::find_if(
        form.fields(), [](const Field *each) { return !each->typed().isEmpty(); });
    return (filled == form.fields().end() ? form.fields().front() : *filled)->field();
}

Finding findingOf(const Form &form, const Error &error, const FactUse &use)
{
    const Field *field = form.field(keyAt(form, error.place, use));
    const bool shown = field && field->isAsked();
    return {Severity::Error,
            "entry",
            Text::verbatim(shown ? localizedSentence(error.message) : localized(error)),
            {},
            shown ? field->key() : QString(),
            0};
}

void tell(Form &form, const Error &error, const FactUse &use)
{
    form.tell(findingOf(form, error, use));
}

Form *makeFactForm(JobSession &desk, const QString &part, const QString &confirmText,
                   const std::vector<FieldSpec> &fields, FactUse use, FormShape shape,
                   double columnEm)
{
    FormUse formUse;
    formUse.now = [&desk] { return desk.now(); };
    formUse.keep = [&desk, part](const QJsonObject &typed) { desk.keepDraft(part, typed); };
    auto *form = new Form(part, confirmText, {{{}, fields}}, formUse, shape, columnEm);
    form->setTyped(desk.draft(part));
    if (use.facts || use.judge)
        form->setCheck([&desk, form, use](const QJsonObject &values) {
            return checkFacts(desk, *form, values, use);
        });
    if (use.facts)
        form->setConfirm([&desk, form, use] { return record(desk, *form, use); });
    return form;
}

} // namespace loopwright
