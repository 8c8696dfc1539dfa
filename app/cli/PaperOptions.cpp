#include "app/cli/PaperOptions.h"

namespace loopwright {

void PaperOptions::declare(Options &options, const char *paperHelp)
{
    options.word("--paper", m_paper, allWords<Paper>(), paperHelp);
    QStringList codes;
    for (const Language &language : languages())
        codes << QString::fromLatin1(language.code);
    options.word("--language", m_language, codes,
                 "The language of the paper: en (else) or de; what was typed stays as it is");
}

} // namespace loopwright
