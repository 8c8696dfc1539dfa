#include "app/desktop/Language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>

namespace loopwright {

namespace {

struct Installed
{
    std::shared_ptr<QTranslator> own;
    std::unique_ptr<QTranslator> qt;
    Text::Catalogue words; ///< of `own`
};
Installed &installed()
{
    static Installed now;
    return now;
}

} // namespace

QString languageOfSystem()
{
    const QStringList asked = QLocale::system().uiLanguages(); // "de-AT", "de", "en-GB" …
    for (const QString &each : asked) {
        const QString code = each.section(u'-', 0, 0);
        if (findLanguage(code))
            return code;
    }
    return QString::fromLatin1(languages().front().code);
}

void speakBy(std::shared_ptr<QTranslator> catalogue)
{
    if (installed().own) // which a paper that is being laid out may keep
        QCoreApplication::removeTranslator(installed().own.get());
    installed() = {};
    setPaperLanguage(paperLanguageBy(catalogue));
    if (!catalogue)
        return;
    QCoreApplication::installTranslator(catalogue.get());
    installed().words = wordsOf(catalogue);
    installed().own = std::move(catalogue);
}

void speak(const QString &code)
{
    speakBy({});
    // Whoever reads the system's language keeps the manners of the country: Vienna, Bern.
    const QLocale system = QLocale::system(), wanted(code);
    const bool english = code == QLatin1StringView(languages().front().code);
    const bool keep = system.language() == wanted.language() ||
                      (english && system.language() == QLocale::Language::C);
    QLocale::setDefault(keep ? system : wanted);
    if (english)
        return;
    speakBy(catalogueOf(code));
    // Asked first, for its own dialogs have words that ours have too.
    auto qt = std::make_unique<QTranslator>();
    if (qt->load("qtbase_" + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
        QCoreApplication::installTranslator(qt.get());
        installed().qt = std::move(qt);
    }
}

QString localized(const Text &text)
{
    return text.in(installed().words);
}

QString localizedWord(const QString &code)
{
    return onPaper(QString(code).replace(u'_', u' '));
}

QString localizedSentence(const QString &english)
{
    return onPaper(english);
}

} // namespace loopwright
