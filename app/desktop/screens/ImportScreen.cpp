#include "app/desktop/screens/ImportScreen.h"

#include "app/actions/InFile.h"
#include "app/actions/OutFile.h"
#include "app/desktop/Files.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/screens/ColumnMapDialog.h"
#include "app/desktop/screens/ColumnsDialog.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/FlowLayout.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"

#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QMimeData>
#include <QProgressBar>

namespace loopwright {

namespace {

constexpr qsizetype mostMaps = 60;

QString countsText(const ImportReport &report)
{
    QStringList parts{ImportScreen::tr("%1 taken in").arg(report.accepted)};
    if (report.held > 0)
        parts << ImportScreen::tr("%1 of them held").arg(report.held);
    parts << ImportScreen::tr("%1 refused").arg(report.refused);
    parts << ImportScreen::tr("%1 there already").arg(report.unchanged);
    return parts.join(QStringLiteral(" · "));
}

std::vector<TextRow> rowsOf(const Findings &findings)
{
    std::vector<TextRow> rows;
    rows.reserve(findings.size());
    for (const Finding &finding : findings)
        rows.push_back({{finding.row > 0 ? QString::number(finding.row) : QString(), finding.field,
                         localizedWord(severityName(finding.severity)), finding.code,
                         localized(finding.reason), finding.repair},
                        signOf(finding.severity),
                        {},
                        false});
    return rows;
}

} // namespace

ImportScreen::ImportScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_worker(workplace.longWork())
    , m_findings(new TextTable(
          {tr("Row"), tr("Column"), tr("What"), tr("Code"), tr("Reason"), tr("Repair")}, 2, {5},
          this))
{
    setAcceptDrops(true);
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(makeHeading(tr("Import a file"), 1.5));
    layout->addWidget(makeChoice());
    layout->addWidget(makeReport(), 1);
    setRunning(false);
    lookAtColumns();
}

QWidget *ImportScreen::makePath()
{
    m_path = new QLineEdit;
    m_path->setObjectName(QStringLiteral("import.path"));
    m_path->setPlaceholderText(tr("Drop a CSV file here, or choose one"));
    auto *path = new FieldMark(tr("File"), m_path);
    path->setTight(true);
    connect(m_path, &QLineEdit::textChanged, this, [this] {
        lookAtFile();
        m_start->setEnabled(!m_path->text().trimmed().isEmpty());
    });
    connect(m_path, &QLineEdit::returnPressed, this, &ImportScreen::start);
    return path;
}

QWidget *ImportScreen::makeKind()
{
    m_kind = new QComboBox;
    m_kind->setObjectName(QStringLiteral("import.kind"));
    for (const ImportKind &kind : importKinds())
        m_kind->addItem(localized(Text(kind.form().name)), QString::fromLatin1(kind.key));
    connect(m_kind, &QComboBox::currentIndexChanged, this, &ImportScreen::lookAtColumns);
    auto *kind = new FieldMark(tr("It holds"), m_kind);
    kind->setTight(true);
    return kind;
}

void ImportScreen::makeControls()
{
    m_browse =
        makeButton(tr("Choose a file…"), QStringLiteral("import.browse"), [this] { browse(); });
    m_start = makeButton(tr("Import"), QStringLiteral("import.start"), [this] { start(); });
    m_start->setEnabled(false);
    m_columns =
        makeButton(tr("Columns…"), QStringLiteral("import.columns"), [this] { askColumns(false); });
    m_help = makeButton(tr("Its columns, a sample…"), QStringLiteral("import.help"),
                        [this] { showColumns(); });
    m_columnsSay = makeMuted({});
    m_columnsSay->setObjectName(QStringLiteral("import.columns_say"));
    m_cancel = makeButton(tr("Stop"), QStringLiteral("import.cancel"), [this] { m_worker.stop(); });
    m_update = new QCheckBox(tr("Rows that are there with other values change them"));
    m_update->setObjectName(QStringLiteral("import.update"));
    m_whole = new QCheckBox(tr("One refused row refuses the file"));
    if (workplace().records().isOnServer())
        m_whole->setToolTip(tr("Until it is done nobody else can write."));
    m_whole->setObjectName(QStringLiteral("import.all_or_nothing"));
    m_progress =
        makeProgress(QStringLiteral("import.progress"), tr("Progress of the import"), m_worker);
}

QWidget *ImportScreen::makeChoice()
{
    QWidget *path = makePath();
    QWidget *kind = makeKind();
    makeControls();
    QFrame *card = makeCard();
    auto *column = new QVBoxLayout(card);
    auto *first = new QHBoxLayout;
    first->addWidget(path, 3);
    first->addWidget(m_browse, 0, Qt::AlignBottom);
    first->addWidget(kind, 1);
    column->addLayout(first);
    auto *options = new QWidget;
    auto *flow = new FlowLayout(options);
    flow->addWidget(m_update);
    flow->addWidget(m_whole);
    flow->addWidget(m_help);
    column->addWidget(options);
    auto *last = new QHBoxLayout;
    last->addWidget(m_start);
    last->addWidget(m_columns);
    last->addWidget(m_columnsSay, 1);
    last->addWidget(m_cancel);
    last->addWidget(m_progress, 1);
    last->setAlignment(Qt::AlignLeft);
    column->addLayout(last);
    whenThemed(card, [this, column, flow] {
        column->setContentsMargins(em(1.1), em(0.9), em(1.1), em(0.9));
        column->setSpacing(em(0.7));
        flow->setContentsMargins(0, 0, 0, 0);
        flow->setSpacing(em(1.6));
        m_start->setMinimumSize(em(8), em(2.3));
        m_kind->setMinimumHeight(em(1.9));
    });
    return card;
}

QWidget *ImportScreen::makeReport()
{
    m_summary = new SignLine;
    m_summary->setObjectName(QStringLiteral("import.summary"));
    m_counts = makeMuted({});
    m_counts->setObjectName(QStringLiteral("import.counts"));
    m_table = new Table(QStringLiteral("import.findings"), tr("Findings of the import"));
    m_table->setModel(m_findings);
    m_table->setColumnEms({4, 9, 6.5, 12, 34, 12});
    m_save = makeButton(tr("Save the refused rows…"), QStringLiteral("import.rejects"),
                        [this] { saveRejects(); });
    auto *report = new QWidget;
    auto *column = new QVBoxLayout(report);
    column->setContentsMargins(0, 0, 0, 0);
    auto *head = new QHBoxLayout;
    auto *words = new QVBoxLayout;
    words->addWidget(m_summary);
    words->addWidget(m_counts);
    head->addLayout(words, 1);
    head->addWidget(m_save, 0, Qt::AlignTop);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    m_summary->show(Status::None,
                    tr("Good rows go in, bad ones are named here with row, column and reason, and "
                       "can be written out again. First the serving offices, then the people and "
                       "instruments, then the orders."));
    m_save->hide();
    m_table->hide();
    column->addStretch(0);
    return report;
}

void ImportScreen::takeFocus()
{
    m_browse->setFocus();
}

void ImportScreen::choose(const QString &path)
{
    m_path->setText(QDir::toNativeSeparators(path));
}

void ImportScreen::browse()
{
    const QString path = QFileDialog::getOpenFileName(this, tr("Import a file"), {},
                                                      tr("CSV files (*.csv);;All files (*)"));
    if (!path.isEmpty()) {
        choose(path);
        m_start->setFocus();
    }
}

const ImportKind &ImportScreen::kind() const
{
    return importKinds()[std::size_t(m_kind->currentIndex())];
}

/// By a column that only one kind has, by all of its columns, or by what its header was taken for
/// the last time.
void ImportScreen::lookAtFile()
{
    m_head = importHeadOf(m_path->text().trimmed());
    QString key;
    for (const ImportKind &each : importKinds())
        if (m_head && key.isEmpty() && m_head->header.contains(QLatin1StringView(each.column)))
            key = QString::fromLatin1(each.key);
    for (const ImportKind &each : importKinds())
        if (m_head && key.isEmpty() && m_head->isOurs(each))
            key = QString::fromLatin1(each.key);
    for (const QJsonValue &each : std::as_const(m_maps))
        if (m_head && key.isEmpty() && each["header"] == m_head->digest())
            key = each["kind"].toString();
    if (const int at = m_kind->findData(key); at >= 0)
        m_kind->setCurrentIndex(at);
    lookAtColumns();
}

void ImportScreen::lookAtColumns()
{
    m_map.reset();
    const bool ours = !m_head || m_head->isOurs(kind());
    for (const QJsonValue &each : std::as_const(m_maps)) {
        if (ours || each["header"] != m_head->digest() ||
            each["kind"] != QLatin1StringView(kind().key))
            continue;
        if (auto map = ColumnMap::fromJson(each["map"].toObject(), tr("the columns of last time")))
            m_map = std::move(*map);
    }
    m_columns->setVisible(!ours);
    m_columnsSay->setVisible(!ours);
    m_columnsSay->setText(m_map ? tr("The columns are read as the last time.")
                                : tr("The header is not ours: say what its columns stand for."));
}

void ImportScreen::askColumns(bool thenStart)
{
    auto *dialog =
        new ColumnMapDialog(kind(), *m_head, m_map ? *m_map : proposedMap(*m_head, kind()), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog, thenStart] {
        m_map = dialog->map();
        keepMap(*m_map);
        m_columnsSay->setText(tr("The columns are read as you said."));
        m_start->setFocus();
        if (thenStart)
            start();
    });
    dialog->open();
}

