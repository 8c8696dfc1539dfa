// Every part of the job page in every look and at the smallest and largest size: nothing is wider
// than the page, and no word is cut off. With LOOPWRIGHT_PICTURES=FOLDER it leaves a picture of
// each part there, for eyes.

#include "app/desktop/job/StationPanel.h"

#include "app/desktop/DeskStyle.h"
#include "app/desktop/job/PanelTable.h"
#include "app/desktop/screens/JobScreen.h"
#include "app/desktop/widgets/OneLine.h"
#include "app/desktop/widgets/SignList.h"
#include "core/acceptance/PartHelp.h"
#include "tests/support/JobBench.h"

#include <QAbstractButton>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

QList<QJsonObject> someFacts(const OrderFields &fields)
{
    if (fields["kind"] == u"analog")
        return analogFacts().mid(0, 5);
    QList<QJsonObject> facts = briFacts().mid(0, 13);
    facts
        << fact(40, "loop", 9,
                {{"makeup",
                  QJsonObject{
                      {"elements",
                       QJsonArray{
                           QJsonObject{{"type", "section"}, {"gauge_awg", 26}, {"length_ft", 6000}},
                           QJsonObject{
                               {"type", "bridged_tap"}, {"gauge_awg", 24}, {"length_ft", 1500}},
                           QJsonObject{
                               {"type", "section"}, {"gauge_awg", 24}, {"length_ft", 3000}}}}}}})
        << fact(41, "layer", 14,
                {{"layer", 3}, {"terminal", 2}, {"outcome", "down"}, {"cause", 100}})
        << fact(42, "note", 21,
                {{"text", "Moved to binding post 12 after a talk with the office"}});
    return facts;
}

QString where(const QWidget *widget)
{
    QStringList path;
    for (; widget; widget = widget->parentWidget())
        if (!widget->objectName().isEmpty())
            path.prepend(widget->objectName());
    return path.join('/');
}

/// Visible words that have less room than they need.
QStringList cutWords(const QWidget &page)
{
    QStringList cut;
    for (const QLabel *label : page.findChildren<QLabel *>()) {
        if (!label->isVisibleTo(&page) || label->text().isEmpty())
            continue;
        if (qobject_cast<const OneLine *>(label)) // shortened on purpose; whole in its tool tip
            continue;
        const int needed =
            label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        if (needed > label->height() + 1 ||
            (!label->wordWrap() && label->sizeHint().width() > label->width() + 1))
            cut << QString("%1: \"%2\" has %3 x %4, needs %5 x %6")
                       .arg(where(label), label->text().left(60))
                       .arg(label->width())
                       .arg(label->height())
                       .arg(label->sizeHint().width())
                       .arg(needed);
    }
    for (const SignList *list : page.findChildren<SignList *>())
        if (list->isVisibleTo(&page) && list->heightForWidth(list->width()) > list->height())
            cut << QString("%1: a list has height %2, needs %3")
                       .arg(where(list))
                       .arg(list->height())
                       .arg(list->heightForWidth(list->width()));
    for (const QAbstractButton *button : page.findChildren<QAbstractButton *>())
        if (button->isVisibleTo(&page) && button->sizeHint().width() > button->width() + 1)
            cut << QString("%1: button \"%2\"").arg(where(button), button->text());
    return cut;
}

} // namespace

class StationPanelTest : public QObject
{
    Q_OBJECT

private slots:
    void everyPartHasItsHelp()
    {
        QSet<QString> parts;
        for (const PanelInfo &info : allPanels()) {
            const PartHelp *help = findPartHelp(info.key());
            QVERIFY2(help, qPrintable(info.key()));
            QCOMPARE(QString(help->name), QString(info.title));
            QCOMPARE(help->station, info.station);
            parts << help->key;
        }
        for (const PartHelp &help : partHelps())
            QVERIFY2(parts.contains(help.key) || QString(help.key) == "order", help.key);
    }
    /// Hidden it takes no room; shown, by key or by the sign, it says both sentences.
    void helpIsShownWhereItIsAskedFor()
    {
        applyTheme(*qApp, Look::Light, 100);
        JobBench bench({briFields()});
        bench.at(60);
        bench.window().resize(1180, 800);
        bench.window().openOrder(briFields()["order_number"]);
        for (QLabel *label : bench.window().findChildren<QLabel *>())
            if (label->objectName().endsWith(".help"))
                QVERIFY2(label->isHidden(), qPrintable(label->objectName()));
        auto *calls = bench.find<StationPanel>("panel.calls");
        const auto *help = bench.find<QLabel>("calls.help");
        const int before = calls->sizeHint().height();
        calls->takeKeyboard({});
        JobBench::key(Qt::Key_F1, Qt::ShiftModifier);
        QVERIFY(help->isVisible());
        QVERIFY(calls->sizeHint().height() > before);
        const PartHelp *part = findPartHelp("calls");
        QVERIFY(help->text().contains(part->whatFor().english()));
        QVERIFY(help->text().contains("When it fails: " + part->whenItFails().english()));
        QVERIFY(bench.find<QLabel>("settings.help")->isHidden());
        JobBench::key(Qt::Key_F1, Qt::ShiftModifier);
        QVERIFY(help->isHidden());
        bench.find<QAbstractButton>("calls.help_sign")->click();
        QVERIFY(help->isVisible());
        QCOMPARE(bench.find<QAbstractButton>("calls.help_sign")->accessibleName(), "Help on Calls");
    }

