// Reads every source file and holds the direction of the house (DEVELOPERS.md): which folder may
// include which, that no rooms include each other in a circle, where SQL, widgets, files and clocks
// may stand, what lies at the top level, and how long a file may be. Each rule is first shown a
// text that breaks it. Longer than 400 lines: rules and what breaks them side by side.

#include <QDir>
#include <QDirIterator>
#include <QLibraryInfo>
#include <QMap>
#include <QRegularExpression>
#include <QSet>
#include <QTest>

namespace {

struct Source
{
    QString path; ///< from the top of the project, e.g. "core/base/Json.h"
    QString text;

    bool isIn(const QString &folder) const { return path.startsWith(folder + '/'); }
    bool isIn(const QStringList &folders) const
    {
        return std::any_of(folders.begin(), folders.end(),
                           [this](const QString &folder) { return isIn(folder); });
    }
    QStringList includes(QChar open) const
    {
        static const QRegularExpression quoted("^#include \"([^\"]+)\"",
                                               QRegularExpression::MultilineOption);
        static const QRegularExpression angled("^#include <([^>]+)>",
                                               QRegularExpression::MultilineOption);
        QStringList found;
        auto match = (open == '"' ? quoted : angled).globalMatch(text);
        while (match.hasNext())
            found << match.next().captured(1);
        return found;
    }
};

/// The folders that each folder may include besides itself.
struct Reach
{
    const char *folder;
    QStringList allowed;
};
const QList<Reach> reaches{
    {"core", {}},
    {"db", {"core"}},
    {"app/print", {"core"}},
    {"app/trust", {"core"}},
    {"app/actions", {"core", "db", "app/print", "app/trust"}},
    {"app/cli", {"core", "app/actions", "app/print"}},
    {"app/desktop", {"core", "app/actions", "app/print"}},
};

/// Rooms and stations in the order in which they may build on each other.
const QStringList stations{"base",  "history",   "office",     "identifiers",
                           "order", "loop",      "safety",     "turnup",
                           "calls", "errortest", "acceptance", "certificate"};

int stationOf(const QString &path)
{
    return int(stations.indexOf(path.section('/', 1, 1)));
}

bool isQtHeaderOf(const QString &module, const QString &name)
{
    static const QString headers = QLibraryInfo::path(QLibraryInfo::HeadersPath);
    return QFile::exists(headers + "/" + module + "/" + name);
}

bool isWidget(const QString &name)
{
    return isQtHeaderOf("QtWidgets", name) || isQtHeaderOf("QtPrintSupport", name);
}

// The rules: each names what is wrong with a file, or nothing.

QString direction(const Source &source)
{
    for (const Reach &reach : reaches) {
        if (!source.isIn(reach.folder))
            continue;
        for (const QString &include : source.includes('"')) {
            const Source target{include, {}};
            if (!target.isIn(reach.folder) && !target.isIn(reach.allowed))
                return QString("may not include \"%1\"").arg(include);
        }
        return {};
    }
    return source.isIn("core") || source.isIn("db") || source.isIn("app")
               ? QString("lies in a folder without a place in the house")
               : QString();
}

QString stationOrder(const Source &source)
{
    if (!source.isIn("core"))
        return {};
    if (stationOf(source.path) < 0)
        return "lies in no station and no room";
    for (const QString &include : source.includes('"'))
        if (stationOf(include) > stationOf(source.path))
            return QString("includes \"%1\" of a later station").arg(include);
    return {};
}

QString coreIsPure(const Source &source)
{
    if (!source.isIn("core"))
        return {};
    static const QStringList files{"QFile",         "QFileInfo",      "QDir",      "QSaveFile",
                                   "QTemporaryDir", "QStandardPaths", "QSettings", "QProcess",
                                   "fstream",       "filesystem",     "cstdio"};
    for (const QString &include : source.includes('<')) {
        if (files.contains(include))
            return QString("includes <%1>: no files in core").arg(include);
        if (include.startsWith('Q') && !isQtHeaderOf("QtCore", include))
            return QString("includes <%1>, which is not of QtCore").arg(include);
    }
    static const QRegularExpression clock(
        R"(\bcurrent(Date|Time|DateTime|DateTimeUtc|SecsSinceEpoch|MSecsSinceEpoch)\b|_clock::now)"
        R"(|\btime\((nullptr|NULL|0)\)|QElapsedTimer|QDeadlineTimer)");
    if (const auto match = clock.match(source.text); match.hasMatch())
        return "has a clock of its own: " + match.captured();
    static const QRegularExpression chance(
        R"(\brandom_device\b|QRandomGenerator|createUuid\b|\bgetenv\b|qEnvironmentVariable|qgetenv)");
    const auto match = chance.match(source.text);
    return match.hasMatch() ? QString("depends on more than its input: " + match.captured())
                            : QString();
}

QString sqlStaysInDb(const Source &source)
{
    if (source.isIn("db") || !source.isIn(QStringList{"core", "app"}))
        return {};
    for (const QString &include : source.includes('<'))
        if (isQtHeaderOf("QtSql", include) || include == "sqlite3.h")
            return QString("includes <%1>").arg(include);
    static const QRegularExpression sql(
        "\"(\\(|\\s)*(SELECT\\s|INSERT\\s+(OR\\s+\\w+\\s+)?INTO\\s|UPDATE\\s+\\w+\\s+SET\\s|"
        "DELETE\\s+"
        "FROM\\s|"
        "CREATE\\s+(TABLE|INDEX|TRIGGER|VIEW)\\s|DROP\\s|PRAGMA\\s|BEGIN\\s+IMMEDIATE)");
    const auto match = sql.match(source.text);
    return match.hasMatch() ? QString("has SQL in a text: " + match.captured()) : QString();
}

QString widgetsStayInFaces(const Source &source)
{
    for (const QString &include : source.includes('<')) {
        if (isWidget(include) && !source.isIn(QStringList{"app/desktop", "app/print", "tests"}))
            return QString("includes <%1>").arg(include);
        if (include == "QMessageBox" && !source.isIn(QStringList{"app/desktop", "tests"}))
            return "includes <QMessageBox>";
        if (source.isIn("db") && isQtHeaderOf("QtGui", include))
            return QString("includes <%1>").arg(include);
    }
    return {};
}

/// An error gets into the window by localized() alone (app/desktop/Language.h), or it stays
/// English.
QString errorsAreInWords(const Source &source)
{
    if (!source.isIn("app/desktop") || source.path == "app/desktop/Language.cpp" ||
        source.path == "app/desktop/main.cpp") // what it says there is read in the terminal
        return {};
    static const QRegularExpression plain(
        R"((?<!localizedSentence\()(?<![\w.>])(\w+(\.|->))*error(\(\))?\.)"
        R"((text\(\)|message(?!\.contains)\b))");
    const auto match = plain.match(source.text);
    return match.hasMatch() ? QString("shows an error as it is: " + match.captured()) : QString();
}

/// Every include is written from the top, so that it says if it comes from.
QString includesFromTheTop(const Source &source)
{
    for (const QString &include : source.includes('"'))
        if (!include.endsWith(".moc") && !QFile::exists(LOOPWRIGHT_SOURCE_DIR "/" + include))
            return QString("includes \"%1\", which is no path from the top").arg(include);
    return {};
}

/// A range-based for keeps alive what its range names, not what a temporary before -> or * held:
/// a Result that a function returned is gone before the first turn.
QString loopsKeepWhatTheyWalk(const Source &source)
{
    static const QRegularExpression dangling(
        R"(for \([^;()]*[^:]: (?:\*\w[\w.:]*\([^;\n]*\)\)|\w[\w.:]*\([^;\n]*\)->\w+\)))");
    const auto found = dangling.match(source.text);
    return found.hasMatch() ? QString("walks over what a temporary points to: ") + found.captured()
                            : QString();
}

QString length(const Source &source)
{
    static const QRegularExpression reason(R"(^//.*\blonger than 400 lines\b)",
                                           QRegularExpression::MultilineOption |
                                               QRegularExpression::CaseInsensitiveOption);
    const qsizetype lines = source.text.count('\n');
    if (lines <= 400 || reason.match(source.text).hasMatch())
        return {};
    return QString("has %1 lines; say in a comment why it is longer than 400 lines").arg(lines);
}

using Rule = QString (*)(const Source &);
struct NamedRule
{
    const char *name;
    Rule rule;
};
constexpr NamedRule rules[] = {
    {"direction", direction},
    {"order of the stations", stationOrder},
    {"core is pure", coreIsPure},
    {"SQL stays in db", sqlStaysInDb},
    {"widgets stay in the faces", widgetsStayInFaces},
    {"errors are in words", errorsAreInWords},
    {"includes from the top", includesFromTheTop},
    {"loops keep what they walk", loopsKeepWhatTheyWalk},
    {"length", length},
};

QList<Source> allSources()
{
    QList<Source> sources;
    const QDir top(LOOPWRIGHT_SOURCE_DIR);
    for (const char *folder : {"core", "db", "app", "tests"}) {
        QDirIterator files(top.filePath(folder), {"*.h", "*.cpp"}, QDir::Files,
                           QDirIterator::Subdirectories);
        while (files.hasNext()) {
            QFile file(files.next());
            if (file.open(QIODevice::ReadOnly))
                sources << Source{top.relativeFilePath(file.fileName()),
                                  QString::fromUtf8(file.readAll())};
        }
    }
    return sources;
}

/// A header and its source are one room.
QString roomOf(const QString &path)
{
    return path.left(path.lastIndexOf('.'));
}

/// The shortest way from a room along what it includes back to itself; empty if there is none.
QStringList circleFrom(const QString &start, const QMap<QString, QSet<QString>> &includes)
{
    QMap<QString, QString> cameFrom;
    QStringList toVisit{start};
    while (!toVisit.isEmpty()) {
        const QString room = toVisit.takeFirst();
        QStringList targets = includes.value(room).values();
        targets.sort();
        for (const QString &target : targets) {
            if (cameFrom.contains(target))
                continue;
            cameFrom.insert(target, room);
            toVisit << target;
        }
    }
    if (!cameFrom.contains(start))
        return {};
    QStringList circle{start};
    for (QString room = cameFrom.value(start); room != start; room = cameFrom.value(room))
        circle.prepend(room);
    circle.prepend(start);
    return circle;
}

/// Every circle of rooms that include each other, "core/a/X -> core/a/Y -> core/a/X".
QStringList knots(const QList<Source> &sources)
{
    QMap<QString, QSet<QString>> includes;
    for (const Source &source : sources)
        for (const QString &include : source.includes('"'))
            if (roomOf(include) != roomOf(source.path))
                includes[roomOf(source.path)].insert(roomOf(include));
    QStringList found;
    QSet<QString> named;
    for (auto room = includes.keyBegin(); room != includes.keyEnd(); ++room) {
        if (named.contains(*room))
            continue;
        const QStringList circle = circleFrom(*room, includes);
        if (circle.isEmpty())
            continue;
        named.unite(QSet<QString>(circle.begin(), circle.end()));
        found << circle.join(" -> ");
    }
    return found;
}

} // namespace

