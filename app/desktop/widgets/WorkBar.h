#pragma once
// How far the long work of an asker is, and a button that stops it; there while it works.

#include <QWidget>

namespace loopwright {

class Asker;

class WorkBar : public QWidget
{
    Q_OBJECT
public:
    /// `spoken` names the bar for who hears it. Named `name`, with ".progress" and ".stop" in it.
    WorkBar(const QString &name, const QString &spoken, Asker &asker);
};

} // namespace loopwright
