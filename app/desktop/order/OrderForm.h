#pragma once
// Every field of an order as one form, read and written as the columns of orders.csv. It shows
// findings at their fields; it asks nobody for them.

#include "app/desktop/order/TerminalEdit.h"

#include <QMap>

class QPushButton;
class QVBoxLayout;

namespace loopwright {

class OrderForm : public QWidget
{
    Q_OBJECT
public:
    explicit OrderForm(QWidget *parent = nullptr);

    OrderFields fields() const;
    /// Replaces everything; says nothing. `touched`: findings are shown at once.
    void setFields(const OrderFields &fields, bool touched);
    void setChoices(const QList<OrderChoice> &offices, const QList<OrderChoice> &installers,
                    const QMap<QString, QString> &variantOfOffice);
    /// Puts each finding at its field, where that was touched. Answers with those that are shown
    /// nowhere.
    Findings showFindings(const Findings &findings);
    /// Shows every finding from now on.
    void touchAll();
    /// Moves the keyboard to the field of a column, "spid_2" for instance.
    void goTo(const QString &column);
    /// "SPID of terminal 2": what the form calls a column.
    QString nameOf(const QString &column) const;

    void addTerminal();

signals:
    void edited();
    void left();

private:
    QWidget *makePart(OrderPart part, const QString &name);
    QWidget *makeTerminals();
    void addField(OrderFieldEdit *field);
    void adapt();
    const ProtocolVariant *variant() const;
    QString text(const QString &column) const;

    QMap<QString, OrderFieldEdit *> m_fields;
    QStringList m_order; ///< columns, from the top
    QStringList m_digitalOnly;
    QList<TerminalEdit *> m_terminals;
    QVBoxLayout *m_terminalColumn = nullptr;
    QPushButton *m_addTerminal = nullptr;
    QMap<QString, QString> m_variantOfOffice;
    int m_shownTerminals = 1;
};

} // namespace loopwright
