#pragma once
// How a command lays out the papers it makes: which paper, and in which language people read it.

#include "app/cli/Options.h"
#include "app/print/Paper.h"
#include "app/print/PaperLanguage.h"

namespace loopwright {

class PaperOptions
{
public:
    void declare(Options &options, const char *paperHelp = "a4 (else) or letter");

    Paper paper() const { return fromText<Paper>(m_paper).value_or(Paper::A4); }
    /// As long as it lives, papers are in the language that was asked for; else in English, as the
    /// records are.
    [[nodiscard]] PaperLanguageHere speaking() const
    {
        return PaperLanguageHere(paperLanguageOf(m_language));
    }

private:
    QString m_paper, m_language;
};

} // namespace loopwright
