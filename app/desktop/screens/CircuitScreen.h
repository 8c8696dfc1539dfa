#pragma once
// One circuit with its whole life: what happened on one line, every order that was ever made for
// it, every event of its chain, its figures then and today, and its neighbours in trouble. Found by
// any fragment of a number or name.

#include "app/actions/Circuits.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QTabWidget;

namespace loopwright {

class FieldMark;
class SignLine;
class Table;
class TextTable;
class TrendView;
class TroubleEntry;

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
    bool letGo() override;
    QJsonObject place() const override { return {{"circuit", m_circuit}}; }
    void restore(const QJsonObject &place) override { open(place.value("circuit").toString()); }
    /// Writes the circuit's whole file into the folder, beside the window's thread.
    void exportTo(const QString &folder);

private:
    QWidget *makeSummary();
    void exportOrStop();
    QWidget *makeTabs();
    QWidget *makeFigures();
    Table *addTab(const QString &name, const QString &title, TextTable *model,
                  std::vector<double> ems);
    void showView(Result<CircuitView> view);
    void showSummary(const CircuitView &view);
    void showLists(const CircuitView &view);
    void showFigures(const CircuitView &view);
    void showChosen(int row);
    void showTrend(int row);
    /// None is called so: circuits with the text in a number or name are looked for.
    void askForCandidates(const Error &none);
    void showCandidates(const std::vector<BoardRow> &rows);
    void say(const QString &trouble);

    Asker m_worker;
    Asker m_exporter;
    QString m_circuit;
    std::vector<CircuitFigure> m_figures;
    TextTable *m_life, *m_orders, *m_events, *m_neighbours, *m_spares, *m_figureRows, *m_candidates;
    QLineEdit *m_number;
    FieldMark *m_mark;
    QLabel *m_heading;
    SignLine *m_summary;
    QWidget *m_found;
    QTabWidget *m_tabs;
    Table *m_lifeTable = nullptr;
    Table *m_figureTable, *m_candidateTable;
    SignLine *m_chosen;
    TrendView *m_trend;
    TroubleEntry *m_trouble;
    QPushButton *m_export;
};

} // namespace loopwright
