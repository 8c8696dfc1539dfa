#pragma once
// The language of the window. Its texts stand in English in the source, and in one catalogue for
// each further language (resources/language). A text reads the same wherever it stands, so the
// catalogues have no contexts, and none can be wrong: what differs by place bears a comment there.
// Papers are put together in English, and said again when they are laid out (PaperLanguage.h); so
// is a sentence that is stored or comes from an action. The command line stays English.

#include "app/print/PaperLanguage.h"
#include "core/base/Result.h"

namespace loopwright {

/// The first of languages() that the person's system asks for; English if none is.
QString languageOfSystem();

/// From now on, in what is made after: texts, dates and numbers, and the dialogs of Qt where its
/// own catalogue is installed. A code of languages().
void speak(const QString &code);
/// By any catalogue of the one context; none is English.
void speakBy(std::shared_ptr<QTranslator> catalogue);

/// A sentence of core, in the language of the window.
QString localized(const Text &text);
/// A measured or computed number, with its unit or without, in the window. One that stands in a
/// Text or in a sentence for localizedSentence() has its decimal mark by that.
QString localizedFigure(const QString &english);
QString localizedFigure(double value, int decimals);
QString localizedFigure(double value); ///< shortest form
/// Of the window's language.
QChar decimalMark();
/// A code ("power_utility") in words, or what comes as plain text from a table of core; as it is
/// where no catalogue has it.
QString localizedWord(const QString &code);
/// A sentence that was stored in English, or comes as plain text: read by the catalogue's sources
/// (core/base/Phrasebook.h). What is no text of the program stays as it is.
QString localizedSentence(const QString &english);
/// What is named in words of the program or in an office's own, as a limit is: it is translated
/// where a catalogue has it as a whole, and nothing is read into what somebody typed.
QString localizedName(const QString &english);
QStringList localizedSentences(const QStringList &english);
/// What an action says that could not be done: its place, which is as it is in the file or the
/// records, and its sentence. The one way by which an error gets into the window.
QString localized(const Error &error);

} // namespace loopwright
