#include "app/desktop/screens/BoardFilterBar.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/ChipRow.h"
#include "app/desktop/widgets/FlowLayout.h"
#include "app/desktop/widgets/PageElements.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QLocale>

namespace loopwright {

namespace {

const QString hazardKey = QStringLiteral("hazard");

struct DueName
{
    DueFilter filter;
    const char *name;
};
constexpr DueName dueNames[] = {
    {DueFilter::Late, QT_TRANSLATE_NOOP("BoardFilterBar", "Late")},
    {DueFilter::Today, QT_TRANSLATE_NOOP("BoardFilterBar", "Today")},
    {DueFilter::ThisWeek, QT_TRANSLATE_NOOP("BoardFilterBar", "This week")}};

QList<Chip> stageChips()
{
    QList<Chip> chips;
    for (const auto &[stage, code] : EnumCodes<Stage>::table)
        chips.append({QString::fromLatin1(code), stageName(stage)});
    return chips;
}

QList<Chip> dueChips()
{
    QList<Chip> chips;
    for (const DueName &row : dueNames)
        chips.append({toText(row.filter), BoardFilterBar::tr(row.name)});
    return chips;
}

/// The counts by the keys of the chips.
template<class E>
QMap<QString, int> byCode(const QMap<E, int> &counts)
{
    QMap<QString, int> coded;
    for (auto it = counts.begin(); it != counts.end(); ++it)
        coded.insert(toText(it.key()), it.value());
    return coded;
}

} // namespace

BoardFilterBar::BoardFilterBar(QWidget *parent)
    : QWidget(parent)
    , m_stages(new ChipRow(QStringLiteral("stage"), tr("Stage"), stageChips()))
    , m_outcome(new ChipRow(QStringLiteral("outcome"), tr("Outcome"), {{hazardKey, tr("Hazard")}}))
    , m_due(new ChipRow(QStringLiteral("due"), tr("Due"), dueChips()))
    , m_offices(makeCombo(QStringLiteral("office"), tr("Serving office")))
    , m_installers(makeCombo(QStringLiteral("installer"), tr("Installer")))
    , m_clear(makeButton(tr("Clear all"), QStringLiteral("clear"), [this] { emit clearWanted(); }))
{
    connect(m_stages, &ChipRow::changed, this, &BoardFilterBar::changed);
    connect(m_outcome, &ChipRow::changed, this, &BoardFilterBar::changed);
    connect(m_due, &ChipRow::changed, this, &BoardFilterBar::changed);

    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_stages);
    auto *second = new QWidget;
    auto *row = new FlowLayout(second);
    row->setContentsMargins(0, 0, 0, 0);
    for (QWidget *widget :
         std::initializer_list<QWidget *>{m_outcome, m_due, m_offices, m_installers, m_clear})
        row->addWidget(widget);
    whenThemed(second, [this, row, column] {
        m_clear->setFixedHeight(em(1.9)); // the table below does not move when it comes
        row->setSpacing(em(1));
        column->setSpacing(em(0.45));
    });
    column->addWidget(second);
}

QComboBox *BoardFilterBar::makeCombo(const QString &name, const QString &spoken)
{
    auto *combo = new QComboBox;
    combo->setObjectName("filter." + name);
    combo->setAccessibleName(spoken);
    combo->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    combo->setMaxVisibleItems(24);
    whenThemed(combo, [combo] { combo->setFixedHeight(em(1.9)); });
    connect(combo, &QComboBox::activated, this, &BoardFilterBar::changed);
    return combo;
}

void BoardFilterBar::writeTo(BoardFilter &filter) const
{
    filter.stage = fromText<Stage>(m_stages->chosen());
    filter.hazard = !m_outcome->chosen().isEmpty();
    filter.due = fromText<DueFilter>(m_due->chosen()).value_or(DueFilter::Any);
    filter.office = m_offices->currentData().toString();
    filter.installer = m_installers->currentData().toString();
}

bool BoardFilterBar::isOn() const
{
    return !m_stages->chosen().isEmpty() || !m_outcome->chosen().isEmpty() ||
           !m_due->chosen().isEmpty() || !m_offices->currentData().toString().isEmpty() ||
           !m_installers->currentData().toString().isEmpty();
}

void BoardFilterBar::clear()
{
    m_stages->choose({});
    m_outcome->choose({});
    m_due->choose({});
    m_offices->setCurrentIndex(m_offices->count() > 0 ? 0 : -1);
    m_installers->setCurrentIndex(m_installers->count() > 0 ? 0 : -1);
}

QJsonObject BoardFilterBar::chosen() const
{
    return {{"stage", m_stages->chosen()},
            {"outcome", m_outcome->chosen()},
            {"due", m_due->chosen()},
            {"office", m_offices->currentData().toString()},
            {"installer", m_installers->currentData().toString()}};
}

void BoardFilterBar::choose(const QJsonObject &chosen)
{
    m_stages->choose(chosen.value("stage").toString());
    m_outcome->choose(chosen.value("outcome").toString());
    m_due->choose(chosen.value("due").toString());
    for (const auto &[combo, key] :
         {std::pair(m_offices, "office"), std::pair(m_installers, "installer")}) {
        const QString value = chosen.value(QLatin1StringView(key)).toString();
        if (!value.isEmpty() && combo->findData(value) < 0)
            combo->addItem(value, value); // its count comes with the others
        combo->setCurrentIndex(combo->findData(value));
    }
}

void BoardFilterBar::setClearVisible(bool visible)
{
    m_clear->setVisible(visible);
}

void BoardFilterBar::showCounts(const BoardCounts &counts)
{
    m_stages->setCounts(byCode(counts.stages));
    m_outcome->setCounts({{hazardKey, counts.hazards}});
    m_due->setCounts(byCode(counts.due));
    showCombo(m_offices, tr("Every office"), counts.offices);
    showCombo(m_installers, tr("Every installer"), counts.installers);
}

void BoardFilterBar::showCombo(QComboBox *combo, const QString &all,
                               const QMap<QString, int> &counts)
{
    if (combo->view()->isVisible())
        return; // not under the hand that is choosing
    const QString chosen = combo->currentData().toString();
    QMap<QString, int> shown = counts;
    if (!chosen.isEmpty() && !shown.contains(chosen))
        shown.insert(chosen, 0);
    combo->clear();
    combo->addItem(all, QString());
    for (auto it = shown.constBegin(); it != shown.constEnd(); ++it) {
        if (!it.key().isEmpty()) // orders without one cannot be asked for
            combo->addItem(QStringLiteral("%1   %2").arg(it.key(), QLocale().toString(it.value())),
                           it.key());
    }
    combo->setCurrentIndex(std::max(0, combo->findData(chosen)));
}

} // namespace loopwright