void ImportScreen::showColumns()
{
    connect(showColumnsOf(QString::fromLatin1(kind().key), this), &ColumnsDialog::said, this,
            &ImportScreen::said);
}

void ImportScreen::keepMap(const ColumnMap &map)
{
    const QString header = m_head->digest(), key = QString::fromLatin1(kind().key);
    QJsonArray kept;
    for (const QJsonValue &each : std::as_const(m_maps))
        if (each["header"] != header || each["kind"] != key)
            kept << each;
    kept << QJsonObject{{"header", header}, {"kind", key}, {"map", map.toJson()}};
    while (kept.size() > mostMaps)
        kept.removeFirst();
    m_maps = kept;
    emit placeChanged();
}

QJsonObject ImportScreen::place() const
{
    return m_maps.isEmpty() ? QJsonObject() : QJsonObject{{"maps", m_maps}};
}

void ImportScreen::restore(const QJsonObject &place)
{
    m_maps = place.value("maps").toArray();
}

void ImportScreen::start()
{
    const QString typed = m_path->text().trimmed();
    if (typed.isEmpty() || m_worker.isBusy())
        return;
    if (m_head && !m_map && !m_head->isOurs(kind())) {
        askColumns(true);
        return;
    }
    const QString path = QFileInfo(typed).absoluteFilePath(); // never standard input
    ImportOptions options;
    options.fileName = QFileInfo(path).fileName();
    options.update = m_update->isChecked();
    options.allOrNothing = m_whole->isChecked();
    options.map = m_map;
    const ImportAction run = kind().run;
    m_imported = path;
    setRunning(true);
    m_worker.ask<ImportReport>(
        [path, options, run](Records &records,
                             const Progress &progress) mutable -> Result<ImportReport> {
            LOOPWRIGHT_ASSIGN(const auto bytes, readFile(path));
            options.progress = progress;
            return run(records, bytes, options);
        },
        [this](const Result<ImportReport> &report) { showReport(report); });
}

