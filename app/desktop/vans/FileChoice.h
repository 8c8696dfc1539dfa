#pragma once
// A file that is chosen or typed: where something is written, or what is read.

#include <QWidget>

#include <functional>

class QLineEdit;

namespace loopwright {

class FileChoice : public QWidget
{
    Q_OBJECT
public:
    enum class Way
    {
        Read,
        Write
    };
    /// `name`: object name of the field; the button has ".choose" behind it.
    FileChoice(Way way, const QString &name, const QString &label, const QString &filter,
               QWidget *parent = nullptr);

    QString path() const;
    /// What it is called where a person has not said anything yet.
    void setSuggested(const QString &fileName) { m_suggested = fileName; }
    /// Asks by the system's dialog.
    void choose();

signals:
    void changed();

private:
    Way m_way;
    QString m_label, m_filter, m_suggested;
    QLineEdit *m_path;
};

} // namespace loopwright
