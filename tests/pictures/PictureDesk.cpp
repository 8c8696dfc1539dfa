#include "tests/pictures/PictureDesk.h"

#include "app/actions/Certificates.h"
#include "app/actions/Demo.h"
#include "app/actions/Evidence.h"
#include "app/desktop/Language.h"
#include "app/desktop/widgets/Table.h"
#include "core/base/Json.h"
#include "tests/pictures/EarlierPicture.h"
#include "tests/pictures/PaintedTexts.h"
#include "tests/support/WindowTexts.h"

#include <QAction>
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QTabWidget>
#include <QTest>
#include <QTimer>

namespace loopwright {

namespace {

constexpr int quietMs = 120, mostMs = 20'000;

void must(const Result<void> &done)
{
    if (!done)
        qFatal("%s", qPrintable(done.error().text()));
}

const QString scenarioFolder = QStringLiteral(LOOPWRIGHT_SOURCE_DIR "/demo/scenario/");

QByteArray fileOf(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("%s cannot be read", qPrintable(path));
    return file.readAll();
}

QWidget *shownDialog()
{
    QWidget *modal = QApplication::activeModalWidget();
    return modal && modal->isVisible() ? modal : nullptr;
}

} // namespace

QString Sight::name() const
{
    return QStringLiteral("%1-%2-%3").arg(language, toText(look)).arg(percent);
}

PictureDesk::PictureDesk(const QString &records, Sight sight, QString folder)
    : m_path(records)
    , m_sight(std::move(sight))
    , m_folder(std::move(folder))
{
    auto opened = DesktopContext::open(records, demoPerson(), demoNow());
    if (!opened)
        qFatal("%s", qPrintable(opened.error().text()));
    m_workplace = std::move(*opened);
    m_window = std::make_unique<MainWindow>(*m_workplace);
    m_window->markTheme(*fromText<LookChoice>(toText(m_sight.look)), m_sight.percent);
    m_window->markLanguage(m_sight.language);
    m_window->resize(m_sight.size());
    m_window->show();
    m_window->activateWindow();
    if (!QTest::qWaitForWindowActive(m_window.get()))
        qFatal("the window does not become active");
}

PictureDesk::~PictureDesk() = default;

void PictureDesk::click(const QString &button)
{
    find<QAbstractButton>(button)->click();
}

void PictureDesk::trigger(const QString &action)
{
    find<QAction>(action)->trigger();
}

void PictureDesk::selectRows(const QString &name, int count)
{
    auto *table = find<Table>(name);
    if (!QTest::qWaitFor([&] { return table->model()->rowCount() >= count; }, mostMs))
        qFatal("%s: %s has fewer than %d rows", qPrintable(m_scene), qPrintable(name), count);
    const QAbstractItemModel *model = table->model();
    table->setCurrentIndex(model->index(0, 0));
    table->selectionModel()->select(QItemSelection(model->index(0, 0), model->index(count - 1, 0)),
                                    QItemSelectionModel::ClearAndSelect |
                                        QItemSelectionModel::Rows);
}

void PictureDesk::settle(QWidget &widget)
{
    QTest::qWait(quietMs);
    QImage last;
    for (int waited = 0; waited < mostMs; waited += quietMs) {
        const QImage now = widget.grab().toImage();
        if (now == last)
            return;
        last = now;
        QTest::qWait(quietMs);
    }
    qFatal("%s does not come to rest", qPrintable(widget.objectName()));
}

void PictureDesk::takeOf(QWidget &widget, const QString &part)
{
    settle(widget);
    const QString path =
        QStringLiteral("%1/%2%3%4.png")
            .arg(m_folder, m_scene, part.isEmpty() ? QString() : "-" + part, "." + m_sight.name());
    if (const QString told = keepBesideEarlier(widget.grab().toImage(), path); !told.isEmpty())
        m_changed << told;
    ++m_taken;
    readFigures(widget, part);
}

/// In a language that has another decimal mark no figure has the point.
void PictureDesk::readFigures(QWidget &widget, const QString &part)
{
    if (decimalMark() == englishMark)
        return;
    for (const QString &text : textsOf(widget) + paintedTexts(widget))
        if (const QStringList found = englishFigures(text); !found.isEmpty())
            m_english
                << QStringLiteral("%1 %2: %3 in %4").arg(m_scene, part, found.join(u' '), text);
}

void PictureDesk::take(const QString &part)
{
    takeOf(*m_window, part);
}

void PictureDesk::takeWhole(const QString &part)
{
    settle(*m_window);
    QWidget *page = nullptr;
    for (const QScrollArea *area : m_window->current()->findChildren<QScrollArea *>())
        if (area->isVisible() && (!page || area->widget()->height() > page->height()))
            page = area->widget();
    if (!page)
        qFatal("%s: nothing scrolls", qPrintable(m_scene));
    takeOf(*page, part);
}

void PictureDesk::takeDialog(const QString &part, const std::function<void()> &open)
{
    bool taken = false;
    QTimer waiting;
    QObject::connect(&waiting, &QTimer::timeout, m_window.get(), [&] {
        QWidget *dialog = shownDialog();
        if (!dialog)
            return;
        waiting.stop();
        takeOf(*dialog, part);
        taken = true;
        qobject_cast<QDialog *>(dialog)->reject();
    });
    waiting.start(quietMs);
    open();
    if (!QTest::qWaitFor([&] { return taken && !shownDialog(); }, mostMs))
        qFatal("%s: no dialog %s", qPrintable(m_scene), qPrintable(part));
}

void PictureDesk::takeMenu(const QString &part, QMenu *menu)
{
    menu->popup(m_window->mapToGlobal(QPoint(40, 40)));
    takeOf(*menu, part);
    menu->close();
}

void PictureDesk::takeTabs(const QString &name)
{
    auto *tabs = find<QTabWidget>(name);
    for (int i = 0; i < tabs->count(); ++i) {
        tabs->setCurrentIndex(i);
        take(QString::number(i + 1));
    }
}

namespace {

/// Loops that can be judged; the demo's records have figures alone.
void addMakeups(Records &records)
{
    int last = 0;
    for (const char *name : {"loop", "loop-too-long"}) {
        const QByteArray makeup = fileOf(QStringLiteral("%1%2.json").arg(scenarioFolder, name));
        const QJsonObject loop{
            {"id", QStringLiteral("00000000-0000-4000-8000-%1").arg(++last, 12, 10, QChar(u'0'))},
            {"kind", "loop"},
            {"at", "2026-03-12T09:00:00-06:00"},
            {"makeup", QJsonDocument::fromJson(makeup).object()}};
        const QJsonObject record{{"order", QStringLiteral("26-015%1").arg(last)},
                                 {"installer", "okafor"},
                                 {"facts", QJsonArray{loop}}};
        const auto taken = recordFile(records, canonicalJson(record), QStringLiteral("makeup"));
        if (!taken)
            qFatal("%s", qPrintable(taken.error().text()));
    }
}

} // namespace

QString certificateBeside(const QString &records)
{
    return QFileInfo(records).absolutePath() + "/certificate.pdf";
}

void makePictureRecords(const QString &path)
{
    must(makeDemo(path));
    auto records = Records::open(path);
    if (!records)
        qFatal("%s", qPrintable(records.error().text()));
    (*records)->actAs(demoPerson());
    (*records)->setNow(demoNow());
    addMakeups(**records);
    const auto issued = issueCertificate(
        **records,
        {QStringLiteral("26-0001"),
         Paper::A4,
         {},
         [&path](const CertificatePaper &made) -> Result<void> {
             QFile file(certificateBeside(path));
             if (!file.open(QIODevice::WriteOnly) || file.write(made.pdf) != made.pdf.size())
                 return failure(ErrorCode::DiskTrouble, file.errorString());
             return {};
         }});
    if (!issued)
        qFatal("%s", qPrintable(issued.error().text()));
}

} // namespace loopwright
