#pragma once
// The small papers of the job that is open, to a printer or into a PDF.

#include "app/actions/Cards.h"
#include "app/desktop/widgets/SignLine.h"

namespace loopwright {

class JobSession;

/// What came of it, to be told; no sentence where the person changed their mind.
struct CardTold
{
    Status sign = Status::None;
    QString sentence = {};
};
CardTold printCard(QWidget *parent, const JobSession &desk, CardKind kind);
CardTold saveCard(QWidget *parent, const JobSession &desk, CardKind kind);

} // namespace loopwright
