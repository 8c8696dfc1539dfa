#pragma once
// Answers the system's dialog for files in tests, which is Qt's own there.

#include <QApplication>
#include <QFileDialog>
#include <QLineEdit>
#include <QTimer>

namespace loopwright::filing {

/// The next dialog, which comes while the caller waits for its end, is agreed to with that path
/// typed, or let go of where it is empty. Says in `began` which file or folder it began at.
inline void answer(const QString &path, QString *began = nullptr)
{
    QTimer::singleShot(0, qApp, [path, began] {
        auto *dialog = qobject_cast<QFileDialog *>(QApplication::activeModalWidget());
        auto *name = dialog ? dialog->findChild<QLineEdit *>("fileNameEdit") : nullptr;
        if (!name)
            qFatal("no dialog for files came");
        if (began)
            *began = dialog->directory().filePath(name->text());
        const QSignalBlocker whole(name); // it is no search that completes itself
        name->setText(path);
        QDialog *any = dialog; // where these are public
        path.isEmpty() ? any->reject() : any->accept();
    });
}

} // namespace loopwright::filing