class LayeringTest : public QObject
{
    Q_OBJECT

private slots:
    void aBrokenRuleIsFound_data()
    {
        QTest::addColumn<Rule>("rule");
        QTest::addColumn<QString>("path");
        QTest::addColumn<QString>("text");
        const auto row = [](const char *name, Rule rule, const char *path, const QString &text) {
            QTest::newRow(name) << rule << QString(path) << text;
        };
        const QString db = "#include \"db/Database.h\"\n";
        row("core includes db", direction, "core/order/X.cpp", db);
        row("a face includes db", direction, "app/cli/X.cpp", db);
        row("db includes an action", direction, "db/X.cpp", "#include \"app/actions/Board.h\"\n");
        row("one face includes the other", direction, "app/cli/X.cpp",
            "#include \"app/desktop/MainWindow.h\"\n");
        row("a painter includes an action", direction, "app/print/X.cpp",
            "#include \"app/actions/Board.h\"\n");
        row("a new folder", direction, "app/web/X.cpp", "");
        row("a later station", stationOrder, "core/order/X.h",
            "#include \"core/loop/LoopLoss.h\"\n");
        row("a room includes a station", stationOrder, "core/base/X.h",
            "#include \"core/order/Services.h\"\n");
        row("no station", stationOrder, "core/odds/X.h", "");
        row("SQL header in core", coreIsPure, "core/order/X.h", "#include <QSqlQuery>\n");
        row("picture in core", coreIsPure, "core/order/X.h", "#include <QImage>\n");
        row("file in core", coreIsPure, "core/order/X.cpp", "#include <QFile>\n");
        row("clock in core", coreIsPure, "core/order/X.cpp", "QDate::currentDate()");
        row("UTC clock in core", coreIsPure, "core/order/X.cpp", "QDateTime::currentDateTimeUtc()");
        row("chance in core", coreIsPure, "core/order/X.cpp", "QUuid::createUuid()");
        row("SQL in a raw text", sqlStaysInDb, "app/actions/X.cpp", "f(R\"(SELECT 1)\")");
        row("SQL text in an action", sqlStaysInDb, "app/actions/X.cpp", "f(\"SELECT 1\")");
        row("SQL header in a face", sqlStaysInDb, "app/desktop/X.cpp", "#include <QSqlQuery>\n");
        row("widget in an action", widgetsStayInFaces, "app/actions/X.cpp", "#include <QWidget>\n");
        row("message box in print", widgetsStayInFaces, "app/print/X.cpp",
            "#include <QMessageBox>\n");
        row("widget in core", widgetsStayInFaces, "core/order/X.cpp", "#include <QLabel>\n");
        row("error as it is", errorsAreInWords, "app/desktop/X.cpp", "say(made.error().text());");
        row("message of an error", errorsAreInWords, "app/desktop/X.cpp", "say(error.message);");
        row("short include", includesFromTheTop, "core/base/X.cpp", "#include \"Json.h\"\n");
        for (const char *range : {"found(x)->list", "*found(x)"})
            row(range, loopsKeepWhatTheyWalk, "app/cli/X.cpp",
                QString("for (const auto &each : %1)").arg(range));
        row("too long", length, "core/base/X.cpp", QString(401, '\n'));
    }
    void aBrokenRuleIsFound()
    {
        QFETCH(Rule, rule);
        QFETCH(QString, path);
        QFETCH(QString, text);
        QVERIFY(!rule(Source{path, text}).isEmpty());
    }

