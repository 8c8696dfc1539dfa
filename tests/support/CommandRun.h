#pragma once
// Runs a command in-process, or the real program, and keeps what it answered.

#include "app/cli/CommandLine.h"

#include <QBuffer>
#include <QFile>
#include <QJsonDocument>
#include <QProcess>
#include <QProcessEnvironment>
#include <QSet>
#include <QTest>

namespace loopwright {

struct Answered
{
    int status = -1; ///< -1: did not end by itself
    QByteArray out;
    QByteArray messages;

    QJsonDocument document() const { return QJsonDocument::fromJson(out); }
    QJsonObject object() const { return document().object(); }
    QJsonArray array() const { return document().array(); }
    QJsonObject error() const { return object().value("error").toObject(); }
    QString errorCode() const { return error().value("code").toString(); }
    QString errorPlace() const { return error().value("place").toString(); }
    QByteArray all() const { return out + "\n--\n" + messages; }
};

inline QSet<QString> keysOf(const QJsonObject &object)
{
    const QStringList keys = object.keys();
    return {keys.begin(), keys.end()};
}

/// Empty if it cannot be read.
inline QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Returns the path.
inline QString written(const QString &path, const QByteArray &content)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
        qFatal("cannot write %s", qPrintable(path));
    return path;
}

inline Answered call(const QStringList &words)
{
    Answered answered;
    QBuffer out(&answered.out), messages(&answered.messages);
    out.open(QIODevice::WriteOnly);
    messages.open(QIODevice::WriteOnly);
    CommandLine line;
    line.read(words);
    answered.status = int(line.run(out, messages, false));
    return answered;
}

inline Answered callProgram(const QStringList &words,
                            const QMap<QString, QString> &environment = {})
{
    QProcess program;
    QProcessEnvironment around = QProcessEnvironment::systemEnvironment();
    // No display, whatever the tests have.
    for (const char *name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "LOOPWRIGHT_DB"})
        around.remove(name);
    for (auto it = environment.begin(); it != environment.end(); ++it)
        around.insert(it.key(), it.value());
    program.setProcessEnvironment(around);
    program.start(LOOPWRIGHT_BIN_DIR "/loopwright-cli", words);
    Answered answered;
    if (program.waitForFinished(120'000) && program.exitStatus() == QProcess::NormalExit)
        answered.status = program.exitCode();
    answered.out = program.readAllStandardOutput();
    answered.messages = program.readAllStandardError();
    return answered;
}

} // namespace loopwright

/// Compares the exit status and shows what was said if it is another one.
#define COMPARE_STATUS(answered, expected)                                                         \
    do {                                                                                           \
        const ::loopwright::Answered &checked = (answered);                                        \
        const QByteArray said =                                                                    \
            "ended with " + QByteArray::number(checked.status) + "\n" + checked.all();             \
        QVERIFY2(checked.status == int(expected), said.constData());                               \
    } while (false)
