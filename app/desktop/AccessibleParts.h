#pragma once
// What a screen reader meets of widgets that draw themselves: a choice of answers is a group of
// radio buttons, the job line a list of stations, a picture a picture.

#include <QRect>
#include <QString>

class QWidget;

namespace loopwright {

/// Several parts drawn in one widget, which derives from this beside QWidget.
class AccessibleParts
{
public:
    enum class Kind
    {
        Choice, ///< one of them is chosen
        List
    };

    virtual ~AccessibleParts() = default;
    virtual Kind kind() const = 0;
    virtual int partCount() const = 0;
    virtual QString partName(int part) const = 0;
    virtual QRect partRect(int part) const = 0; ///< within the widget
    virtual bool isPartChosen(int part) const = 0;
    /// As by a click.
    virtual void choosePart(int part) = 0;
};

/// From now on, for every widget of the process; may be called again.
void installAccessibility();
enum class Tone
{
    Polite, ///< after what is being said
    Urgent  ///< at once: an error, a hazard
};
/// Has a screen reader say it: what came of an entry, a refusal, an alarm. Says nothing of a widget
/// that is not shown. Each call says it once, also what was said before: see SignLine::tellIfNew().
void announce(const QWidget &of, const QString &text, Tone tone = Tone::Polite);
/// Name of the object that begins to show with each text that is announced; its accessible name is
/// the text. It is nobody's to see, and goes away by itself.
constexpr const char *announcementName = "announcement";

} // namespace loopwright
