#pragma once
// Ties a form to the job: its answers become facts, its draft is the order's, and what the codec of
// a record file refuses stands at the field that it speaks of.

#include "app/desktop/form/Form.h"
#include "app/desktop/job/JobSession.h"

namespace loopwright {

struct FactUse
{
    /// From the values by key to the facts that they make; empty: the form makes none.
    std::function<FactObjects(const QJsonObject &values)> facts = {};
    /// Key of the field that a place within a fact belongs to; where it is empty the place is the
    /// key.
    std::function<QString(int fact, const QString &place)> fieldOf = {};
    /// What is wrong with the values beside what the codec says, at once.
    std::function<Findings(const QJsonObject &values)> judge = {};
    /// Whether what can be read of the values is recorded without the rest: a hazard waits for no
    /// slip in another field. Empty: never.
    std::function<bool(const QJsonObject &values)> isUrgent = {};
    /// Why the values are not recorded although facts could be made of them.
    std::function<std::optional<Finding>(const QJsonObject &values)> refusal = {};
};

/// Shows the draft of `part` where there is one; confirming records the facts and clears the form.
Form *makeFactForm(JobSession &desk, const QString &part, const QString &confirmText,
                   const std::vector<FieldSpec> &fields, FactUse use,
                   FormShape shape = FormShape::Block, double columnEm = 13);

/// Fills the form with a recorded fact, and tells so: what the form records next takes its place,
/// and keeps what is not `asked` for (keys of a fact). Returns what takes the keyboard.
QWidget *correctIn(JobSession &desk, Form &form, const Fact &fact, const QStringList &asked);
/// Likewise, with what is to stand in the form.
QWidget *correctIn(JobSession &desk, Form &form, const Fact &fact, const QStringList &asked,
                   const QJsonObject &typed);

/// An error of reading or recording facts as a finding at its field; of the whole where its place
/// belongs to none.
Finding findingOf(const Form &form, const Error &error, const FactUse &use = {});
/// Tells it there.
void tell(Form &form, const Error &error, const FactUse &use = {});

} // namespace loopwright
