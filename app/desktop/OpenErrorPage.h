#pragma once
// What is shown when the records cannot be opened: what happened, what was kept, and what to do,
// with the three things one can do as buttons.

#include "core/base/Result.h"

#include <QWidget>

namespace loopwright {

class OpenErrorPage : public QWidget
{
    Q_OBJECT
public:
    /// `place`: a file or an address without a password.
    OpenErrorPage(const Error &error, const QString &place, QWidget *parent = nullptr);

signals:
    void tryAgain();
    void openOther(const QString &path, bool atStart);

private:
    QLayout *makeButtons();

    QString m_place;
};

} // namespace loopwright
