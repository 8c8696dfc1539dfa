#pragma once
// One value to enter: its label, the unit and the limit that it will be held against, the field,
// and what is wrong with it. A field knows how its value stands in a job record; what is no number
// stays the text that was typed, so that the record's own codec says what is wrong with it.

#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/KeyedChoice.h"
#include "core/base/Moment.h"

#include <QJsonObject>

#include <functional>

namespace loopwright {

enum class Answer
{
    Number, ///< "," is taken for "."
    Whole,
    Text,
    Clock,  ///< HH:MM of today, or a whole time in ISO 8601
    YesNo,  ///< Y and N
    Choice, ///< one of `options`
};

struct FieldSpec
{
    QString key; ///< place within the fact, e.g. "ac_v.tip_ground"
    QString label;
    QString hint = {}; ///< unit and limit
    Answer answer = Answer::Number;
    std::vector<KeyedOption> options = {};
    int span = 1; ///< columns of the form; 0: a row of its own
    /// Whether it is asked, given what was typed so far (key to text); always where it is empty.
    std::function<bool(const QJsonObject &typed)> asked = {};
    QString confirming = {}; ///< answer of a choice that confirms the form at once
    bool newRow = false;     ///< begins a row, where the one before has room yet
};

class EntryField : public FieldMark
{
    Q_OBJECT
public:
    /// The editor's object name is `part`.`key`.
    EntryField(const QString &part, const FieldSpec &ask, QWidget *parent = nullptr);

    QString key() const { return m_ask.key; }
    const FieldSpec &ask() const { return m_ask; }
    QString typed() const;
    void setTyped(const QString &text);
    /// As it stands in a record; undefined where nothing is typed.
    QJsonValue value(const Moment &now) const;
    void mark(const QString &reason);

signals:
    void edited();
    void left();    ///< the keyboard went elsewhere
    void entered(); ///< Enter, or an answer chosen by its key

protected:
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    FieldSpec m_ask;
};

/// "9:05" as a time of today, or of yesterday where that would be half a day ahead; else the text.
QString clockText(const QString &typed, const Moment &now);

} // namespace loopwright
