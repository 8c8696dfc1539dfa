#include "app/desktop/vans/FileChoice.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"

#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLineEdit>

namespace loopwright {

FileChoice::FileChoice(Way way, const QString &name, const QString &label, const QString &filter,
                       QWidget *parent)
    : QWidget(parent)
    , m_way(way)
    , m_label(label)
    , m_filter(filter)
    , m_path(new QLineEdit)
{
    m_path->setObjectName(name);
    setFocusProxy(m_path);
    auto *field = new FieldMark(label, m_path);
    field->setTight(true);
    QPushButton *button = makeButton(tr("Choose…"), name + ".choose", [this] { choose(); });
    button->setAccessibleName(tr("Choose: %1").arg(label));
    button->setAutoDefault(false);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(field, 1);
    row->addWidget(button, 0, Qt::AlignBottom);
    whenThemed(this, [row] { row->setSpacing(em(0.5)); });
    connect(m_path, &QLineEdit::textChanged, this, &FileChoice::changed);
}

QString FileChoice::path() const
{
    return QDir::fromNativeSeparators(m_path->text().trimmed());
}

void FileChoice::choose()
{
    const QString begin = path().isEmpty() ? m_suggested : path();
    const QString chosen = m_way == Way::Read
                               ? QFileDialog::getOpenFileName(this, m_label, begin, m_filter)
                               : QFileDialog::getSaveFileName(this, m_label, begin, m_filter);
    if (!chosen.isEmpty())
        m_path->setText(QDir::toNativeSeparators(chosen));
}

} // namespace loopwright