    void whatIsAllowedPasses()
    {
        const Source action{
            "app/actions/X.cpp",
            "#include \"db/Database.h\"\n#include \"core/base/Json.h\"\n#include <QFile>\n"};
        const Source button{
            "app/desktop/X.cpp",
            "#include \"app/actions/Board.h\"\n#include <QLabel>\nf(\"Select an order\")\n"
            "say(localized(made.error()), localizedSentence(made.error().message));"};
        const Source station{"core/loop/X.cpp", "#include \"core/order/Services.h\"\n"};
        const Source reasoned{"core/base/X.cpp",
                              "// Longer than 400 lines: one table.\n" + QString(401, '\n')};
        const Source loop{"core/base/X.cpp", "for (const auto &each : read(x).list)\n"
                                             "for (const auto &each : field->spec().options)\n"
                                             "for (const auto &each : *found)\n"};
        for (const Source &source : {action, button, station, reasoned, loop})
            for (const NamedRule &rule : rules)
                QCOMPARE(rule.rule(source), QString());
    }

    void everyFileKeeps_data()
    {
        QTest::addColumn<Rule>("rule");
        for (const NamedRule &rule : rules)
            QTest::newRow(rule.name) << rule.rule;
    }
    void everyFileKeeps()
    {
        QFETCH(Rule, rule);
        const QList<Source> sources = allSources();
        QVERIFY(sources.size() > 100);
        QStringList wrong;
        for (const Source &source : sources)
            if (const QString what = rule(source); !what.isEmpty())
                wrong << source.path + " " + what;
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join("\n")));
    }

    void aKnotIsNamed()
    {
        const QList<Source> knot{{"core/loop/A.h", "#include \"core/loop/B.h\"\n"},
                                 {"core/loop/B.h", ""},
                                 {"core/loop/B.cpp", "#include \"core/loop/C.h\"\n"},
                                 {"core/loop/C.cpp", "#include \"core/loop/C.h\"\n"
                                                     "#include \"core/loop/A.h\"\n"},
                                 {"core/loop/D.h", "#include \"core/loop/A.h\"\n"}};
        QCOMPARE(knots(knot),
                 QStringList{"core/loop/A -> core/loop/B -> core/loop/C -> core/loop/A"});
        QCOMPARE(knots(knot.mid(0, 3)), QStringList());
    }

    void noRoomsAreKnotted() { QCOMPARE(knots(allSources()).join('\n'), QString()); }

    void theTopLevelIsClosed()
    {
        static const QStringList allowed{"CMakeLists.txt", "README.md", "DEVELOPERS.md", "app",
                                         "core", "db", "tests", "resources", "demo", ".ci",
                                         ".clang-format", ".clang-tidy", ".editorconfig",
                                         ".gitignore",
                                         // what git does not carry
                                         ".git", ".build", "compile_commands.json"};
        QStringList unknown;
        for (const QString &name :
             QDir(LOOPWRIGHT_SOURCE_DIR)
                 .entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot))
            if (!allowed.contains(name) && !name.endsWith(".user"))
                unknown << name;
        QCOMPARE(unknown, QStringList());
    }
};

QTEST_APPLESS_MAIN(LayeringTest)
#include "LayeringTest.moc"
