#pragma once
// A file that is chosen or typed: where something is written, or what is read.

#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/FileButton.h"

namespace loopwright {

class FileChoice : public FieldMark
{
    Q_OBJECT
public:
    using Way = FileButton::Way;
    /// `name`: object name of the field.
    FileChoice(Way way, const QString &name, const QString &label, const QString &filter,
               QWidget *parent = nullptr);

    QString path() const;
    /// What it is called where a person has not said anything yet.
    void setSuggested(const QString &fileName) { m_button->setSuggested(fileName); }

signals:
    void changed();

private:
    QLineEdit *m_path;
    FileButton *m_button;
};

} // namespace loopwright
