#pragma once
// What a form asks for, field by field: label, unit and limit, the kind of answer, and when it is
// asked. A field knows the form of an answer and nothing of its meaning: what cannot be read stays
// the text that was typed, so that the check behind the form says what is wrong with it.

#include "app/desktop/widgets/KeyedChoice.h"
#include "core/base/Moment.h"

#include <QJsonObject>

#include <functional>

namespace loopwright {

enum class Answer
{
    Number, ///< "," is taken for "."; "1,200" for nothing (core/base/Figures.h)
    Whole,
    Text,
    Clock,      ///< HH:MM or HH:MM:SS of today, also as digits alone, or a whole time in ISO 8601
    YesNo,      ///< Y and N
    Choice,     ///< one of `options`, each by its key
    List,       ///< one of `options`, from a list that opens
    OpenList,   ///< likewise, or a text that is not among them
    Date,       ///< YYYY-MM-DD, also as eight digits; up and down change the day
    Lines,      ///< text of several lines
    Identifier, ///< text in digits of one width
    PdfPath,    ///< where a PDF is written: typed, or chosen in the system's dialog
    FolderPath, ///< likewise a folder
    Services,   ///< any of `options`, whose codes are services; joined by "+"
};

struct FieldSpec
{
    QString key; ///< place within the values, e.g. "ac_v.tip_ground"
    QString label;
    QString hint = {}; ///< unit and limit
    Answer answer = Answer::Number;
    std::vector<KeyedOption> options = {};
    int span = 1; ///< columns of the form; 0: a row of its own
    /// Whether it is asked, given what was typed so far (key to text); always where it is empty.
    std::function<bool(const QJsonObject &typed)> asked = {};
    /// Whether Enter here, or the answer given by its key, confirms the form at once.
    std::function<bool(const QJsonObject &typed)> confirms = {};
    bool newRow = false;   ///< begins a row, where the one before has room yet
    QString usual = {};    ///< the answer as long as none was given
    QString spoken = {};   ///< for a screen reader, where it is not the label
    bool aside = false;    ///< Enter passes it by; Tab and a click reach it
    bool optional = false; ///< may be left empty
};

/// Fields under one heading; the heading shows where any of them is asked.
struct FieldGroup
{
    QString title; ///< empty: no heading
    std::vector<FieldSpec> fields;
};

/// As it stands in a record: a number, a truth, a time in ISO 8601 or the text; undefined where
/// nothing is typed.
QJsonValue valueOf(const FieldSpec &spec, const QString &typed, const Moment &now);

/// "9:05", "0905" or "090512" as a time of today, or of yesterday where that would be half a day
/// ahead; any other text as it is.
QString clockText(const QString &typed, const Moment &now);

/// "20260312" as "2026-03-12"; any other text as it is.
QString dateText(const QString &typed);

/// Whether more keys may yet make an answer of it, so that it is not wrong while it is typed.
bool isBegun(Answer answer, const QString &typed);

} // namespace loopwright
