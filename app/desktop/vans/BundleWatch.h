#pragma once
// Tells below every page that bundles lie in the folder that is watched, e.g. one that office and
// vans share. Nothing is taken in unasked.

#include "app/actions/BundleFolder.h"
#include "app/desktop/Lanes.h"

#include <QFrame>
#include <QTimer>

namespace loopwright {

class DesktopContext;
class SignLine;

class BundleWatch : public QFrame
{
    Q_OBJECT
public:
    explicit BundleWatch(DesktopContext &workplace, QWidget *parent = nullptr);

    /// Empty: none is watched.
    void watch(const QString &folder);
    QString folder() const { return m_folder; }
    /// Also between the looks that it takes by itself.
    void look();

signals:
    void takeInWished(const QStringList &paths);
    void folderChanged();
    /// Once, until the folder can be read again.
    void troubled(const QString &sentence);

private:
    void showLook(const Result<FolderLook> &found);
    void tell();

    Asker m_asker;
    QTimer m_timer;
    QString m_folder;
    QHash<QString, FolderFile> m_files;
    QStringList m_waiting;
    QStringList m_later; ///< of these a person wants to hear later
    bool m_isTroubled = false;
    SignLine *m_words;
};

} // namespace loopwright
