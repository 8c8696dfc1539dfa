#include "app/desktop/form/Editor.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/ServicesEdit.h"

#include <QComboBox>
#include <QCompleter>
#include <QCoreApplication>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace loopwright {

namespace {

std::vector<KeyedOption> yesNo()
{
    return {{u'Y', QStringLiteral("true"), QCoreApplication::translate("Form", "Yes")},
            {u'N', QStringLiteral("false"), QCoreApplication::translate("Form", "No")}};
}

bool isDigits(Answer answer)
{
    return answer == Answer::Number || answer == Answer::Whole || answer == Answer::Clock ||
           answer == Answer::Date;
}

/// High enough for gloves.
void makeRoomy(QWidget *edit, bool digits)
{
    whenThemed(edit, [edit, digits] {
        edit->setFont(digits ? digitsFont(1.2) : sized(1.1));
        edit->setMinimumHeight(em(2.5));
    });
}

Editor lineEditor(const FieldSpec &spec, EditorSize size, const EditorHeard &heard)
{
    auto *edit = new QLineEdit;
    if (isDigits(spec.answer))
        edit->setInputMethodHints(Qt::ImhPreferNumbers);
    const bool digits = isDigits(spec.answer) || spec.answer == Answer::Identifier;
    if (size == EditorSize::Roomy)
        makeRoomy(edit, digits);
    else if (spec.answer == Answer::Identifier)
        whenThemed(edit, [edit] { edit->setFont(digitsFont()); });
    QObject::connect(edit, &QLineEdit::textEdited, edit, heard.edited);
    return {edit, [edit] { return edit->text().trimmed(); },
            [edit](const QString &text) {
                if (edit->text().trimmed() != text) // the cursor stays where the text does
                    edit->setText(text);
            }};
}

Editor linesEditor(const EditorHeard &heard)
{
    auto *edit = new QPlainTextEdit;
    edit->setTabChangesFocus(true);
    whenThemed(edit, [edit] { edit->setFixedHeight(em(4)); });
    QObject::connect(edit, &QPlainTextEdit::textChanged, edit, heard.edited);
    return {edit, [edit] { return edit->toPlainText().trimmed(); },
            [edit](const QString &text) {
                const QSignalBlocker quiet(edit);
                if (edit->toPlainText().trimmed() != text)
                    edit->setPlainText(text);
            }};
}

Editor keyedEditor(const FieldSpec &spec, const EditorHeard &heard)
{
    auto *choice = new KeyedChoice(spec.options.empty() ? yesNo() : spec.options);
    choice->setName(spec.label);
    QObject::connect(choice, &KeyedChoice::edited, choice, heard.edited);
    QObject::connect(choice, &KeyedChoice::chosen, choice, heard.answered);
    return {choice, [choice] { return choice->code(); },
            [choice](const QString &code) { choice->setCode(code); }};
}

Editor servicesEditor(const FieldSpec &spec, const QString &name, const EditorHeard &heard)
{
    Services offered;
    for (const KeyedOption &option : spec.options)
        offered |= servicesFromText(option.code).value_or(Services());
    auto *edit = new ServicesEdit(name, spec.spoken.isEmpty() ? spec.label : spec.spoken, offered);
    QObject::connect(edit, &ServicesEdit::edited, edit, heard.edited);
    return {edit, [edit] { return edit->text(); },
            [edit](const QString &text) { edit->setText(text); }};
}

QString textOf(const QComboBox &combo)
{
    if (!combo.isEditable())
        return combo.currentData().toString();
    const QString typed = combo.currentText().trimmed();
    const int known = combo.findText(typed);
    return known >= 0 ? combo.itemData(known).toString() : typed;
}

void showText(QComboBox &combo, const QString &text)
{
    const QSignalBlocker quiet(combo);
    const int known = combo.findData(text);
    if (known >= 0) {
        combo.setCurrentIndex(known);
    } else if (combo.isEditable()) {
        combo.setCurrentIndex(-1);
        combo.setEditText(text);
    } else if (text.isEmpty()) {
        combo.setCurrentIndex(-1);
    } else { // a code that this list does not have; the check will say so
        combo.addItem(text, text);
        combo.setCurrentIndex(combo.count() - 1);
    }
}

void showOptions(QComboBox &combo, const std::vector<KeyedOption> &options)
{
    const QString kept = textOf(combo);
    const QSignalBlocker quiet(combo);
    combo.clear();
    for (const KeyedOption &option : options)
        combo.addItem(option.label, option.code);
    showText(combo, kept);
}

Editor listEditor(const FieldSpec &spec, EditorSize size, const EditorHeard &heard)
{
    auto *combo = new QComboBox;
    combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    combo->setMinimumContentsLength(8);
    if (size == EditorSize::Roomy)
        makeRoomy(combo, false);
    if (spec.answer == Answer::OpenList) {
        combo->setEditable(true);
        combo->setInsertPolicy(QComboBox::NoInsert);
        combo->completer()->setFilterMode(Qt::MatchContains);
        combo->completer()->setCompletionMode(QCompleter::PopupCompletion);
        combo->lineEdit()->setAccessibleName(spec.spoken.isEmpty() ? spec.label : spec.spoken);
        QObject::connect(combo, &QComboBox::editTextChanged, combo, heard.edited);
    }
    showOptions(*combo, spec.options);
    QObject::connect(combo, &QComboBox::activated, combo, heard.edited);
    return {combo, [combo] { return textOf(*combo); },
            [combo](const QString &text) { showText(*combo, text); },
            [combo](const std::vector<KeyedOption> &options) { showOptions(*combo, options); }};
}

Editor editorOf(const FieldSpec &spec, const QString &name, EditorSize size,
                const EditorHeard &heard)
{
    switch (spec.answer) {
    case Answer::Choice:
    case Answer::YesNo:
        return keyedEditor(spec, heard);
    case Answer::List:
    case Answer::OpenList:
        return listEditor(spec, size, heard);
    case Answer::Lines:
        return linesEditor(heard);
    case Answer::Services:
        return servicesEditor(spec, name, heard);
    default:
        return lineEditor(spec, size, heard);
    }
}

} // namespace

Editor makeEditor(const FieldSpec &spec, const QString &name, EditorSize size,
                  const EditorHeard &heard)
{
    Editor editor = editorOf(spec, name, size, heard);
    editor.widget->setObjectName(name);
    if (!spec.spoken.isEmpty())
        editor.widget->setAccessibleName(spec.spoken);
    return editor;
}

} // namespace loopwright
