#include "app/desktop/MainWindow.h"

#include "app/desktop/AccessibleParts.h"
#include "app/desktop/Files.h"
#include "app/desktop/RunNotices.h"
#include "app/desktop/RunTeller.h"
#include "app/desktop/Sidebar.h"
#include "app/desktop/UndoNotice.h"
#include "app/desktop/WhoWorks.h"
#include "app/desktop/vans/BundleWatch.h"
#include "app/desktop/vans/VanMenu.h"
#include "app/desktop/widgets/PageElements.h"

#include <QCloseEvent>
#include <QDropEvent>
#include <QFocusFrame>
#include <QHBoxLayout>
#include <QJsonArray>
#include <QPointer>
#include <QResizeEvent>
#include <QScreen>
#include <QScrollArea>

namespace loopwright {

namespace {

/// Below this width, in em, the rail shows its signs alone.
constexpr double roomyWidthEm = 75;
constexpr int trailLength = 20;
constexpr int saidForMs = 12'000;

} // namespace

MainWindow::MainWindow(DesktopContext &workplace, std::span<const ScreenEntry> screens,
                       QWidget *parent)
    : QMainWindow(parent)
    , m_workplace(workplace)
{
    setObjectName(QStringLiteral("window"));
    setAcceptDrops(true);
    auto *middle = new QWidget;
    auto *layout = new QHBoxLayout(middle);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    m_rail = new Sidebar(screens);
    m_pages = new QStackedWidget;
    m_pages->setObjectName(QStringLiteral("pages"));
    layout->addWidget(m_rail);
    auto *beside = new QVBoxLayout;
    beside->setSpacing(0);
    m_runs = new RunTeller(m_workplace, *m_rail, this);
    beside->addWidget(m_pages, 1);
    m_undo = new UndoNotice(m_workplace);
    beside->addWidget(m_undo); // below: what one is about to click does not move
    beside->addWidget(m_runs->notices());
    m_bundles = new BundleWatch(m_workplace);
    beside->addWidget(m_bundles);
    layout->addLayout(beside, 1);
    setCentralWidget(middle);
    connect(m_rail, &Sidebar::chosen, this, [this](const QString &key) { showScreen(key); });
    connect(m_undo, &UndoNotice::takenBack, this, [this] { recordsChangedBy(nullptr); });
    connect(m_runs, &RunTeller::openWished, this, &MainWindow::openRun);
    connect(m_runs, &RunTeller::dismissedChanged, this, &MainWindow::placeChanged);
    connect(m_bundles, &BundleWatch::folderChanged, this, &MainWindow::placeChanged);
    connect(&m_workplace.drafts(), &DraftKeeper::waiting, this, &MainWindow::say);
    connect(&m_workplace.drafts(), &DraftKeeper::caughtUp, this, [this] {
        m_losesDrafts = false;
        say(tr("What you typed is saved."));
    });
    // The page of the run may be closed, or its window out of sight.
    connect(m_runs, &RunTeller::over, this, [this] {
        QApplication::beep();
        QApplication::alert(this);
    });

    makeStatusLine();
    makeRecordsMenu();
    makeGoMenu(screens);
    makeViewMenu();
    makeVanMenu();
    makeHelpMenu(screens);
    addScreens(screens);

    // The frame moves into the window of what it frames and goes with it: then there is another.
    connect(qApp, &QApplication::focusChanged, this,
            [ring = QPointer<QFocusFrame>()](QWidget *, QWidget *now) mutable {
                if (!ring && now)
                    ring = new QFocusFrame(now->window());
                if (ring)
                    ring->setWidget(now);
            });
    // Inside the screen, whatever its size; the frame needs some room too.
    const QSize room = QWidget::screen()->availableGeometry().size() - QSize(em(1), em(3));
    resize(QSize(em(100), em(58)).boundedTo(room));
    if (!screens.empty())
        showScreen(QString::fromLatin1(screens.front().key));
}

Screen *MainWindow::current() const
{
    const auto *area = static_cast<QScrollArea *>(m_pages->currentWidget());
    return area ? static_cast<Screen *>(area->widget()) : nullptr;
}

void MainWindow::addScreens(std::span<const ScreenEntry> screens)
{
    for (const ScreenEntry &entry : screens) {
        Screen *screen = entry.make(m_workplace);
        const QString key = QString::fromLatin1(entry.key);
        screen->setObjectName("screen." + key);
        screen->setAccessibleName(tr(entry.name));
        m_screens.insert(key, screen);
        m_pageOf.insert(key, m_pages->count());
        if (entry.under)
            m_under.insert(key, QString::fromLatin1(entry.under));
        // A page that is higher than a small window scrolls; nothing is cut off.
        m_pages->addWidget(inScrollArea(screen));
        connectScreen(screen);
    }
}

void MainWindow::connectScreen(Screen *screen)
{
    connect(screen, &Screen::openOrder, this, &MainWindow::openOrder);
    connect(screen, &Screen::openCircuit, this, &MainWindow::openCircuit);
    connect(screen, &Screen::openScreen, this, &MainWindow::showScreen);
    connect(screen, &Screen::editOrder, this, &MainWindow::editOrder);
    connect(screen, &Screen::said, this, &MainWindow::say);
    connect(screen, &Screen::stepDone, m_undo, &UndoNotice::tell);
    connect(screen, &Screen::titleChanged, this, &MainWindow::showTitle);
    connect(screen, &Screen::placeChanged, this, &MainWindow::placeChanged);
    connect(screen, &Screen::demoReady, this, &MainWindow::demoReady);
    connect(screen, &Screen::serverWished, this, &MainWindow::openServer);
    connect(screen, &Screen::runChanged, this, [this] { m_runs->look(); });
    connect(screen, &Screen::recordsChanged, this, [this, screen] { recordsChangedBy(screen); });
}

void MainWindow::showScreen(const QString &key, const QString &subject)
{
    Screen *next = screen(key);
    if (!next)
        return;
    Screen *before = current();
    if (!subject.isEmpty())
        next->open(subject);
    if (!subject.isEmpty() && key == u"job")
        remember(subject);
    if (before && before != next && before->isVisible()) {
        m_trail << before->key();
        if (m_trail.size() > trailLength)
            m_trail.removeFirst();
    }
    m_pages->setCurrentIndex(m_pageOf.value(key));
    m_rail->setCurrent(m_under.value(key, key));
    next->refresh();
    next->takeFocus();
    showTitle();
    emit placeChanged();
}

QJsonObject MainWindow::place() const
{
    QJsonObject screens;
    for (const Screen *each : m_screens)
        if (const QJsonObject place = each->place(); !place.isEmpty())
            screens.insert(each->key(), place);
    return {{"screen", current() ? current()->key() : QString()},
            {"screens", screens},
            {"dismissed", m_runs->dismissed()},
            {"bundle_folder", m_bundles->folder()},
            {"recent", QJsonArray::fromStringList(m_recent)},
            {"window", QString::fromLatin1(saveGeometry().toBase64())}};
}

void MainWindow::restore(const QJsonObject &place)
{
    if (restoreGeometry(QByteArray::fromBase64(place.value("window").toString().toLatin1())))
        keepInsideScreen();
    m_recent = place.value("recent").toVariant().toStringList();
    m_runs->setDismissed(place.value("dismissed").toObject());
    m_bundles->watch(place.value("bundle_folder").toString());
    const QJsonObject screens = place.value("screens").toObject();
    for (auto it = screens.begin(); it != screens.end(); ++it)
        if (Screen *each = screen(it.key()))
            each->restore(it.value().toObject());
    if (const QString key = place.value("screen").toString(); screen(key))
        showScreen(key);
    showTitle();
}

/// The screen may be a smaller one than the last time.
void MainWindow::keepInsideScreen()
{
    if (isMaximized() || isFullScreen())
        return;
    const QRect room = QWidget::screen()->availableGeometry();
    if (room.contains(frameGeometry()))
        return;
    resize(size().boundedTo(room.size() - QSize(em(1), em(3))));
    move(std::clamp(x(), room.left(), std::max(room.left(), room.right() - frameSize().width())),
         std::clamp(y(), room.top(), std::max(room.top(), room.bottom() - frameSize().height())));
}

void MainWindow::editOrder(const QString &number)
{
    if (Screen *form = screen(QStringLiteral("order"))) {
        form->open(number);
        showScreen(form->key());
    }
}

void MainWindow::goBack()
{
    if (current() && current()->letGo())
        return;
    const QString here = current() ? current()->key() : QString();
    while (!m_trail.isEmpty() && m_trail.last() == here)
        m_trail.removeLast();
    QString target = m_trail.isEmpty() ? QString() : m_trail.takeLast();
    if (here == u"job" || target.isEmpty()) // the two faces are one key apart, however one came
        target = here == u"board" ? QStringLiteral("job") : QStringLiteral("board");
    showScreen(target);
    if (!m_trail.isEmpty() && m_trail.last() == here)
        m_trail.removeLast();
}

void MainWindow::recordsChangedBy(Screen *screen)
{
    // The others read anew when they are shown.
    if (current() && current() != screen)
        current()->refresh();
    m_vans->refresh();
}

void MainWindow::closeEvent(QCloseEvent *event)
{
    event->setAccepted(settle());
}

bool MainWindow::settle()
{
    if (QWidget *now = QApplication::focusWidget(); now && isAncestorOf(now))
        now->clearFocus(); // what is typed there is kept as the field is left
    const bool settled = m_workplace.drafts().settle() || std::exchange(m_losesDrafts, true);
    if (!settled)
        say(tr("What you typed can be saved nowhere. Make room, or close once more to lose it."));
    return settled;
}

void MainWindow::say(const QString &sentence)
{
    m_said->setText(sentence);
    announce(*m_said, sentence);
    QTimer::singleShot(saidForMs, m_said, [this, sentence] {
        if (m_said->text() == sentence)
            m_said->clear();
    });
}

void MainWindow::takeIn(const QStringList &bundles)
{
    m_vans->takeIn(bundles);
}

void MainWindow::showTitle()
{
    if (const Screen *shown = current())
        setWindowTitle(tr("%1 — Loopwright").arg(shown->title()));
    if (const Screen *job = screen(QStringLiteral("job")))
        m_rail->setName(job->key(), job->title());
}

void MainWindow::openRun(const QString &order)
{
    if (order.isEmpty())
        return say(tr("No run goes on, and none waits to be recorded."));
    // A copy: the button that asked for it goes away.
    const QString number = order; // NOLINT(performance-unnecessary-copy-initialization)
    m_runs->dismiss(number);
    openOrder(number);
    if (current())
        current()->showPart(QStringLiteral("run"));
}

void MainWindow::resizeEvent(QResizeEvent *event)
{
    QMainWindow::resizeEvent(event);
    m_rail->setNarrow(width() < em(roomyWidthEm));
    emit placeChanged();
}

void MainWindow::moveEvent(QMoveEvent *event)
{
    QMainWindow::moveEvent(event);
    emit placeChanged();
}

void MainWindow::changeEvent(QEvent *event)
{
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::WindowStateChange)
        emit placeChanged();
}

/// Bundles, whichever screen is shown; other files are the screens' own.
void MainWindow::dragEnterEvent(QDragEnterEvent *event)
{
    if (!droppedBundles(event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent *event)
{
    takeIn(droppedBundles(event->mimeData()));
    event->acceptProposedAction();
}

} // namespace loopwright
