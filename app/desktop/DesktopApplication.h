#pragma once
// The running program: opens the records, shows the window or the page that says why not, and
// keeps the chosen look and size between starts, and for each database where one was.

#include "app/desktop/Lanes.h"
#include "app/desktop/MainWindow.h"
#include "app/desktop/StartOptions.h"
#include "app/desktop/SystemLook.h"

#include <QApplication>
#include <QPointer>
#include <QSettings>
#include <QTimer>

namespace loopwright {

class DesktopApplication : public QObject
{
    Q_OBJECT
public:
    /// `settings` outlives it and holds "look", "size", "language", "paper", and "places/…" of
    /// each database.
    DesktopApplication(QApplication &application, StartOptions options, QSettings &settings);
    ~DesktopApplication() override;

    /// Opens the records and shows the window; or the page of trouble.
    void start();
    /// The window or page that is shown.
    QWidget *shown() const { return m_shown.get(); }
    MainWindow *window() const { return qobject_cast<MainWindow *>(m_shown.get()); }

private:
    void use(std::unique_ptr<DesktopContext> workplace);
    void openOther(const QString &path, bool atStart);
    void keepAtStart(bool atStart);
    bool isAtStart() const;
    void showWindow();
    void showTrouble(const Error &error);
    void comeForward(const Wish &wish);
    void fulfil(const Wish &wish);
    void chooseLook(LookChoice look, int percent);
    void applyLook();
    void openDemo(const QString &path);
    void chooseLanguage(const QString &code);
    void choosePaperOf(const QString &code);
    QString placeKey() const;
    void keepPlace();

    QApplication &m_application;
    StartOptions m_options;
    QSettings &m_settings;
    SystemLook m_system;
    LookChoice m_look = LookChoice::System;
    int m_percent = 100;
    QString m_language;
    /// One backup of each day, made while nobody waits for it.
    void backUp();

    OneWindow m_oneWindow;
    QTimer m_backups{this};                      ///< looks whether a new day has begun
    QTimer m_keeping;                            ///< runs while the place changed and is not kept
    std::unique_ptr<DesktopContext> m_workplace; ///< must outlive the window
    std::unique_ptr<Asker> m_backingUp;          ///< before the workplace goes
    std::unique_ptr<QWidget> m_shown;
};

} // namespace loopwright
