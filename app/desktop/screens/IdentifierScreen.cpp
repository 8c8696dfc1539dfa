#include "app/desktop/screens/IdentifierScreen.h"

#include "app/actions/InFile.h"
#include "app/desktop/Files.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/identifiers/SpidCard.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/ChipRow.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"

#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLocale>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QScrollArea>

namespace loopwright {

namespace {

constexpr int listRestMs = 200;

QString signKey(Severity worst)
{
    return verdictName(worst);
}

Status verdictSign(Severity worst)
{
    return worst == Severity::Note ? Status::Done : signOf(worst);
}

} // namespace

IdentifierScreen::IdentifierScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_checker(workplace.questions())
    , m_saver(workplace.longWork())
    , m_model(new TextTable({tr("Row"), tr("Verdict"), tr("Variant"), tr("SPID"), tr("DN"),
                             tr("Reason"), tr("Repair"), tr("Code")},
                            1, {3, 4, 6}, this))
{
    setAcceptDrops(true);
    m_one = new SpidCard;
    auto *cards = new QWidget;
    auto *grid = new FieldGrid(24, cards);
    grid->add(makeListCard());
    grid->add(m_one);
    grid->add(new CauseCard);

    auto *content = new QWidget;
    auto *column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(makeHeading(tr("Check identifiers"), 1.5));
    column->addWidget(cards);
    column->addWidget(makeReport(), 1);
    QScrollArea *area = inScrollArea(content);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(area);

    m_typing.setSingleShot(true);
    m_typing.setInterval(listRestMs);
    connect(&m_typing, &QTimer::timeout, this, &IdentifierScreen::check);
    connect(m_one, &SpidCard::variantChanged, this, [this] { m_typing.start(); });
    showReport(IdentifierReport());
}

QWidget *IdentifierScreen::makeListCard()
{
    m_text = new QPlainTextEdit;
    m_text->setObjectName(QStringLiteral("identifiers.list"));
    m_text->setTabChangesFocus(true);
    m_text->setAcceptDrops(false); // a dropped file is for the page, not a text for the field
    m_text->setLineWrapMode(QPlainTextEdit::NoWrap);
    m_text->setPlaceholderText(tr("Paste or type: one SPID a line, its number behind a comma;\n"
                                  "or CSV with the columns variant,spid,dn"));
    connect(m_text, &QPlainTextEdit::textChanged, this, [this] { m_typing.start(); });
    auto *mark = new FieldMark(tr("A list"), m_text);
    mark->setHint(tr("lines without a variant are checked as the one chosen for one SPID"));
    m_file = makeText({});
    m_file->setObjectName(QStringLiteral("identifiers.file"));
    m_letGo = makeButton(tr("Type a list instead"), QStringLiteral("identifiers.let_go"),
                         [this] { letGoOfFile(); });

    QFrame *card = makeCard();
    auto *column = new QVBoxLayout(card);
    column->addWidget(makeHeading(tr("Many at once"), 1.1));
    column->addWidget(mark, 1);
    column->addWidget(m_file);
    auto *open = makeButton(tr("Open a file…"), QStringLiteral("identifiers.open"), [this] {
        const QString path = QFileDialog::getOpenFileName(this, tr("Check a list"), {},
                                                          tr("Lists (*.csv *.txt);;All files (*)"));
        if (!path.isEmpty())
            openFile(path);
    });
    column->addWidget(makeButtonRow({open, m_letGo}));
    whenThemed(card, [this, column] {
        column->setContentsMargins(em(1.1), em(0.9), em(1.1), em(0.9));
        column->setSpacing(em(0.5));
        m_text->setFont(digitsFont());
        m_text->setMinimumHeight(em(6));
    });
    letGoOfFile();
    return card;
}

QWidget *IdentifierScreen::makeReport()
{
    m_summary = new SignLine;
    m_summary->setObjectName(QStringLiteral("identifiers.summary"));
    m_verdicts = new ChipRow(QStringLiteral("verdict"), tr("Show"),
                             {{QStringLiteral("error"), tr("Errors")},
                              {QStringLiteral("warning"), tr("Warnings")},
                              {QStringLiteral("ok"), tr("In order")}});
    m_verdicts->setCounted(tr("row"), tr("rows"));
    connect(m_verdicts, &ChipRow::changed, this, [this] { showRows(); });
    m_save = makeButton(tr("Save the verdicts…"), QStringLiteral("identifiers.save"),
                        [this] { save(); });
    m_table = new Table(QStringLiteral("identifiers.verdicts"), tr("Verdicts"));
    m_table->setModel(m_model);
    m_table->setColumnEms({3.5, 6.5, 8, 12.5, 9.5, 26, 12.5, 10});
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &now) { lookAtRow(now.row()); });
    auto *report = new QWidget;
    auto *column = new QVBoxLayout(report);
    column->setContentsMargins(0, 0, 0, 0);
    auto *head = new QHBoxLayout;
    head->addWidget(m_verdicts, 1);
    head->addWidget(m_save);
    column->addWidget(m_summary);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    whenThemed(report, [this] { m_table->setMinimumHeight(em(16)); });
    return report;
}

