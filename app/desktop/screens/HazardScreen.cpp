#include "app/desktop/screens/HazardScreen.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"
#include "core/base/PaperTime.h"

#include <QCheckBox>
#include <QVBoxLayout>

namespace loopwright {

namespace {

/// "power company, reference P-7, by Kim Carver, 4 March 2026, 08:40 (UTC-06:00)"
QString toldText(const RegisteredHazard &hazard)
{
    QStringList parts{hazard.told};
    if (!hazard.toldReference.isEmpty())
        parts << HazardScreen::tr("reference %1").arg(hazard.toldReference);
    if (!hazard.toldBy.isEmpty())
        parts << HazardScreen::tr("by %1").arg(hazard.toldBy);
    if (hazard.toldAt)
        parts << localizedSentence(paperTime(*hazard.toldAt));
    return parts.join(QStringLiteral(", "));
}

} // namespace

HazardScreen::HazardScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_asker(workplace.questions())
    , m_model(new TextTable({tr("State"), tr("Read"), tr("Pair"), tr("Place"), tr("Since"),
                             tr("Premises"), tr("Order"), tr("Told")},
                            0, {2, 6}, this))
    , m_openOnly(new QCheckBox(tr("Open ones only")))
    , m_summary(new SignLine)
    , m_table(new Table(QStringLiteral("hazards.list"), tr("Hazards")))
    , m_chosen(new SignLine)
{
    m_openOnly->setObjectName(QStringLiteral("hazards.open_only"));
    m_openOnly->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    m_summary->setObjectName(QStringLiteral("hazards.summary"));
    m_chosen->setObjectName(QStringLiteral("hazards.chosen"));
    m_table->setModel(m_model);
    m_table->setColumnEms({6, 18, 8, 9, 8, 13, 8, 10});
    connect(m_openOnly, &QCheckBox::toggled, this, &HazardScreen::refresh);
    connect(m_table, &Table::opened, this,
            [this](const QModelIndex &index) { emit openOrder(m_model->row(index.row()).key); });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &now) { showChosen(now.row()); });

    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(makeHeading(tr("Hazards"), 1.5));
    layout->addWidget(m_summary);
    layout->addWidget(m_openOnly, 0, Qt::AlignLeft);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_chosen);
    layout->addStretch(0); // takes the room while there is no table
    m_table->hide();
    m_chosen->hide();
}

void HazardScreen::takeFocus()
{
    if (m_table->isVisible())
        m_table->setFocus();
    else
        m_openOnly->setFocus();
}

void HazardScreen::refresh()
{
    const bool openOnly = m_openOnly->isChecked();
    m_asker.ask<std::vector<RegisteredHazard>>(
        [openOnly](Records &records, const Progress &progress) {
            return hazardRegister(records, openOnly, progress);
        },
        [this](const Result<std::vector<RegisteredHazard>> &hazards) { showHazards(hazards); });
}

void HazardScreen::showHazards(const Result<std::vector<RegisteredHazard>> &hazards)
{
    const int before = m_table->currentIndex().row();
    m_hazards = hazards ? *hazards : std::vector<RegisteredHazard>();
    std::vector<TextRow> rows;
    int open = 0;
    for (const RegisteredHazard &hazard : m_hazards) {
        open += hazard.isOpen;
        const QString place =
            QStringList{hazard.place, localizedWord(hazard.wet)}.join(u' ').trimmed();
        rows.push_back(
            {{hazard.isOpen ? tr("OPEN") : tr("closed"),
              localizedSentences(hazard.volts).join(QStringLiteral("; ")), hazard.pair, place,
              dayText(hazard.readAt.localDate()), hazard.premises, hazard.order, toldText(hazard)},
             hazard.isOpen ? Status::Failed : Status::Done,
             hazard.order,
             !hazard.isOpen});
    }
    m_model->show(std::move(rows));
    if (!hazards)
        m_summary->tellIfNew(Status::Failed, localized(hazards.error()));
    else if (open > 0)
        m_summary->tellIfNew(Status::Failed,
                             open == 1
                                 ? tr("1 hazard is open. Keep away from that pair until it is "
                                      "closed and a card reads clear.")
                                 : tr("%1 hazards are open. Keep away from those pairs until they "
                                      "are closed and a card reads clear.")
                                       .arg(open));
    else
        m_summary->tellIfNew(Status::Done, m_hazards.empty() && !m_openOnly->isChecked()
                                               ? tr("No dangerous voltage was read.")
                                               : tr("No hazard is open."));
    const bool first = m_openOnly->hasFocus() && !m_table->isVisible();
    m_table->setVisible(!m_hazards.empty());
    if (first && !m_hazards.empty())
        m_table->setFocus(); // it was not there when the page was shown
    if (!m_hazards.empty())
        m_table->setCurrentIndex(m_model->index(std::clamp(before, 0, m_model->rowCount() - 1), 0));
    showChosen(m_table->currentIndex().row());
}

void HazardScreen::showChosen(int row)
{
    const bool any = row >= 0 && row < int(m_hazards.size());
    m_chosen->setVisible(any);
    if (!any)
        return;
    const RegisteredHazard &hazard = m_hazards[std::size_t(row)];
    const QString told = toldText(hazard);
    m_chosen->show(hazard.isOpen ? Status::Failed : Status::Done,
                   tr("%1. Read by %2 for order %3, %4. %5")
                           .arg(localizedSentences(hazard.volts).join(QStringLiteral("; ")),
                                hazard.readBy, hazard.order,
                                localizedSentence(paperTime(hazard.readAt)),
                                localizedSentence(hazard.state)) +
                       (told.isEmpty() ? QString() : u' ' + tr("Told: %1.").arg(told)));
}

} // namespace loopwright
