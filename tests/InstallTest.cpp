// Installs the programs into a folder of its own and asks the system's tools whether all that lies
// there is as they want it; and holds manual and completion to the register of commands.

#include "app/cli/CommandLine.h"
#include "app/cli/Commands.h"

#include <QDir>
#include <QMimeDatabase>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QXmlStreamReader>

using namespace loopwright;

namespace {

struct Ran
{
    int status = -1;
    QString out; ///< with what went to standard error
};

Ran ran(const QString &program, const QStringList &arguments, const QByteArray &input = {})
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert("LSAN_OPTIONS", "detect_leaks=0");
    process.setProcessEnvironment(environment);
    process.start(program, arguments);
    if (!process.waitForStarted())
        return {-1, program + " is not there; .ci/packages names what the tests need"};
    process.write(input);
    process.closeWriteChannel();
    if (!process.waitForFinished(120'000))
        return {-1, program + " does not end"};
    return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1,
            QString::fromUtf8(process.readAll())};
}

/// Fails with what the tool said.
#define VERIFY_RAN(result)                                                                         \
    do {                                                                                           \
        const Ran &told = (result);                                                                \
        QVERIFY2(told.status == 0, qPrintable(told.out));                                          \
    } while (false)

/// What a page says, without the marks that keep roff from reading it.
QString plain(QString page)
{
    return page.remove("\\&").replace("\\-", "-").remove('"');
}

} // namespace

class InstallTest : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;

    QString at(const QString &path) const { return m_folder.filePath("usr/" + path); }
    QString share(const QString &path) const { return at("share/" + path); }
    QString text(const QString &path) const
    {
        if (path.endsWith(".gz"))
            return ran("gzip", {"-dc", path}).out;
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
    }
    static QStringList linesOf(const QString &name)
    {
        QFile file(QStringLiteral(LOOPWRIGHT_SOURCE_DIR "/") + name);
        return file.open(QIODevice::ReadOnly)
                   ? QString::fromUtf8(file.readAll()).split('\n', Qt::SkipEmptyParts)
                   : QStringList();
    }
    /// One list of completions for each line of words; the last one is being typed.
    QList<QStringList> completed(const QStringList &lines) const
    {
        const QByteArray script = "source " +
                                  share("bash-completion/completions/loopwright-cli").toUtf8() +
                                  "\nwhile IFS= read -r line; do\n"
                                  "  IFS='~' read -r -a COMP_WORDS <<<\"$line~\"\n"
                                  "  COMP_CWORD=$((${#COMP_WORDS[@]} - 1))\n"
                                  "  _loopwright_cli\n  echo \"${COMPREPLY[*]}\"\ndone\n";
        const Ran all = ran("bash", {"--norc", "-uc", script}, lines.join('\n').toUtf8() + '\n');
        QList<QStringList> lists;
        for (const QString &line : all.out.split('\n'))
            lists << line.split(' ', Qt::SkipEmptyParts);
        return lists;
    }

