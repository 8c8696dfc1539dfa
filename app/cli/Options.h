#pragma once
// The options and arguments that a command takes, each bound to a member of the command. CLI11
// stands behind this class and nowhere else.

#include "core/base/Moment.h"

#include <QDate>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace CLI {
class App;
class Option;
} // namespace CLI

namespace loopwright {

enum class Given
{
    IfWanted,
    Always,
    NeverEmpty ///< if wanted, and then with a value
};

/// Whether one word may hold several values.
enum class Separation
{
    Comma,
    None
};

/// What was declared, for the manual and the shell's completion.
struct OptionSpec
{
    QString name; ///< "--out", or of an argument its bare name
    QString help;
    QString value;     ///< what its value is called; empty: it has none
    QStringList words; ///< all values there are; empty: any
    bool required = false;
    bool many = false; ///< may be said more than once

    bool isArgument() const { return !name.startsWith(u'-'); }
};

class Options
{
public:
    explicit Options(CLI::App &app)
        : m_app(app)
    {
    }

    // A name that begins with "--" is an option, any other one an argument, by its place. A value
    // of the wrong form or out of range is wrong usage.
    void text(const char *name, QString &target, const char *help, Given given = Given::IfWanted);
    /// Several values after one option, which may itself be repeated.
    void texts(const char *name, QStringList &target, const char *help,
               Given given = Given::IfWanted, Separation separation = Separation::Comma);
    void flag(const char *name, bool &target, const char *help);
    void integer(const char *name, qint64 &target, qint64 min, qint64 max, const char *help,
                 Given given = Given::IfWanted);
    void number(const char *name, double &target, double min, double max, const char *help,
                Given given = Given::IfWanted);
    void number(const char *name, std::optional<double> &target, double min, double max,
                const char *help);
    /// One of the words.
    void word(const char *name, QString &target, const QStringList &words, const char *help,
              Given given = Given::IfWanted);
    /// YYYY-MM-DD.
    void date(const char *name, QDate &target, const char *help);
    /// ISO 8601; without an offset the time of this machine's zone, a day alone its beginning.
    void moment(const char *name, std::optional<Moment> &target, const char *help);

    /// All of the above, in the order in which they were declared.
    std::vector<OptionSpec> declared() && { return std::move(m_declared); }

private:
    CLI::App &m_app;
    std::vector<OptionSpec> m_declared;
};

/// As Options::moment reads it.
std::optional<Moment> momentFromCommandLine(const QString &text);

} // namespace loopwright
