#include "app/desktop/screens/OrderScreen.h"

#include "app/actions/Plans.h"
#include "app/actions/Register.h"
#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QScrollArea>

#include <algorithm>

namespace loopwright {

namespace {

constexpr std::size_t todoShown = 9;
/// Below this width, in em, the verdict stands below the form.
constexpr double besideFromEm = 58;

/// The part under which a draft of this form is kept; an order without a number yet is "".
constexpr char draftPart[] = "order_form";

} // namespace

OrderScreen::OrderScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_form(makeOrderForm(m_state, {{},
                                     [this](const QJsonObject &typed) { keepDraft(typed); },
                                     {},
                                     [this] { return save(); },
                                     true}))
    , m_heading(makeHeading({}, 1.5))
    , m_draftLine(new SignLine)
{
    m_discard = makeButton(tr("Discard the draft"), QStringLiteral("order.discard"),
                           [this] { discardDraft(); });

    auto *draft = new QHBoxLayout;
    draft->addWidget(m_draftLine, 1);
    draft->addWidget(m_discard);
    auto *left = new QVBoxLayout;
    left->addWidget(m_heading);
    left->addLayout(draft);
    left->addWidget(inLowArea(makeForm(), 12), 1);
    m_layout = new QBoxLayout(QBoxLayout::LeftToRight, this);
    setPageMargins(m_layout, this);
    m_layout->addLayout(left, 5);
    m_layout->addWidget(makeAside(), 2);

    // Later: a field is also left while the window goes, when nothing may be shown any more.
    connect(m_form, &Form::rested, this, &OrderScreen::check, Qt::QueuedConnection);
    connect(m_form, &Form::edited, this, &OrderScreen::showTerminals);
    connect(m_form, &Form::edited, this, &OrderScreen::showSameWires);
    m_sameWires = new QCheckBox(tr("same wires: only the name of the pair was wrong"));
    m_sameWires->setObjectName(QStringLiteral("order.same_wires"));
    m_form->field("pair")->setBelow(m_sameWires);
    addKey(this, {QStringLiteral("order.save"), tr("Save the order"), {QKeySequence::Save}},
           [this] { m_form->confirm(); });
    readLists();
    open({});
}

OrderScreen::~OrderScreen()
{
    m_form->keepPending();
    delete m_form; // first: the field that has the keyboard is left as it goes
}

QWidget *OrderScreen::makeForm()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_form);
    m_addTerminal = makeButton(tr("Add a terminal"), QStringLiteral("order.add_terminal"), [this] {
        addTerminal(*m_form, m_state);
        showTerminals();
    });
    column->addWidget(m_addTerminal, 0, Qt::AlignLeft);
    column->addStretch(1);
    return page;
}

/// Another pair makes what was measured old; another name of the same wires does not.
void OrderScreen::showSameWires()
{
    const bool asked =
        !m_pairBefore.isEmpty() && !isSamePair(m_pairBefore, m_form->field("pair")->typed());
    m_sameWires->setVisible(asked);
    if (!asked)
        m_sameWires->setChecked(false);
}

void OrderScreen::showTerminals()
{
    m_addTerminal->setVisible(m_form->field("kind")->typed() != u"analog" &&
                              m_state.terminals < mostTerminals);
}

QWidget *OrderScreen::makeAside()
{
    QFrame *card = makeCard();
    auto *column = new QVBoxLayout(card);
    m_verdict = new SignLine;
    m_verdict->setObjectName(QStringLiteral("order.verdict"));
    m_explain = makeMuted({});
    m_save = makeButton(tr("Take the order in   Ctrl+S"), QStringLiteral("order.save"),
                        [this] { m_form->confirm(); });
    m_openExisting = makeButton(tr("Change that order"), QStringLiteral("order.existing"), [this] {
        const QString number = orderFieldsOf(*m_form).value("order_number");
        discardDraft();
        open(number);
        refresh();
    });
    column->addWidget(m_verdict);
    column->addWidget(m_explain);
    column->addWidget(m_openExisting);
    m_todoArea = makeTodo();
    column->addWidget(m_todoArea, 1);
    column->addStretch(0); // takes the room while the list is hidden
    column->addWidget(m_save);
    whenThemed(card, [this, card, column] {
        column->setContentsMargins(em(1.1), em(0.9), em(1.1), em(0.9));
        column->setSpacing(em(0.6));
        m_save->setMinimumHeight(em(2.6));
        card->setMinimumWidth(em(15));
    });
    return card;
}

