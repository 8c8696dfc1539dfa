#include "tests/fuzz/Seeds.h"

#include "tests/fuzz/Fuzz.h"

#include <QDir>
#include <QDirIterator>
#include <QMap>
#include <QSet>

namespace loopwright::fuzz {

namespace {

const QString corpus = QStringLiteral(LOOPWRIGHT_SOURCE_DIR "/tests/fuzz/corpus/");
const QString listOfSeeds = QStringLiteral("seeds.txt");

/// By reader.
QMap<QByteArray, QByteArrayList> &seeds()
{
    static QMap<QByteArray, QByteArrayList> all;
    return all;
}

bool wrong(const QString &file, const char *what)
{
    std::fprintf(stderr, "%s: %s\n", qPrintable(corpus + file), what);
    return false;
}

std::optional<QByteArray> contentOf(const QString &file)
{
    QFile opened(corpus + file);
    return opened.open(QIODevice::ReadOnly) ? std::optional(opened.readAll()) : std::nullopt;
}

} // namespace

bool readSeeds()
{
    const auto list = contentOf(listOfSeeds);
    if (!list)
        return wrong(listOfSeeds, "cannot be read");
    QSet<QString> named{listOfSeeds};
    for (const QByteArray &line : list->split('\n')) {
        if (line.isEmpty() || line.startsWith('#'))
            continue;
        const QString file = QString::fromUtf8(line.left(line.indexOf(' ')));
        const auto content = contentOf(file);
        if (!content)
            return wrong(file, "is named in seeds.txt and cannot be read");
        seeds()[file.section('/', 0, 0).toLatin1()] << *content;
        named << file;
    }
    QDirIterator files(corpus, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext())
        if (const QString file = files.next().mid(corpus.size()); !named.contains(file))
            return wrong(file, "is not named in seeds.txt");
    return true;
}

QByteArray seed(Random &random, const QByteArray &made)
{
    const auto own = seeds().constFind(g_reader);
    promise(own != seeds().constEnd(), "there are seeds of the reader");
    return below(random, 3) == 0 ? own->at(below(random, own->size())) : made;
}

} // namespace loopwright::fuzz
