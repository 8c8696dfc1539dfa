#include "app/desktop/DesktopApplication.h"

#include "app/desktop/DeskStyle.h"
#include "app/desktop/OpenErrorPage.h"

#include <QTimer>

namespace loopwright {

DesktopApplication::DesktopApplication(QApplication &application, StartOptions options,
                                       QSettings &settings)
    : m_application(application)
    , m_options(std::move(options))
    , m_settings(settings)
{
    const QString look =
        m_options.look.isEmpty() ? m_settings.value("look").toString() : m_options.look;
    m_look = fromText<Look>(look).value_or(Look::Light);
    m_percent = m_options.size ? m_options.size : m_settings.value("size", 100).toInt();
    applyTheme(m_application, m_look, m_percent);
}

DesktopApplication::~DesktopApplication() = default;

void DesktopApplication::start()
{
    auto opened = DesktopContext::open(m_options.database, m_options.by, m_options.now);
    if (!opened)
        return showTrouble(opened.error());
    m_shown.reset();
    m_workplace = std::move(*opened);
    m_workplace->letClockRun();
    showWindow();
}

void DesktopApplication::showWindow()
{
    auto window = std::make_unique<MainWindow>(*m_workplace);
    window->markTheme(m_look, m_percent);
    connect(window.get(), &MainWindow::lookChosen, this,
            [this](Look look) { applyLook(look, m_percent); });
    connect(window.get(), &MainWindow::sizeChosen, this,
            [this](int percent) { applyLook(m_look, percent); });
    window->show();
    if (!m_options.order.isEmpty())
        window->openOrder(m_options.order);
    m_shown = std::move(window);
}

void DesktopApplication::showTrouble(const Error &error)
{
    auto page = std::make_unique<OpenErrorPage>(error, m_options.database);
    // Queued: the page is replaced while it is still speaking.
    connect(page.get(), &OpenErrorPage::tryAgain, this, &DesktopApplication::start,
            Qt::QueuedConnection);
    connect(
        page.get(), &OpenErrorPage::openOther, this,
        [this](const QString &path) {
            m_options.database = path;
            start();
        },
        Qt::QueuedConnection);
    page->show();
    m_shown = std::move(page);
}

void DesktopApplication::applyLook(Look look, int percent)
{
    m_look = look;
    m_percent = percent;
    m_settings.setValue("look", toText(look));
    m_settings.setValue("size", percent);
    applyTheme(m_application, look, percent);
    if (window())
        window()->markTheme(look, percent);
}

} // namespace loopwright
