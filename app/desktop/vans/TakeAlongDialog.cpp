#include "app/desktop/vans/TakeAlongDialog.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/vans/AddVanEntry.h"
#include "app/desktop/vans/FileChoice.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLocale>
#include <QPushButton>

#include <algorithm>

namespace loopwright {

TakeAlongDialog::TakeAlongDialog(DesktopContext &workplace, std::vector<BoardRow> rows,
                                 QWidget *window)
    : VanDialog(QStringLiteral("take_along"), tr("Take along"), tr("Hand them out"), workplace,
                window)
    , m_rows(std::move(rows))
    , m_van(new QComboBox)
    , m_add(new AddVanEntry(workplace))
    , m_file(new FileChoice(FileChoice::Way::Write, QStringLiteral("take_along.file"),
                            tr("The file for the van"), tr("Bundles (*.json)")))
    , m_anyway(new QCheckBox(tr("Also what another van has")))
    , m_undo(makeButton(tr("Undo: they stay here"), QStringLiteral("take_along.undo"),
                        [this] { undo(); }))
{
    addButton(m_undo);
    m_undo->hide();
    m_anyway->setObjectName(QStringLiteral("take_along.anyway"));
    asked()->addWidget(makeVan());
    asked()->addWidget(m_add);
    asked()->addWidget(m_file);
    asked()->addWidget(m_anyway);
    m_add->hide();
    connect(m_add, &AddVanEntry::added, this, [this](const QString &station) {
        m_add->setVisible(m_add->warns());
        readVans(station);
        m_van->setFocus();
        emit recordsChanged();
    });
    connect(m_van, &QComboBox::currentIndexChanged, this, &TakeAlongDialog::showBefore);
    connect(m_file, &FileChoice::changed, this, &TakeAlongDialog::showReady);
    connect(m_anyway, &QCheckBox::toggled, this, &TakeAlongDialog::showBefore);
    m_file->setFocus();
    readVans();
}

QWidget *TakeAlongDialog::makeVan()
{
    m_van->setObjectName(QStringLiteral("take_along.van"));
    auto *van = new FieldMark(tr("Van"), m_van);
    van->setTight(true);
    QPushButton *add = makeButton(tr("Add a van…"), QStringLiteral("take_along.add_van"), [this] {
        m_add->setVisible(m_add->isHidden());
        if (m_add->isVisible())
            m_add->begin();
        showReady();
    });
    add->setAutoDefault(false);
    auto *holder = new QWidget;
    auto *row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(van, 1);
    row->addWidget(add, 0, Qt::AlignBottom);
    whenThemed(holder, [row] { row->setSpacing(em(0.5)); });
    return holder;
}

void TakeAlongDialog::readVans(const QString &choose)
{
    const auto desk = vanDesk(workplace().records());
    {
        const QSignalBlocker quiet(m_van);
        m_van->clear();
        if (desk)
            for (const PeerStation &van : desk->vans)
                m_van->addItem(van.name, van.tag);
        m_van->setCurrentIndex(std::max(0, m_van->findText(choose)));
    }
    if (m_van->count() == 0 && m_add->isHidden()) {
        m_add->show();
        m_add->begin();
    }
    showBefore();
    if (!desk)
        tell(Status::Failed, localized(desk.error()));
}

namespace {

bool isWith(const BoardRow &row, const QString &station, const QString &tag)
{
    return std::ranges::any_of(
        row.out, [&](const OutAt &at) { return at.station == station || at.station == tag; });
}

} // namespace

/// Whether a van has it, and not the one that is chosen.
bool TakeAlongDialog::isElsewhere(const BoardRow &row) const
{
    return std::ranges::any_of(row.out, [this](const OutAt &at) {
        return at.station != m_van->currentText() && at.station != m_van->currentData().toString();
    });
}

bool TakeAlongDialog::goes(const BoardRow &row) const
{
    return row.status == OrderStatus::Open && (!isElsewhere(row) || m_anyway->isChecked());
}

SignItem TakeAlongDialog::before(const BoardRow &row) const
{
    const QDate today = workplace().today();
    const QString out = outText(row.out, today).replace(u'\n', QStringLiteral(", "));
    SignItem item{row.order, Status::NotNeeded, row.order + ' ' + row.customer, {}};
    if (row.status != OrderStatus::Open) {
        item.text = tr("Stays: it is %1.").arg(statusName(row.status));
    } else if (!goes(row)) {
        item.text = tr("%1: stays.").arg(out);
    } else {
        item.status = row.hazard || isElsewhere(row) ? Status::Doubtful : Status::Away;
        item.text = row.out.empty() ? tr("Due %1: goes along.").arg(dayText(row.due, today))
                                    : tr("%1: goes along again.").arg(out);
        if (row.hazard) // the board tells it before all else
            item.text = localizedSentence(row.reason) + ' ' + item.text;
    }
    return item;
}

void TakeAlongDialog::showBefore()
{
    std::vector<SignItem> items;
    for (const BoardRow &row : m_rows)
        items.push_back(before(row));
    setItems(std::move(items));
    m_anyway->setVisible(
        std::ranges::any_of(m_rows, [this](const BoardRow &row) { return isElsewhere(row); }));
    m_file->setSuggested(suggestedFile());
    showReady();
}

/// One that is not there yet: the bundle before it may not be opened yet.
QString TakeAlongDialog::suggestedFile() const
{
    const QString name = QStringLiteral("%1-%2").arg(m_van->currentText(),
                                                     workplace().today().toString(Qt::ISODate));
    QString file = QDir::home().filePath(name + QStringLiteral(".json"));
    for (int n = 2; QFileInfo::exists(file) && n < 1000; ++n)
        file = QDir::home().filePath(QStringLiteral("%1-%2.json").arg(name).arg(n));
    return file;
}

void TakeAlongDialog::showReady()
{
    const auto going =
        std::ranges::count_if(m_rows, [this](const BoardRow &row) { return goes(row); });
    const bool known = m_van->count() > 0;
    // While a van is being added Enter is for that.
    setReady(known && going > 0 && !m_file->path().isEmpty() && m_add->isHidden());
    const auto staying = qlonglong(m_rows.size()) - going;
    if (!known)
        tell(Status::Note, tr("No van is known yet; add it by the file with its key."));
    else if (going == 0)
        tell(Status::Doubtful, tr("None of them can go along."));
    else if (m_file->path().isEmpty())
        tell(Status::Note, tr("Say into which file they go: on a stick, or in a shared folder."));
    else
        tell(Status::Note, tr("Go along with %1: %2. Stay: %3.")
                               .arg(m_van->currentText(), QLocale().toString(going),
                                    QLocale().toString(staying)));
}

void TakeAlongDialog::confirm()
{
    TakingAlong wish;
    for (const BoardRow &row : m_rows)
        wish.orders << row.order;
    wish.station = m_van->currentText();
    wish.out = m_file->path();
    wish.anyway = m_anyway->isChecked();
    setWorking(true);
    tell(Status::None, {});
    asker().ask<TakenAlong>(
        [wish](Records &records, const Progress &progress) {
            return takeAlong(records, wish, progress);
        },
        [this](const Result<TakenAlong> &taken) { showAfter(taken); });
}

void TakeAlongDialog::showAfter(const Result<TakenAlong> &taken)
{
    emit recordsChanged(); // they may be out although the file is missing
    if (!taken) {
        setWorking(false);
        return tell(Status::Failed, localized(taken.error()));
    }
    std::vector<SignItem> items;
    for (const QString &file : taken->files)
        items.push_back({file, Status::Done, tr("File"), QDir::toNativeSeparators(file)});
    for (const TakenAlong::Told &each : taken->warnings)
        items.push_back({each.order + '.' + each.finding.code, Status::Doubtful, each.order,
                         localized(each.finding.reason)});
    for (const QString &order : taken->orders)
        items.push_back({order, Status::Away, order, tr("With %1 now.").arg(taken->station)});
    for (const TakenAlong::Told &each : taken->stays)
        items.push_back(
            {each.order, Status::NotNeeded, each.order, localized(each.finding.reason)});
    if (taken->orders.isEmpty())
        return finish(Status::Doubtful, tr("Nothing went along."), std::move(items));
    // What the van had before stays with it.
    for (const BoardRow &row : m_rows)
        if (taken->orders.contains(row.order) && !isWith(row, taken->station, taken->tag))
            m_taken << row.order;
    m_station = taken->station;
    m_undo->setVisible(!m_taken.isEmpty());
    finish(taken->warnings.empty() ? Status::Done : Status::Doubtful,
           tr("%1 handed out to %2. The van takes the file in.")
               .arg(ordersText(taken->orders), taken->station),
           std::move(items));
}

void TakeAlongDialog::undo()
{
    setWorking(true);
    m_undo->setEnabled(false);
    asker().ask<QStringList>(
        [station = m_station, orders = m_taken](Records &records,
                                                const Progress &) -> Result<QStringList> {
            LOOPWRIGHT_TRY(recallOrders(records, station, orders, "taken back at once"));
            return orders;
        },
        [this](const Result<QStringList> &back) { showUndone(back); });
}

void TakeAlongDialog::showUndone(const Result<QStringList> &back)
{
    emit recordsChanged();
    m_undo->setVisible(!back);
    m_undo->setEnabled(true);
    if (!back) {
        setWorking(false);
        return tell(Status::Failed, localized(back.error()));
    }
    std::vector<SignItem> items;
    for (const QString &order : *back)
        items.push_back({order, Status::Done, order, tr("Stays here.")});
    finish(Status::Done,
           tr("Nothing of it is out. The file that was written is still there: do not "
              "give it to the van."),
           std::move(items));
}

} // namespace loopwright
