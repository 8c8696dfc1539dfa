#pragma once
// One field of the order form: the editor that its row asks for, read and written as the text of
// its column.

#include "app/desktop/order/OrderFieldTable.h"
#include "app/desktop/widgets/FieldMark.h"

#include <functional>
#include <memory>

namespace loopwright {

/// One choice of a list: the text of the column, and what a person reads.
struct OrderChoice
{
    QString text;
    QString name;
};

class OrderFieldEdit : public FieldMark
{
    Q_OBJECT
public:
    /// The editor has the object name "order.<column>".
    static OrderFieldEdit *make(const QString &column, const QString &label, OrderEditor editor,
                                QWidget *parent = nullptr);

    QString column() const { return m_column; }
    QString text() const;
    /// Says nothing.
    void setText(const QString &text);
    /// Choices of an office, installer or variant list; keeps the text.
    void setChoices(const QList<OrderChoice> &choices);

    /// Findings are shown only once the field was edited or left.
    bool isTouched() const { return m_touched; }
    void setTouched(bool touched) { m_touched = touched; }

    class Access;

signals:
    void edited();
    void left();

protected:
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    OrderFieldEdit(const QString &column, const QString &label, QWidget *editor,
                   std::unique_ptr<Access> access, QWidget *parent);
    void stepDay(int days);

    QString m_column;
    std::unique_ptr<Access> m_access;
    bool m_touched = false;
    bool m_isDate = false;

public:
    ~OrderFieldEdit() override;
};

} // namespace loopwright
