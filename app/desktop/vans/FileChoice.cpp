#include "app/desktop/vans/FileChoice.h"

#include <QDir>
#include <QLineEdit>

namespace loopwright {

FileChoice::FileChoice(Way way, const QString &name, const QString &label, const QString &filter,
                       QWidget *parent)
    : FieldMark(label, new QLineEdit, parent)
    , m_path(static_cast<QLineEdit *>(field()))
{
    m_path->setObjectName(name);
    setFocusProxy(m_path);
    setTight(true);
    m_button = new FileButton(way, m_path, label, filter);
    setBeside(m_button);
    connect(m_path, &QLineEdit::textChanged, this, &FileChoice::changed);
}

QString FileChoice::path() const
{
    return QDir::fromNativeSeparators(m_path->text().trimmed());
}

} // namespace loopwright
