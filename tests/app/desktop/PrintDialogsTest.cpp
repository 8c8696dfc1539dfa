#include "app/desktop/PrintDialogs.h"

#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

using namespace loopwright;

class PrintDialogsTest : public QObject
{
    Q_OBJECT

private slots:
    void theKeyPrintsThePaperAtHand()
    {
        QWidget window;
        auto *layout = new QVBoxLayout(&window);
        auto *elsewhere = new QLineEdit;
        auto *paper = new QWidget;
        auto *inside = new QVBoxLayout(paper);
        auto *field = new QLineEdit;
        auto *button = new QPushButton;
        inside->addWidget(field);
        inside->addWidget(button);
        layout->addWidget(elsewhere);
        layout->addWidget(paper);
        printByKey(paper, button);
        window.show();
        window.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&window));

        QSignalSpy printed(button, &QPushButton::clicked);
        field->setFocus();
        QTest::keyClick(field, Qt::Key_P, Qt::ControlModifier);
        QCOMPARE(printed.size(), 1);
        elsewhere->setFocus();
        QTest::keyClick(elsewhere, Qt::Key_P, Qt::ControlModifier);
        QCOMPARE(printed.size(), 1);
        // What cannot be printed yet, or is not in view, is not.
        field->setFocus();
        button->setEnabled(false);
        QTest::keyClick(field, Qt::Key_P, Qt::ControlModifier);
        QCOMPARE(printed.size(), 1);
        button->setEnabled(true);
        button->hide();
        QTest::keyClick(field, Qt::Key_P, Qt::ControlModifier);
        QCOMPARE(printed.size(), 1);
    }
};

QTEST_MAIN(PrintDialogsTest)
#include "PrintDialogsTest.moc"
