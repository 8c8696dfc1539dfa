#include "app/print/PaperLanguage.h"

#include "core/base/Phrasebook.h"

#include <QFile>
#include <QMap>
#include <QMutex>
#include <QTranslator>
#include <QXmlStreamReader>

#include <algorithm>
#include <limits>
#include <memory>

// Outside of any namespace, as Qt wants it: the catalogues lie in a library.
static void initLanguageResource()
{
    Q_INIT_RESOURCE(language);
}

namespace loopwright {

namespace {

constexpr const char *codes[] = {"en", "de"};
/// The one context of the catalogues.
constexpr const char *oneContext = "loopwright";

PaperLanguage &spoken()
{
    static PaperLanguage language;
    return language;
}

thread_local const PaperLanguage *spokenHere = nullptr;

PaperLanguage made(const QString &code)
{
    auto catalogue = std::make_shared<QTranslator>();
    const QStringList sources = catalogueSources();
    if (!catalogue->load(code, QStringLiteral(":/language")))
        return {};
    const auto phrases = std::make_shared<const Phrasebook>(
        sources, [catalogue](const char *source, std::optional<qint64> count) {
            constexpr qint64 most = std::numeric_limits<int>::max();
            const QString said = catalogue->translate(oneContext, source, nullptr,
                                                      count ? int(std::min(*count, most)) : -1);
            return said.isNull() ? QString::fromUtf8(source) : said;
        });
    return {code, [phrases](const QString &english, const QStringList &typed) {
                return phrases->say(english, typed);
            }};
}

} // namespace

std::span<const char *const> paperLanguageCodes()
{
    return codes;
}

PaperLanguage paperLanguageOf(const QString &code)
{
    static QMutex mutex;
    static QMap<QString, PaperLanguage> known;
    const auto isCode = [&code](const char *each) { return code == QLatin1StringView(each); };
    if (isCode(codes[0]) || std::ranges::none_of(codes, isCode))
        return {};
    const QMutexLocker lock(&mutex);
    if (!known.contains(code))
        known.insert(code, made(code));
    return known[code];
}

void readyCatalogues()
{
    initLanguageResource();
}

QStringList catalogueSources()
{
    readyCatalogues();
    QStringList sources; // those of every catalogue are the same
    QFile file(QStringLiteral(":/language/%1.ts").arg(QLatin1StringView(codes[1])));
    if (file.open(QIODevice::ReadOnly))
        for (QXmlStreamReader reader(&file); !reader.atEnd();)
            if (reader.readNextStartElement() && reader.name() == u"source")
                sources << reader.readElementText();
    return sources;
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
