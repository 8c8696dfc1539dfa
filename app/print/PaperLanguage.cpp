#include "app/print/PaperLanguage.h"

namespace loopwright {

namespace {

PaperLanguage &spoken()
{
    static PaperLanguage language;
    return language;
}

} // namespace

void setPaperLanguage(PaperLanguage language)
{
    spoken() = std::move(language);
}

const PaperLanguage &paperLanguage()
{
    return spoken();
}

QString onPaper(const QString &english, const QStringList &typed)
{
    return spoken().say ? spoken().say(english, typed) : english;
}

} // namespace loopwright
