// Flips a bit of every byte of a small database in turn, and asks verify and audit about each:
// hours. Usage: soak.flips FOLDER [FIRST [STRIDE]]. The folder takes some megabytes. Ends with 1 if
// a flip that says something was missed, and tells where.

#include "tests/support/Flips.h"
#include "tests/support/SmallRecords.h"

#include <QDir>
#include <QGuiApplication>

#include <cstdio>

using namespace loopwright;

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen"); // the certificate is painted
    const QGuiApplication application(argc, argv);
    const QStringList words = QGuiApplication::arguments();
    if (words.size() < 2) {
        std::fprintf(stderr, "usage: soak.flips FOLDER [FIRST [STRIDE]]\n");
        return 2;
    }
    const QDir folder(words[1]);
    const QString records = folder.filePath("records.sqlite");
    if (QFile::exists(records)) {
        std::fprintf(stderr, "%s is there already\n", qPrintable(records));
        return 2;
    }
    jobs::makeSmallRecords(records);
    flips::Flipper flipper(records, folder.filePath("flipped.sqlite"));
    const qint64 stride = std::max<qint64>(words.value(3, "1").toLongLong(), 1);
    qint64 found = 0, harmless = 0, missed = 0;
    for (qint64 offset = words.value(2, "0").toLongLong(); offset < flipper.size();
         offset += stride) {
        const flips::Flip flip = flipper.flip(offset);
        found += flip == flips::Flip::Found;
        harmless += flip == flips::Flip::SaysNothing;
        if (flip != flips::Flip::Missed)
            continue;
        ++missed;
        std::printf("byte %lld was missed\n", static_cast<long long>(offset));
        std::fflush(stdout);
    }
    std::printf("%lld found, %lld where nothing is said, %lld missed\n",
                static_cast<long long>(found), static_cast<long long>(harmless),
                static_cast<long long>(missed));
    return missed == 0 ? 0 : 1;
}
