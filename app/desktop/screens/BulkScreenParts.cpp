// What the screen of bulk changes is made of.

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/screens/BulkScreen.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"
#include "core/identifiers/ProtocolVariant.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QProgressBar>
#include <QTabWidget>

namespace loopwright {

QWidget *BulkScreen::makeQuestion()
{
    const auto edit = [this](const QString &name, const QString &example) {
        auto *line = new QLineEdit;
        line->setObjectName(name);
        line->setMaxLength(3);
        line->setPlaceholderText(example);
        connect(line, &QLineEdit::textChanged, this, &BulkScreen::forget);
        connect(line, &QLineEdit::returnPressed, this, &BulkScreen::preview);
        return line;
    };
    const auto list = [](const QString &name) {
        auto *box = new QComboBox;
        box->setObjectName(name);
        return box;
    };
    const auto mark = [](const QString &label, QWidget *control) {
        auto *field = new FieldMark(label, control);
        field->setTight(true);
        return field;
    };
    const auto inRow = [](std::initializer_list<QWidget *> fields) {
        auto *holder = new QWidget;
        auto *row = new QHBoxLayout(holder);
        row->setContentsMargins(0, 0, 0, 0);
        for (QWidget *field : fields)
            row->addWidget(field);
        row->addStretch(1);
        return holder;
    };
    m_kind = list(QStringLiteral("bulk.kind"));
    m_kind->addItem(tr("The area code is split"), toText(OfficeChangeKind::AreaCode));
    m_kind->addItem(tr("The switch is converted"), toText(OfficeChangeKind::Variant));
    m_office = list(QStringLiteral("bulk.office"));
    m_from = edit(QStringLiteral("bulk.from"), tr("e.g. 217"));
    m_to = edit(QStringLiteral("bulk.to"), tr("e.g. 447"));
    m_spids = new QCheckBox(tr("Make SPIDs anew that hold the old code"));
    m_spids->setObjectName(QStringLiteral("bulk.spids"));
    connect(m_spids, &QCheckBox::toggled, this, &BulkScreen::forget);
    m_variant = list(QStringLiteral("bulk.variant"));
    for (const ProtocolVariant &variant : allVariants())
        if (!variant.isAnalog)
            m_variant->addItem(localizedWord(variant.name), variant.key);
    m_split = inRow({mark(tr("Old area code"), m_from), mark(tr("New area code"), m_to), m_spids});
    m_conversion = inRow({mark(tr("New protocol variant"), m_variant)});
    for (QComboBox *box : {m_kind, m_office, m_variant}) // when all that they show is there
        connect(box, &QComboBox::currentIndexChanged, this, &BulkScreen::showQuestion);
    QFrame *card = makeCard();
    auto *column = new QVBoxLayout(card);
    column->addWidget(inRow({mark(tr("What happens"), m_kind), mark(tr("Office"), m_office)}));
    column->addWidget(m_split);
    column->addWidget(m_conversion);
    column->addWidget(makeButtons());
    whenThemed(card, [this, column] {
        column->setContentsMargins(em(1.1), em(0.9), em(1.1), em(0.9));
        column->setSpacing(em(0.7));
        for (QComboBox *box : {m_kind, m_office, m_variant})
            box->setMinimumSize(em(16), em(1.9));
        for (QLineEdit *line : {m_from, m_to})
            line->setFixedWidth(em(9));
    });
    return card;
}

QWidget *BulkScreen::makeButtons()
{
    m_preview =
        makeButton(tr("Show what would be"), QStringLiteral("bulk.preview"), [this] { preview(); });
    m_apply = makeButton(tr("Change them"), QStringLiteral("bulk.apply"), [this] { apply(); });
    m_stop = makeButton(tr("Stop"), QStringLiteral("bulk.stop"), [this] { m_worker.stop(); });
    m_cards = makeButton(tr("Save the settings cards…"), QStringLiteral("bulk.cards"),
                         [this] { saveCards(); });
    m_progress =
        makeProgress(QStringLiteral("bulk.progress"), tr("Progress of the change"), m_worker);
    auto *holder = new QWidget;
    auto *row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    for (QPushButton *button : {m_preview, m_apply, m_cards, m_stop})
        row->addWidget(button, 0, Qt::AlignLeft);
    row->addWidget(m_progress, 1);
    row->addStretch(0);
    whenThemed(holder, [this] {
        for (QPushButton *button : {m_preview, m_apply, m_cards, m_stop})
            button->setMinimumHeight(em(2.3));
    });
    return holder;
}

QWidget *BulkScreen::makeReport()
{
    m_summary = new SignLine;
    m_summary->setObjectName(QStringLiteral("bulk.summary"));
    m_tabs = new QTabWidget;
    m_tabs->setObjectName(QStringLiteral("bulk.tabs"));
    m_tabs->setAccessibleName(tr("What would be changed, and what stays"));
    m_tabs->setDocumentMode(true);
    const auto add = [this](TextTable *model, const QString &name, const QString &words,
                            std::vector<double> ems) {
        auto *table = new Table(name, words);
        table->setModel(model);
        table->setColumnEms(std::move(ems));
        connect(table, &Table::opened, this, [this, model](const QModelIndex &index) {
            emit openOrder(model->row(index.row()).key);
        });
        m_tabs->addTab(table, words);
    };
    add(m_changes, QStringLiteral("bulk.changes"), tr("Changes"), {10, 10, 11, 16, 16});
    add(m_cannot, QStringLiteral("bulk.cannot"), tr("Cannot be"), {10, 10, 11, 13, 40});
    auto *report = new QWidget;
    auto *column = new QVBoxLayout(report);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_summary);
    column->addWidget(m_tabs, 1);
    column->addStretch(0);
    return report;
}

} // namespace loopwright
