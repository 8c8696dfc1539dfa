#pragma once
// The widget that takes an answer, with the few things that a field does with any of them.

#include "app/desktop/form/FieldSpec.h"

#include <QWidget>

namespace loopwright {

/// How large the editors of a form are.
enum class EditorSize
{
    Roomy, ///< for hands in gloves: measurements on site
    Dense, ///< for a form of many fields at a desk
};

struct Editor
{
    QWidget *widget = nullptr;
    std::function<QString()> text;
    std::function<void(const QString &)> setText; ///< says nothing
    /// Of a list: other choices; the text stays. Of any other editor empty.
    std::function<void(const std::vector<KeyedOption> &)> setOptions = {};
};

/// What an editor tells.
struct EditorHeard
{
    std::function<void()> edited;   ///< another text, by hand
    std::function<void()> answered; ///< the answer is complete: chosen by its key
};

/// `name`: object name of the widget.
Editor makeEditor(const FieldSpec &spec, const QString &name, EditorSize size,
                  const EditorHeard &heard);

} // namespace loopwright
