#pragma once
// A disk of a given size that a test can fill or make read-only: a tmpfs, which only root can
// mount. If that is not possible, mounted() is false and the test skips with a message.

#include <QFile>
#include <QTemporaryDir>

#include <sys/mount.h>

class SmallDisk
{
public:
    explicit SmallDisk(const char *size)
        : m_mounted(m_folder.isValid() &&
                    ::mount("tmpfs", where().constData(), "tmpfs", 0,
                            QByteArray("size=").append(size).constData()) == 0)
    {
    }
    ~SmallDisk()
    {
        if (m_mounted)
            ::umount2(where().constData(), MNT_DETACH);
    }
    SmallDisk(const SmallDisk &) = delete;
    SmallDisk &operator=(const SmallDisk &) = delete;

    bool mounted() const { return m_mounted; }
    QString file(const QString &name) const { return m_folder.filePath(name); }
    bool makeReadOnly()
    {
        return ::mount("tmpfs", where().constData(), "tmpfs", MS_REMOUNT | MS_RDONLY, "") == 0;
    }
    /// Fills the disk up to the last byte with a file of this name.
    void fill(const QString &name)
    {
        QFile file(this->file(name));
        if (!file.open(QIODevice::WriteOnly | QIODevice::Unbuffered))
            return;
        const QByteArray block(4096, 'x');
        while (file.write(block) > 0) {
        }
    }

private:
    QByteArray where() const { return QFile::encodeName(m_folder.path()); }

    QTemporaryDir m_folder;
    bool m_mounted;
};
