#pragma once
// Small parts that every screen is made of, so that all screens look like one.

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <functional>
#include <initializer_list>

class QDialog;
class QDialogButtonBox;
class QProgressBar;
class QScrollArea;

namespace loopwright {

class Asker;

/// A heading at `times` the size of the text; 1.7 for a page, 1 for a part of it.
QLabel *makeHeading(const QString &text, double times = 1);
/// Text of less weight that may wrap.
QLabel *makeMuted(const QString &text, double times = 0.95);
/// Plain text that may wrap and can be copied.
QLabel *makeText(const QString &text);
/// What a tip shows as it stands: Qt would take a text with a tag in it for a page, pictures and
/// all.
QString asTip(const QString &text);
/// The labels of a dialog that Qt makes show what stands in them as it stands, now and later.
void keepPlain(const QDialog &dialog);
/// A button with an object name and, where it differs from the text, an accessible name.
QPushButton *makeButton(const QString &text, const QString &objectName,
                        std::function<void()> pressed);
/// How far the work of the asker is; goes to and fro until it says so.
QProgressBar *makeProgress(const QString &objectName, const QString &spoken, const Asker &asker);
/// Buttons beside each other; on a further row where there is no more room.
QWidget *makeButtonRow(std::initializer_list<QPushButton *> buttons);
/// "Close", which it does.
QDialogButtonBox *makeCloseButtons(QDialog *dialog);
/// So many ems, but no more than leaves the title of the window to be seen.
QSize sizeWithin(const QWidget &window, double wideEm, double highEm);
/// A flat ground in the colour of fields, with a hairline around.
QFrame *makeCard();
/// Gives the frame an outline in looks in which it has the colour of the ground behind it.
void outlineWhereFlat(QFrame *frame);
/// What is higher than its room scrolls; nothing is cut off, and Tab does not stop at it.
QScrollArea *inScrollArea(QWidget *sheet);
/// Likewise, and no wider than its room; asks for `highEm` alone and takes what is left, so that
/// the page around it need not scroll too.
QScrollArea *inLowArea(QWidget *sheet, double highEm);
/// The margins of a page, following the size.
void setPageMargins(QLayout *layout, QWidget *owner);

/// What stands in the place of an empty list: what is missing, and what to do first.
class EmptyState : public QWidget
{
    Q_OBJECT
public:
    explicit EmptyState(QWidget *parent = nullptr);

    void say(const QString &title, const QString &sentence);
    QString title() const { return m_title->text(); }
    void addButton(QPushButton *button);

private:
    QLabel *m_title;
    QLabel *m_sentence;
    QVBoxLayout *m_buttons;
};

} // namespace loopwright
