#pragma once
// The language that papers are laid out in, and the catalogues (resources/language) of window and
// papers. A paper is put together in English, as its record is, and said again when it is laid out;
// what a person typed stays as it is. The catalogues lie here, so that a paper can be made again in
// the language that it had.

#include "core/base/Text.h"

#include <QStringList>
#include <QTranslator>

#include <functional>
#include <memory>
#include <span>

namespace loopwright {

struct Language
{
    const char *code; ///< ISO 639-1
    const char *ownName;
};
/// Those that the program speaks, English first.
std::span<const Language> languages();
/// Null where the program does not speak it.
const Language *findLanguage(const QString &code);
/// Of a language other than English; it has one context, whatever is asked for. Null without one.
std::shared_ptr<QTranslator> catalogueOf(const QString &code);
/// As it says a text; what it has not stays English. From any thread.
Text::Catalogue wordsOf(std::shared_ptr<const QTranslator> catalogue);

struct PaperLanguage
{
    QString code = QStringLiteral("en"); ///< BCP 47
    /// A text of a paper, and what was typed and is no text of the program; none: English.
    std::function<QString(const QString &english, const QStringList &typed)> say = {};
};
/// By a catalogue; none is English.
PaperLanguage paperLanguageBy(const std::shared_ptr<const QTranslator> &catalogue);
/// Made once; English for a code that is none of languages().
PaperLanguage paperLanguageOf(const QString &code);

/// Of every paper that is laid out from now on. Not while one is.
void setPaperLanguage(PaperLanguage language);
const PaperLanguage &paperLanguage();
/// In that language.
QString onPaper(const QString &english, const QStringList &typed = {});

/// Of the papers that this thread lays out, as long as it lives.
class PaperLanguageHere
{
public:
    explicit PaperLanguageHere(PaperLanguage language);
    ~PaperLanguageHere();
    Q_DISABLE_COPY_MOVE(PaperLanguageHere)

private:
    PaperLanguage m_language;
    const PaperLanguage *m_before;
};

} // namespace loopwright
