#pragma once
// A small form that becomes one or more facts: fields in the order of the work, one button. Enter
// goes to the next field and at the last one confirms; Ctrl+Enter confirms from anywhere. Each time
// a field is left its content is kept as a draft, and what the codec says of it stands at the
// field.

#include "app/desktop/job/EntryField.h"
#include "app/desktop/job/JobSession.h"

#include <QPushButton>

namespace loopwright {

class FieldGrid;

enum class FormShape
{
    Block, ///< the button below the fields
    Line,  ///< the button behind the last field: one of several short forms
};

class EntryForm : public QWidget
{
    Q_OBJECT
public:
    /// From the values by key to the facts that they make.
    using MakeFacts = std::function<FactObjects(const QJsonObject &values)>;
    /// Key of the field that a place in a fact belongs to.
    using FieldOf = std::function<QString(int fact, const QString &place)>;

    /// Shows the draft of `part` where there is one.
    EntryForm(JobSession &desk, const QString &part, const QString &confirmText,
              const std::vector<FieldSpec> &asks, MakeFacts facts,
              FormShape shape = FormShape::Block, double columnEm = 13);

    EntryField *field(const QString &key) const;
    QJsonObject values() const; ///< of the fields that are asked; "a.b" stands in an object "a"
    QJsonObject typed() const;  ///< key to text
    void setTyped(const QJsonObject &typed);
    void clear();
    QPushButton *button() const { return m_button; }
    /// Does this in the place of recording; false where it went wrong and was told.
    void setConfirm(std::function<bool()> confirm) { m_confirm = std::move(confirm); }
    void setFieldOf(FieldOf fieldOf) { m_fieldOf = std::move(fieldOf); }
    /// What reads or records the facts found wrong: at its field, else below the button.
    void tell(const Error &error);
    void tell(Status sign, const QString &sentence);
    /// The first field that is asked and empty; the button where there is none.
    QWidget *firstEmpty() const;
    /// Reads the facts and marks the first error; nothing where all is well.
    bool check();
    void keep();

public slots:
    /// Records the facts, clears the form. False, with the reason told, where they were refused.
    bool confirm();

signals:
    void edited();
    void wasLeft(); ///< the keyboard left a field, and what is wrong with it stands there
    void recorded();

private:
    void addField(const FieldSpec &ask, FieldGrid *grid);
    void addButton(FormShape shape, FieldGrid *grid);
    void dressButton();
    void showAsked();
    void fieldLeft(EntryField *field);
    void markWrong(EntryField *field);
    void fieldEntered(EntryField *field);
    EntryField *fieldAt(const QString &place) const;

    JobSession &m_desk;
    QString m_part;
    MakeFacts m_facts;
    FieldOf m_fieldOf;
    std::function<bool()> m_confirm;
    std::vector<EntryField *> m_fields;
    QPushButton *m_button;
    SignLine *m_told;
};

} // namespace loopwright
