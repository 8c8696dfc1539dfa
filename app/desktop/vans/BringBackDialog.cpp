#include "app/desktop/vans/BringBackDialog.h"

#include "app/desktop/Language.h"
#include "app/desktop/vans/FileChoice.h"

#include <QCheckBox>
#include <QDir>
#include <QLocale>
#include <QVBoxLayout>

namespace loopwright {

BringBackDialog::BringBackDialog(DesktopContext &workplace, QWidget *window)
    : VanDialog(QStringLiteral("bring_back"), tr("Bring back"), tr("Write the file"), workplace,
                window)
    , m_keep(new QCheckBox(tr("The orders stay with this van")))
    , m_file(new FileChoice(FileChoice::Way::Write, QStringLiteral("bring_back.file"),
                            tr("The file for the office"), tr("Bundles (*.json)")))
{
    m_keep->setObjectName(QStringLiteral("bring_back.keep"));
    asked()->addWidget(m_file);
    asked()->addWidget(m_keep);
    connect(m_file, &FileChoice::changed, this, &BringBackDialog::showReady);
    connect(m_keep, &QCheckBox::toggled, this, &BringBackDialog::showBefore);
    const auto desk = vanDesk(workplace.records());
    if (!desk) {
        setReady(false);
        tell(Status::Failed, localized(desk.error()));
        return;
    }
    m_orders = desk->orders;
    m_file->setSuggested(QDir::home().filePath(
        QStringLiteral("%1-%2.json").arg(desk->tag, workplace.today().toString(Qt::ISODate))));
    showBefore();
    m_file->setFocus();
}

void BringBackDialog::showBefore()
{
    std::vector<SignItem> items;
    const QString text =
        m_keep->isChecked() ? tr("What was done here goes to the office; the order stays out.")
                            : tr("What was done here goes to the office; the order is back there.");
    for (const QString &order : std::as_const(m_orders))
        items.push_back({order, Status::Away, order, text});
    setItems(std::move(items));
    showReady();
}

void BringBackDialog::showReady()
{
    setReady(!m_file->path().isEmpty());
    if (m_file->path().isEmpty())
        tell(Status::Note, tr("Say into which file it goes: on a stick, or in a shared folder."));
    else
        tell(Status::Note, tr("Orders that were taken in here go along too. What the office has "
                              "already adds nothing there."));
}

void BringBackDialog::confirm()
{
    BringingBack wish;
    wish.out = m_file->path();
    wish.keep = m_keep->isChecked();
    setWorking(true);
    tell(Status::None, {});
    asker().ask<BroughtBack>(
        [wish](Records &records, const Progress &progress) {
            return bringBack(records, wish, progress);
        },
        [this](const Result<BroughtBack> &brought) { showAfter(brought); });
}

void BringBackDialog::showAfter(const Result<BroughtBack> &brought)
{
    if (!brought) {
        setWorking(false);
        return tell(Status::Failed, localized(brought.error()));
    }
    emit recordsChanged();
    std::vector<SignItem> items;
    for (const QString &file : brought->files)
        items.push_back({file, Status::Done, tr("File"), QDir::toNativeSeparators(file)});
    for (const QString &order : brought->orders)
        items.push_back({order, Status::Done, order, tr("Is in the file.")});
    if (brought->orders.isEmpty())
        return finish(Status::Doubtful, tr("There is nothing to bring back."), std::move(items));
    const QString orders = ordersText(brought->orders);
    finish(Status::Done,
           brought->facts == 1 ? tr("%1, with 1 entry. The office takes the file in.").arg(orders)
                               : tr("%1, with %2 entries. The office takes the file in.")
                                     .arg(orders, QLocale().toString(brought->facts)),
           std::move(items));
}

} // namespace loopwright