/// It scrolls by itself: the button below it stays in view.
QScrollArea *OrderScreen::makeTodo()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    m_todo = new SignList(QStringLiteral("order.todo"), tr("What is to be mended"));
    m_todo->setLinks(true);
    connect(m_todo, &SignList::opened, this, [this](const QString &field) {
        goToColumn(*m_form, m_state, field);
        showTerminals();
    });
    m_todoMore = makeMuted({});
    column->addWidget(m_todo);
    column->addWidget(m_todoMore);
    column->addStretch(1);
    return inLowArea(page, 6);
}

QString OrderScreen::title() const
{
    return m_number.isEmpty() ? tr("New order") : tr("Change order %1").arg(m_number);
}

void OrderScreen::refresh()
{
    readLists();
    check();
}

void OrderScreen::readLists()
{
    std::vector<KeyedOption> officeChoices, installerChoices{{}};
    m_state.variantOfOffice.clear();
    if (const auto known = offices(records())) {
        for (const ServingOffice &office : *known) {
            officeChoices.push_back({{}, office.key, officeName(office)});
            m_state.variantOfOffice.insert(office.key, office.protocolVariant);
        }
    }
    if (const auto known = people(records())) {
        for (const Person &person : *known)
            installerChoices.push_back(
                {{}, person.key, QStringLiteral("%1 — %2").arg(person.key, person.name)});
    }
    m_form->field("office")->setOptions(officeChoices);
    m_form->field("installer")->setOptions(installerChoices);
    if (officeChoices.empty())
        m_form->field("office")->setHint(tr("none yet: import offices first"));
    m_form->showAsked();
    adaptOrderForm(*m_form, m_state);
}

void OrderScreen::open(const QString &number)
{
    m_form->keepPending();
    m_number = number;
    const auto kept = workplace().drafts().ofOrder(m_number);
    const QJsonObject draft = kept ? kept->value(draftPart) : QJsonObject();
    if (draft.isEmpty()) {
        loadStored();
    } else {
        showOrderFields(*m_form, m_state, textsIn(draft), true);
    }
    showTerminals();
    m_pairBefore.clear();
    if (!m_number.isEmpty())
        if (const auto view = showOrder(records(), m_number))
            m_pairBefore = view->order.pair;
    showSameWires();
    m_draftLine->show(Status::Note,
                      draft.isEmpty() ? QString() : tr("What was typed here before was kept."));
    m_draftLine->setVisible(!draft.isEmpty());
    m_discard->setVisible(!draft.isEmpty());
    m_heading->setText(title());
    m_save->setText(m_number.isEmpty() ? tr("Take the order in   Ctrl+S")
                                       : tr("Change the order   Ctrl+S"));
    emit titleChanged();
    emit placeChanged();
    check();
}

void OrderScreen::loadStored()
{
    if (m_number.isEmpty())
        return showOrderFields(*m_form, m_state, {}, false);
    const auto view = showOrder(records(), m_number);
    if (!view) {
        emit said(localized(view.error()));
        m_number.clear();
        return showOrderFields(*m_form, m_state, {}, false);
    }
    showOrderFields(*m_form, m_state, view->order.fields(), true);
}

void OrderScreen::takeFocus()
{
    m_form->goTo(m_number.isEmpty() ? "order_number" : "order_type");
}

void OrderScreen::resizeEvent(QResizeEvent *event)
{
    Screen::resizeEvent(event);
    // Without room beside it, what is left to do is marked at the fields alone.
    const bool beside = width() >= em(besideFromEm);
    m_layout->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_layout->setStretch(1, beside ? 2 : 0);
    m_todoArea->setVisible(beside);
}

void OrderScreen::keepDraft(const QJsonObject &typed)
{
    workplace().drafts().keep(m_number, draftPart, typed);
}

