#pragma once
// One value to enter: its label, the unit and the limit that it will be held against, the editor,
// and what is wrong with it.

#include "app/desktop/form/Editor.h"
#include "app/desktop/widgets/FieldMark.h"

class QKeyEvent;

namespace loopwright {

class Field : public FieldMark
{
    Q_OBJECT
public:
    /// The editor's object name is `part`.`key`.
    Field(const QString &part, const FieldSpec &spec, EditorSize size, QWidget *parent = nullptr);

    const FieldSpec &spec() const { return m_spec; }
    QString key() const { return m_spec.key; }
    /// What stands in the editor; a choice's code.
    QString typed() const { return m_editor.text(); }
    /// Says nothing.
    void setTyped(const QString &text) { m_editor.setText(text); }
    void setOptions(const std::vector<KeyedOption> &options) { m_editor.setOptions(options); }
    /// As it stands in a record; undefined where nothing is typed.
    QJsonValue value(const Moment &now) const { return valueOf(m_spec, typed(), now); }
    bool isAsked() const { return !isHidden(); }
    void mark(const QString &reason);
    /// What the check says of it; of a number that has two readings, both of them instead.
    void tell(const Findings &findings);
    /// Puts the keyboard into the editor, with its text chosen.
    void goTo();

    /// Edited or left since it was filled: what is wrong with it is shown from then on.
    bool isTouched() const { return m_touched; }
    void setTouched(bool touched) { m_touched = touched; }
    bool hasKeyboard() const;

signals:
    void edited();
    void left();    ///< the keyboard went elsewhere
    void entered(); ///< Enter, or an answer chosen by its key

protected:
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    Field(const FieldSpec &spec, const Editor &editor, QWidget *parent);
    bool takesKey(const QKeyEvent &key);
    void stepDay(int days);

    FieldSpec m_spec;
    Editor m_editor;
    bool m_touched = false;
};

} // namespace loopwright
