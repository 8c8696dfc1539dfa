#pragma once
// Where the secret halves of the keys lie: a folder of its own (0700), outside the records and
// their backups, a file (0600) for each key, named by its fingerprint. Beside them lies how far the
// records of a station had come when it signed last, so that an older copy of them is known as one.

#include "app/trust/Signing.h"

#include <optional>

namespace loopwright {

class KeyFolder
{
public:
    explicit KeyFolder(QString path)
        : m_path(std::move(path))
    {
    }
    /// `keys` in the XDG data directory of the program.
    static QString defaultPath();

    const QString &path() const { return m_path; }

    /// On the disk when it returns. DiskTrouble if it cannot be written.
    Result<void> put(const SigningKey &key, const QString &holder) const;
    /// Nothing if it is not there. BadInput if the file was altered, or others may read it;
    /// DiskTrouble if it, or the folder, cannot be read.
    Result<std::optional<SigningKey>> find(const QString &fingerprint) const;

    /// The newest head that this machine signed for a station, as JSON; it replaces the one before.
    /// On the disk when it returns. DiskTrouble if it cannot be written.
    Result<void> keepHead(const QString &station, const QByteArray &json) const;
    /// Nothing if none was kept. DiskTrouble if it cannot be read.
    Result<std::optional<QByteArray>> keptHead(const QString &station) const;
    QString headPath(const QString &station) const;

private:
    Result<void> make() const;
    QString fileOf(const QString &fingerprint) const;

    QString m_path;
};

} // namespace loopwright
