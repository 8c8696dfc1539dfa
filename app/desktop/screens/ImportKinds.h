#pragma once
// What a file to import can hold: how it is known, what takes it in, which columns and words are
// ours; and what its beginning shows.

#include "app/actions/FileForms.h"
#include "app/actions/Import.h"

#include <span>

namespace loopwright {

using ImportAction = Result<ImportReport> (*)(Records &, const QByteArray &, const ImportOptions &);

struct ImportKind
{
    const char *key;    ///< of its FileForm
    const char *column; ///< the column by which it is known
    ImportAction run;

    /// Its name and its columns.
    const FileForm &form() const;
};
std::span<const ImportKind> importKinds();

/// Names of all the columns that a file of the kind may have, the required ones first.
QStringList ourColumns(const ImportKind &kind);
/// The words that a column of ours may have; none if it takes any text.
QStringList wordsOf(const ImportKind &kind, const QString &column);

/// The header and the first rows of a file.
struct ImportHead
{
    QString fileName;
    QStringList header;
    std::vector<QStringList> rows;

    /// By it a map is remembered: the SHA-256 of the header.
    QString digest() const;
    bool isOurs(const ImportKind &kind) const;
    /// The different values of a column, in the order in which they come.
    QStringList valuesOf(qsizetype column) const;
};
/// Nothing if the file cannot be read, is not UTF-8 or has no header: the import says why.
std::optional<ImportHead> importHeadOf(const QString &path);

/// Leads what has the same name, but for capitals and blanks; ignores the rest.
ColumnMap proposedMap(const ImportHead &head, const ImportKind &kind);

} // namespace loopwright
