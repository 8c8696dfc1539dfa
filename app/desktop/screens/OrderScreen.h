#pragma once
// Adds an order, or changes one, with the checks and the sentences of an import, made as one types.
// What is typed is kept as a draft; nobody asks whether to save.

#include "app/actions/Orders.h"
#include "app/desktop/OutAgain.h"
#include "app/desktop/Screen.h"
#include "app/desktop/order/OrderSpecs.h"

class QBoxLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

class QCheckBox;

namespace loopwright {

class SignLine;
class SignList;

class OrderScreen : public Screen
{
    Q_OBJECT
public:
    explicit OrderScreen(DesktopContext &workplace, QWidget *parent = nullptr);
    ~OrderScreen() override;

    QString key() const override { return QStringLiteral("order"); }
    QString title() const override;
    /// Reads the lists anew; what is typed stays.
    void refresh() override;
    /// The order to change; empty: a new one.
    void open(const QString &number) override;
    void takeFocus() override;
    QJsonObject place() const override { return {{"order", m_number}}; }
    void restore(const QJsonObject &place) override { open(place.value("order").toString()); }

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    QWidget *makeForm();
    QWidget *makeAside();
    QScrollArea *makeTodo();
    void readLists();
    void check();
    void showVerdict(const OrderVerdict &verdict);
    void showTodo(const Findings &elsewhere, bool malformed);
    bool save();
    void keepDraft(const QJsonObject &typed);
    void showTerminals();
    void discardDraft();
    void loadStored();
    void showSameWires();

    QString m_number; ///< of the order that is changed; empty: a new one
    OrderFormState m_state;
    Form *m_form;
    QPushButton *m_addTerminal = nullptr;
    QLabel *m_heading;
    SignLine *m_draftLine;
    QPushButton *m_discard = nullptr;
    SignLine *m_verdict = nullptr;
    QLabel *m_explain = nullptr;
    QBoxLayout *m_layout = nullptr;
    QScrollArea *m_todoArea = nullptr;
    SignList *m_todo = nullptr;
    QLabel *m_todoMore = nullptr;
    QPushButton *m_save = nullptr;
    QCheckBox *m_sameWires = nullptr; ///< asked while the pair of a stored order has another name
    QString m_pairBefore;
    QPushButton *m_openExisting = nullptr;
    OutAgain m_outAgain;
};

} // namespace loopwright
