#pragma once
// The language that papers are laid out in. A paper is put together in English, as its record is,
// and said again when it is laid out; what a person typed stays as it is. The catalogues
// (resources/language) lie here, so that a paper can be made again in the language that it had.

#include <QStringList>

#include <functional>
#include <span>

namespace loopwright {

struct PaperLanguage
{
    QString code = QStringLiteral("en"); ///< BCP 47
    /// A text of a paper, and what was typed and is no text of the program; none: English.
    std::function<QString(const QString &english, const QStringList &typed)> say = {};
};

/// ISO 639-1, English first.
std::span<const char *const> paperLanguageCodes();
/// By its catalogue; English for any other code.
PaperLanguage paperLanguageOf(const QString &code);
/// The catalogues lie in ":/language" from then on.
void readyCatalogues();
/// Their English sources.
QStringList catalogueSources();

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
