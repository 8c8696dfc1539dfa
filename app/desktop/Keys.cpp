#include "app/desktop/Keys.h"

#include <QAction>
#include <QRegularExpression>
#include <QWidget>

namespace loopwright {

namespace {

constexpr const char *whereProperty = "loopwright.where";
constexpr const char *whyOffProperty = "loopwright.why_off";

} // namespace

QAction *addKey(QWidget *place, const KeySpec &spec, std::function<void()> run)
{
    auto *action = new QAction(spec.text, place);
    action->setObjectName(spec.name);
    action->setShortcuts(spec.keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    action->setProperty(whereProperty, spec.where);
    QObject::connect(action, &QAction::triggered, place, std::move(run));
    place->addAction(action);
    return action;
}

void setWhyOff(QAction *action, const QString &sentence)
{
    action->setProperty(whyOffProperty, sentence);
}

QString whyOff(const QAction *action)
{
    return action->property(whyOffProperty).toString();
}

QString whereItHolds(const QAction *action)
{
    return action->property(whereProperty).toString();
}

QString actionName(const QString &text)
{
    const QString words = text.section(QStringLiteral("   "), 0, 0);
    QString plain;
    for (qsizetype i = 0; i < words.size(); ++i) {
        if (words[i] == u'&' && i + 1 < words.size())
            ++i; // "&&" is one of them
        plain += words[i];
    }
    static const QRegularExpression behind(QStringLiteral("(\\s\\(\\S+\\))?…?$"));
    return plain.remove(behind).trimmed();
}

} // namespace loopwright
