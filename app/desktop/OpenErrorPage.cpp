#include "app/desktop/OpenErrorPage.h"

#include "app/actions/DailyBackups.h"
#include "app/actions/Records.h"
#include "app/desktop/Language.h"
#include "app/desktop/ServerDialog.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/SignLine.h"

#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace loopwright {

namespace {

struct Advice
{
    ErrorCode code;
    const char *kept;
    const char *todo;
};
constexpr Advice advices[] = {
    {ErrorCode::DatabaseTrouble,
     QT_TRANSLATE_NOOP("OpenErrorPage",
                       "The file was left exactly as it is; nothing was written to it."),
     QT_TRANSLATE_NOOP("OpenErrorPage",
                       "If the file is damaged, restore a backup (loopwright-cli restore). If a "
                       "newer version made it, start that version.")},
    {ErrorCode::Busy,
     QT_TRANSLATE_NOOP("OpenErrorPage",
                       "The file was left exactly as it is; nothing was written to it."),
     QT_TRANSLATE_NOOP("OpenErrorPage",
                       "Another program is writing in the records: wait until it is done, or close "
                       "it, and try again.")},
    {ErrorCode::DiskTrouble,
     QT_TRANSLATE_NOOP("OpenErrorPage", "What was recorded before is still there."),
     QT_TRANSLATE_NOOP("OpenErrorPage",
                       "Make room on the disk, or see to it that you may write in this folder, and "
                       "try again.")},
};
constexpr Advice anyAdvice = {
    ErrorCode::BadInput, QT_TRANSLATE_NOOP("OpenErrorPage", "Nothing was changed."),
    QT_TRANSLATE_NOOP("OpenErrorPage", "Try again, or open other records.")};

/// Of records on a server, whatever is wrong.
constexpr Advice serverAdvice = {
    ErrorCode::ConnectionLost, QT_TRANSLATE_NOOP("OpenErrorPage", "Nothing was changed."),
    QT_TRANSLATE_NOOP("OpenErrorPage",
                      "See that the network is there, and that server, database, login and "
                      "password are as who keeps the server says; a password is asked for anew "
                      "under “Records on a server”.")};

const Advice &adviceFor(ErrorCode code)
{
    for (const Advice &advice : advices)
        if (advice.code == code)
            return advice;
    return anyAdvice;
}

void addPart(QVBoxLayout *layout, const QString &head, const QString &text, const QString &name,
             Status sign)
{
    auto *title = new QLabel(head);
    whenThemed(title, [title] { title->setFont(sized(1, QFont::DemiBold)); });
    auto *line = new SignLine;
    line->setObjectName(name);
    line->show(sign, text);
    line->setSelectable(true);
    layout->addSpacing(em(0.8));
    layout->addWidget(title);
    layout->addWidget(line);
}

} // namespace

OpenErrorPage::OpenErrorPage(const Error &error, const QString &place, QWidget *parent)
    : QWidget(parent)
    , m_place(place)
{
    const QString databasePath = shownPlace(place);
    const bool onServer = isServerAddress(place);
    setObjectName(QStringLiteral("trouble"));
    setWindowTitle(tr("Loopwright"));
    const Advice &advice = onServer ? serverAdvice : adviceFor(error.code);

    auto *head = new QLabel(tr("The records could not be opened"));
    whenThemed(head, [head] { head->setFont(sized(1.7, QFont::DemiBold)); });
    auto *path = new QLabel(QDir::toNativeSeparators(databasePath));
    path->setTextFormat(Qt::PlainText);
    path->setForegroundRole(QPalette::PlaceholderText);
    path->setTextInteractionFlags(Qt::TextSelectableByMouse);
    path->setWordWrap(true);

    auto *column = new QVBoxLayout;
    column->addStretch(1);
    column->addWidget(head);
    column->addWidget(path);
    addPart(column, tr("What happened"), localized(error), QStringLiteral("happened"),
            Status::Failed);
    addPart(column, tr("What was kept"), tr(advice.kept), QStringLiteral("kept"), Status::Done);
    addPart(column, tr("What to do"), tr(advice.todo), QStringLiteral("todo"), Status::Note);
    const auto backup = error.code == ErrorCode::DatabaseTrouble && !onServer
                            ? newestDailyBackup(databasePath)
                            : std::optional<QString>();
    if (backup)
        addPart(column, tr("The newest backup"),
                tr("%1. In a terminal: loopwright-cli restore --db \"%2\" \"%1\"")
                    .arg(QDir::toNativeSeparators(*backup), QDir::toNativeSeparators(databasePath)),
                QStringLiteral("backup"), Status::Note);
    column->addSpacing(em(1.5));

    column->addLayout(makeButtons());
    column->addStretch(2);

    auto *layout = new QHBoxLayout(this);
    layout->addStretch(1);
    layout->addLayout(column, 6);
    layout->addStretch(1);
    resize(em(60), em(36));
}

QLayout *OpenErrorPage::makeButtons()
{
    auto *again = new QPushButton(tr("&Try again"));
    again->setObjectName(QStringLiteral("again"));
    again->setDefault(true);
    auto *other = new QPushButton(tr("&Open other records…"));
    other->setObjectName(QStringLiteral("other"));
    auto *quit = new QPushButton(tr("&Quit"));
    quit->setObjectName(QStringLiteral("quit"));
    connect(again, &QPushButton::clicked, this, &OpenErrorPage::tryAgain);
    connect(quit, &QPushButton::clicked, this, &QWidget::close);
    connect(other, &QPushButton::clicked, this, [this] {
        const QString chosen = QFileDialog::getOpenFileName(
            this, tr("Open other records"), {}, tr("Records (*.sqlite);;All files (*)"));
        if (!chosen.isEmpty())
            emit openOther(chosen, false);
    });
    auto *server = new QPushButton(tr("Records on a &server…"));
    server->setObjectName(QStringLiteral("server_records"));
    connect(server, &QPushButton::clicked, this, [this] {
        auto *dialog = new ServerDialog(m_place, this);
        connect(dialog, &ServerDialog::wished, this, &OpenErrorPage::openOther);
        dialog->open();
    });
    auto *buttons = new QHBoxLayout;
    for (QPushButton *button : {again, other, server, quit})
        buttons->addWidget(button);
    buttons->addStretch(1);
    return buttons;
}

} // namespace loopwright
