// The desktop program.

#include "app/desktop/Desk.h"

#include <QTextStream>

int main(int argc, char *argv[])
{
    using namespace loopwright;
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("loopwright"));
    QApplication::setApplicationDisplayName(QStringLiteral("Loopwright"));
    QApplication::setApplicationVersion(QStringLiteral(LOOPWRIGHT_VERSION));

    QTextStream out(stdout), err(stderr);
    auto options = StartOptions::read(QApplication::arguments());
    if (!options) {
        err << "loopwright: " << options.error().text() << "\n";
        return 2;
    }
    if (options->helpWanted || options->versionWanted) {
        out << (options->helpWanted ? StartOptions::help()
                                    : QStringLiteral("loopwright " LOOPWRIGHT_VERSION "\n"));
        return 0;
    }
    QSettings settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("loopwright"),
                       QStringLiteral("desktop"));
    Desk desk(application, std::move(*options), settings);
    desk.start();
    return QApplication::exec();
}
