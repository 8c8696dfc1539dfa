#pragma once
// The window: a rail of screens on the left, the shown screen beside it, one status line. It knows
// no screen by type; it only carries their wishes from one to the next.

#include "app/desktop/Screens.h"
#include "app/desktop/Theme.h"

#include <QLabel>
#include <QMainWindow>
#include <QMap>
#include <QStackedWidget>

class QActionGroup;

namespace loopwright {

class Rail;

class MainWindow : public QMainWindow
{
    Q_OBJECT
public:
    explicit MainWindow(Workplace &workplace, std::span<const ScreenEntry> screens = allScreens(),
                        QWidget *parent = nullptr);

    Screen *screen(const QString &key) const { return m_screens.value(key); }
    Screen *current() const;

public slots:
    void showScreen(const QString &key);
    void openOrder(const QString &number);
    void openCircuit(const QString &circuit);
    /// The order form; an empty number is a new order.
    void editOrder(const QString &number);
    void say(const QString &sentence);

signals:
    void lookChosen(loopwright::Look look);
    void sizeChosen(int percent);

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void addScreens(std::span<const ScreenEntry> screens);
    void connectScreen(Screen *screen);
    void makeMenus();
    void makeStatusLine();
    void changed(Screen *by);
    void showTitle();

    Workplace &m_workplace;
    Rail *m_rail = nullptr;
    QStackedWidget *m_pages = nullptr;
    QLabel *m_said = nullptr;
    QMap<QString, Screen *> m_screens;
    QStringList m_order; ///< keys, as on the rail
    QString m_before;    ///< the screen that Esc on a job goes back to
};

} // namespace loopwright
