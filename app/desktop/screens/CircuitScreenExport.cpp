// The head of a circuit's page: what it is, and its whole file for whoever takes it over.

#include "app/actions/ExportCircuit.h"
#include "app/actions/ExportFolder.h"
#include "app/desktop/Language.h"
#include "app/desktop/screens/CircuitScreen.h"
#include "app/desktop/widgets/SignLine.h"

#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QPushButton>

namespace loopwright {

QWidget *CircuitScreen::makeSummary()
{
    m_export->setToolTip(tr("Orders, records, runs, decisions, events and certificates in a "
                            "folder, for whoever takes the circuit over"));
    connect(&m_exporter, &Asker::busyChanged, this, [this](bool busy) {
        m_export->setText(busy ? tr("Stop the export") : tr("Export the circuit…"));
    });
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_summary, 1);
    row->addWidget(m_export, 0, Qt::AlignTop);
    return box;
}

void CircuitScreen::exportOrStop()
{
    if (m_exporter.isBusy()) {
        m_exporter.stop();
        return;
    }
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("A folder for the circuit's file"));
    if (!folder.isEmpty())
        exportTo(QDir(folder).filePath("circuit-" + asFileName(m_circuit)));
}

void CircuitScreen::exportTo(const QString &folder)
{
    m_exporter.ask<CircuitExport>(
        [circuit = m_circuit, folder](Records &records, const Progress &progress) {
            return exportCircuit(records, circuit, folder, progress);
        },
        [this, folder](const Result<CircuitExport> &made) {
            if (!made)
                emit said(localized(made.error()));
            else
                emit said(
                    (QStringList{tr("%1 files are in %2.").arg(made->paths.size()).arg(folder)} +
                     localizedSentences(made->lacking))
                        .join(' '));
        });
}

} // namespace loopwright
