#include "app/desktop/widgets/FieldMark.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldGrid.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

using namespace loopwright;

namespace {

Finding finding(Severity severity, const QString &reason, const QString &repair = {})
{
    return {.severity = severity,
            .code = "test",
            .reason = Text::verbatim(reason),
            .repair = repair,
            .field = {}};
}

} // namespace

class FieldMarkTest : public QObject
{
    Q_OBJECT

private slots:
    void namesItsField()
    {
        auto *edit = new QLineEdit;
        FieldMark mark("Directory &number", edit);
        QCOMPARE(edit->accessibleName(), "Directory number");
        auto *named = new QLineEdit;
        named->setAccessibleName("Terminal 2, SPID");
        FieldMark other("SPID", named);
        QCOMPARE(named->accessibleName(), "Terminal 2, SPID");
    }

    /// However many lines the label of one of them has.
    void fieldsOfOneRowStandInLine()
    {
        QWidget page;
        auto *grid = new FieldGrid(10, &page);
        QList<FieldMark *> marks;
        for (const char *label : {"Short",
                                  "A label that has three lines or even more of them in a "
                                  "column of ten em",
                                  "Next row"}) {
            marks << new FieldMark(label, new QLineEdit);
            grid->add(marks.back());
        }
        page.resize(em(24), em(30)); // two columns
        page.show();
        const auto top = [&](int i) { return marks[i]->field()->mapTo(&page, QPoint()).y(); };
        QCOMPARE(top(0), top(1));
        QVERIFY(marks[0]->field()->height() == marks[1]->field()->height());
        QVERIFY(top(2) > top(1) + marks[1]->field()->height());
        QVERIFY(marks[1]->geometry().bottom() < marks[2]->geometry().top());
        QCOMPARE(grid->heightForWidth(page.width()), marks[2]->geometry().bottom() + 1);
    }

    void showsTheWorstAndKeepsTheOthers()
    {
        auto *edit = new QLineEdit;
        FieldMark mark("SPID", edit);
        mark.setHint("14 digits");
        QCOMPARE(mark.sentence(), "14 digits");
        QVERIFY(!mark.isInError());
        mark.setFindings({finding(Severity::Note, "a note"), finding(Severity::Error, "too short"),
                          finding(Severity::Warning, "doubtful")});
        QCOMPARE(mark.sentence(), "too short");
        QVERIFY(mark.isInError());
        QCOMPARE(edit->accessibleDescription(), "error: too short");
        mark.clearFindings();
        QCOMPARE(mark.sentence(), "14 digits");
        QCOMPARE(edit->accessibleDescription(), "14 digits");
    }

    void keyTakesTheRepair()
    {
        auto *edit = new QLineEdit;
        FieldMark mark("SPID", edit);
        mark.show();
        mark.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&mark));
        edit->setFocus();
        QTest::keyClicks(edit, "2175550143O101");
        QSignalSpy taken(&mark, &FieldMark::repairTaken);
        QTest::keyClick(edit, Qt::Key_R, Qt::ControlModifier); // nothing to take yet
        QCOMPARE(taken.count(), 0);
        mark.setFindings({finding(Severity::Error, "has the letter O", "21755501430101")});
        auto *button = mark.findChild<QToolButton *>("repair");
        QVERIFY(button->isVisible());
        QVERIFY(button->accessibleName().contains("21755501430101"));
        QTest::keyClick(edit, Qt::Key_R, Qt::ControlModifier);
        QCOMPARE(taken.count(), 1);
        QCOMPARE(edit->text(), "21755501430101");
    }

    void repairGoesIntoAnEditableList()
    {
        auto *combo = new QComboBox;
        combo->setEditable(true);
        FieldMark mark("Office", combo);
        mark.setFindings({finding(Severity::Error, "no such office", "ELM1")});
        mark.takeRepair();
        QCOMPARE(combo->currentText(), "ELM1");
    }

    void lineKeepsItsPlace()
    {
        auto *edit = new QLineEdit;
        FieldMark mark("SPID", edit);
        const int before = mark.sizeHint().height();
        mark.setFindings({finding(Severity::Error, "short")});
        QCOMPARE(mark.sizeHint().height(), before);
    }
};

QTEST_MAIN(FieldMarkTest)
#include "FieldMarkTest.moc"