void ImportScreen::setRunning(bool running)
{
    m_start->setEnabled(!running && !m_path->text().trimmed().isEmpty());
    m_cancel->setVisible(running);
    m_progress->setVisible(running);
    m_progress->setRange(0, 0);
    for (QWidget *widget :
         std::initializer_list<QWidget *>{m_path, m_kind, m_update, m_whole, m_browse, m_columns})
        widget->setEnabled(!running);
    if (running)
        m_cancel->setFocus();
}

void ImportScreen::showReport(const Result<ImportReport> &report)
{
    setRunning(false);
    m_start->setFocus();
    if (!report) {
        m_summary->tell(Status::Failed, localized(report.error()));
        const int rows = report.error().rowsDone;
        m_counts->setText(rows > 0 ? tr("Rows taken in before that: %1. Import the same file "
                                        "again, and it takes in the others.")
                                         .arg(QLocale().toString(rows))
                                   : tr("Nothing was changed."));
        m_findings->show({});
        m_rejects.clear();
    } else {
        m_rejects = report->rejects;
        m_findings->show(rowsOf(report->findings));
        if (report->clean())
            m_summary->tell(
                Status::Done,
                tr("Everything in %1 is in the records.").arg(QFileInfo(m_imported).fileName()));
        else
            m_summary->tell(Status::Doubtful, tr("Not every row of %1 could be taken as it is.")
                                                  .arg(QFileInfo(m_imported).fileName()));
        m_counts->setText(countsText(*report));
    }
    if (report || report.error().rowsDone > 0)
        emit recordsChanged();
    m_table->setVisible(m_findings->rowCount() > 0);
    m_save->setVisible(report.has_value() && report->refused > 0);
}

void ImportScreen::saveRejects()
{
    const QFileInfo imported(m_imported);
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save the refused rows"),
        imported.path() + "/" + imported.completeBaseName() + "-refused.csv",
        tr("CSV files (*.csv)"));
    if (path.isEmpty())
        return;
    if (const auto saved = writeOut(path, FileKind::Csv, m_rejects); !saved)
        emit said(localized(saved.error()));
    else
        emit said(tr("The refused rows are in %1.").arg(path));
}

void ImportScreen::dragEnterEvent(QDragEnterEvent *event)
{
    if (!droppedFile(event->mimeData()).isEmpty() && !m_worker.isBusy())
        event->acceptProposedAction();
}

void ImportScreen::dropEvent(QDropEvent *event)
{
    choose(droppedFile(event->mimeData()));
    event->acceptProposedAction();
}

} // namespace loopwright
