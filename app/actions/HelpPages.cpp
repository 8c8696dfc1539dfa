#include "app/actions/HelpPages.h"

#include "app/actions/FileForms.h"
#include "core/acceptance/PartHelp.h"
#include "core/base/Glossary.h"
#include "core/safety/Cautions.h"

namespace loopwright {

void describeStations(ManualPage &page)
{
    page.section("THE STATIONS OF A JOB").beginList();
    for (const PartHelp &part : partHelps())
        page.item(ManualPage::literal(part.name),
                  part.whatFor().english() + " When it fails: " + part.whenItFails().english());
    page.endList().paragraph(cautionsDisclaimer());
}

void describeWords(ManualPage &page)
{
    page.section("GLOSSARY").beginList();
    for (const Term &term : glossary()) {
        const QString also = QString::fromLatin1(term.also);
        page.item(ManualPage::literal(term.word),
                  (also.isEmpty() ? QString() : "Also: " + also + ". ") + term.meaning);
    }
    page.endList();
}

void describeFiles(ManualPage &page)
{
    page.section("FILES THAT ARE READ")
        .paragraph("CSV in UTF-8 with a header; columns in any order. Those that are not named "
                   "as required may be left out.");
    for (const FileForm &form : fileForms()) {
        page.subsection(QString("%1: %2").arg(form.command, form.name)).beginList();
        for (const FileColumn &column : columnsOf(form)) {
            QStringList parts;
            if (column.required)
                parts << QStringLiteral("Required");
            parts << column.meaning.english();
            if (!column.words.isEmpty())
                parts << "one of " + column.words.join(QStringLiteral(", "));
            page.item(ManualPage::literal(column.name), parts.join(QStringLiteral("; ")) + '.');
        }
        page.endList();
    }
}

} // namespace loopwright
