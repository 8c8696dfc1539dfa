// Work that something goes wrong in, over and over: the process is killed, the power cut, the disk
// full or refusing, two programs write at once, the clock is set back. Usage: soak.durability
// FOLDER [KIND|all [ROUNDS [SEED [FIRST]]]]. The folder is empty; what was wrong stays in it. Tells
// for each kind what was found, and ends with 1 if anything was wrong.

#include "tests/soak/Rounds.h"

#include <QGuiApplication>
#include <QHashSeed>

#include <cstdio>

using namespace loopwright;

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen"); // the certificate is painted
    // What another process must make again byte for byte, as in the programs.
    QHashSeed::setDeterministicGlobalSeed();
    const QGuiApplication application(argc, argv);
    const QStringList words = QGuiApplication::arguments();
    const QString kind = words.value(2, "all");
    if (words.size() < 2 || (kind != "all" && !soak::kinds().contains(kind)) ||
        !QDir(words[1]).isEmpty()) {
        std::fprintf(stderr,
                     "usage: soak.durability EMPTY-FOLDER [all|%s [ROUNDS [SEED [FIRST]]]]\n",
                     qPrintable(soak::kinds().join('|')));
        return 2;
    }
    const QDir folder(words[1]);
    qputenv("XDG_DATA_HOME", QFile::encodeName(folder.filePath("home"))); // the keys
    int faults = 0;
    for (const QString &each : kind == "all" ? soak::kinds() : QStringList{kind}) {
        soak::Plan plan{folder.filePath(each)};
        plan.rounds = words.value(3, "1000").toInt();
        plan.seed = words.value(4, "1").toUInt();
        plan.first = words.value(5, "1").toInt();
        const soak::Tally tally = soak::runRounds(each, plan);
        faults += tally.faults();
        std::printf("%s\n", qPrintable(tally.line()));
        std::fflush(stdout);
    }
    return faults == 0 ? 0 : 1;
}
