#include "app/desktop/Language.h"

#include "app/print/PaperLanguage.h"
#include "core/base/Phrasebook.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>

#include <algorithm>
#include <limits>

namespace loopwright {

namespace {

constexpr Language known[] = {{"en", "English"}, {"de", "Deutsch"}};
/// The one context of the catalogues.
constexpr const char *oneContext = "loopwright";

class Catalogue : public QTranslator
{
public:
    QString translate(const char *, const char *source, const char *comment, int n) const override
    {
        return QTranslator::translate(oneContext, source, comment, n);
    }
};

struct Installed
{
    std::unique_ptr<QTranslator> own;
    std::unique_ptr<QTranslator> qt;
    std::shared_ptr<const Phrasebook> phrases; ///< a paper that is being laid out may keep it
};
Installed &installed()
{
    static Installed now;
    return now;
}

/// Null where there is no catalogue, or it has not this text.
QString found(const QByteArray &source, int count = -1)
{
    const QTranslator *own = installed().own.get();
    return own ? own->translate(oneContext, source.constData(), nullptr, count) : QString();
}

QString translated(const char *source, std::optional<qint64> count)
{
    constexpr qint64 most = std::numeric_limits<int>::max();
    const QString said = found(source, count ? int(std::min(*count, most)) : -1);
    return said.isNull() ? QString::fromUtf8(source) : said;
}

} // namespace

std::span<const Language> languages()
{
    return known;
}

const Language *findLanguage(const QString &code)
{
    const auto found = std::ranges::find_if(
        known, [&code](const Language &each) { return code == QLatin1StringView(each.code); });
    return found == std::end(known) ? nullptr : found;
}

QString languageOfSystem()
{
    const QStringList asked = QLocale::system().uiLanguages(); // "de-AT", "de", "en-GB" …
    for (const QString &each : asked) {
        const QString code = each.section(u'-', 0, 0);
        if (findLanguage(code))
            return code;
    }
    return QString::fromLatin1(known[0].code);
}

void speakBy(std::unique_ptr<QTranslator> catalogue)
{
    installed() = {}; // a translator that goes takes itself away
    setPaperLanguage({});
    installed().own = std::move(catalogue);
    if (!installed().own)
        return;
    QCoreApplication::installTranslator(installed().own.get());
    auto phrases = std::make_shared<const Phrasebook>(catalogueSources(), translated);
    installed().phrases = phrases;
    setPaperLanguage(
        {installed().own->language(), [phrases](const QString &english, const QStringList &typed) {
             return phrases->say(english, typed);
         }});
}

void speak(const QString &code)
{
    speakBy({});
    // Whoever reads the system's language keeps the manners of the country: Vienna, Bern.
    const QLocale system = QLocale::system(), wanted(code);
    const bool english = code == QLatin1StringView(known[0].code);
    const bool keep = system.language() == wanted.language() ||
                      (english && system.language() == QLocale::Language::C);
    QLocale::setDefault(keep ? system : wanted);
    if (english)
        return;
    readyCatalogues();
    auto own = std::make_unique<Catalogue>();
    if (own->load(code, QStringLiteral(":/language")))
        speakBy(std::move(own));
    // Asked first, for its own dialogs have words that ours have too.
    auto qt = std::make_unique<QTranslator>();
    if (qt->load("qtbase_" + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
        QCoreApplication::installTranslator(qt.get());
        installed().qt = std::move(qt);
    }
}

QString localized(const Text &text)
{
    if (!installed().own)
        return text.english();
    return text.in(translated);
}

QString localizedWord(const QString &code)
{
    const QString word = QString(code).replace(u'_', u' ');
    if (!installed().own || word.isEmpty())
        return word;
    if (const QString said = found(word.toUtf8()); !said.isNull())
        return said;
    return installed().phrases->say(word);
}

QString localizedSentence(const QString &english)
{
    return installed().phrases ? installed().phrases->say(english) : english;
}

} // namespace loopwright
