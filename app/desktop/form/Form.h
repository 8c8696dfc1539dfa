#pragma once
// A form: fields in the order of the work. Enter goes to the next field and at the last one
// confirms; Ctrl+Enter confirms from anywhere. What is typed is handed over as a draft one second
// after the last key, or when the field is left; what the check finds wrong stands at the field,
// as it is typed.
//
// What the answers mean comes in by functions (FormUse): the form keeps nothing, judges nothing
// and records nothing itself.

#include "app/desktop/form/Field.h"

#include <QPushButton>
#include <QTimer>

namespace loopwright {

class FieldGrid;

enum class FormShape
{
    Block, ///< the button below the fields
    Line,  ///< the button behind the last field: one of several short forms
    Cards, ///< each group on a card of its own, dense; the button is elsewhere
};

struct FormUse
{
    /// The clock that a time without a day belongs to; the computer's where it is empty.
    std::function<Moment()> now = {};
    /// Keeps what is typed (key to text) as a draft; an empty object: there is none any more.
    std::function<void(const QJsonObject &typed)> keep = {};
    /// What is wrong with the values; `field` is the key of a field, or empty for the whole.
    std::function<Findings(const QJsonObject &values)> check = {};
    /// Does what the form is for; false where it went wrong and was told.
    std::function<bool()> confirm = {};
    /// A field that is left empty is checked too; else only at the end.
    bool emptyIsWrong = false;
    /// The last answer that is given by one key confirms, if nothing that is needed is empty; else
    /// it waits for Enter on the button.
    bool answerConfirms = false;
};

class Form : public QWidget
{
    Q_OBJECT
public:
    /// A draft is handed over this long after the last key.
    static constexpr int keepAfterMs = 1000;
    /// What is typed is checked this long after the last key.
    static constexpr int checkAfterMs = 300;

    /// `part`: object name, and begin of the names of its editors. `columnEm`: least width of a
    /// column in em (Theme.h).
    Form(const QString &part, const QString &confirmText, const std::vector<FieldGroup> &groups,
         FormUse use, FormShape shape = FormShape::Block, double columnEm = 13,
         QWidget *parent = nullptr);
    ~Form() override;

    Field *field(const QString &key) const;
    const std::vector<Field *> &fields() const { return m_fields; }
    QJsonObject values() const; ///< of the fields that are asked; "a.b" stands in an object "a"
    QJsonObject typed() const;  ///< key to text, of every field that is not empty
    /// Replaces everything, forgets every mark and every draft that is not handed over yet. Says
    /// nothing. `touched`: what is wrong is shown at once.
    void setTyped(const QJsonObject &typed, bool touched = false);
    /// Fills fields that are empty.
    void propose(const QJsonObject &typed);
    void clear() { setTyped({}); }
    /// Asks anew which fields are asked.
    void showAsked();
    void setGroupTitle(std::size_t group, const QString &title);

    /// Null where the form has none of its own.
    QPushButton *button() const { return m_button; }
    void setConfirm(std::function<bool()> confirm) { m_use.confirm = std::move(confirm); }
    void setCheck(std::function<Findings(const QJsonObject &values)> check);
    void setAnswerConfirms(bool on) { m_use.answerConfirms = on; }

    /// Shows a finding at its field, with the keyboard, or below the form.
    void tell(const Finding &finding);
    void tell(Status sign, const QString &sentence);
    /// The first field that is asked and empty; where there is none the button, else the first.
    QWidget *firstEmpty() const;
    /// Moves the keyboard to the field, and the page with it.
    void goTo(const QString &key);
    /// Checks everything, also what was not touched yet; tells the first error. False: there is
    /// one.
    bool check();
    /// Puts findings at their fields, where those were touched.
    void showFindings(const Findings &findings);
    /// What is wrong is shown at every field from now on.
    void touchAll();
    /// Hands the draft over now.
    void keep();
    /// Likewise, only where something was typed since.
    void keepPending();

public slots:
    /// Does what the form is for. False, with the reason told, where that was refused.
    bool confirm();

signals:
    void edited();    ///< at once, by hand
    void rested();    ///< a moment after the last key, or as a field is left: checked anew
    void confirmed(); ///< after FormUse::confirm went well

protected:
    void hideEvent(QHideEvent *event) override;

private:
    struct Group
    {
        QWidget *holder; ///< hidden where nothing of it is asked
        QLabel *title;
        std::vector<Field *> fields;
    };
    FieldGrid *addGroup(const FieldGroup &group, const QString &part, FormShape shape,
                        double columnEm);
    void addField(const QString &part, const FieldSpec &spec, FormShape shape, FieldGrid *grid);
    void addButton(FormShape shape, FieldGrid *grid);
    void dressButton();
    void addKeys();
    void fieldEdited(Field *field);
    void fieldLeft(Field *field);
    void fieldEntered(Field *field);
    bool isComplete() const;
    void rest();
    Moment now() const;

    FormUse m_use;
    std::vector<Group> m_groups;
    std::vector<Field *> m_fields;
    QPushButton *m_button; ///< null where it is elsewhere
    SignLine *m_told;
    QTimer m_resting; ///< runs from the last key to the check
    QTimer m_keeping; ///< runs while something is typed that is not kept
    bool m_all = false;
};

} // namespace loopwright
