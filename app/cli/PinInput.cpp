#include "app/cli/PinInput.h"

#include "app/cli/Files.h"

#include <QFile>

#include <termios.h>
#include <unistd.h>

namespace loopwright {

namespace {

constexpr qint64 longestPinFile = 10'000; // bytes

}

Result<QString> pinFromFile(const QString &path)
{
    LOOPWRIGHT_ASSIGN(const auto bytes, readFile(path, longestPinFile));
    QString line = QString::fromUtf8(bytes).section('\n', 0, 0);
    if (line.endsWith(u'\r'))
        line.chop(1);
    if (line.isEmpty())
        return failure(ErrorCode::BadInput, "The first line holds no PIN.", path);
    return line;
}

std::optional<QString> pinFromTerminal(const QString &question)
{
    QFile terminal("/dev/tty");
    if (!isatty(STDIN_FILENO) || !terminal.open(QIODevice::ReadWrite | QIODevice::Unbuffered))
        return std::nullopt;
    termios before;
    if (tcgetattr(terminal.handle(), &before) != 0)
        return std::nullopt;
    termios silent = before;
    silent.c_lflag &= tcflag_t(~ECHO);
    terminal.write(question.toUtf8() + ' ');
    tcsetattr(terminal.handle(), TCSAFLUSH, &silent);
    const QByteArray line = terminal.readLine(1000);
    tcsetattr(terminal.handle(), TCSAFLUSH, &before);
    terminal.write("\n");
    const QString pin = QString::fromUtf8(line).section('\n', 0, 0);
    return pin.isEmpty() ? std::nullopt : std::optional(pin);
}

} // namespace loopwright
