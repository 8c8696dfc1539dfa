#include "app/desktop/screens/ColumnMapDialog.h"

#include "app/actions/InFile.h"
#include "app/actions/OutFile.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStandardItemModel>

#include <algorithm>

namespace loopwright {

namespace {

constexpr int rowsShown = 3;
constexpr qsizetype mostWords = 40; ///< of a column; one with more is no column of words

/// The first values that are not empty.
QString firstValues(const ImportHead &head, qsizetype column)
{
    QStringList values;
    for (const QStringList &row : head.rows) {
        if (const QString value = row.value(column).trimmed(); !value.isEmpty())
            values << value.left(60);
        if (values.size() == rowsShown)
            break;
    }
    return values.join(QStringLiteral("  ·  "));
}

QStandardItem *readOnlyItem(const QString &text)
{
    auto *item = new QStandardItem(text);
    item->setEditable(false);
    item->setToolTip(asTip(text));
    return item;
}

/// Whether a column of ours takes the value as it is.
bool isWord(const ImportKind &kind, const QString &ours, const QString &value)
{
    const QStringList words = wordsOf(kind, ours);
    const QStringList parts = ours.endsWith(u"_services") ? value.split('+') : QStringList{value};
    return std::ranges::all_of(parts,
                               [&words](const QString &part) { return words.contains(part); });
}

bool mayBeEmpty(const QString &ours)
{
    return ours != u"kind" && ours != u"order_type" && ours != u"nt_supplied";
}

void setHeader(QStandardItemModel *model, Table *table, const QStringList &labels)
{
    model->setHorizontalHeaderLabels(labels);
    table->setModel(model);
    table->setColumnEms({14, 26, 16});
    table->setSelectionMode(QAbstractItemView::NoSelection);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

} // namespace

ColumnMapDialog::ColumnMapDialog(const ImportKind &kind, ImportHead head, const ColumnMap &proposed,
                                 QWidget *parent)
    : QDialog(parent)
    , m_kind(kind)
    , m_head(std::move(head))
    , m_columnRows(new QStandardItemModel(this))
    , m_wordRows(new QStandardItemModel(this))
{
    setObjectName(QStringLiteral("map"));
    setWindowTitle(tr("What the columns stand for"));
    auto *column = new QVBoxLayout(this);
    column->addWidget(makeMuted(
        tr("The columns of %1 have other names than ours. Say what each stands for; it is "
           "remembered for files with this header.")
            .arg(m_head.fileName)));
    column->addWidget(makeColumns(), 5);
    column->addWidget(makeWords(), 3);
    m_state = new SignLine;
    m_state->setObjectName(QStringLiteral("map.state"));
    column->addWidget(m_state);
    column->addWidget(makeButtons());
    whenThemed(this, [this, column] {
        column->setContentsMargins(em(1.2), em(1), em(1.2), em(1));
        column->setSpacing(em(0.7));
        for (Table *table : {m_columns, m_words})
            table->verticalHeader()->setDefaultSectionSize(em(2.5));
        resize(em(60), em(46));
    });
    take(proposed);
    if (QComboBox *first = chooserOf(0))
        first->setFocus();
}

QWidget *ColumnMapDialog::makeColumns()
{
    m_columns = new Table(QStringLiteral("map.columns"), tr("Columns of the file"));
    setHeader(m_columnRows, m_columns, {tr("In the file"), tr("First rows"), tr("Stands for")});
    const QStringList ours = ourColumns(m_kind);
    for (qsizetype i = 0; i < m_head.header.size(); ++i) {
        const int row = int(i);
        m_columnRows->appendRow({readOnlyItem(m_head.header[i]),
                                 readOnlyItem(firstValues(m_head, i)), readOnlyItem({})});
        auto *chooser = new QComboBox;
        chooser->setObjectName(QStringLiteral("map.column.%1").arg(row));
        chooser->setAccessibleName(tr("What %1 stands for").arg(m_head.header[i]));
        chooser->addItem(tr("(not used)"), QString());
        for (const QString &name : ours)
            chooser->addItem(name, name);
        connect(chooser, &QComboBox::currentIndexChanged, this, &ColumnMapDialog::columnChosen);
        m_columns->setIndexWidget(m_columnRows->index(row, 2), chooser);
    }
    return m_columns;
}

QWidget *ColumnMapDialog::makeWords()
{
    m_words = new Table(QStringLiteral("map.words"), tr("Words of the file"));
    setHeader(m_wordRows, m_words, {tr("Our column"), tr("In the file"), tr("Means")});
    m_wordBox = new QWidget;
    auto *column = new QVBoxLayout(m_wordBox);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(makeHeading(tr("Words that are other than ours")));
    column->addWidget(m_words, 1);
    return m_wordBox;
}

QWidget *ColumnMapDialog::makeButtons()
{
    m_use = makeButton(tr("Use these columns"), QStringLiteral("map.use"), [this] { accept(); });
    m_use->setDefault(true);
    QPushButton *load = makeButton(tr("Load…"), QStringLiteral("map.load"), [this] {
        const QString path = QFileDialog::getOpenFileName(this, tr("Load what columns stand for"),
                                                          {}, tr("JSON files (*.json)"));
        if (!path.isEmpty())
            loadFrom(path);
    });
    QPushButton *save = makeButton(tr("Save…"), QStringLiteral("map.save"), [this] {
        const QString path = QFileDialog::getSaveFileName(
            this, tr("Save what the columns stand for"),
            QFileInfo(m_head.fileName).completeBaseName() + "-columns.json",
            tr("JSON files (*.json)"));
        if (!path.isEmpty())
            saveTo(path);
    });
    QPushButton *cancel =
        makeButton(tr("Cancel   Esc"), QStringLiteral("map.cancel"), [this] { reject(); });
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_use);
    row->addWidget(load);
    row->addWidget(save);
    row->addStretch(1);
    row->addWidget(cancel);
    for (QPushButton *button : {load, save, cancel})
        button->setAutoDefault(false);
    whenThemed(box, [this] { m_use->setMinimumSize(em(10), em(2.3)); });
    return box;
}

QComboBox *ColumnMapDialog::chooserOf(int row) const
{
    return qobject_cast<QComboBox *>(m_columns->indexWidget(m_columnRows->index(row, 2)));
}

ColumnMap ColumnMapDialog::map() const
{
    ColumnMap map;
    map.name = tr("the columns chosen");
    for (int row = 0; row < m_columnRows->rowCount(); ++row) {
        const QString theirs = m_head.header[row];
        const QString ours = chooserOf(row)->currentData().toString();
        if (!ours.isEmpty() && !theirs.isEmpty())
            map.columns.insert(theirs, ours);
        else if (!map.ignored.contains(theirs))
            map.ignored << theirs;
    }
    for (const QString &theirs : map.columns.keys())
        map.ignored.removeAll(theirs);
    for (auto it = m_values.begin(); it != m_values.end(); ++it)
        for (auto word = it->begin(); word != it->end(); ++word)
            if (word.key() != word.value() && map.columns.values().contains(it.key()))
                map.values[it.key()].insert(word.key(), word.value());
    return map;
}

void ColumnMapDialog::take(const ColumnMap &map)
{
    m_values = map.values;
    for (int row = 0; row < m_columnRows->rowCount(); ++row) {
        QComboBox *chooser = chooserOf(row);
        const QSignalBlocker quiet(chooser);
        chooser->setCurrentIndex(
            std::max(0, chooser->findData(map.columns.value(m_head.header[row]))));
    }
    columnChosen();
}

void ColumnMapDialog::columnChosen()
{
    showWords();
    check();
}

/// Of the columns of ours that have words, what the file has and we do not.
void ColumnMapDialog::showWords()
{
    m_wordRows->removeRows(0, m_wordRows->rowCount());
    for (int row = 0; row < m_columnRows->rowCount(); ++row) {
        const QString ours = chooserOf(row)->currentData().toString();
        const QStringList theirs =
            wordsOf(m_kind, ours).isEmpty() ? QStringList() : m_head.valuesOf(row);
        if (theirs.size() > mostWords)
            continue;
        for (const QString &value : theirs)
            if (!isWord(m_kind, ours, value) && !(value.isEmpty() && mayBeEmpty(ours)))
                addWord(ours, value);
    }
    m_wordBox->setVisible(m_wordRows->rowCount() > 0);
}

void ColumnMapDialog::addWord(const QString &ours, const QString &value)
{
    const QString nothing = tr("(empty)");
    const int at = m_wordRows->rowCount();
    m_wordRows->appendRow(
        {readOnlyItem(ours), readOnlyItem(value.isEmpty() ? nothing : value), readOnlyItem({})});
    auto *chooser = new QComboBox;
    chooser->setObjectName(QStringLiteral("map.word.%1").arg(at));
    chooser->setAccessibleName(tr("What “%1” means").arg(value));
    chooser->setEditable(true); // services are joined by +
    chooser->addItems(wordsOf(m_kind, ours));
    if (mayBeEmpty(ours))
        chooser->addItem(nothing);
    chooser->lineEdit()->setPlaceholderText(tr("choose"));
    const QMap<QString, QString> chosen = m_values.value(ours);
    chooser->setCurrentIndex(-1);
    chooser->setCurrentText(!chosen.contains(value)         ? QString()
                            : chosen.value(value).isEmpty() ? nothing
                                                            : chosen.value(value));
    connect(chooser, &QComboBox::currentTextChanged, this,
            [this, ours, value, nothing](const QString &text) {
                if (text.trimmed().isEmpty())
                    m_values[ours].remove(value);
                else
                    m_values[ours].insert(value, text == nothing ? QString() : text.trimmed());
                check();
            });
    m_words->setIndexWidget(m_wordRows->index(at, 2), chooser);
}

/// The words of the file for which none of ours is chosen yet.
QStringList ColumnMapDialog::wordsLeft() const
{
    QStringList left;
    for (int row = 0; row < m_wordRows->rowCount(); ++row) {
        const auto *chooser =
            qobject_cast<QComboBox *>(m_words->indexWidget(m_wordRows->index(row, 2)));
        if (chooser->currentText().trimmed().isEmpty())
            left << m_wordRows->item(row, 0)->text() + ": " + m_wordRows->item(row, 1)->text();
    }
    return left;
}

QString ColumnMapDialog::trouble() const
{
    const CsvLayout layout = m_kind.form().layout();
    const auto header = map().header(m_head.header, m_head.fileName);
    if (!header)
        return localizedSentence(header.error().message) + '.';
    QStringList missing;
    for (const QString &name : layout.required)
        if (!header->contains(name))
            missing << name;
    return missing.isEmpty() ? QString() : tr("No column stands for %1.").arg(missing.join(", "));
}

void ColumnMapDialog::check()
{
    const QString wrong = trouble();
    const QStringList left = wordsLeft();
    m_use->setEnabled(wrong.isEmpty());
    if (!wrong.isEmpty())
        m_state->tellIfNew(Status::Failed, wrong);
    else if (!left.isEmpty())
        m_state->tellIfNew(Status::Doubtful,
                           tr("Rows with words that are not ours will be refused: %1.")
                               .arg(left.join(", ").left(300)));
    else
        m_state->tellIfNew(Status::Done, tr("All that must be there is there."));
}

void ColumnMapDialog::saveTo(const QString &path)
{
    const auto written = writeOut(path, FileKind::Json, canonicalJson(map().toJson()) + '\n');
    m_state->tell(written ? Status::Done : Status::Failed,
                  written ? tr("Saved as %1.").arg(path) : localized(written.error()));
}

void ColumnMapDialog::loadFrom(const QString &path)
{
    const auto load = [&]() -> Result<ColumnMap> {
        LOOPWRIGHT_ASSIGN(const auto bytes, readFile(path));
        LOOPWRIGHT_ASSIGN(auto map, ColumnMap::read(bytes, QFileInfo(path).fileName()));
        LOOPWRIGHT_TRY(map.check(m_kind.form().layout()));
        LOOPWRIGHT_TRY(map.header(m_head.header, m_head.fileName));
        return map;
    };
    const auto map = load();
    if (map)
        take(*map);
    else
        m_state->tell(Status::Failed, localized(map.error()));
}

} // namespace loopwright
