#pragma once
// The files with columns that the program reads: what each is called, which columns it has, as its
// reader has them, what stands in a column, and a sample that its own reader takes. Written once
// for window, command line and manual.

#include "core/base/Csv.h"
#include "core/base/Text.h"

#include <span>
#include <vector>

namespace loopwright {

struct FileForm
{
    const char *key; ///< "orders"
    const char *name;
    const char *command; ///< words of the command line that take it
    CsvLayout (*layout)();
    const char *sample; ///< lines, the header first
};
/// Those of the register first, as they must come in.
std::span<const FileForm> fileForms();
QStringList fileFormKeys();
/// Null for a key that is none.
const FileForm *findFileForm(const QString &key);

struct FileColumn
{
    QString name; ///< "dn_2"; "dn_1 to dn_8" of those that are numbered
    bool required = false;
    QStringList words; ///< the words that it may have; none if it takes any text
    Text meaning;
};
/// The required ones first, each row of dn_1, dn_2, … as one.
std::vector<FileColumn> columnsOf(const FileForm &form);
/// CSV, ended as RFC 4180 has it.
QByteArray sampleOf(const FileForm &form);

/// The words that a column may have; none if it takes any text.
QStringList wordsOfColumn(const QString &form, const QString &column);
/// What stands in it; of dn_2 asked for by "dn_#". Empty for a column that the form has not.
Text meaningOfColumn(const QString &form, const QString &column);

} // namespace loopwright
