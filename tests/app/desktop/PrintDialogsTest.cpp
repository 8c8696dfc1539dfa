#include "app/desktop/PrintDialogs.h"

#include "app/print/Document.h"
#include "tests/support/Papers.h"
#include "tests/support/PrintDialog.h"

#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include <clocale>

using namespace loopwright;

namespace {

Sheet threePages(Paper paper)
{
    doc::Document document;
    document.title = "Trial";
    document.blocks = {doc::Paragraph{"alpha"}, doc::NewPage{}, doc::Paragraph{"beta"},
                       doc::NewPage{}, doc::Paragraph{"gamma"}};
    return layOut(document, paper);
}

} // namespace

class PrintDialogsTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    /// The words of the pages, as they follow each other, without the feet.
    static QStringList wordsOf(const QString &path)
    {
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly))
            return {"no file"};
        QStringList words = papers::textOfPdf(file.readAll()).split(' ');
        words.removeIf([](const QString &word) {
            return !QStringList{"alpha", "beta", "gamma"}.contains(word);
        });
        return words;
    }

private slots:
    void cleanup() { choosePaper({}); }

    void thePageOfTheDialogIsLaidOut()
    {
        choosePaper(Paper::A4);
        const QString path = m_folder.filePath("letter.pdf");
        QPageSize proposed;
        printing::agree(path, [&proposed](QPrinter &printer) {
            proposed = printer.pageLayout().pageSize();
            printing::letterOnItsSide(printer);
        });
        std::vector<Paper> asked;
        const auto printed = printSheet(nullptr, [&asked](Paper paper) -> Result<Sheet> {
            asked.push_back(paper);
            return threePages(paper);
        });
        QVERIFY(printed && *printed);
        QCOMPARE(proposed.id(), QPageSize::A4);
        QCOMPARE(asked, std::vector{Paper::Letter});
        QCOMPARE(printing::pagesOf(path), "3 pages, 612 x 792 pts (letter)"); // upright
    }

    void nothingIsLaidOutForWhoSaysNo()
    {
        QTimer::singleShot(0, qApp, [] {
            auto *dialog = qobject_cast<QPrintDialog *>(QApplication::activeModalWidget());
            if (!dialog)
                qFatal("no print dialog came");
            dialog->reject();
        });
        bool asked = false;
        const auto printed = printSheet(nullptr, [&asked](Paper paper) -> Result<Sheet> {
            asked = true;
            return threePages(paper);
        });
        QVERIFY(printed && !*printed);
        QVERIFY(!asked);
    }

    void pagesAndCopiesAreThoseOfTheDialog_data()
    {
        using Choose = std::function<void(QPrinter &)>;
        QTest::addColumn<Choose>("choose");
        QTest::addColumn<QStringList>("pages");
        const auto fromTo = [](QPrinter &printer, int from, int to) {
            printer.setPrintRange(QPrinter::PageRange);
            printer.setFromTo(from, to);
        };
        const QStringList all{"alpha", "beta", "gamma"};
        QTest::newRow("all") << Choose([](QPrinter &) {}) << all;
        QTest::newRow("some") << Choose([fromTo](QPrinter &printer) { fromTo(printer, 2, 2); })
                              << QStringList{"beta"};
        QTest::newRow("to behind the end")
            << Choose([fromTo](QPrinter &printer) { fromTo(printer, 2, 9); })
            << QStringList{"beta", "gamma"};
        QTest::newRow("twice, one after the other")
            << Choose([](QPrinter &printer) { printer.setCopyCount(2); }) << all + all;
        QTest::newRow("twice, page by page") << Choose([fromTo](QPrinter &printer) {
            fromTo(printer, 1, 2);
            printer.setCopyCount(2);
            printer.setCollateCopies(false);
        }) << QStringList{"alpha", "alpha", "beta", "beta"};
        QTest::newRow("the last first")
            << Choose([](QPrinter &printer) { printer.setPageOrder(QPrinter::LastPageFirst); })
            << QStringList{"gamma", "beta", "alpha"};
    }
    void pagesAndCopiesAreThoseOfTheDialog()
    {
        QFETCH(std::function<void(QPrinter &)>, choose);
        QFETCH(QStringList, pages);
        const QString path = m_folder.filePath("pages.pdf");
        {
            QPrinter printer(QPrinter::HighResolution);
            printing::intoFile(printer, path);
            choose(printer);
            QVERIFY(printOn(printer, threePages(Paper::A4)));
        }
        QCOMPARE(wordsOf(path), pages);
    }

    void pagesThatAreNotThereAreRefused()
    {
        const QString path = m_folder.filePath("none.pdf");
        QPrinter printer(QPrinter::HighResolution);
        printing::intoFile(printer, path);
        printer.setPrintRange(QPrinter::PageRange);
        printer.setFromTo(4, 5);
        const auto printed = printOn(printer, threePages(Paper::A4));
        QVERIFY(!printed);
        QCOMPARE(printed.error().code, ErrorCode::Refused);
        QVERIFY(!QFile::exists(path));
    }

    void theSystemsPaperIsTheUsualOne_data()
    {
        QTest::addColumn<int>("height");
        QTest::addColumn<QLocale::Territory>("territory");
        QTest::addColumn<Paper>("paper");
        QTest::newRow("letter, wherever") << 279 << QLocale::Germany << Paper::Letter;
        QTest::newRow("A4, wherever") << 297 << QLocale::UnitedStates << Paper::A4;
        QTest::newRow("the country's letter") << 0 << QLocale::Canada << Paper::Letter;
        QTest::newRow("the country's A4") << 0 << QLocale::Germany << Paper::A4;
    }
    void theSystemsPaperIsTheUsualOne()
    {
        QFETCH(int, height);
        QFETCH(QLocale::Territory, territory);
        QFETCH(Paper, paper);
        QCOMPARE(usualPaper(height, territory), paper);
    }

    /// With those locales that this machine has.
    void thePaperOfTheLocaleIsAsked()
    {
        const QByteArray before(std::setlocale(LC_PAPER, nullptr));
        const Paper country = usualPaper(0, QLocale::system().territory());
        std::setlocale(LC_PAPER, "C");
        QCOMPARE(localPaper(), country);
        for (const auto &[locale, paper] :
             {std::pair("en_US.UTF-8", Paper::Letter), {"de_DE.UTF-8", Paper::A4}}) {
            if (!std::setlocale(LC_PAPER, locale))
                continue;
            QCOMPARE(localPaper(), paper);
            choosePaper(paper == Paper::A4 ? Paper::Letter : Paper::A4); // goes before it
            QVERIFY(localPaper() != paper);
            choosePaper({});
        }
        std::setlocale(LC_PAPER, before.constData());
    }

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
