#include "app/desktop/screens/ColumnsDialog.h"

#include "app/actions/FileForms.h"
#include "app/actions/OutFile.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/Table.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QVBoxLayout>

namespace loopwright {

ColumnsDialog::ColumnsDialog(const FileForm &form, QWidget *parent)
    : QDialog(parent)
    , m_form(form)
{
    setObjectName(QStringLiteral("columns"));
    setWindowTitle(tr("Columns of a file: %1").arg(localized(Text(form.name))));
    auto *model =
        new TextTable({tr("Column"), tr("Must be there"), tr("What stands in it")}, -1, {0}, this);
    std::vector<TextRow> rows;
    for (const FileColumn &column : columnsOf(form)) {
        QString meaning = localized(column.meaning);
        if (!column.words.isEmpty())
            meaning += " (" + column.words.join(QStringLiteral(", ")) + ')';
        rows.push_back({{column.name, column.required ? tr("yes") : QString(), meaning},
                        Status::None,
                        column.name,
                        false});
    }
    model->show(std::move(rows));
    auto *table = new Table(QStringLiteral("columns.table"), windowTitle());
    table->setModel(model);
    table->setColumnEms({15, 9, 44});
    QDialogButtonBox *buttons = makeCloseButtons(this);
    buttons->addButton(makeButton(tr("Save a sample…"), QStringLiteral("columns.sample"),
                                  [this] { askWhereToSave(); }),
                       QDialogButtonBox::ActionRole);
    auto *layout = new QVBoxLayout(this);
    layout->addWidget(makeMuted(tr("CSV in UTF-8 with a header; columns in any order. A header "
                                   "that is not ours can be read too: the import asks what its "
                                   "columns stand for.")));
    layout->addWidget(table, 1);
    layout->addWidget(buttons);
    resize(QSize(em(72), em(34)).boundedTo(parent->window()->size()));
}

void ColumnsDialog::askWhereToSave()
{
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save a sample"), QString(m_form.key) + ".csv", tr("CSV files (*.csv)"));
    if (!path.isEmpty())
        saveSample(path);
}

void ColumnsDialog::saveSample(const QString &path)
{
    const auto saved = writeOut(path, FileKind::Csv, sampleOf(m_form));
    emit said(saved ? tr("The sample is in %1.").arg(path) : localized(saved.error()));
}

ColumnsDialog *showColumnsOf(const QString &form, QWidget *parent)
{
    auto *dialog = new ColumnsDialog(*findFileForm(form), parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    return dialog;
}

} // namespace loopwright