private slots:
    void initTestCase()
    {
        VERIFY_RAN(ran(LOOPWRIGHT_CMAKE, {"--install", LOOPWRIGHT_BUILD_DIR, "--prefix", at("")}));
        qputenv("XDG_DATA_DIRS", QFile::encodeName(share("")));
    }

    /// Who builds by hand, or runs the demo, has what the package depends on.
    void whatIsLoadedIsThereWithoutThePackage()
    {
        static const QRegularExpression depends("PACKAGE_DEPENDS \"([^\"]+)\"");
        const auto match = depends.match(linesOf("resources/system/Package.cmake").join('\n'));
        QVERIFY(match.hasMatch());
        const QStringList there = linesOf(".ci/packages"),
                          testsOnly = linesOf(".ci/packages-for-tests-only");
        QVERIFY(!testsOnly.isEmpty());
        for (QString name : match.captured(1).split(", ")) {
            if (name == "libqt6svg6")
                name = "qt6-svg-dev"; // which brings it along
            QVERIFY2(there.contains(name) && !testsOnly.contains(name), qPrintable(name));
        }
    }

    void liesInItsPlace_data()
    {
        QTest::addColumn<QString>("path");
        for (const char *path :
             {"bin/loopwright", "bin/loopwright-cli", "share/man/man1/loopwright.1.gz",
              "share/man/man1/loopwright-cli.1.gz",
              "share/bash-completion/completions/loopwright-cli",
              "share/mime/packages/loopwright.xml",
              "share/icons/hicolor/scalable/apps/loopwright.svg",
              "share/icons/hicolor/scalable/mimetypes/application-x-loopwright-records.svg",
              "share/doc/loopwright/copyright", "share/doc/loopwright/changelog.gz",
              "share/doc/loopwright/README.md", "share/doc/loopwright/examples/orders.csv",
              "share/loopwright/schemas/job-record.schema.json",
              "share/loopwright/schemas/answers/order-list.schema.json"})
            QTest::newRow(path) << QString(path);
        QTest::newRow("entry") << QString("share/applications/" LOOPWRIGHT_ID ".desktop");
        QTest::newRow("metainfo") << QString("share/metainfo/" LOOPWRIGHT_ID ".metainfo.xml");
    }
    void liesInItsPlace()
    {
        QFETCH(QString, path);
        QVERIFY(QFileInfo(at(path)).size() > 0);
    }

    void bothProgramsStart()
    {
        for (const QString &name : QStringList{"loopwright", "loopwright-cli"}) {
            const Ran version = ran(at("bin/" + name), {"--version"});
            QCOMPARE(version.out, name + " " LOOPWRIGHT_VERSION "\n");
            QCOMPARE(version.status, 0);
        }
    }

    void theSystemTakesTheEntry()
    {
        const QString entry = share("applications/" LOOPWRIGHT_ID ".desktop");
        const Ran validated = ran("desktop-file-validate", {entry});
        QCOMPARE(validated.out, QString());
        QCOMPARE(validated.status, 0);
        VERIFY_RAN(ran("appstreamcli",
                       {"validate", "--no-net", share("metainfo/" LOOPWRIGHT_ID ".metainfo.xml")}));
        QVERIFY(text(entry).contains("\nExec=loopwright %f\n"));
    }

    /// Each paragraph and point stands there once more in German, right behind it.
    void theDescriptionIsInGermanToo()
    {
        QXmlStreamReader xml(text(share("metainfo/" LOOPWRIGHT_ID ".metainfo.xml")));
        QStringList said; // "p", "p de", "li", "li de"
        QSet<QString> texts;
        while (!xml.atEnd()) {
            if (xml.readNext() != QXmlStreamReader::StartElement)
                continue;
            const QString name = xml.name().toString();
            if (!QStringList{"summary", "p", "li"}.contains(name))
                continue;
            said << QString("%1 %2").arg(name, xml.attributes().value("xml:lang")).trimmed();
            texts.insert(xml.readElementText().simplified());
        }
        QVERIFY2(!xml.hasError(), qPrintable(xml.errorString()));
        QCOMPARE(texts.size(), said.size()); // none is the English one again
        QVERIFY(said.size() >= 8 && said.size() % 2 == 0);
        for (qsizetype i = 0; i < said.size(); i += 2)
            QCOMPARE(said[i + 1], said[i] + " de");
    }

    void pagesAreClean_data()
    {
        QTest::addColumn<QString>("program");
        QTest::newRow("loopwright") << "loopwright";
        QTest::newRow("loopwright-cli") << "loopwright-cli";
    }
    void pagesAreClean()
    {
        QFETCH(QString, program);
        const QString page = share("man/man1/" + program + ".1.gz");
        const Ran lint = ran("mandoc", {"-Tlint", page});
        // The other page is sought where the system's pages lie.
        static const QRegularExpression notThere(
            ".*referenced manual not found: Xr loopwright.*\n");
        QCOMPARE(QString(lint.out).remove(notThere), QString());
        QVERIFY(ran("mandoc", {"-Tutf8", page}).out.contains(program.toUpper() + "(1)"));
    }

    void theManualNamesAll()
    {
        const QString page = plain(text(share("man/man1/loopwright-cli.1.gz")));
        const CommandLine line;
        QCOMPARE(line.spec().commands.size(), allCommands().size());
        for (const CommandSpec &command : line.spec().commands) {
            const QString section =
                page.section("\n.Ss " + command.words + '\n', 1, 1).section("\n.S", 0, 0);
            QVERIFY2(section.startsWith(command.summary.section(' ', 0, 3)),
                     qPrintable(command.words));
            for (const OptionSpec &option : command.options) {
                const QString head = option.isArgument() ? "\n.It Ar " + option.name
                                                         : "\n.It Fl " + option.name.mid(1);
                QVERIFY2(section.contains(head), qPrintable(command.words + ' ' + option.name));
            }
        }
        for (const ExitStatusMeaning &each : exitStatuses())
            QVERIFY(page.contains(QString("\n.It Li %1\n").arg(int(each.status))));
        for (const char *variable : {"LOOPWRIGHT_DB", "XDG_DATA_HOME"})
            QVERIFY(page.contains(QString("\n.It Ev ") + variable));
    }

    void bashCompletesAll()
    {
        const CommandLine line;
        QStringList typed;
        std::vector<std::pair<QString, QStringList>> expected; ///< and what must be offered
        const auto ask = [&](const QString &words, const QStringList &offered) {
            typed << "loopwright-cli~" + words;
            expected.emplace_back(words, offered);
        };
        for (const CommandSpec &command : line.spec().commands) {
            const QStringList words = command.words.split(' ');
            ask((words.mid(0, words.size() - 1) << "").join('~'), {words.last()});
            ask((words.mid(0, words.size() - 1) << words.last().left(3)).join('~'), {words.last()});
            QStringList options{"--db", "--json", "--help"};
            for (const OptionSpec &option : command.options) {
                if (!option.isArgument())
                    options << option.name;
                else if (!option.words.isEmpty())
                    ask((words + QStringList{""}).join('~'), option.words);
                if (!option.isArgument() && !option.words.isEmpty()) {
                    ask((words + QStringList{option.name, ""}).join('~'), option.words);
                    ask((words + QStringList{option.name, "=", option.words.last()}).join('~'),
                        {option.words.last()});
                }
            }
            ask((words + QStringList{"--"}).join('~'), options);
            // What an option is given leads nowhere.
            ask((QStringList{"--db", "order"} + words + QStringList{"--"}).join('~'), options);
        }
        const auto offered = completed(typed);
        QVERIFY(offered.size() >= typed.size());
        for (std::size_t i = 0; i < expected.size(); ++i)
            for (const QString &word : expected[i].second)
                QVERIFY2(offered[qsizetype(i)].contains(word),
                         qPrintable(expected[i].first + ": " + word + " is not among " +
                                    offered[qsizetype(i)].join(' ')));
    }

    void bashOffersFilesWhereNoWordIsKnown()
    {
        const auto offered =
            completed({"loopwright-cli~order~import~", "loopwright-cli~card~--out~c",
                       "loopwright-cli~nonsense~--frob"});
        QCOMPARE(offered.mid(0, 3), (QList<QStringList>{{}, {}, {}}));
    }

    void recordsAreKnownByTheirMark()
    {
        // All types in one folder, as on a system: Qt weighs marks only within one.
        QVERIFY(QFile::copy("/usr/share/mime/packages/freedesktop.org.xml",
                            share("mime/packages/freedesktop.org.xml")));
        VERIFY_RAN(ran("update-mime-database", {share("mime")}));
        // No ending tells what they are.
        const QString records = m_folder.filePath("records"), backup = m_folder.filePath("copy"),
                      other = m_folder.filePath("other");
        const QString program = at("bin/loopwright-cli");
        VERIFY_RAN(ran(program, {"--db", records, "office", "import",
                                 share("doc/loopwright/examples/offices.csv")}));
        VERIFY_RAN(ran(program, {"--db", records, "backup", backup}));
        VERIFY_RAN(ran("sqlite3", {other, "CREATE TABLE a (b)"}));
        const QMimeDatabase types;
        const auto type = [&types](const QString &path) {
            return types.mimeTypeForFile(path).name();
        };
        QCOMPARE(type(records), "application/x-loopwright-records");
        QCOMPARE(type(backup), "application/x-loopwright-backup");
        QCOMPARE(type(other), "application/vnd.sqlite3");
        const QString entry = text(share("applications/" LOOPWRIGHT_ID ".desktop"));
        QVERIFY(entry.contains("MimeType=" + type(records) + ";"));
        QCOMPARE(types.mimeTypeForFile(records).iconName(), "application-x-loopwright-records");
    }
};

QTEST_GUILESS_MAIN(InstallTest)
#include "InstallTest.moc"
