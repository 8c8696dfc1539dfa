#include "app/desktop/DesktopApplication.h"

#include "app/actions/DailyBackups.h"
#include "app/actions/Demo.h"
#include "app/desktop/AccessibleParts.h"
#include "app/desktop/DeskStyle.h"
#include "app/desktop/Language.h"
#include "app/desktop/OpenErrorPage.h"
#include "app/desktop/PrintDialogs.h"

#include <QJsonDocument>

namespace loopwright {

namespace {

/// So long after a change a kill loses it.
constexpr int keepAfterMs = 300;
/// The window is used first; then a new day is noticed within the hour.
constexpr int firstBackupAfterMs = 60'000, nextBackupAfterMs = 3'600'000;

/// As it was before the program had colours of its own.
const QPalette &platformPalette()
{
    static const QPalette first = QApplication::palette();
    return first;
}

} // namespace

DesktopApplication::DesktopApplication(QApplication &application, StartOptions options,
                                       QSettings &settings)
    : m_application(application)
    , m_options(std::move(options))
    , m_settings(settings)
    , m_system(platformPalette())
{
    const QString chosen = m_settings.value("language").toString();
    m_language = !m_options.language.isEmpty() ? m_options.language
                 : findLanguage(chosen)        ? chosen
                                               : languageOfSystem();
    speak(m_language);
    installAccessibility();
    const QString look =
        m_options.look.isEmpty() ? m_settings.value("look").toString() : m_options.look;
    m_look = fromText<LookChoice>(look).value_or(LookChoice::System);
    m_percent = m_options.size ? m_options.size : m_settings.value("size", 100).toInt();
    applyLook();
    connect(&m_system, &SystemLook::changed, this, [this] {
        if (m_look == LookChoice::System)
            applyLook();
    });
    choosePaper(fromText<Paper>(m_settings.value("paper").toString()));
    m_backups.setObjectName(QStringLiteral("backups"));
    m_keeping.setSingleShot(true);
    m_keeping.setInterval(keepAfterMs);
    connect(&m_keeping, &QTimer::timeout, this, &DesktopApplication::keepPlace);
    connect(&m_backups, &QTimer::timeout, this, &DesktopApplication::backUp);
    connect(&m_oneWindow, &OneWindow::wished, this, &DesktopApplication::comeForward);
}

DesktopApplication::~DesktopApplication()
{
    if (m_keeping.isActive())
        keepPlace();
}

void DesktopApplication::start()
{
    auto opened = DesktopContext::open(m_options.database, m_options.by, m_options.now);
    if (!opened)
        return showTrouble(opened.error());
    use(std::move(*opened));
}

/// In the place of what was shown.
void DesktopApplication::use(std::unique_ptr<DesktopContext> workplace)
{
    m_shown.reset();
    m_backingUp.reset();
    m_workplace = std::move(workplace);
    m_workplace->letClockRun();
    m_backingUp = std::make_unique<Asker>(m_workplace->longWork());
    showWindow();
    m_oneWindow.answerFor(m_options.database);
    if (m_workplace->records().database().wasOpenToOthers())
        window()->say(tr("Others had rights to the file of the records; now its owner alone has."));
    m_backups.start(firstBackupAfterMs);
}

/// The window stays as it is where they cannot be opened.
void DesktopApplication::openOther(const QString &path, bool atStart)
{
    if (keyOfDatabase(path) == keyOfDatabase(m_options.database))
        return window()->say(tr("These records are open."));
    if (OneWindow::handOver(path, {}))
        return window()->say(tr("These records have a window, which was brought forward."));
    auto opened = DesktopContext::open(path, m_options.by, m_options.now);
    if (!opened)
        return window()->say(localized(opened.error()));
    if (!window()->settle())
        return;
    keepPlace();
    m_options.database = path;
    m_options.order.clear(); // it was a wish of the others
    m_options.file.clear();
    if (atStart)
        keepAtStart(true);
    use(std::move(*opened));
}

/// Which records are opened where nothing else is said; a password is not kept.
void DesktopApplication::keepAtStart(bool atStart)
{
    const QString kept = withoutPassword(m_options.database);
    if (atStart && !kept.isEmpty()) // an address of another form is for --db or LOOPWRIGHT_DB
        m_settings.setValue(StartOptions::recordsKey, kept);
    else
        m_settings.remove(StartOptions::recordsKey);
}

bool DesktopApplication::isAtStart() const
{
    const QString kept = m_settings.value(StartOptions::recordsKey).toString();
    return keyOfDatabase(kept.isEmpty() ? defaultDatabasePath() : kept) ==
           keyOfDatabase(m_options.database);
}

void DesktopApplication::backUp()
{
    m_backups.start(nextBackupAfterMs);
    if (!m_backingUp || m_backingUp->isBusy())
        return;
    m_backingUp->ask<bool>(
        [](Records &records, const Progress &progress) {
            return backUpDaily(records, Records::realNow().localDate(), progress);
        },
        [this](const Result<bool> &made) {
            if (window() && !made)
                window()->say(
                    tr("The backup of today could not be made: %1").arg(localized(made.error())));
            else if (window() && *made)
                window()->say(tr("The records were backed up."));
        });
}

void DesktopApplication::showWindow()
{
    auto window = std::make_unique<MainWindow>(*m_workplace);
    window->markTheme(m_look, m_percent);
    window->markLanguage(m_options.language.isEmpty()
                             ? m_settings.value("language", m_language).toString()
                             : m_language);
    window->markPaper(m_settings.value("paper", "country").toString());
    window->markAtStart(isAtStart());
    connect(window.get(), &MainWindow::atStartChosen, this, &DesktopApplication::keepAtStart);
    connect(window.get(), &MainWindow::paperChosen, this, &DesktopApplication::choosePaperOf);
    // Queued: the window goes while it is still speaking.
    connect(window.get(), &MainWindow::recordsWished, this, &DesktopApplication::openOther,
            Qt::QueuedConnection);
    connect(window.get(), &MainWindow::languageChosen, this, &DesktopApplication::chooseLanguage);
    connect(window.get(), &MainWindow::lookChosen, this,
            [this](LookChoice look) { chooseLook(look, m_percent); });
    connect(window.get(), &MainWindow::sizeChosen, this,
            [this](int percent) { chooseLook(m_look, percent); });
    window->restore(
        QJsonDocument::fromJson(m_settings.value(placeKey()).toString().toUtf8()).object());
    connect(window.get(), &MainWindow::placeChanged, this, [this] {
        if (!m_keeping.isActive())
            m_keeping.start();
    });
    // Queued: the window goes away.
    connect(window.get(), &MainWindow::demoReady, this, &DesktopApplication::openDemo,
            Qt::QueuedConnection);
    window->show();
    m_shown = std::move(window);
    fulfil(m_options.wish());
}

/// On the day on which the demo stands. The next start opens one's own records again.
void DesktopApplication::openDemo(const QString &path)
{
    m_options = {};
    m_options.database = path;
    m_options.by = demoPerson();
    m_options.now = demoNow();
    start();
    if (window())
        window()->say(tr("This is the demo; the next start opens your own records again."));
}

void DesktopApplication::fulfil(const Wish &wish)
{
    if (!wish.order.isEmpty())
        window()->openOrder(wish.order);
    if (wish.file.isEmpty())
        return;
    if (wish.screen.isEmpty())
        window()->takeIn({wish.file});
    else
        window()->showScreen(wish.screen, wish.file);
}

void DesktopApplication::comeForward(const Wish &wish)
{
    if (!window())
        return;
    window()->setWindowState(window()->windowState() & ~Qt::WindowMinimized);
    window()->raise();
    window()->activateWindow();
    QApplication::alert(window());         // where a window may not come forward by itself
    if (QApplication::activeModalWidget()) // what it asks about must stay below it
        window()->say(tr("Answer the open question first."));
    else
        fulfil(wish);
}

/// Of the database that is open; two do not share it.
QString DesktopApplication::placeKey() const
{
    return "places/" + keyOfDatabase(m_options.database);
}

void DesktopApplication::keepPlace()
{
    m_keeping.stop();
    if (!window())
        return;
    m_settings.setValue(
        placeKey(),
        QString::fromUtf8(QJsonDocument(window()->place()).toJson(QJsonDocument::Compact)));
    m_settings.sync(); // a kill leaves no time for it
}

void DesktopApplication::showTrouble(const Error &error)
{
    auto page = std::make_unique<OpenErrorPage>(error, withoutPassword(m_options.database));
    // Queued: the page is replaced while it is still speaking.
    connect(page.get(), &OpenErrorPage::tryAgain, this, &DesktopApplication::start,
            Qt::QueuedConnection);
    connect(
        page.get(), &OpenErrorPage::openOther, this,
        [this](const QString &path, bool atStart) {
            m_options.database = path;
            start();
            if (atStart && window())
                keepAtStart(true);
        },
        Qt::QueuedConnection);
    page->show();
    m_shown = std::move(page);
}

void DesktopApplication::chooseLook(LookChoice look, int percent)
{
    m_look = look;
    m_percent = percent;
    m_settings.setValue("look", toText(look));
    m_settings.setValue("size", percent);
    applyLook();
    if (window())
        window()->markTheme(look, percent);
}

void DesktopApplication::applyLook()
{
    applyTheme(m_application, lookFor(m_look, m_system.look()), m_percent);
}

void DesktopApplication::choosePaperOf(const QString &code)
{
    m_settings.setValue("paper", code);
    choosePaper(fromText<Paper>(code));
}

/// The window that is there has its texts: somebody may be typing in it.
void DesktopApplication::chooseLanguage(const QString &code)
{
    m_settings.setValue("language", code);
    const Language *language = findLanguage(code);
    if (window() && language && code != m_language)
        window()->say(tr("%1 from the next start on.").arg(QString::fromUtf8(language->ownName)));
}

} // namespace loopwright
