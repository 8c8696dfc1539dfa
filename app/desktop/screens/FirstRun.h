#pragma once
// What the board offers where there is no order yet: the demo in records of its own, files to
// import with their columns and a sample, the first office by form, an order by hand.

#include "app/desktop/Lanes.h"

class QPushButton;

namespace loopwright {

class AskDialog;
class DesktopContext;
class EmptyState;

class FirstRun : public QObject
{
    Q_OBJECT
public:
    /// Adds its buttons to `place`; `owner` is below its dialogs.
    FirstRun(DesktopContext &workplace, EmptyState &place, QWidget *owner);

    /// Offers what makes sense now, and says so in the place; or nothing.
    void offer(bool offered);

signals:
    void importWished();
    void orderWished();
    void serverWished();
    void officeMade();
    /// The records of the demo lie there.
    void demoReady(const QString &path);
    void said(const QString &sentence);

private:
    void openDemo();
    void showDemoButton(bool making);
    void askOffice();
    void makeOffice(AskDialog &dialog, const QJsonObject &values);
    void showColumns();
    bool hasOffice() const;

    DesktopContext &m_workplace;
    EmptyState &m_place;
    QWidget *m_owner;
    Asker m_maker;
    QPushButton *m_demo;
    QPushButton *m_import;
    QPushButton *m_columns;
    QPushButton *m_office;
    QPushButton *m_server;
    QPushButton *m_order;
};

} // namespace loopwright
