#include "app/print/PaperLanguage.h"

#include "core/base/Phrasebook.h"

#include <QFile>
#include <QLocale>
#include <QMap>
#include <QMutex>
#include <QXmlStreamReader>

#include <algorithm>
#include <limits>

// Outside of any namespace, as Qt wants it: the catalogues lie in a library.
static void initLanguageResource()
{
    Q_INIT_RESOURCE(language);
}

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

PaperLanguage &spoken()
{
    static PaperLanguage language;
    return language;
}

thread_local const PaperLanguage *spokenHere = nullptr;

/// The English sources; those of every catalogue are the same.
QStringList sources()
{
    initLanguageResource();
    QStringList all;
    QFile file(QStringLiteral(":/language/%1.ts").arg(QLatin1StringView(known[1].code)));
    if (file.open(QIODevice::ReadOnly))
        for (QXmlStreamReader reader(&file); !reader.atEnd();)
            if (reader.readNextStartElement() && reader.name() == u"source")
                all << reader.readElementText();
    return all;
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

std::shared_ptr<QTranslator> catalogueOf(const QString &code)
{
    initLanguageResource();
    auto catalogue = std::make_shared<Catalogue>();
    return catalogue->load(code, QStringLiteral(":/language")) ? catalogue : nullptr;
}

Text::Catalogue wordsOf(std::shared_ptr<const QTranslator> catalogue)
{
    const QChar mark = QLocale(catalogue->language()).decimalPoint().front();
    const auto say = [catalogue = std::move(catalogue)](const char *source,
                                                        std::optional<qint64> count) {
        constexpr qint64 most = std::numeric_limits<int>::max();
        const QString said = catalogue->translate(oneContext, source, nullptr,
                                                  count ? int(std::min(*count, most)) : -1);
        return said.isNull() ? QString::fromUtf8(source) : said;
    };
    return {say, mark};
}

PaperLanguage paperLanguageBy(const std::shared_ptr<const QTranslator> &catalogue)
{
    if (!catalogue)
        return {};
    const auto phrases = std::make_shared<const Phrasebook>(sources(), wordsOf(catalogue));
    return {catalogue->language(), [phrases](const QString &english, const QStringList &typed) {
                return phrases->say(english, typed);
            }};
}

PaperLanguage paperLanguageOf(const QString &code)
{
    static QMutex mutex;
    static QMap<QString, PaperLanguage> made;
    if (!findLanguage(code))
        return {};
    const QMutexLocker lock(&mutex);
    if (!made.contains(code))
        made.insert(code, paperLanguageBy(catalogueOf(code)));
    return made[code];
}

void setPaperLanguage(PaperLanguage language)
{
    spoken() = std::move(language);
}

const PaperLanguage &paperLanguage()
{
    return spokenHere ? *spokenHere : spoken();
}

QString onPaper(const QString &english, const QStringList &typed)
{
    const PaperLanguage &language = paperLanguage();
    return language.say ? language.say(english, typed) : english;
}

PaperLanguageHere::PaperLanguageHere(PaperLanguage language)
    : m_language(std::move(language))
    , m_before(spokenHere)
{
    spokenHere = &m_language;
}

PaperLanguageHere::~PaperLanguageHere()
{
    spokenHere = m_before;
}

} // namespace loopwright
