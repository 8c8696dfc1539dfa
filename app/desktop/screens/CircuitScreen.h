#pragma once
// One circuit with its whole history: every order that was ever made for it, and every event of its
// chain.

#include "app/actions/Orders.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"

class QLabel;
class QLineEdit;

namespace loopwright {

class FieldMark;
class Table;
class TextTable;

class CircuitScreen : public Screen
{
    Q_OBJECT
public:
    explicit CircuitScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("circuit"); }
    QString title() const override;
    void refresh() override;
    void open(const QString &circuit) override;
    void takeFocus() override;
    bool startSearch() override;
    QJsonObject place() const override { return {{"circuit", m_circuit}}; }
    void restore(const QJsonObject &place) override { open(place.value("circuit").toString()); }

private:
    QWidget *makeTables();
    void showView(const Result<CircuitView> &view);

    Asker m_worker;
    QString m_circuit;
    TextTable *m_orders;
    TextTable *m_events;
    QLineEdit *m_number;
    FieldMark *m_mark;
    QLabel *m_heading;
    QWidget *m_found;
    Table *m_orderTable;
    Table *m_eventTable;
};

} // namespace loopwright
