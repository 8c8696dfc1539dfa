#pragma once
// What a command answers: yes or no, the same content as one JSON document and as text for a
// person, and what must be said beside it. Only the one of the two that was asked for is ever made.

#include "core/base/Finding.h"
#include "core/base/Json.h"

#include <QIODevice>

#include <functional>
#include <vector>

namespace loopwright {

using Writing = std::function<void(QIODevice &out)>;

struct Answer
{
    bool yes = true;
    bool refusedWhole = false; ///< nothing was taken of an input: ends like a malformed one
    Writing json;              ///< writes one JSON document
    Writing text;              ///< writes the same for a person
    /// A line for standard error; --quiet leaves the notes out.
    struct Line
    {
        QString text;
        bool isNote;
    };
    std::vector<Line> told;

    /// For all but the longest answers.
    static Answer of(QJsonValue json, QString text, bool yes = true);
    /// A JSON array that is written item by item, so that no list is too long. `item` is asked for
    /// 0, 1, … `count` - 1.
    static Writing jsonArray(qsizetype count, std::function<QJsonValue(qsizetype)> item);
    /// The same where each item appends itself.
    static Writing jsonArray(qsizetype count, std::function<void(qsizetype, QByteArray &)> append);

    void note(const QString &line) { told.push_back({line, true}); }
    /// What was asked for and is not there, or is in error.
    void lack(const QString &line) { told.push_back({line, false}); }
    /// "orders.csv: row 3, column dn_1: reason (repair: …)" for each finding; what is no error is
    /// a note.
    void tell(const Findings &findings, const QString &fileName = {});
};

/// {"code", "message", "place"}; the place is null if there is none.
QJsonObject errorJson(const Error &error);

/// The text on one line, without control characters, so that the content of a file cannot control a
/// terminal.
QString oneLine(const QString &text);

/// As above, for one finding.
QString findingLine(const Finding &finding, const QString &fileName);

} // namespace loopwright
