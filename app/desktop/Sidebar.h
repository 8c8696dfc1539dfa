#pragma once
// The rail on the left of the window: one button a screen, the two faces (board and job) first;
// below, what is left of each run that goes on. It shrinks to signs alone when the window is
// narrow, and in a low one its buttons become lower, then scroll.

#include "app/desktop/Screens.h"

#include <QFrame>
#include <QMap>
#include <QToolButton>

class QScrollArea;
class QVBoxLayout;

namespace loopwright {

class Sidebar : public QFrame
{
    Q_OBJECT
public:
    explicit Sidebar(std::span<const ScreenEntry> screens, QWidget *parent = nullptr);

    void setCurrent(const QString &key);
    /// "Job 4711" in the place of "Job", for instance.
    void setName(const QString &key, const QString &name);
    void setNarrow(bool narrow);
    /// What is left of each run, e.g. "12:34", by order. Buttons that stay are not touched.
    void showRuns(const QMap<QString, QString> &left);

signals:
    void chosen(const QString &key);
    void runChosen(const QString &order);

private:
    void addButton(const ScreenEntry &entry, int place);
    void dress();
    void showChecked() const;

    struct Place
    {
        QToolButton *button;
        GlyphShape glyph;
    };
    QMap<QString, Place> m_places;
    QMap<QString, QToolButton *> m_runs; ///< by order
    QVBoxLayout *m_layout;
    QVBoxLayout *m_buttons = nullptr; ///< inside m_area
    QScrollArea *m_area = nullptr;
    QStringList m_names; ///< of the screens
    bool m_narrow = false;
};

} // namespace loopwright