    /// What is on record of a loop, as the reader's country measures.
    void aMakeupOnRecordInFeetOrMetres()
    {
        JobBench bench({briFields()});
        bench.at(60);
        QVERIFY(recordFile(
            bench.records(),
            canonicalJson(jobs::record(jobs::order(briFields()), someFacts(briFields()))),
            "some.json"));
        const auto shown = [&bench](const QLocale &locale) {
            QLocale::setDefault(locale);
            bench.window().openOrder(briFields()["order_number"]);
            QLocale::setDefault(QLocale::c());
            QStringList texts;
            for (const SignList *list : bench.window().findChildren<SignList *>())
                if (list->objectName().endsWith(".recorded"))
                    for (const SignItem &item : list->items())
                        texts << item.text;
            return texts.join('\n');
        };
        const QString feet = shown(QLocale(QLocale::English, QLocale::UnitedStates));
        QVERIFY2(feet.contains("elements, 9000 ft, taps 1500 ft"), qPrintable(feet));
        const QString metres = shown(QLocale(QLocale::English, QLocale::Ireland));
        QVERIFY2(metres.contains("elements, 2743 m, taps 457 m"), qPrintable(metres));
    }

    void nothingIsCutOff_data()
    {
        QTest::addColumn<Look>("look");
        QTest::addColumn<int>("percent");
        QTest::addColumn<QSize>("size");
        QTest::addColumn<OrderFields>("fields");
        const std::pair<const char *, OrderFields> orders[] = {{"bri", briFields()},
                                                               {"analog", analogFields()}};
        for (const auto &[name, fields] : orders)
            for (const Look look : {Look::Light, Look::Dark, Look::HighContrast})
                for (const auto &[percent, size] :
                     {std::pair(100, QSize(1280, 760)), std::pair(200, QSize(1900, 1000)),
                      std::pair(150, QSize(1280, 720))})
                    QTest::addRow("%s-%s-%d", name, qPrintable(toText(look)), percent)
                        << look << percent << size << fields;
    }
    void nothingIsCutOff()
    {
        QFETCH(const Look, look);
        QFETCH(const int, percent);
        QFETCH(const QSize, size);
        QFETCH(const OrderFields, fields);
        applyTheme(*qApp, look, percent);
        JobBench bench({fields});
        bench.at(60);
        const QString number = fields["order_number"];
        QVERIFY(recordFile(bench.records(),
                           canonicalJson(jobs::record(jobs::order(fields), someFacts(fields))),
                           "some.json"));
        bench.window().resize(size);
        bench.window().openOrder(number);
        bench.unfoldAll();
        for (StationPanel *panel : bench.window().findChildren<StationPanel *>())
            panel->toggleHelp();
        auto *page = bench.window().findChild<QScrollArea *>("page");
        auto *screen = bench.window().findChild<JobScreen *>();
        // Long texts find their height in some rounds of layout.
        for (int tries = 0; !cutWords(*screen).isEmpty() && tries < 40; ++tries)
            QTest::qWait(50);
        QVERIFY2(page->widget()->width() <= page->viewport()->width(),
                 qPrintable(QString("the page is %1 wide, its window %2")
                                .arg(page->widget()->width())
                                .arg(page->viewport()->width())));
        const QStringList cut = cutWords(*screen);
        const QString folder = qEnvironmentVariable("LOOPWRIGHT_PICTURES");
        if (!folder.isEmpty()) {
            const QString base = folder + '/' + QTest::currentDataTag() + '-';
            bench.window().grab().save(base + "0-window.png");
            int place = 0;
            for (StationPanel *panel : page->widget()->findChildren<StationPanel *>())
                panel->grab().save(base + QString("%1-%2.png").arg(++place).arg(panel->key()));
        }
        QVERIFY2(cut.isEmpty(), qPrintable(cut.join('\n')));
    }
};

QTEST_MAIN(StationPanelTest)
#include "StationPanelTest.moc"
