#include "app/desktop/widgets/FileButton.h"

#include <QDir>
#include <QFileDialog>
#include <QKeyEvent>
#include <QLineEdit>

namespace loopwright {

FileButton::FileButton(Way way, QLineEdit *path, const QString &label, const QString &filter)
    : QPushButton(tr("Choose…"))
    , m_way(way)
    , m_path(path)
    , m_label(label)
    , m_filter(filter)
{
    setObjectName(path->objectName() + ".choose");
    setAccessibleName(tr("Choose: %1").arg(label));
    setAutoDefault(false); // Enter in the field is for the dialog around
    connect(this, &QPushButton::clicked, this, &FileButton::choose);
}

void FileButton::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QPushButton::keyPressEvent(event);
}

void FileButton::choose()
{
    const QString typed = QDir::fromNativeSeparators(m_path->text().trimmed());
    const QString begin = typed.isEmpty() ? m_suggested : typed;
    const auto ask = [&]() -> QString {
        switch (m_way) {
        case Way::Read:
            return QFileDialog::getOpenFileName(this, m_label, begin, m_filter);
        case Way::Write:
            return QFileDialog::getSaveFileName(this, m_label, begin, m_filter);
        case Way::Folder:
            return QFileDialog::getExistingDirectory(this, m_label, begin);
        }
        return {};
    };
    const QString chosen = QDir::toNativeSeparators(ask());
    if (chosen.isEmpty())
        return;
    m_path->setText(chosen);
    emit m_path->textEdited(chosen);
}

} // namespace loopwright
