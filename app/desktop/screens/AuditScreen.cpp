#include "app/desktop/screens/AuditScreen.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/FlowLayout.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"

#include <QHBoxLayout>
#include <QProgressBar>

namespace loopwright {

namespace {

/// More circuits than these are told by number only.
constexpr std::size_t circuitsShown = 12;

} // namespace

AuditScreen::AuditScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_worker(workplace.longWork())
    , m_model(new TextTable({tr("What"), tr("Value"), tr("Circuits"), tr("Orders"), tr("Reason")},
                            0, {1, 2, 3}, this))
    , m_start(makeButton(tr("Look through all records"), QStringLiteral("audit.start"),
                         [this] { start(); }))
    , m_stop(makeButton(tr("Stop"), QStringLiteral("audit.stop"), [this] { m_worker.stop(); }))
    , m_progress(
          makeProgress(QStringLiteral("audit.progress"), tr("Progress of the audit"), m_worker))
    , m_summary(new SignLine)
    , m_table(new Table(QStringLiteral("audit.findings"), tr("Findings of the audit")))
    , m_reason(new SignLine)
    , m_circuits(new QWidget)
{
    m_summary->setObjectName(QStringLiteral("audit.summary"));
    m_summary->show(Status::None,
                    tr("Looks for every number, SPID and pair that two circuits hold, and for open "
                       "orders whose identifiers are in error. Enter opens the circuit of a "
                       "finding."));
    m_table->setModel(m_model);
    m_table->setColumnEms({12, 13, 16, 16, 30});
    connectAll();

    auto *head = new QHBoxLayout;
    head->addWidget(m_start);
    head->addWidget(m_stop);
    head->addWidget(m_progress, 1);
    head->addStretch(0);
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(makeHeading(tr("Audit of identifiers"), 1.5));
    layout->addWidget(m_summary);
    layout->addLayout(head);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_reason);
    layout->addWidget(m_circuits);
    layout->addStretch(0);
    auto *row = new FlowLayout(m_circuits);
    row->setContentsMargins(0, 0, 0, 0);
    for (std::size_t i = 0; i < circuitsShown; ++i) {
        m_circuitButtons.push_back(makeButton(tr("Circuit"), QString("audit.circuit.%1").arg(i),
                                              [this, i] { openCircuitAt(qsizetype(i)); }));
        row->addWidget(m_circuitButtons.back());
    }
    whenThemed(m_circuits, [this, row] {
        row->setSpacing(em(0.5));
        m_start->setMinimumHeight(em(2.3));
    });
    m_reason->setObjectName(QStringLiteral("audit.reason"));
    m_table->hide();
    m_reason->hide();
    m_circuits->hide();
    setRunning(false);
    layout->setAlignment(Qt::AlignTop);
}

void AuditScreen::connectAll()
{
    connect(m_table, &Table::opened, this, [this](const QModelIndex &index) {
        const AuditFinding &finding = m_findings[std::size_t(index.row())];
        if (!finding.circuits.isEmpty())
            emit openCircuit(finding.circuits.first());
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &now) { showCircuits(now.row()); });
}

void AuditScreen::takeFocus()
{
    if (m_model->rowCount() > 0)
        m_table->setFocus();
    else
        m_start->setFocus();
}

void AuditScreen::setRunning(bool running)
{
    m_start->setEnabled(!running);
    m_stop->setVisible(running);
    m_progress->setVisible(running);
    m_progress->setRange(0, 0);
    if (running)
        m_stop->setFocus();
}

void AuditScreen::start()
{
    if (m_worker.isBusy())
        return;
    setRunning(true);
    m_worker.ask<std::vector<AuditFinding>>(
        [](Records &records, const Progress &progress) {
            return auditIdentifiers(records, progress);
        },
        [this](const Result<std::vector<AuditFinding>> &findings) { showFindings(findings); });
}

void AuditScreen::showFindings(const Result<std::vector<AuditFinding>> &findings)
{
    setRunning(false);
    m_findings = findings ? *findings : std::vector<AuditFinding>();
    std::vector<TextRow> rows;
    for (const AuditFinding &finding : m_findings)
        rows.push_back(
            {{eventName(finding.code), finding.value, finding.circuits.join(QStringLiteral(", ")),
              finding.orders.join(QStringLiteral(", ")), localizedSentence(finding.reason)},
             Status::Failed,
             finding.circuits.value(0),
             false});
    m_model->show(std::move(rows));
    if (!findings)
        m_summary->tell(Status::Failed, localized(findings.error()));
    else if (m_findings.empty())
        m_summary->tell(Status::Done,
                        tr("Nothing is held twice, and no open order's identifiers are "
                           "in error."));
    else
        m_summary->tell(Status::Failed, m_findings.size() == 1
                                            ? tr("1 finding; Enter opens its circuit.")
                                            : tr("%1 findings; Enter opens the circuit of one.")
                                                  .arg(qlonglong(m_findings.size())));
    m_table->setVisible(!m_findings.empty());
    if (m_findings.empty())
        m_start->setFocus();
    else {
        m_table->setCurrentIndex(m_model->index(0, 0));
        m_table->setFocus();
    }
    showCircuits(m_table->currentIndex().row());
}

/// Of the finding in that row; none if there is no such row.
QStringList AuditScreen::circuitsOf(int row) const
{
    return row >= 0 && row < int(m_findings.size()) ? m_findings[std::size_t(row)].circuits
                                                    : QStringList();
}

void AuditScreen::openCircuitAt(qsizetype place)
{
    const QStringList circuits = circuitsOf(m_table->currentIndex().row());
    if (place < circuits.size())
        emit openCircuit(circuits[place]);
}

void AuditScreen::showCircuits(int row)
{
    const bool any = row >= 0 && row < int(m_findings.size());
    m_circuits->setVisible(any);
    m_reason->setVisible(any);
    if (any)
        m_reason->show(Status::Failed, localizedSentence(m_findings[std::size_t(row)].reason));
    const QStringList circuits = circuitsOf(row);
    for (std::size_t i = 0; i < m_circuitButtons.size(); ++i) {
        const QString circuit = circuits.value(qsizetype(i));
        m_circuitButtons[i]->setText(tr("Circuit %1").arg(circuit));
        m_circuitButtons[i]->setVisible(!circuit.isEmpty());
    }
}

} // namespace loopwright
