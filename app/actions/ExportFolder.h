#pragma once
// A folder of files that are handed out together: tables as RFC 4180 CSV, documents as JSON, and at
// the end a manifest with the SHA-256 of each. A folder whose manifest is not there, or tells other
// sums, is not whole.

#include "app/actions/OutFile.h"
#include "app/actions/Records.h"
#include "core/base/Json.h"
#include "core/certificate/NumberGuard.h"

#include <QCryptographicHash>

#include <functional>
#include <memory>

namespace loopwright {

/// What the cells of the tables and the texts of the documents go through.
struct ExportForm
{
    NumberGuard guard = {};   ///< covers the unpublished numbers; an empty one covers none
    bool internal = false;    ///< they are in it: for its owner's eyes only
    bool spreadsheet = false; ///< no cell is taken for a formula
};

/// Knows the test lines of every office: calls to them stand in facts, and in all that is made of
/// facts and remarks.
Result<NumberGuard> guardOfAllOffices(Records &records);

/// A document with each of its texts covered; names by which facts and files are told apart stay.
QJsonValue coveredJson(const QJsonValue &value, const NumberGuard &guard);

/// A name as the name of a file: what a file system may not take is written as %XX.
QString asFileName(const QString &name);

/// One row of a table that is being written.
using TakeCells = std::function<Result<void>(const QStringList &)>;

class ExportFolder
{
public:
    /// Makes the folder. What is written comes together beside its place, and takes that of an
    /// earlier export when it is closed; without that nothing is left of it. Usage if the folder
    /// holds anything else.
    static Result<ExportFolder> open(const QString &path, ExportForm form);

    /// `fill` gives each row, the header first. `name` may have a folder before it.
    Result<void> table(const QString &name,
                       const std::function<Result<void>(const TakeCells &)> &fill);
    Result<void> document(const QString &name, const QJsonValue &value);
    /// As they are.
    Result<void> bytes(const QString &name, FileKind kind, const QByteArray &bytes);
    /// Writes manifest.json: what `about` says, and each file with its size and sum. Then all of it
    /// is there.
    Result<void> close(QJsonObject about);

    const QStringList &paths() const { return m_paths; } ///< once it is closed, in this order
    qsizetype written() const { return m_names.size(); } ///< files so far
    const ExportForm &form() const { return m_form; }

private:
    struct Writing
    {
        OutFile file;
        std::unique_ptr<QCryptographicHash> hash; ///< SHA-256
        qint64 size = 0;

        Result<void> add(const QByteArray &bytes);
    };
    Result<Writing> begin(const QString &name, FileKind kind);
    Result<void> end(const QString &name, Writing &writing);

    Result<void> putInPlace();

    /// Goes with what was not put in its place.
    struct Making
    {
        explicit Making(const QString &path);
        ~Making();
        QString folder;
        bool isNew;
        QString part;
    };
    std::unique_ptr<Making> m_making;
    ExportForm m_form;
    QStringList m_earlier; ///< files of the export that this one replaces
    QStringList m_names, m_paths;
    QJsonArray m_files;
};

} // namespace loopwright
