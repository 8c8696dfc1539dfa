#include "app/desktop/job/CardPapers.h"

#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/job/JobSession.h"

#include <QCoreApplication>

namespace loopwright {

CardTold printCard(QWidget *parent, const JobSession &desk, CardKind kind)
{
    const auto printed = printSheet(parent, [&](Paper paper) {
        return cardOf(desk.records(), desk.order().number, kind, paper);
    });
    if (!printed)
        return {Status::Failed, localized(printed.error())};
    return *printed ? CardTold{Status::Done,
                               QCoreApplication::translate("CardPapers", "Sent to the printer.")}
                    : CardTold();
}

CardTold saveCard(QWidget *parent, const JobSession &desk, CardKind kind)
{
    const QString &order = desk.order().number;
    const auto sheet = cardOf(desk.records(), order, kind, localPaper());
    if (!sheet)
        return {Status::Failed, localized(sheet.error())};
    const QString name = QString("%1-%2.pdf").arg(toText(kind).replace('_', '-'), order);
    const auto path = saveSheet(parent, *sheet, name, desk.now());
    if (!path)
        return {Status::Failed, localized(path.error())};
    return path->isEmpty()
               ? CardTold()
               : CardTold{Status::Done,
                          QCoreApplication::translate("CardPapers", "Saved as %1.").arg(*path)};
}

} // namespace loopwright
