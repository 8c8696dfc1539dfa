// Work that is done apart: what the dialogs say before and after, and what is to be settled.

#include "tests/pictures/VanScenes.h"

#include "app/actions/Plans.h"
#include "tests/support/Vans.h"

#include <QDialog>
#include <QDir>
#include <QDragEnterEvent>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QTest>
#include <QUrl>

namespace loopwright {

namespace {

using jobs::good;

constexpr int longestWait = 20'000; // ms

/// A van beside the office of the pictures.
class VanAtHand
{
public:
    explicit VanAtHand(const QString &officeRecords)
        : m_office(std::move(*Records::open(officeRecords)))
        , m_van(std::move(*Records::open(path("van.sqlite"))))
    {
        m_van->setKeys(KeyFolder(path("keys")));
        for (Records *records : {m_office.get(), m_van.get()})
            records->setNow(Moment::parse(QString("2026-03-12T12:00:00-06:00")));
        m_office->actAs("hale");
        m_van->actAs("okafor");
        good(addVan(*m_office, "van-7", good(publicKeyFile(*m_van)), "van.key", false));
    }
    QString path(const QString &name) const { return m_folder.filePath(name); }

    void take(const QStringList &orders)
    {
        TakingAlong wish;
        wish.orders = orders;
        wish.station = "van-7";
        wish.out = path("for-van-7.json");
        good(takeAlong(*m_office, wish));
        good(openBundles(*m_van, {{"for-van-7.json", jobs::contentOf(wish.out)}}));
    }
    void record(const QByteArray &job) { good(recordFile(*m_van, job, "job.json")); }
    void changePair(const QString &order, const QString &pair)
    {
        m_office->changeWhatIsOut(true);
        good(changePlans(*m_office, {{order, {{"pair", pair}}}}));
    }
    QString bring()
    {
        good(bringBack(*m_van, {path("from-van-7.json")}));
        return path("from-van-7.json");
    }

private:
    QTemporaryDir m_folder;
    std::unique_ptr<Records> m_office, m_van;
};

QDialog &dialogOf(PictureDesk &desk, const QString &name)
{
    QDialog *dialog = nullptr;
    const bool is = QTest::qWaitFor(
        [&] {
            dialog = desk.window().findChild<QDialog *>(name);
            return dialog && dialog->isVisible();
        },
        longestWait);
    if (!is)
        qFatal("no dialog %s", qPrintable(name));
    return *dialog;
}

void drop(QWidget &window, const QString &path)
{
    QMimeData files;
    files.setUrls({QUrl::fromLocalFile(path)});
    const QPoint middle = window.rect().center();
    QDragEnterEvent enter(middle, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &enter);
    QDropEvent drop(middle, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &drop);
}

/// Before and after; it is closed again.
void takeBoth(PictureDesk &desk, const QString &name, const QString &part)
{
    QDialog &dialog = dialogOf(desk, name);
    auto *confirm = dialog.findChild<QPushButton *>(name + ".confirm");
    if (!QTest::qWaitFor([&] { return confirm->isEnabled(); }, longestWait))
        qFatal("%s cannot be confirmed", qPrintable(name));
    desk.takeOf(dialog, part + "-before");
    confirm->click();
    if (!QTest::qWaitFor([&] { return !confirm->isVisible(); }, longestWait))
        qFatal("%s does not end", qPrintable(name));
    desk.takeOf(dialog, part + "-after");
    dialog.reject();
}

} // namespace

void vanDialogs(PictureDesk &desk)
{
    VanAtHand van(desk.records());
    desk.window().showScreen("board");
    desk.selectRows("orders", 5);
    desk.trigger("rows.take_along");
    QDialog &along = dialogOf(desk, "take_along");
    QDir::setCurrent(van.path({})); // a name alone: the path is another each time
    along.findChild<QLineEdit *>("take_along.file")->setText("first.json");
    takeBoth(desk, "take_along", "take-along");

    van.take({"26-0006", "26-0010"});
    van.changePair("26-0006", "C7-402");
    van.record(R"({"order":"26-0006","installer":"okafor","facts":[
        {"id":"00000000-0000-4000-8000-00000000f001","kind":"loop","at":"2026-03-12T11:00:00-06:00",
         "dc_resistance_ohm":612,"loss_db":28.4,"frequency_hz":40000}]})");
    drop(desk.window(), van.bring());
    takeBoth(desk, "take_in", "take-in");

    desk.trigger("action.settle");
    QDialog &conflicts = dialogOf(desk, "conflicts");
    desk.takeOf(conflicts, "conflicts");
    conflicts.reject();
    desk.take("board");
}

} // namespace loopwright
