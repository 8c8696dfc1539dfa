#include "app/desktop/Language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QRegularExpression>

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

/// How a place names a part of a file or of the records; what it names is no text of the program.
constexpr const char *partsOfPlaces[] = {
    QT_TRANSLATE_NOOP("place", "row %1"),      QT_TRANSLATE_NOOP("place", "line %1"),
    QT_TRANSLATE_NOOP("place", "column %1"),   QT_TRANSLATE_NOOP("place", "event %1"),
    QT_TRANSLATE_NOOP("place", "order %1"),    QT_TRANSLATE_NOOP("place", "fact %1"),
    QT_TRANSLATE_NOOP("place", "decision %1"), QT_TRANSLATE_NOOP("place", "certificate %1"),
    QT_TRANSLATE_NOOP("place", "limit set %1")};

QString localizedPart(const QString &part)
{
    for (const char *form : partsOfPlaces) {
        const QString word = QString::fromLatin1(form).remove(QStringLiteral("%1"));
        if (installed().words && part.startsWith(word))
            return installed().words.say(form, {}).arg(part.sliced(word.size()));
    }
    return part;
}

/// "orders.csv: row 3, column customer"
QString localizedPlace(const QString &place)
{
    QStringList parts = place.split(QStringLiteral(": "));
    for (QString &part : parts) {
        QStringList within = part.split(QStringLiteral(", "));
        for (QString &each : within)
            each = localizedPart(each);
        part = within.join(QStringLiteral(", "));
    }
    return parts.join(QStringLiteral(": "));
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
    installed().words.say = [say = installed().words.say](const char *source,
                                                          std::optional<qint64> count) {
        const QString said = say(source, count);
        return said == QLatin1StringView(source) ? onPaper(said) : said; // a Text::message()
    };
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

QChar decimalMark()
{
    return installed().words.decimalMark;
}

QString localizedFigure(const QString &english)
{
    return installed().words.figure(english);
}

QString localizedFigure(double value, int decimals)
{
    return localizedFigure(QString::number(value, 'f', decimals));
}

QString localizedFigure(double value)
{
    return localizedFigure(QString::number(value));
}

QString localizedWord(const QString &code)
{
    return onPaper(QString(code).replace(u'_', u' '));
}

QString localizedSentence(const QString &english)
{
    return onPaper(english);
}

QString localizedName(const QString &english)
{
    const QString said = installed().own && !english.isEmpty()
                             ? installed().own->translate("", english.toUtf8().constData())
                             : QString();
    return said.isEmpty() ? english : said;
}

QStringList localizedSentences(const QStringList &english)
{
    QStringList said;
    for (const QString &each : english)
        said << localizedSentence(each);
    return said;
}

QString localized(const Error &error)
{
    static const QRegularExpression option("^[-a-z_]+$"); // of the command line
    const bool named = error.code != ErrorCode::Usage || !option.match(error.place).hasMatch();
    return Error{error.code, localizedSentence(error.message),
                 named ? localizedPlace(error.place) : QString()}
        .text();
}

} // namespace loopwright
