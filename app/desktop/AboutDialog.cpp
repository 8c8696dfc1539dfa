#include "app/desktop/AboutDialog.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QDir>
#include <QGridLayout>
#include <QScrollArea>

namespace loopwright {

namespace {

/// As each of them says in its own copyright file.
struct Library
{
    const char *name;
    const char *licence;
};
constexpr Library libraries[] = {
    {"Qt", "LGPL-3.0"},
    {"SQLite", QT_TRANSLATE_NOOP("About", "public domain")},
    {"OpenSSL (libcrypto)", "Apache-2.0"},
    {"libsodium", "ISC"},
    {"libqpdf", "Apache-2.0"},
    {"zlib", "Zlib"},
    {"libqrencode", "LGPL-2.1+"},
    {"Boost.Math", "BSL-1.0"},
    {"tl::expected", "CC0-1.0"},
};

QString aboutText(const char *text)
{
    return QCoreApplication::translate("About", text);
}

void addRow(QGridLayout *grid, const QString &name, const QString &value,
            const QString &objectName = {})
{
    const int row = grid->rowCount();
    QLabel *head = makeMuted(name, 1);
    head->setWordWrap(false);
    QLabel *text = makeText(value);
    text->setObjectName(objectName);
    text->setAccessibleName(name + ": " + value);
    grid->addWidget(head, row, 0, Qt::AlignTop);
    grid->addWidget(text, row, 1);
}

QWidget *makeSheet(const QString &databasePath)
{
    auto *sheet = new QWidget;
    auto *grid = new QGridLayout(sheet);
    grid->setHorizontalSpacing(em(1.5));
    grid->setColumnStretch(1, 1);
    grid->addWidget(makeHeading(QStringLiteral("Loopwright"), 1.7), 0, 0, 1, 2);
    grid->addWidget(
        makeText(aboutText(QT_TRANSLATE_NOOP(
            "About", "Turn-up records and certificates for ISDN basic-rate and analog lines"))),
        1, 0, 1, 2);
    addRow(grid, aboutText(QT_TRANSLATE_NOOP("About", "Version")),
           QCoreApplication::applicationVersion(), QStringLiteral("about.version"));
    addRow(grid, aboutText(QT_TRANSLATE_NOOP("About", "Records")),
           QDir::toNativeSeparators(databasePath), QStringLiteral("about.records"));
    const int row = grid->rowCount();
    QLabel *head = makeHeading(aboutText(QT_TRANSLATE_NOOP("About", "Works of others in it")));
    head->setContentsMargins(0, em(0.8), 0, 0);
    grid->addWidget(head, row, 0, 1, 2);
    for (const Library &library : libraries)
        addRow(grid, QString::fromLatin1(library.name), aboutText(library.licence));
    grid->addWidget(makeMuted(aboutText(QT_TRANSLATE_NOOP(
                        "About", "The texts of the licences come with each of these packages, on "
                                 "Debian in /usr/share/doc."))),
                    grid->rowCount(), 0, 1, 2);
    grid->setRowStretch(grid->rowCount(), 1);
    return sheet;
}

} // namespace

void showAbout(QWidget *window, const QString &databasePath)
{
    auto *dialog = new QDialog(window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setObjectName(QStringLiteral("about"));
    dialog->setWindowTitle(aboutText(QT_TRANSLATE_NOOP("About", "About Loopwright")));
    QDialogButtonBox *buttons = makeCloseButtons(dialog);
    QPushButton *qt = makeButton(aboutText(QT_TRANSLATE_NOOP("About", "About &Qt…")),
                                 QStringLiteral("about.qt"), [] { QApplication::aboutQt(); });
    qt->setAutoDefault(false);
    buttons->addButton(qt, QDialogButtonBox::HelpRole);
    auto *layout = new QVBoxLayout(dialog);
    layout->addWidget(inScrollArea(makeSheet(databasePath)), 1);
    layout->addWidget(buttons);
    dialog->resize(sizeWithin(*window, 40, 34));
    dialog->open();
    buttons->button(QDialogButtonBox::Close)->setFocus();
}

} // namespace loopwright
