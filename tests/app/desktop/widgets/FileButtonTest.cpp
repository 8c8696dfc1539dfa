#include "app/desktop/widgets/FileButton.h"

#include "app/desktop/form/Form.h"
#include "tests/support/FileDialog.h"

#include <QDialog>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>

using namespace loopwright;

class FileButtonTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

private slots:
    void whatIsChosenStandsInTheField()
    {
        QLineEdit edit(m_folder.filePath("before.pdf"));
        edit.setObjectName("part.path");
        FileButton button(FileButton::Way::Write, &edit, "PDF", "PDF files (*.pdf)");
        QCOMPARE(button.objectName(), "part.path.choose");
        QCOMPARE(button.accessibleName(), "Choose: PDF");
        QSignalSpy edited(&edit, &QLineEdit::textEdited);
        QString began;
        const QString path = m_folder.filePath("chosen.pdf");
        filing::answer(path, &began);
        button.click();
        QCOMPARE(began, m_folder.filePath("before.pdf"));
        QCOMPARE(edit.text(), path);
        QCOMPARE(edited.size(), 1);
        // Who changes their mind changes nothing.
        filing::answer({});
        button.click();
        QCOMPARE(edit.text(), path);
        QCOMPARE(edited.size(), 1);
    }

    void anEmptyFieldBeginsAtWhatIsSuggested()
    {
        QLineEdit edit;
        FileButton button(FileButton::Way::Write, &edit, "PDF");
        button.setSuggested(m_folder.filePath("suggested.pdf"));
        QString began;
        filing::answer({}, &began);
        button.click();
        QCOMPARE(began, m_folder.filePath("suggested.pdf"));
    }

    void enterPressesItInADialogToo()
    {
        QDialog dialog;
        auto *layout = new QVBoxLayout(&dialog);
        auto *edit = new QLineEdit;
        auto *button = new FileButton(FileButton::Way::Folder, edit, "Folder");
        auto *confirm = new QPushButton;
        layout->addWidget(edit);
        layout->addWidget(button);
        layout->addWidget(confirm);
        confirm->setDefault(true);
        dialog.show();
        dialog.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&dialog));
        QSignalSpy confirmed(confirm, &QPushButton::clicked);
        button->setFocus();
        filing::answer(m_folder.path());
        QTest::keyClick(button, Qt::Key_Return);
        QCOMPARE(edit->text(), m_folder.path());
        QCOMPARE(confirmed.size(), 0);
    }

    void aFormHasItBehindTheField()
    {
        Form form(
            "part", "Save",
            {{{},
              {{"path", "PDF", {}, Answer::PdfPath, {}, 0}, {"note", "Note", {}, Answer::Text}}}},
            {});
        form.resize(600, 300);
        form.show();
        form.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&form));
        auto *edit = form.findChild<QLineEdit *>("part.path");
        auto *button = form.findChild<FileButton *>("part.path.choose");
        QVERIFY(edit && button && button->isVisible());
        edit->setFocus();
        QTest::keyClick(edit, Qt::Key_Tab);
        QCOMPARE(QApplication::focusWidget(), button);
        QTest::keyClick(button, Qt::Key_Tab);
        QCOMPARE(QApplication::focusWidget()->objectName(), "part.note");
        // Enter in the field goes on as ever.
        edit->setFocus();
        QTest::keyClick(edit, Qt::Key_Return);
        QCOMPARE(QApplication::focusWidget()->objectName(), "part.note");
        QSignalSpy edited(&form, &Form::edited);
        const QString path = m_folder.filePath("form.pdf");
        filing::answer(path);
        button->click();
        QCOMPARE(edited.size(), 1);
        QCOMPARE(form.typed().value("path").toString(), path);
    }
};

QTEST_MAIN(FileButtonTest)
#include "FileButtonTest.moc"
