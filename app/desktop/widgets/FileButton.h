#pragma once
// "Choose…" beside a field for a path: the system's dialog begins where the field says, and what is
// chosen there stands in the field as if it had been typed.

#include <QPushButton>

class QLineEdit;

namespace loopwright {

class FileButton : public QPushButton
{
    Q_OBJECT
public:
    enum class Way
    {
        Read,
        Write,
        Folder ///< that is there already; another one is typed
    };
    /// The field has its object name already; the button has it with ".choose" behind it. `label`
    /// is the field's; `filter` as QFileDialog has it.
    FileButton(Way way, QLineEdit *path, const QString &label, const QString &filter = {});

    /// Where the dialog begins while the field is empty.
    void setSuggested(const QString &path) { m_suggested = path; }

protected:
    void keyPressEvent(QKeyEvent *event) override; ///< Enter presses it, in a dialog too

private:
    void choose();

    Way m_way;
    QLineEdit *m_path;
    QString m_label, m_filter, m_suggested;
};

} // namespace loopwright
