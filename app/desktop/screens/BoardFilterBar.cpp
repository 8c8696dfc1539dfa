#include "app/desktop/screens/BoardFilterBar.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/ChipRow.h"
#include "app/desktop/widgets/FlowLayout.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/Criteria.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QLocale>

#include <algorithm>

namespace loopwright {

/// A filter of the bar: chips that are always in view, or a choice.
struct FilterRow
{
    BoardFacet facet;
    const char *title;
    const char *any;        ///< the first line of a choice; null: chips
    const char *none;       ///< the empty value; null if it has none
    QStringList (*known)(); ///< values in the order in which they stand; null: by their names
    QString (*name)(const QString &value); ///< null: as it is
    bool last = false;                     ///< chips behind the choices: not every office has vans
};

namespace {

struct DueName
{
    DueFilter filter;
    const char *name;
};
constexpr DueName dueNames[] = {
    {DueFilter::Late, QT_TRANSLATE_NOOP("BoardFilterBar", "Late")},
    {DueFilter::AtRisk, QT_TRANSLATE_NOOP("BoardFilterBar", "At risk")},
    {DueFilter::Today, QT_TRANSLATE_NOOP("BoardFilterBar", "Today")},
    {DueFilter::ThisWeek, QT_TRANSLATE_NOOP("BoardFilterBar", "This week")},
    {DueFilter::Missed, QT_TRANSLATE_NOOP("BoardFilterBar", "Date missed")}};

QStringList onlyOn()
{
    return {QStringLiteral("1")};
}

QString criterionName(const QString &key)
{
    const Criterion *criterion = findCriterion(key);
    return criterion ? QCoreApplication::translate("core", criterion->name) : key;
}

QString nameOfStage(const QString &code)
{
    return localizedWord(stageName(fromText<Stage>(code).value_or(Stage::Done)));
}

QString nameOfOutcome(const QString &code)
{
    return outcomeName(fromText<OrderOutcome>(code).value_or(OrderOutcome::Incomplete));
}

QString waitingName(const QString &word)
{
    return BoardFilterBar::tr("Waits on: %1").arg(waitingOnName(word));
}

constexpr FilterRow filterTable[] = {
    {BoardFacet::Stage, QT_TRANSLATE_NOOP("BoardFilterBar", "Stage"), nullptr, nullptr,
     allWords<Stage>, nameOfStage},
    {BoardFacet::Open, QT_TRANSLATE_NOOP("BoardFilterBar", "Open"), nullptr, nullptr, onlyOn,
     nullptr},
    {BoardFacet::Hazard, QT_TRANSLATE_NOOP("BoardFilterBar", "Hazard"), nullptr, nullptr, onlyOn,
     nullptr},
    {BoardFacet::Paper, QT_TRANSLATE_NOOP("BoardFilterBar", "Paper outstanding"), nullptr, nullptr,
     onlyOn, nullptr},
    {BoardFacet::Away, QT_TRANSLATE_NOOP("BoardFilterBar", "Out"), nullptr, nullptr, onlyOn,
     nullptr, true},
    {BoardFacet::Conflict, QT_TRANSLATE_NOOP("BoardFilterBar", "To be settled"), nullptr, nullptr,
     onlyOn, nullptr, true},
    {BoardFacet::Outcome, QT_TRANSLATE_NOOP("BoardFilterBar", "Outcome"),
     QT_TRANSLATE_NOOP("BoardFilterBar", "Any outcome"), nullptr, allWords<OrderOutcome>,
     nameOfOutcome},
    {BoardFacet::Criterion, QT_TRANSLATE_NOOP("BoardFilterBar", "First open criterion"),
     QT_TRANSLATE_NOOP("BoardFilterBar", "Any criterion"),
     QT_TRANSLATE_NOOP("BoardFilterBar", "No criterion open"), criterionKeys, criterionName},
    {BoardFacet::Office, QT_TRANSLATE_NOOP("BoardFilterBar", "Serving office"),
     QT_TRANSLATE_NOOP("BoardFilterBar", "Every office"), nullptr, nullptr, nullptr},
    {BoardFacet::Installer, QT_TRANSLATE_NOOP("BoardFilterBar", "Installer"),
     QT_TRANSLATE_NOOP("BoardFilterBar", "Every installer"),
     QT_TRANSLATE_NOOP("BoardFilterBar", "Nobody assigned"), nullptr, nullptr},
    {BoardFacet::WaitingOn, QT_TRANSLATE_NOOP("BoardFilterBar", "Waits on"),
     QT_TRANSLATE_NOOP("BoardFilterBar", "Waiting or not"),
     QT_TRANSLATE_NOOP("BoardFilterBar", "Waits on nobody"), allWords<WaitingOn>, waitingName}};

QList<Chip> dueChips()
{
    QList<Chip> chips;
    for (const DueName &row : dueNames)
        chips.append({toText(row.filter), BoardFilterBar::tr(row.name)});
    return chips;
}

/// The counts by the keys of the chips.
QMap<QString, int> byCode(const QMap<DueFilter, int> &counts)
{
    QMap<QString, int> coded;
    for (auto it = counts.begin(); it != counts.end(); ++it)
        coded.insert(toText(it.key()), it.value());
    return coded;
}

} // namespace

BoardFilterBar::BoardFilterBar(QWidget *parent)
    : QWidget(parent)
    , m_due(new ChipRow(QStringLiteral("due"), tr("Due"), dueChips()))
    , m_clear(makeButton(tr("Clear all"), QStringLiteral("clear"), [this] { emit clearWanted(); }))
{
    connect(m_due, &ChipRow::changed, this, &BoardFilterBar::changed);
    addControls();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    const auto addRow = [column](const QList<QWidget *> &widgets) {
        auto *line = new QWidget;
        auto *row = new FlowLayout(line);
        row->setContentsMargins(0, 0, 0, 0);
        for (QWidget *widget : widgets)
            row->addWidget(widget);
        whenThemed(line, [row] { row->setSpacing(em(0.7)); });
        column->addWidget(line);
    };
    QList<QWidget *> desk, stages, choices, last; // today's desk first
    for (const Control &control : m_controls)
        (control.choice                 ? choices
         : control.row->last            ? last
         : control.row->known == onlyOn ? desk
                                        : stages)
            << (control.choice ? static_cast<QWidget *>(control.choice) : control.chips);
    desk.insert(1, m_due); // beside what is open
    choices << last;
    while (m_found.size() < 2 * mostOfAKind) {
        makeFound();
        choices << m_found.back().button;
    }
    choices << m_clear;
    addRow(desk);
    for (QWidget *chips : std::as_const(stages))
        column->addWidget(chips);
    addRow(choices);
    whenThemed(this, [this, column] {
        m_clear->setFixedHeight(em(1.9)); // the table below does not move when it comes
        column->setSpacing(em(0.45));
    });
    choose(atFirst());
}

void BoardFilterBar::makeFound()
{
    const std::size_t place = m_found.size();
    auto *button = makeButton(QString(), "found." + QString::number(place + 1), [this, place] {
        const Found &found = m_found[place];
        found.isPerson ? emit installerWanted(found.key) : emit circuitWanted(found.key);
    });
    button->setAccessibleName(tr("Named by the search"));
    button->hide();
    whenThemed(button, [button] { button->setFixedHeight(em(1.9)); });
    m_found.push_back({button});
}

void BoardFilterBar::showFound(const FoundKinds &found)
{
    std::size_t next = 0;
    const auto show = [&](const QString &key, bool isPerson, const QString &text,
                          const QString &tip) {
        Found &shown = m_found.at(next++);
        shown.key = key;
        shown.isPerson = isPerson;
        shown.button->setText(text);
        shown.button->setAccessibleName(text);
        shown.button->setToolTip(asTip(tip));
        shown.button->show();
    };
    for (const FoundCircuit &each : found.circuits)
        show(each.number, false, tr("Circuit %1").arg(each.number),
             each.customer + '\n' + each.premises);
    for (const Person &person : found.people)
        show(person.key, true, tr("Orders of %1").arg(person.name),
             tr("Only what this installer has to do"));
    for (; next < m_found.size(); ++next)
        m_found[next].button->hide();
}

void BoardFilterBar::addControls()
{
    for (const FilterRow &row : filterTable)
        m_controls.push_back(
            {&row, row.any ? nullptr : makeChips(row), row.any ? makeChoice(row) : nullptr});
}

ChipRow *BoardFilterBar::makeChips(const FilterRow &row)
{
    QList<Chip> list;
    for (const QString &value : row.known())
        list.append({value, row.name ? row.name(value) : tr(row.title)});
    auto *chips = new ChipRow(toText(row.facet), tr(row.title), list);
    connect(chips, &ChipRow::changed, this, &BoardFilterBar::changed);
    return chips;
}

QComboBox *BoardFilterBar::makeChoice(const FilterRow &row)
{
    auto *combo = new QComboBox;
    combo->setObjectName("filter." + toText(row.facet));
    combo->setAccessibleName(tr(row.title));
    combo->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    combo->setMaxVisibleItems(24);
    combo->addItem(tr(row.any));
    whenThemed(combo, [combo] { combo->setFixedHeight(em(1.9)); });
    connect(combo, &QComboBox::activated, this, &BoardFilterBar::changed);
    return combo;
}

void BoardFilterBar::writeTo(BoardFilter &filter) const
{
    filter.facets.clear();
    filter.due = fromText<DueFilter>(m_due->chosen()).value_or(DueFilter::Any);
    for (const Control &control : m_controls) {
        if (control.chips && !control.chips->chosen().isEmpty())
            filter.facets.insert(control.row->facet, control.chips->chosen());
        else if (control.choice && control.choice->currentData().isValid())
            filter.facets.insert(control.row->facet, control.choice->currentData().toString());
    }
}

QJsonObject BoardFilterBar::atFirst()
{
    return {{toText(BoardFacet::Open), "1"}};
}

QJsonObject BoardFilterBar::chosen() const
{
    QJsonObject chosen;
    BoardFilter filter;
    writeTo(filter);
    for (auto it = filter.facets.begin(); it != filter.facets.end(); ++it)
        chosen.insert(toText(it.key()), it.value());
    if (filter.due != DueFilter::Any)
        chosen.insert("due", toText(filter.due));
    return chosen;
}

void BoardFilterBar::choose(const QJsonObject &chosen)
{
    m_due->choose(chosen.value("due").toString());
    for (const Control &control : m_controls) {
        const QJsonValue value = chosen.value(toText(control.row->facet));
        if (control.chips) {
            control.chips->choose(value.toString());
            continue;
        }
        if (value.isString() && control.choice->findData(value.toString()) < 0)
            control.choice->addItem(value.toString(), value.toString()); // its count comes later
        control.choice->setCurrentIndex(
            value.isString() ? control.choice->findData(value.toString()) : 0);
    }
}

void BoardFilterBar::setClearVisible(bool visible)
{
    m_clear->setVisible(visible);
}

void BoardFilterBar::showCounts(const BoardCounts &counts)
{
    m_installerNames = counts.installerNames;
    m_due->setCounts(byCode(counts.due));
    for (const Control &control : m_controls) {
        const QMap<QString, int> facet = counts.facets.value(control.row->facet);
        if (control.chips)
            control.chips->setCounts(facet);
        else
            showChoice(control, facet);
    }
}

void BoardFilterBar::showChoice(const Control &control, const QMap<QString, int> &counts)
{
    QComboBox *combo = control.choice;
    const FilterRow &row = *control.row;
    if (combo->view()->isVisible())
        return; // not under the hand that is choosing
    const QVariant chosen = combo->currentData();
    QStringList values = counts.keys();
    if (chosen.isValid() && !values.contains(chosen.toString()))
        values << chosen.toString();
    const auto nameOf = [&](const QString &value) {
        if (value.isEmpty() && row.none)
            return tr(row.none);
        return row.facet == BoardFacet::Installer ? m_installerNames.value(value, value)
               : row.name                         ? row.name(value)
                                                  : value;
    };
    const QStringList known = row.known ? row.known() : QStringList();
    const auto rank = [&](const QString &value) {
        const qsizetype place = known.indexOf(value);
        return std::tuple(value.isEmpty(), place < 0, place, nameOf(value).toCaseFolded(), value);
    };
    std::ranges::sort(values, {}, rank);
    combo->clear();
    combo->addItem(tr(row.any));
    for (const QString &value : values)
        combo->addItem(
            QStringLiteral("%1   %2").arg(nameOf(value), QLocale().toString(counts.value(value))),
            value);
    combo->setCurrentIndex(chosen.isValid() ? combo->findData(chosen) : 0);
}

} // namespace loopwright
