// The desktop program.

#include "app/desktop/DesktopApplication.h"

#include <QHashSeed>
#include <QTextStream>

#include <algorithm>

namespace {

/// Help, version and manual are answered where there is no display too.
bool asksForWordsAlone(int argc, char *argv[])
{
    return std::any_of(argv, argv + argc, [](const char *argument) {
        const QByteArrayView given(argument);
        return given == "--help" || given == "-h" || given == "--version" || given == "--manual";
    });
}

} // namespace

int main(int argc, char *argv[])
{
    using namespace loopwright;
    // So that a paper that is due is made again byte for byte, in whichever program.
    QHashSeed::setDeterministicGlobalSeed();
    std::unique_ptr<QCoreApplication> application;
    if (asksForWordsAlone(argc, argv))
        application = std::make_unique<QCoreApplication>(argc, argv);
    else
        application = std::make_unique<QApplication>(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("loopwright"));
    QCoreApplication::setApplicationVersion(QStringLiteral(LOOPWRIGHT_VERSION));

    QTextStream out(stdout), err(stderr);
    auto options = StartOptions::read(QCoreApplication::arguments());
    if (!options) {
        err << "loopwright: " << options.error().text() << "\n";
        return 2;
    }
    if (options->manualWanted) {
        out << QString::fromUtf8(StartOptions::manual());
        return 0;
    }
    if (options->helpWanted || options->versionWanted) {
        out << (options->helpWanted ? StartOptions::help()
                                    : QStringLiteral("loopwright " LOOPWRIGHT_VERSION "\n"));
        return 0;
    }
    auto *desktop = qobject_cast<QApplication *>(application.get());
    if (!desktop) { // what looked like the wish for help was another option's value
        err << "loopwright: --help, -h, --version and --manual stand alone\n";
        return 2;
    }
    QApplication::setApplicationDisplayName(QStringLiteral("Loopwright"));
    // The name of the desktop entry, by which a desktop finds the window's icon.
    QGuiApplication::setDesktopFileName(QStringLiteral(LOOPWRIGHT_ID));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/loopwright.svg")));
    QSettings settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("loopwright"),
                       QStringLiteral("desktop"));
    options->chooseRecords(settings);
    if (OneWindow::handOver(options->database, options->wish())) {
        err << "loopwright: these records have a window, which was brought forward\n";
        return 0;
    }
    DesktopApplication desk(*desktop, std::move(*options), settings);
    desk.start();
    return QApplication::exec();
}
