#pragma once
// Every action of the window in one list, found by any of its letters. Enter does it; Esc leads
// back to where the keyboard was.

#include "app/desktop/ActionCatalogue.h"

#include <QDialog>

class QLineEdit;
class QStackedLayout;

namespace loopwright {

class EmptyState;
class SignLine;
class Table;
class TextTable;

class ActionPalette : public QDialog
{
    Q_OBJECT
public:
    ActionPalette(std::vector<CataloguedAction> actions, QWidget *window);

    void done(int result) override;
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    void find(const QString &asked);
    void showChosen();
    void runChosen();
    void place();
    const CataloguedAction *chosen() const;

    std::vector<CataloguedAction> m_all;
    std::vector<std::size_t> m_found; ///< places in m_all, the nearest first
    QPointer<QWidget> m_before;       ///< what had the keyboard
    QLineEdit *m_asked;
    TextTable *m_model;
    Table *m_table;
    EmptyState *m_none;
    QStackedLayout *m_faces;
    SignLine *m_told;
};

/// Opens it over the window.
void findAction(QMainWindow *window, const QWidget *screen);

} // namespace loopwright
