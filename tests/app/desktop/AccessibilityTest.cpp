// What a screen reader meets: every control of every screen has a role and a name, what draws
// itself has its parts, and what came of an entry is said.

#include "app/desktop/AccessibleParts.h"
#include "app/desktop/widgets/JobLineView.h"
#include "app/desktop/widgets/KeyedChoice.h"
#include "app/desktop/widgets/SignLine.h"
#include "core/acceptance/JobLine.h"
#include "tests/support/DeskWalk.h"
#include "tests/support/DeskWindow.h"
#include "tests/support/Heard.h"

#include <QAbstractScrollArea>
#include <QAccessible>
#include <QSignalSpy>
#include <QVBoxLayout>

using namespace loopwright;

namespace {

/// Of a control that the keyboard reaches: what a screen reader could not tell of it.
QString lackOf(QWidget &widget)
{
    QAccessibleInterface *it = QAccessible::queryAccessibleInterface(&widget);
    if (!it || !it->isValid())
        return "no interface";
    static constexpr QAccessible::Role meaningless[] = {QAccessible::NoRole, QAccessible::Client,
                                                        QAccessible::Pane, QAccessible::Border,
                                                        QAccessible::Separator};
    if (std::ranges::find(meaningless, it->role()) != std::end(meaningless))
        return QString("role %1").arg(int(it->role()));
    if (it->text(QAccessible::Name).trimmed().isEmpty())
        return "no name";
    return {};
}

/// Returns how many the keyboard reaches there.
int addLacking(const QString &place, const QWidget &shown, QStringList &lacking)
{
    int seen = 0;
    for (QWidget *widget : shown.findChildren<QWidget *>()) {
        if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || !widget->isEnabled() ||
            widget->focusProxy())
            continue;
        ++seen;
        if (const QString lack = lackOf(*widget); !lack.isEmpty())
            lacking << QString("%1: %2 %3, %4")
                           .arg(place, widget->metaObject()->className(), widget->objectName(),
                                lack);
    }
    return seen;
}

} // namespace

class AccessibilityTest : public QObject, DeskWindow
{
    Q_OBJECT

private slots:
    void initTestCase() { installAccessibility(); }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    void everyControlHasARoleAndAName()
    {
        m_records = std::make_unique<DeskRecords>();
        openWindow();
        QStringList lacking;
        int seen = 0;
        DeskWalk walk(*m_window, *m_records, [&](const QString &place, QWidget &shown) {
            seen += addLacking(place, shown, lacking);
        });
        walk.screens();
        walk.dialogs();
        QVERIFY2(seen > 500, qPrintable(QString::number(seen))); // folded parts and dialogs too
        QVERIFY2(lacking.isEmpty(), qPrintable("\n" + lacking.join('\n')));
    }

    void soOnTheFirstRun()
    {
        m_records = std::make_unique<DeskRecords>(false);
        openWindow();
        QStringList lacking;
        DeskWalk(*m_window, *m_records, [&](const QString &place, QWidget &shown) {
            addLacking(place, shown, lacking);
        }).firstRun();
        QVERIFY2(lacking.isEmpty(), qPrintable("\n" + lacking.join('\n')));
    }

    void aChoiceIsAGroupOfRadioButtons()
    {
        KeyedChoice choice({{'U', "up", "in sync"}, {'D', "down", "not in sync"}});
        choice.setName("Layer 1");
        choice.resize(400, 60);
        choice.show();
        QSignalSpy chosen(&choice, &KeyedChoice::chosen);
        QAccessibleInterface *group = QAccessible::queryAccessibleInterface(&choice);
        QCOMPARE(group->role(), QAccessible::Grouping);
        QCOMPARE(group->childCount(), 2);
        QAccessibleInterface *down = group->child(1);
        QCOMPARE(down->role(), QAccessible::RadioButton);
        QCOMPARE(down->text(QAccessible::Name), QString("not in sync"));
        QVERIFY(!down->state().checked);
        QVERIFY(down->parent() == group && group->indexOfChild(down) == 1);
        QVERIFY(group->childAt(down->rect().center().x(), down->rect().center().y()) == down);
        QAccessibleActionInterface *actions = down->actionInterface();
        QVERIFY(actions);
        actions->doAction(actions->actionNames().first());
        QCOMPARE(choice.code(), QString("down"));
        QCOMPARE(chosen.size(), 1);
        QVERIFY(down->state().checked);
        QVERIFY(!group->child(0)->state().checked && !group->child(2));
        choice.setEnabled(false);
        actions->doAction(actions->actionNames().first());
        QCOMPARE(chosen.size(), 1);
    }

    void theJobLineIsAListOfStations()
    {
        JobLineView view;
        view.resize(900, 80);
        view.setLine({{Station::Order, StationMark::Done, false, false},
                      {Station::Safety, StationMark::Failed, false, true}});
        view.show();
        QSignalSpy chosen(&view, &JobLineView::chosen);
        QAccessibleInterface *list = QAccessible::queryAccessibleInterface(&view);
        QCOMPARE(list->role(), QAccessible::List);
        QCOMPARE(list->childCount(), 2);
        QCOMPARE(list->child(1)->role(), QAccessible::ListItem);
        QVERIFY(list->child(1)->text(QAccessible::Name).startsWith("Safety: "));
        QVERIFY(list->child(0)->rect().right() <= list->child(1)->rect().left() + 1);
        list->child(1)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
        QCOMPARE(chosen.size(), 1);
        view.setLine({});
        QCOMPARE(list->childCount(), 0);
    }

    /// That it goes out cannot be seen here, where no screen reader is: see ScreenReaderTest.
    void whatCameOfItIsANotification()
    {
        SignLine line;
        QCOMPARE(QAccessible::queryAccessibleInterface(&line)->role(), QAccessible::StaticText);
        line.tell(Status::Done, "Recorded.");
        line.tell(Status::Failed, "The disk is full.");
        QStringList told;
        for (QWidget *each : line.findChildren<QWidget *>(announcementName)) {
            const QAccessibleInterface *it = QAccessible::queryAccessibleInterface(each);
            QCOMPARE(it->role(), QAccessible::Notification);
            told << it->text(QAccessible::Name);
        }
        QCOMPARE(told, (QStringList{"Recorded.", "The disk is full."})); // neither replaces another
        QCOMPARE(line.accessibleName(), QString("The disk is full."));
    }

    void isToldOnceWhereItIsSeen()
    {
        Heard heard;
        QWidget page;
        auto *line = new SignLine;
        (new QVBoxLayout(&page))->addWidget(line);
        line->tell(Status::Done, "Recorded.");
        QCOMPARE(heard.take(), QStringList()); // nobody is at that page
        page.show();
        line->tellIfNew(Status::Done, "Recorded.");
        QCOMPARE(heard.take(), QStringList("Recorded."));
        line->tellIfNew(Status::Done, "Recorded.");
        line->hide();
        line->tellIfNew(Status::Done, "Recorded."); // it goes on
        QVERIFY(line->isVisible());
        page.hide();
        page.show();
        line->show(Status::Open, "Wait.");
        QCOMPARE(heard.take(), QStringList());
        line->tell(Status::Done, "Recorded."); // it was done again
        line->forgetTold();
        line->tellIfNew(Status::Done, "Recorded.");
        line->tell(Status::None, {});
        QVERIFY(!line->isVisible());
        QCOMPARE(heard.take(), (QStringList{"Recorded.", "Recorded."}));
    }
};

QTEST_MAIN(AccessibilityTest)
#include "AccessibilityTest.moc"
