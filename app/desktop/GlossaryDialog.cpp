#include "app/desktop/GlossaryDialog.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/base/Glossary.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QTextBrowser>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

struct ShownTerm
{
    QString word, also, meaning; ///< in the language of the window

    bool has(const QString &sought) const
    {
        return word.contains(sought, Qt::CaseInsensitive) ||
               also.contains(sought, Qt::CaseInsensitive);
    }
};

/// By the alphabet of the window's language.
std::vector<ShownTerm> shownTerms()
{
    std::vector<ShownTerm> terms;
    for (const Term &term : glossary())
        terms.push_back({localized(Text(term.word)), localized(Text(term.also)),
                         localized(Text(term.meaning))});
    std::ranges::sort(terms, [](const ShownTerm &a, const ShownTerm &b) {
        return QString::localeAwareCompare(a.word, b.word) < 0;
    });
    return terms;
}

QString pageOf(const std::vector<ShownTerm> &terms, const QString &sought)
{
    QString page;
    for (const ShownTerm &term : terms) {
        if (!term.has(sought))
            continue;
        const QString also = term.also.isEmpty() ? QString() : " (" + term.also + ")";
        page +=
            QStringLiteral("<p><b>%1</b>%2<br>%3</p>")
                .arg(term.word.toHtmlEscaped(), also.toHtmlEscaped(), term.meaning.toHtmlEscaped());
    }
    return page.isEmpty() ? "<p>" +
                                QCoreApplication::translate("Glossary", "No word is called so.")
                                    .toHtmlEscaped() +
                                "</p>"
                          : page;
}

} // namespace

void showGlossary(QWidget *parent)
{
    auto *dialog = new QDialog(parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setObjectName(QStringLiteral("glossary"));
    dialog->setWindowTitle(QCoreApplication::translate("Glossary", "Glossary"));
    auto *find = new QLineEdit;
    find->setObjectName(QStringLiteral("glossary.find"));
    find->setPlaceholderText(QCoreApplication::translate("Glossary", "Find a word"));
    find->setAccessibleName(find->placeholderText());
    find->setClearButtonEnabled(true);
    auto *page = new QTextBrowser;
    page->setObjectName(QStringLiteral("glossary.words"));
    page->setAccessibleName(dialog->windowTitle());
    page->setOpenLinks(false);
    const auto show = [page, terms = shownTerms()](const QString &sought) {
        page->setHtml(pageOf(terms, sought.trimmed()));
    };
    show({});
    QObject::connect(find, &QLineEdit::textChanged, page, show);
    QDialogButtonBox *buttons = makeCloseButtons(dialog);
    auto *layout = new QVBoxLayout(dialog);
    layout->addWidget(find);
    layout->addWidget(page, 1);
    layout->addWidget(buttons);
    dialog->resize(QSize(em(48), em(36)).boundedTo(parent->window()->size()));
    dialog->open();
}

} // namespace loopwright
