#include "app/desktop/job/EntryField.h"

#include "app/desktop/Theme.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QRegularExpression>

namespace loopwright {

namespace {

const std::vector<KeyedOption> yesNo = {{u'Y', QStringLiteral("true"), QStringLiteral("Yes")},
                                        {u'N', QStringLiteral("false"), QStringLiteral("No")}};

QWidget *makeEditor(const FieldSpec &ask)
{
    if (ask.answer == Answer::Choice || ask.answer == Answer::YesNo) {
        auto *choice = new KeyedChoice(ask.options.empty() ? yesNo : ask.options);
        choice->setName(ask.label);
        return choice;
    }
    auto *edit = new QLineEdit;
    if (ask.answer != Answer::Text)
        edit->setInputMethodHints(Qt::ImhPreferNumbers);
    whenThemed(edit, [edit, text = ask.answer == Answer::Text] {
        edit->setFont(text ? sized(1.1) : digitsFont(1.2));
        edit->setMinimumHeight(em(2.5));
    });
    return edit;
}

QJsonValue numberOf(QString typed, bool whole)
{
    bool ok = false;
    if (const qint64 count = typed.toLongLong(&ok); ok)
        return count;
    const double number = QString(typed).replace(u',', u'.').toDouble(&ok);
    if (ok && !(whole && typed.contains(u',')))
        return number;
    return typed;
}

} // namespace

QString clockText(const QString &typed, const Moment &now)
{
    static const QRegularExpression form(
        QStringLiteral("^([01]?\\d|2[0-3]):([0-5]\\d)(?::([0-5]\\d))?$"));
    const auto match = form.match(typed);
    if (!match.hasMatch())
        return typed;
    const QString zone = now.text().mid(now.text().lastIndexOf(QRegularExpression("[-+Z]")));
    const auto on = [&](QDate day) {
        return QString("%1T%2:%3:%4%5")
            .arg(day.toString(Qt::ISODate), match.captured(1).rightJustified(2, u'0'),
                 match.captured(2), match.captured(3).rightJustified(2, u'0'), zone);
    };
    const QString today = on(now.localDate());
    const auto moment = Moment::parse(today);
    if (moment && now.secondsUntil(*moment) > 12 * 3600)
        return on(now.localDate().addDays(-1));
    return today;
}

EntryField::EntryField(const QString &part, const FieldSpec &ask, QWidget *parent)
    : FieldMark(ask.label, makeEditor(ask), parent)
    , m_ask(ask)
{
    setHint(ask.hint);
    field()->setObjectName(part + '.' + ask.key);
    field()->installEventFilter(this);
    if (auto *edit = qobject_cast<QLineEdit *>(field())) {
        connect(edit, &QLineEdit::textEdited, this, &EntryField::edited);
    } else if (auto *choice = qobject_cast<KeyedChoice *>(field())) {
        connect(choice, &KeyedChoice::edited, this, &EntryField::edited);
        connect(choice, &KeyedChoice::chosen, this, &EntryField::entered);
    }
}

QString EntryField::typed() const
{
    if (const auto *edit = qobject_cast<QLineEdit *>(field()))
        return edit->text().trimmed();
    return static_cast<KeyedChoice *>(field())->code();
}

void EntryField::setTyped(const QString &text)
{
    if (auto *edit = qobject_cast<QLineEdit *>(field()))
        edit->setText(text);
    else
        static_cast<KeyedChoice *>(field())->setCode(text);
}

QJsonValue EntryField::value(const Moment &now) const
{
    const QString text = typed();
    if (text.isEmpty())
        return QJsonValue::Undefined;
    switch (m_ask.answer) {
    case Answer::Number:
        return numberOf(text, false);
    case Answer::Whole:
        return numberOf(text, true);
    case Answer::YesNo:
        return text == u"true";
    case Answer::Clock:
        return clockText(text, now);
    case Answer::Text:
    case Answer::Choice:
        break;
    }
    return text;
}

void EntryField::mark(const QString &reason)
{
    setFindings({{Severity::Error, "entry", reason, {}, m_ask.key, 0}});
}

bool EntryField::eventFilter(QObject *object, QEvent *event)
{
    if (event->type() == QEvent::FocusOut) {
        emit left();
    } else if (event->type() == QEvent::KeyPress) {
        const auto *key = static_cast<QKeyEvent *>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (enter && !(key->modifiers() & ~Qt::KeypadModifier)) {
            emit entered();
            return true;
        }
    }
    return FieldMark::eventFilter(object, event);
}

} // namespace loopwright
