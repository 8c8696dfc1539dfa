#pragma once
// A page of the manual in mdoc, the language of man pages. Whoever writes one says what stands in
// it; what a sign means to roff is known here alone.

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace loopwright {

class ManualPage
{
public:
    /// A page of section 1. `purpose` is its one line, without a full stop.
    ManualPage(const QString &program, const QString &purpose);

    ManualPage &section(const QString &title);
    ManualPage &subsection(const QString &title);
    /// Sentences; each ends with its full stop.
    ManualPage &paragraph(const QString &text);
    /// How the program is called: its name, the words that stand as they are, then one of
    /// option() or argument() each.
    ManualPage &call(const QString &words, const QStringList &parts);
    /// A list of what something is called and what it means; `items` follow, then endList().
    ManualPage &beginList();
    ManualPage &item(const QString &part, const QString &meaning);
    ManualPage &endList();
    /// The other pages, "program(1)".
    ManualPage &seeAlso(const QStringList &programs);

    // What call() and item() take.
    /// "--name", with what its value is called, if it has one.
    static QString option(const QString &name, const QString &value = {});
    static QString argument(const QString &name);
    static QString optional(const QString &part);
    static QString variable(const QString &name);
    static QString path(const QString &path);
    static QString literal(const QString &word);

    QByteArray text() const { return m_text.toUtf8(); }

private:
    void add(const QString &line) { m_text += line + u'\n'; }
    void addText(const QString &text);

    QString m_text;
    bool m_afterHead = true; ///< no paragraph need be begun
};

} // namespace loopwright