void OrderScreen::discardDraft()
{
    m_form->clear();
    keepDraft({});
    open(m_number);
    takeFocus();
}

void OrderScreen::check()
{
    const auto verdict = checkOrder(records(), orderFieldsOf(*m_form));
    if (!verdict) {
        m_verdict->tellIfNew(Status::Failed, localized(verdict.error()));
        m_save->setEnabled(false);
        return;
    }
    showVerdict(*verdict);
}

void OrderScreen::showVerdict(const OrderVerdict &verdict)
{
    const bool clashes = m_number.isEmpty() && verdict.exists && !verdict.unchanged;
    if (clashes) {
        m_verdict->tellIfNew(Status::Failed, tr("An order of this number is there"));
        m_explain->setText(tr("It has other values. Open it to change it, or give this order "
                              "another number."));
    } else if (verdict.malformed) {
        m_verdict->tellIfNew(Status::Open, tr("Not complete yet"));
        m_explain->setText(tr("What is typed is kept. The order can be taken in once these are "
                              "right:"));
    } else if (verdict.unchanged) {
        m_verdict->tellIfNew(verdict.held ? Status::Doubtful : Status::Done,
                             verdict.held ? tr("In the records, and held")
                                          : tr("In the records as it stands here"));
        m_explain->setText(verdict.held ? tr("It holds no number, SPID or pair until this is "
                                             "mended:")
                                        : QString());
    } else if (verdict.held) {
        m_verdict->tellIfNew(Status::Doubtful, tr("Will be taken in and held"));
        m_explain->setText(tr("Its due date is on the board, but it holds no number, SPID or pair "
                              "until this is mended:"));
    } else {
        m_verdict->tellIfNew(Status::Done, tr("Ready to be taken in"));
        m_explain->setText({});
    }
    m_explain->setVisible(!m_explain->text().isEmpty());
    m_openExisting->setVisible(clashes);
    m_save->setEnabled(!verdict.unchanged && !clashes);
    m_form->showFindings(verdict.findings);
    showTodo(verdict.findings, verdict.malformed);
}

void OrderScreen::showTodo(const Findings &findings, bool malformed)
{
    Findings listed = findings;
    std::ranges::stable_sort(
        listed, [](const Finding &a, const Finding &b) { return a.severity > b.severity; });
    std::vector<SignItem> items;
    for (const Finding &finding : listed) {
        if (items.size() == todoShown)
            break;
        const bool missing = malformed && finding.severity == Severity::Error;
        items.push_back({finding.field, missing ? Status::Open : signOf(finding.severity),
                         nameOfColumn(*m_form, finding.field), localized(finding.reason)});
    }
    m_todoMore->setText(tr("and %1 more").arg(qlonglong(listed.size() - items.size())));
    m_todoMore->setVisible(listed.size() > items.size());
    m_todo->setItems(std::move(items));
}

bool OrderScreen::save()
{
    m_form->touchAll();
    check();
    if (!m_save->isEnabled())
        return false;
    const OrderFields fields = orderFieldsOf(*m_form);
    const QString number = fields.value("order_number");
    const ChangingOut changing(records(), m_outAgain.isAgain(number));
    const auto verdict = putOrder(records(), fields, !m_number.isEmpty(),
                                  !m_sameWires->isHidden() && m_sameWires->isChecked());
    if (!verdict) {
        m_verdict->tell(Status::Failed, m_outAgain.refused(verdict.error(), number));
        return false;
    }
    const bool wasNew = m_number.isEmpty();
    const QString told = verdict->held ? tr("Order %1 is taken in and held.").arg(number)
                         : wasNew      ? tr("Order %1 is taken in.").arg(number)
                                       : tr("Order %1 is changed.").arg(number);
    if (verdict->changes.isEmpty())
        emit said(told);
    else
        emit stepDone(
            {told,
             {},
             [step = PlanStep{number, verdict->changes}](Records &records) -> Result<void> {
                 LOOPWRIGHT_TRY(undoPlan(records, {step}));
                 return {};
             }});
    emit recordsChanged();
    discardDraft();
    if (!wasNew)
        emit openOrder(number);
    return true;
}

} // namespace loopwright
