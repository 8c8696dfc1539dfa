#include "app/desktop/AccessibleParts.h"

#include <QAccessibleWidget>
#include <QTimer>
#include <QWidget>

#include <vector>

namespace loopwright {

namespace {

/// One part, as a child of the widget's interface.
class Part : public QAccessibleInterface, public QAccessibleActionInterface
{
public:
    Part(QWidget *widget, AccessibleParts *parts, int index)
        : m_widget(widget)
        , m_parts(parts)
        , m_index(index)
    {
    }

    bool isValid() const override { return m_index < m_parts->partCount(); }
    QObject *object() const override { return nullptr; }
    QAccessibleInterface *parent() const override
    {
        return QAccessible::queryAccessibleInterface(m_widget);
    }
    QAccessibleInterface *child(int) const override { return nullptr; }
    QAccessibleInterface *childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface *) const override { return -1; }
    QString text(QAccessible::Text what) const override
    {
        return what == QAccessible::Name && isValid() ? m_parts->partName(m_index) : QString();
    }
    void setText(QAccessible::Text, const QString &) override {}
    QRect rect() const override
    {
        const QRect within = isValid() ? m_parts->partRect(m_index) : QRect();
        return {m_widget->mapToGlobal(within.topLeft()), within.size()};
    }
    QAccessible::Role role() const override
    {
        return isChoice() ? QAccessible::RadioButton : QAccessible::ListItem;
    }
    QAccessible::State state() const override
    {
        QAccessible::State state;
        const bool chosen = isValid() && m_parts->isPartChosen(m_index);
        state.checkable = isChoice();
        state.checked = isChoice() && chosen;
        state.selectable = !isChoice();
        state.selected = !isChoice() && chosen;
        state.disabled = !m_widget->isEnabled();
        state.invisible = !m_widget->isVisible();
        return state;
    }
    void *interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ActionInterface
                   ? static_cast<QAccessibleActionInterface *>(this)
                   : nullptr;
    }
    QStringList actionNames() const override { return {pressAction()}; }
    void doAction(const QString &name) override
    {
        if (name == pressAction() && isValid() && m_widget->isEnabled())
            m_parts->choosePart(m_index);
    }
    QStringList keyBindingsForAction(const QString &) const override { return {}; }

private:
    bool isChoice() const { return m_parts->kind() == AccessibleParts::Kind::Choice; }

    QWidget *m_widget;
    AccessibleParts *m_parts;
    int m_index;
};

class PartedWidget : public QAccessibleWidget
{
public:
    PartedWidget(QWidget *widget, AccessibleParts *parts)
        : QAccessibleWidget(widget, parts->kind() == AccessibleParts::Kind::Choice
                                        ? QAccessible::Grouping
                                        : QAccessible::List)
        , m_parts(parts)
    {
    }
    ~PartedWidget() override
    {
        for (const QAccessible::Id id : m_children)
            QAccessible::deleteAccessibleInterface(id);
    }
    Q_DISABLE_COPY_MOVE(PartedWidget)

    int childCount() const override { return m_parts->partCount(); }
    QAccessibleInterface *child(int index) const override
    {
        if (index < 0 || index >= childCount())
            return nullptr;
        while (int(m_children.size()) <= index)
            m_children.push_back(QAccessible::registerAccessibleInterface(
                new Part(widget(), m_parts, int(m_children.size()))));
        return QAccessible::accessibleInterface(m_children[std::size_t(index)]);
    }
    int indexOfChild(const QAccessibleInterface *child) const override
    {
        for (std::size_t i = 0; i < m_children.size(); ++i)
            if (QAccessible::accessibleInterface(m_children[i]) == child)
                return int(i);
        return -1;
    }
    QAccessibleInterface *childAt(int x, int y) const override
    {
        const QPoint at = widget()->mapFromGlobal(QPoint(x, y));
        for (int i = 0; i < childCount(); ++i)
            if (m_parts->partRect(i).contains(at))
                return child(i);
        return nullptr;
    }

private:
    AccessibleParts *m_parts;
    mutable std::vector<QAccessible::Id> m_children;
};

/// Goes with the window: what was told is not told again when that comes back.
class Announcement : public QWidget
{
protected:
    void hideEvent(QHideEvent *) override
    {
        hide();
        deleteLater();
    }
};
/// A screen reader asks for the words after it heard of it.
constexpr int announcementKeptMs = 10'000;

struct RoleOf
{
    const char *className;
    QAccessible::Role role;
};
/// Of those that draw themselves, or hold others.
constexpr RoleOf roles[] = {
    {"loopwright::LoopPicture", QAccessible::Graphic},
    {"loopwright::TrendView", QAccessible::Graphic},
    {"loopwright::SheetView", QAccessible::Graphic},
    {"loopwright::SignaturePad", QAccessible::Canvas},
    {"loopwright::RunClock", QAccessible::Clock},
    {"loopwright::SignLine", QAccessible::StaticText},
    {"loopwright::ServicesEdit", QAccessible::Grouping},
};

QAccessibleInterface *interfaceOf(const QString &className, QObject *object)
{
    auto *widget = qobject_cast<QWidget *>(object);
    if (!widget)
        return nullptr;
    if (auto *parts = dynamic_cast<AccessibleParts *>(widget))
        return new PartedWidget(widget, parts);
    if (widget->objectName() == QLatin1StringView(announcementName))
        return new QAccessibleWidget(widget, QAccessible::Notification);
    // A page to be read, which the keyboard scrolls; one that it does not come to is a holder.
    if (className == u"QScrollArea" && widget->focusPolicy() != Qt::NoFocus &&
        !widget->accessibleName().isEmpty())
        return new QAccessibleWidget(widget, QAccessible::Document);
    for (const RoleOf &each : roles)
        if (className == QLatin1StringView(each.className))
            return new QAccessibleWidget(widget, each.role);
    return nullptr;
}

} // namespace

void installAccessibility()
{
    QAccessible::removeFactory(interfaceOf);
    QAccessible::installFactory(interfaceOf);
}

/// Qt 6.4 keeps alerts from AT-SPI; there, a notification is told when it begins to show. So each
/// text has one of its own, which Qt itself tells of: two in a row do not replace each other, and
/// what stands on a page is not read out again when the page is shown.
void announce(const QWidget &of, const QString &text, Tone tone)
{
    if (text.isEmpty() || !of.isVisible())
        return;
    auto *told = new Announcement;
    told->setObjectName(QLatin1StringView(announcementName)); // first: it is its role
    told->setAccessibleName(text);
    told->setAttribute(Qt::WA_TransparentForMouseEvents);
    told->setParent(of.window());
    told->setGeometry(0, 0, 1, 1);
    told->show();
    if (tone == Tone::Urgent) {
        QAccessibleEvent alert(told, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
    QTimer::singleShot(announcementKeptMs, told, &QObject::deleteLater);
}

} // namespace loopwright
