// Pictures of every screen and dialog of the window on the demo's records, to be looked at:
//
//   pictures FOLDER [WORD...]
//
// Without words in English and German, light and dark, at 100 and 200 %. A word is a language, a
// look (light, dark, high_contrast) or a size (100 to 200): those alone are made; or the beginning
// of scenes' names (job, dialog). Ends with 1 where a screen or dialog does not come, or
// shows a figure with the decimal point of English in a language that has another mark.
// Where the folder holds pictures of before, each is compared with its own, and what has changed is
// told.

#include "app/desktop/AccessibleParts.h"
#include "app/desktop/DeskStyle.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "tests/pictures/PictureDesk.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <cstdio>

using namespace loopwright;

namespace {

struct Wanted
{
    QStringList languages, scenes;
    QList<Look> looks;
    QList<int> sizes;
};

Wanted wantedBy(const QStringList &words)
{
    Wanted wanted;
    for (const QString &word : words) {
        if (findLanguage(word))
            wanted.languages << word;
        else if (const auto look = fromText<Look>(word))
            wanted.looks << *look;
        else if (const int size = word.toInt(); size >= 100 && size <= 200)
            wanted.sizes << size;
        else
            wanted.scenes << word;
    }
    if (wanted.languages.isEmpty())
        wanted.languages = {"en", "de"};
    if (wanted.looks.isEmpty())
        wanted.looks = {Look::Light, Look::Dark};
    if (wanted.sizes.isEmpty())
        wanted.sizes = {100, 200};
    return wanted;
}

std::vector<Scene> scenesOf(const Wanted &wanted)
{
    std::vector<Scene> scenes = allScenes();
    std::erase_if(scenes, [&wanted](const Scene &scene) {
        return !wanted.scenes.isEmpty() &&
               std::ranges::none_of(wanted.scenes, [&scene](const QString &word) {
                   return QString(scene.name).startsWith(word);
               });
    });
    return scenes;
}

/// Each run of scenes in a fresh window, on a fresh copy, so that the pictures of a sight are the
/// same whatever was made before.
int pictures(const std::vector<Scene> &scenes, const Sight &sight, const QString &demo,
             const QString &folder, QStringList &changed, QStringList &english)
{
    speak(sight.language);
    applyTheme(*qApp, sight.look, sight.percent);
    int taken = 0;
    for (const bool empty : {false, true}) {
        QTemporaryDir own;
        const QString path = own.filePath("records.sqlite");
        if (!empty && !(QFile::copy(demo, path) &&
                        QFile::copy(certificateBeside(demo), certificateBeside(path))))
            qFatal("%s cannot be copied", qPrintable(demo));
        PictureDesk desk(path, sight, folder);
        for (const Scene &scene : scenes) {
            if (scene.onEmptyRecords != empty)
                continue;
            desk.begin(scene.name);
            scene.show(desk);
        }
        taken += desk.taken();
        changed << desk.changed();
        english << desk.englishFiguresSeen();
    }
    std::printf("%s: %d\n", qPrintable(sight.name()), taken);
    std::fflush(stdout);
    return taken;
}

} // namespace

int main(int argc, char **argv)
{
    QTemporaryDir home;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("XDG_DATA_HOME", home.path().toUtf8());
    qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
    qputenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/no/bus");
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0); // or no two pictures are the same
    choosePaper(Paper::A4);
    installAccessibility();

    QStringList words = QApplication::arguments().mid(1);
    const Wanted wanted = wantedBy(words.mid(1));
    const std::vector<Scene> scenes = scenesOf(wanted);
    if (words.isEmpty() || words.first().startsWith(u'-') || scenes.empty() ||
        !QDir().mkpath(words.first())) {
        std::fprintf(stderr,
                     "pictures FOLDER [en|de] [light|dark|high_contrast] [100|200] [SCENE...]\n");
        return 2;
    }
    const QString demo = home.filePath("demo.sqlite");
    makePictureRecords(demo);
    int taken = 0;
    QStringList changed, english;
    for (const QString &language : wanted.languages)
        for (const Look look : wanted.looks)
            for (const int size : wanted.sizes)
                taken +=
                    pictures(scenes, {language, look, size}, demo, words.first(), changed, english);
    for (const QString &each : changed)
        std::printf("%s\n", qPrintable(each));
    english.removeDuplicates();
    for (const QString &each : english)
        std::printf("decimal point: %s\n", qPrintable(each));
    return taken > 0 && english.isEmpty() ? 0 : 1;
}
