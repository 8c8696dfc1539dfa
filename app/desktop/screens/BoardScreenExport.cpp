// What the board shows, written as a table; and the day list.

#include "app/actions/DayList.h"
#include "app/actions/ExportView.h"
#include "app/actions/OutFile.h"
#include "app/actions/SheetFile.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/screens/BoardScreen.h"
#include "app/desktop/screens/BoardsButton.h"

#include <QAction>
#include <QFileDialog>
#include <QLocale>

namespace loopwright {

namespace {

QString exportText()
{
    return BoardScreen::tr("&Export view…");
}

} // namespace

void BoardScreen::makeExport()
{
    m_export = new QAction(exportText(), this);
    m_export->setObjectName(QStringLiteral("view.export"));
    m_export->setShortcut(Qt::CTRL | Qt::SHIFT | Qt::Key_E);
    m_export->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(m_export, &QAction::triggered, this, &BoardScreen::exportOrStop);
    connect(&m_exporter, &Asker::progressed, this, [this](qint64 orders) {
        m_export->setText(
            tr("Stop the &export (%1 orders so far)").arg(QLocale().toString(orders)));
    });
    connect(&m_exporter, &Asker::busyChanged, this,
            [this](bool busy) { m_export->setText(busy ? tr("Stop the &export") : exportText()); });
    addAction(m_export);
    m_boards->addDeed(m_export);
}

void BoardScreen::exportOrStop()
{
    if (m_exporter.isBusy()) {
        m_exporter.stop();
        return;
    }
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Export what the board shows"),
        QStringLiteral("board-%1.csv").arg(workplace().today().toString(Qt::ISODate)),
        tr("CSV files (*.csv)"));
    if (!path.isEmpty())
        exportView(path);
}

void BoardScreen::exportView(const QString &path)
{
    ViewExport what{m_filter, path, true}; // whoever makes it here opens it in a spreadsheet
    m_exporter.ask<qint64>(
        [what](Records &records, const Progress &progress) mutable {
            what.progress = progress;
            return loopwright::exportView(records, what);
        },
        [this, path](const Result<qint64> &written) {
            if (!written)
                emit said(localized(written.error()));
            else if (*written == 1)
                emit said(tr("1 order is in %1.").arg(path));
            else
                emit said(tr("%1 orders are in %2.").arg(QLocale().toString(*written), path));
        });
}

void BoardScreen::askForDayList()
{
    if (m_lister.isBusy())
        return;
    const QString day = workplace().today().toString(Qt::ISODate);
    const QString path = choosePdf(this, QStringLiteral("jobs-%1.pdf").arg(day));
    if (!path.isEmpty())
        saveDayList(path);
}

void BoardScreen::saveDayList(const QString &path)
{
    m_lister.ask<int>(
        [path, installer = m_filter.facets.value(BoardFacet::Installer), day = workplace().today(),
         paper = localPaper()](Records &records, const Progress &progress) -> Result<int> {
            LOOPWRIGHT_TRY(checkOut(path, FileKind::Pdf));
            LOOPWRIGHT_ASSIGN(const auto list, daySheet(records, installer, day, paper, progress));
            LOOPWRIGHT_TRY(writeSheet(list.sheet, path, records.now(), progress));
            return int(list.orders.size());
        },
        [this, path](const Result<int> &orders) {
            emit said(orders ? tr("Saved as %1.").arg(path) : localized(orders.error()));
        });
}

} // namespace loopwright
