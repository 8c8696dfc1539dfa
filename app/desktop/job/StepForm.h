#pragma once
// The form of one step, made from the table of its fields; and the form of several steps that are
// measured together and recorded with one Enter.

#include "app/desktop/form/Form.h"
#include "app/desktop/job/StepEditor.h"

namespace loopwright {

struct StepFormUse
{
    /// What keeps the entry from being recorded although a fact could be made of it; `field` is a
    /// key of the form. Empty: nothing does.
    std::function<std::optional<Finding>(const QJsonObject &values)> refusal = {};
    /// What is asked beyond, or otherwise than, the table says.
    std::function<void(std::vector<FieldSpec> &)> adapt = {};
    /// Does what the form is for in the place of recording the fact; false where it was refused.
    std::function<bool(Form &form)> confirm = {};
    QString button = {}; ///< "Record" if empty
    /// FactUse::isUrgent
    std::function<bool(const QJsonObject &values)> isUrgent = {};
};

class StepForm : public StepEditor
{
    Q_OBJECT
public:
    /// `part`: begin of the object names, and the draft.
    StepForm(JobSession &desk, const QString &part, const Need &need, const StepFormUse &use = {},
             QWidget *parent = nullptr);

    QStringList needs() const override { return {m_need}; }
    void showSteps() override;
    QWidget *entry(const QString &) override { return m_form->firstEmpty(); }
    bool corrects(const Fact &fact) const override;
    QWidget *refill(const Fact &fact) override;
    bool isShort() const override { return m_isShort; }
    Form *form() const { return m_form; }
    /// Another need of the same kind: the check of another channel.
    void setNeed(const QString &key);

private:
    const Step *step() const { return desk().step(m_need); }
    FactObjects facts(const QJsonObject &values) const;
    void sayReview();

    QString m_need;
    bool m_isRow;   ///< its state stands below its first field
    bool m_isShort; ///< one question
    SignLine *m_state = nullptr;
    QLabel *m_hint = nullptr;
    Form *m_form;
};

class JointForm : public StepEditor
{
    Q_OBJECT
public:
    JointForm(JobSession &desk, const QString &part, const std::vector<Need> &needs,
              QWidget *parent = nullptr);

    QStringList needs() const override { return m_needs; }
    void showSteps() override;
    QWidget *entry(const QString &need) override;
    bool enters(const QString &need, const QWidget *widget) const override;
    bool corrects(const Fact &fact) const override;
    QWidget *refill(const Fact &fact) override;

private:
    QStringList given(const QJsonObject &values) const;
    FactObjects facts(const QJsonObject &values) const;
    Findings marks(const QJsonObject &values) const;

    QStringList m_needs;
    Form *m_form;
};

/// "turnup.layer.1.u": part of a need on a panel; a panel that bears the need's name is not named
/// twice.
QString partOf(const QString &panel, const QString &need);

} // namespace loopwright
