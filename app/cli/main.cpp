// The command line program. It needs no display: if it paints, the offscreen platform is chosen.

#include "app/cli/CommandLine.h"
#include "app/cli/Layout.h"

#include <QFile>
#include <QGuiApplication>
#include <QHashSeed>

#include <clocale>
#include <cstdio>
#include <cstring>
#include <langinfo.h>
#include <unistd.h>

namespace {

/// Qt complains on standard error about any locale that is not UTF-8; file names are UTF-8 here.
void chooseUtf8()
{
    std::setlocale(LC_ALL, "");
    if (std::strcmp(nl_langinfo(CODESET), "UTF-8") != 0)
        qputenv("LC_ALL", "C.UTF-8");
}

/// Qt warns if there is no folder for sockets; this program has no use for one.
void passMessage(QtMsgType, const QMessageLogContext &, const QString &text)
{
    if (!text.startsWith("QStandardPaths: "))
        std::fprintf(stderr, "loopwright-cli: %s\n", qPrintable(text));
}

QByteArrayList wordsOf(int argc, char *argv[])
{
    QByteArrayList words;
    for (int i = 1; i < argc; ++i)
        words << argv[i];
    return words;
}

int runIn(loopwright::CommandLine &line)
{
    QFile out, messages; // who waits sees at once how far the work is
    if (!out.open(stdout, QIODevice::WriteOnly) ||
        !messages.open(stderr, QIODevice::WriteOnly | QIODevice::Unbuffered))
        return int(loopwright::ExitStatus::DiskTrouble);
    return int(line.run(out, messages, isatty(STDERR_FILENO) != 0));
}

} // namespace

int main(int argc, char *argv[])
{
    // So that the fonts of a PDF come in the same order every time.
    QHashSeed::setDeterministicGlobalSeed();
    qInstallMessageHandler(passMessage);
    chooseUtf8();
    QCoreApplication::setApplicationName("loopwright");
    QCoreApplication::setApplicationVersion(LOOPWRIGHT_VERSION);

    loopwright::setTerminalWidth(loopwright::terminalWidth());
    loopwright::CommandLine line;
    line.readBytes(wordsOf(argc, argv));
    if (line.paints()) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        QGuiApplication application(argc, argv);
        return runIn(line);
    }
    QCoreApplication application(argc, argv);
    return runIn(line);
}
