#include "app/desktop/vans/ConflictsDialog.h"

#include "app/desktop/DesktopContext.h"
#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QLocale>
#include <QRadioButton>
#include <QScrollArea>

#include <algorithm>

namespace loopwright {

namespace {

struct CodeName
{
    ConflictCode code;
    const char *name;
};
constexpr CodeName codeNames[] = {
    {ConflictCode::OrderChanged,
     QT_TRANSLATE_NOOP("ConflictsDialog", "the order was changed meanwhile")},
    {ConflictCode::OrderClosed,
     QT_TRANSLATE_NOOP("ConflictsDialog", "the order was closed meanwhile")},
    {ConflictCode::TwoStations, QT_TRANSLATE_NOOP("ConflictsDialog", "two stations worked on it")},
    {ConflictCode::ValueInUse, QT_TRANSLATE_NOOP("ConflictsDialog", "a value is in use elsewhere")},
    {ConflictCode::FactDiffers, QT_TRANSLATE_NOOP("ConflictsDialog", "one entry has two contents")},
    {ConflictCode::CertificateSuperseded,
     QT_TRANSLATE_NOOP("ConflictsDialog", "two stations issued a certificate")},
    {ConflictCode::ClockAhead, QT_TRANSLATE_NOOP("ConflictsDialog", "its clock was ahead")},
    {ConflictCode::CertificateTwice,
     QT_TRANSLATE_NOOP("ConflictsDialog", "one certificate number was given out twice")},
    {ConflictCode::Forked,
     QT_TRANSLATE_NOOP("ConflictsDialog", "the records of the station are in use twice")}};

QString nameOf(ConflictCode code)
{
    const auto *found = std::ranges::find(codeNames, code, &CodeName::code);
    return ConflictsDialog::tr(found->name);
}

QString nameOfSide(const QString &side)
{
    return side == officeSide  ? ConflictsDialog::tr("The office")
           : side == bothSides ? ConflictsDialog::tr("Both")
                               : side;
}

QString aboutText(const ShownConflict &shown, QDate today)
{
    QStringList parts{
        shown.stations.join(QStringLiteral(", ")),
        ConflictsDialog::tr("since %1").arg(dayText(shown.conflict.since.localDate(), today))};
    if (shown.facts.size() == 1)
        parts << ConflictsDialog::tr("1 entry hangs on it");
    else if (!shown.facts.isEmpty())
        parts << ConflictsDialog::tr("%1 entries hang on it")
                     .arg(QLocale().toString(shown.facts.size()));
    if (!shown.conflict.stands)
        parts << ConflictsDialog::tr("holds no longer");
    else if (shown.conflict.settled)
        parts << ConflictsDialog::tr("settled");
    return parts.join(QStringLiteral(" · "));
}

/// "Settled for van-7 by Dana on 5 Mar: asked on the phone."
QString settledText(const ShownConflict &shown, QDate today)
{
    const auto &settled = shown.conflict.settled;
    if (!shown.conflict.stands)
        return ConflictsDialog::tr("It holds no longer: more was told since.");
    if (!settled)
        return {};
    const auto side = std::ranges::find(shown.sides, settled->side, &ShownConflict::Side::tag);
    const QString text =
        ConflictsDialog::tr("Settled: %1, by %2, %3: %4.")
            .arg(nameOfSide(side == shown.sides.end() ? settled->side : side->side), settled->by,
                 dayText(settled->at.localDate(), today), settled->because);
    return isSettledLoosely(shown.conflict) || shown.sides.size() == 1
               ? text
               : text + ' ' +
                     ConflictsDialog::tr("This changed the order or an entry, and is not settled "
                                         "anew: change the order, or strike the entry out.");
}

QString titleOf(const ShownConflict &shown)
{
    return ConflictsDialog::tr("%1: %2").arg(shown.conflict.order, nameOf(shown.conflict.code));
}

} // namespace

ConflictsDialog::ConflictsDialog(DesktopContext &workplace, QString order, QWidget *window)
    : QDialog(window)
    , m_workplace(workplace)
    , m_asker(workplace.longWork())
    , m_order(std::move(order))
    , m_list(new SignList(QStringLiteral("conflicts.list"), tr("To be settled between stations")))
    , m_all(new QCheckBox(tr("Show what is settled too")))
    , m_told(new SignLine)
{
    setObjectName(QStringLiteral("conflicts"));
    setWindowTitle(m_order.isEmpty() ? tr("Settle between stations")
                                     : tr("Settle between stations: order %1").arg(m_order));
    setAttribute(Qt::WA_DeleteOnClose);
    m_told->setObjectName(QStringLiteral("conflicts.told"));
    m_told->setSelectable(true);
    auto *column = new QVBoxLayout(this);
    QWidget *area = makeListArea(m_list);
    column->addWidget(area, 1);
    m_all->setObjectName(QStringLiteral("conflicts.all"));
    connect(m_all, &QCheckBox::toggled, this, &ConflictsDialog::read);
    column->addWidget(m_all);
    column->addWidget(makeCard());
    column->addWidget(m_told);
    QDialogButtonBox *buttons = makeCloseButtons(this);
    const QList<QAbstractButton *> closing = buttons->buttons();
    for (QAbstractButton *button : closing)
        static_cast<QPushButton *>(button)->setAutoDefault(false);
    column->addWidget(buttons);
    whenThemed(this, [this, column, area, window] {
        area->setMinimumHeight(em(5));
        column->setContentsMargins(em(1.2), em(1), em(1.2), em(1));
        column->setSpacing(em(0.8));
        resize(sizeWithin(*window->window(), 54, 42));
    });
    connect(m_list, &SignList::chosenChanged, this, &ConflictsDialog::showChosen);
    read();
}

QWidget *ConflictsDialog::makeCard()
{
    m_card = loopwright::makeCard();
    m_about = makeHeading({});
    m_about->setObjectName(QStringLiteral("conflicts.about"));
    m_about->setWordWrap(true);
    m_sides = new QVBoxLayout;
    auto *column = new QVBoxLayout(m_card);
    column->addWidget(m_about);
    m_settled = makeText({});
    m_settled->setObjectName(QStringLiteral("conflicts.settled"));
    column->addWidget(m_settled);
    column->addLayout(m_sides);
    m_reason = makeReason();
    column->addWidget(m_reason);
    whenThemed(m_card, [column] {
        column->setContentsMargins(em(1.1), em(0.9), em(1.1), em(0.9));
        column->setSpacing(em(0.6));
    });
    m_card->hide();
    return m_card;
}

QWidget *ConflictsDialog::makeReason()
{
    m_because = new QLineEdit;
    m_because->setObjectName(QStringLiteral("conflicts.because"));
    auto *because = new FieldMark(tr("Why it is settled so"), m_because);
    because->setTight(true);
    m_settle =
        makeButton(tr("Settle it"), QStringLiteral("conflicts.settle"), [this] { settle(); });
    m_settle->setDefault(true);
    auto *holder = new QWidget;
    auto *row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(because, 1);
    row->addWidget(m_settle, 0, Qt::AlignBottom);
    whenThemed(holder, [row] { row->setSpacing(em(0.6)); });
    return holder;
}

void ConflictsDialog::read()
{
    m_asker.ask<std::vector<ShownConflict>>(
        [order = m_order, all = m_all->isChecked()](Records &records, const Progress &) {
            return stationConflicts(records, order, all);
        },
        [this](const Result<std::vector<ShownConflict>> &conflicts) { showList(conflicts); });
}

void ConflictsDialog::showList(const Result<std::vector<ShownConflict>> &conflicts)
{
    if (!conflicts)
        return m_told->tell(Status::Failed, localized(conflicts.error()));
    m_conflicts = *conflicts;
    std::vector<SignItem> items;
    for (const ShownConflict &each : m_conflicts)
        items.push_back({each.conflict.id, each.conflict.isOpen() ? Status::Doubtful : Status::Done,
                         titleOf(each), aboutText(each, m_workplace.today())});
    m_list->setItems(std::move(items));
    if (m_list->chosen().isEmpty() && !m_conflicts.empty())
        m_list->choose(m_conflicts.front().conflict.id);
    if (m_conflicts.empty() && m_told->text().isEmpty())
        m_told->show(Status::Done, tr("No station says otherwise: nothing is to be settled."));
    showChosen();
    if (m_list->isVisible() && m_because->text().isEmpty())
        m_list->setFocus();
}

const ShownConflict *ConflictsDialog::chosen() const
{
    const auto found = std::ranges::find_if(m_conflicts, [this](const ShownConflict &each) {
        return each.conflict.id == m_list->chosen();
    });
    return found == m_conflicts.end() ? nullptr : &*found;
}

void ConflictsDialog::showChosen()
{
    const ShownConflict *shown = chosen();
    m_card->setVisible(shown);
    delete m_sidesHolder;
    m_sidesHolder = nullptr;
    if (!shown)
        return;
    m_about->setText(titleOf(*shown));
    m_because->clear();
    const QString settled = settledText(*shown, m_workplace.today());
    m_settled->setText(settled);
    m_settled->setVisible(!settled.isEmpty());
    const bool open = shown->conflict.isOpen();
    const bool may = open || (shown->conflict.stands && isSettledLoosely(shown->conflict));
    m_reason->setVisible(may);
    m_settle->setText(open ? tr("Settle it") : tr("Settle it anew"));
    m_sidesHolder = new QWidget;
    m_choice = new QButtonGroup(m_sidesHolder);
    auto *column = new QVBoxLayout(m_sidesHolder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(em(0.3));
    m_sides->addWidget(m_sidesHolder);
    for (std::size_t i = 0; i < shown->sides.size(); ++i)
        addSide(shown->sides[i], int(i), shown->sides.size() == 1);
    QWidget *before = m_list;
    const QList<QAbstractButton *> radios = m_choice->buttons();
    for (QAbstractButton *each : radios) {
        setTabOrder(before, each);
        before = each;
    }
}

void ConflictsDialog::addSide(const ShownConflict::Side &side, int place, bool only)
{
    const QString says = localized(side.says);
    auto *radio = new QRadioButton(nameOfSide(side.side));
    radio->setObjectName("conflicts.side." + side.side);
    radio->setAccessibleDescription(says);
    radio->setChecked(only);
    m_choice->addButton(radio, place);
    QLabel *text = makeText(says);
    text->setIndent(em(1.6));
    m_sidesHolder->layout()->addWidget(radio);
    m_sidesHolder->layout()->addWidget(text);
}

void ConflictsDialog::settle()
{
    const ShownConflict *shown = chosen();
    if (!shown || m_asker.isBusy())
        return;
    const auto say = [this](const QString &sentence) { m_told->tell(Status::Failed, sentence); };
    const int place = m_choice->checkedId();
    if (place < 0)
        return say(tr("Choose a side."));
    const QString because = m_because->text().trimmed();
    if (because.isEmpty()) {
        m_because->setFocus();
        return say(tr("Say why it is settled so."));
    }
    const QString side = shown->sides[std::size_t(place)].side;
    m_card->setEnabled(false);
    m_asker.ask<StationConflict>(
        [id = shown->conflict.id, side, because,
         anew = !shown->conflict.isOpen()](Records &records, const Progress &) {
            return settleConflict(records, id, side, because, anew);
        },
        [this, side](const Result<StationConflict> &settled) { showSettled(settled, side); });
}

void ConflictsDialog::showSettled(const Result<StationConflict> &settled, const QString &side)
{
    m_card->setEnabled(true);
    m_told->tell(settled ? Status::Done : Status::Failed,
                 settled ? tr("Order %1 is settled: %2.").arg(settled->order, nameOfSide(side))
                         : localized(settled.error()));
    if (!settled)
        return;
    read();
    emit recordsChanged();
}

ConflictsDialog *showConflicts(DesktopContext &workplace, const QString &order, QWidget *window)
{
    auto *dialog = new ConflictsDialog(workplace, order, window);
    dialog->open();
    return dialog;
}

} // namespace loopwright