void IdentifierScreen::takeFocus()
{
    if (m_fileName.isEmpty())
        m_text->setFocus();
    else
        m_table->setFocus();
}

IdentifierInput IdentifierScreen::input() const
{
    return identifierInput(m_fileName.isEmpty() ? m_text->toPlainText().toUtf8() : m_fileBytes,
                           m_one->variant());
}

void IdentifierScreen::openFile(const QString &path)
{
    const auto bytes = readFile(path);
    if (!bytes) {
        emit said(localized(bytes.error()));
        return;
    }
    m_fileBytes = *bytes;
    m_fileName = QFileInfo(path).fileName();
    m_file->setText(tr("The list is the file %1.").arg(m_fileName));
    m_file->show();
    m_letGo->show();
    m_text->setEnabled(false);
    check();
}

void IdentifierScreen::letGoOfFile()
{
    m_fileName.clear();
    m_fileBytes.clear();
    m_file->hide();
    m_letGo->hide();
    m_text->setEnabled(true);
    m_typing.start();
}

void IdentifierScreen::check()
{
    m_typing.stop();
    m_checker.supersede();
    const QString name = m_fileName.isEmpty() ? tr("list") : m_fileName;
    m_checker.ask<IdentifierReport>(
        [input = input(), name](Records &, const Progress &) {
            return checkIdentifiers(input, name);
        },
        [this](const Result<IdentifierReport> &report) { showReport(report); });
}

void IdentifierScreen::showReport(const Result<IdentifierReport> &report)
{
    m_report = report ? *report : IdentifierReport();
    const IdentifierListCount &count = m_report.count;
    if (!report)
        m_summary->tellIfNew(Status::Failed, localized(report.error()));
    else if (count.rows == 0)
        m_summary->show(Status::None, tr("Each row gets its verdict here: error, warning or in "
                                         "order, with the reason and, where only one is possible, "
                                         "the repair."));
    else if (count.rows > qint64(m_report.rows.size()))
        m_summary->tellIfNew(Status::Note,
                             tr("%1 rows; the first %2 are shown, all are counted and saved.")
                                 .arg(QLocale().toString(count.rows),
                                      QLocale().toString(qlonglong(m_report.rows.size()))));
    else
        m_summary->tellIfNew(
            count.errors > 0     ? Status::Failed
            : count.warnings > 0 ? Status::Doubtful
                                 : Status::Done,
            tr("%1 checked: %2 in error, %3 to look at, %4 in order")
                .arg(count.rows == 1 ? tr("1 row")
                                     : tr("%1 rows").arg(QLocale().toString(count.rows)),
                     QLocale().toString(count.errors), QLocale().toString(count.warnings),
                     QLocale().toString(count.ok)));
    m_verdicts->setCounts({{QStringLiteral("error"), int(count.errors)},
                           {QStringLiteral("warning"), int(count.warnings)},
                           {QStringLiteral("ok"), int(count.ok)}});
    m_save->setEnabled(count.rows > 0);
    showRows();
}

void IdentifierScreen::showRows()
{
    const QString wanted = m_verdicts->chosen();
    std::vector<TextRow> rows;
    m_shown.clear();
    for (std::size_t i = 0; i < m_report.rows.size(); ++i) {
        const IdentifierVerdict &row = m_report.rows[i];
        if (!wanted.isEmpty() && signKey(row.worst) != wanted)
            continue;
        m_shown.push_back(i);
        rows.push_back(
            {{QString::number(row.line), localizedWord(verdictName(row.worst)), row.variant,
              row.spid, row.dn, localizedSentence(row.reason), row.repair, row.code},
             verdictSign(row.worst),
             {},
             false});
    }
    m_model->show(std::move(rows));
}

void IdentifierScreen::lookAtRow(int row)
{
    if (row < 0 || row >= int(m_shown.size()))
        return;
    const IdentifierVerdict &verdict = m_report.rows[m_shown[std::size_t(row)]];
    m_one->look(verdict.variant, verdict.spid, verdict.dn);
}

void IdentifierScreen::save()
{
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save the verdicts"), QStringLiteral("verdicts.csv"), tr("CSV files (*.csv)"));
    if (path.isEmpty())
        return;
    m_saver.ask<qint64>(
        [input = input(), path, name = m_fileName](Records &, const Progress &) {
            return saveVerdicts(input, name, path);
        },
        [this, path](const Result<qint64> &rows) {
            emit said(!rows        ? localized(rows.error())
                      : *rows == 1 ? tr("1 row is in %1.").arg(path)
                                   : tr("%1 rows are in %2.").arg(*rows).arg(path));
        });
}

void IdentifierScreen::dragEnterEvent(QDragEnterEvent *event)
{
    if (!droppedFile(event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void IdentifierScreen::dropEvent(QDropEvent *event)
{
    openFile(droppedFile(event->mimeData()));
    event->acceptProposedAction();
}

} // namespace loopwright
