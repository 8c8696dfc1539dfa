#include "app/desktop/job/JobSession.h"

#include "app/actions/RecordCheck.h"
#include "app/desktop/Language.h"
#include "core/errortest/RunLog.h"

namespace loopwright {

namespace {

const QString contextPart = QStringLiteral("context");
/// In a draft, beside the fields: the fact that is corrected, and what stays of it.
const QString correctsKey = QStringLiteral("corrects");
const QString keptKey = QStringLiteral("kept");
const QString instrumentKey = QStringLiteral("instrument");

/// The draft, of no order, in which the instrument of a person is remembered.
QString instrumentPart(const QString &installer)
{
    return "instrument." + installer;
}

/// Who works: the order's installer, else the person who acts, if the register knows him.
QString usualInstaller(const OrderView &view, Records &records)
{
    if (!view.order.installer.isEmpty())
        return view.order.installer;
    if (const auto known = people(records))
        for (const Person &person : *known)
            if (person.role == Role::Installer && person.key == records.by())
                return person.key;
    return {};
}

bool isLeaving(const QJsonObject &fact)
{
    return fact.value("kind").toString() == toText(FactKind::Visit) && !fact.contains("arrived") &&
           fact.contains("left");
}

} // namespace

JobSession::JobSession(DesktopContext &workplace, QObject *parent)
    : QObject(parent)
    , m_workplace(workplace)
{
}

Result<void> JobSession::open(const QString &number)
{
    m_steps.clear();
    m_view.reset();
    m_instruments.reset();
    m_alarm.clear();
    LOOPWRIGHT_ASSIGN(auto view, showOrder(records(), number));
    LOOPWRIGHT_ASSIGN(auto kept, m_workplace.drafts().ofOrder(number));
    LOOPWRIGHT_ASSIGN(auto limits, limitSet(records(), view.input.limitSet));
    m_view = std::move(view);
    m_limits = std::move(limits);
    m_drafts = std::move(kept);
    m_context = m_drafts.value(contextPart);
    if (installer().isEmpty())
        m_context.insert("installer", usualInstaller(*m_view, records()));
    if (instrument().isEmpty())
        m_context.insert(instrumentKey, rememberedInstrument());
    makePlan();
    return {};
}

void JobSession::makePlan()
{
    m_steps = stepsOf(view(), {now(), installer(), instrument(), path()});
}

bool JobSession::isStopped() const
{
    const Step *closing = step(QStringLiteral("hazard_closed"));
    return closing && closing->isToDo();
}

Result<void> JobSession::reload()
{
    LOOPWRIGHT_ASSIGN(auto view, showOrder(records(), order().number));
    LOOPWRIGHT_ASSIGN(auto limits, limitSet(records(), view.input.limitSet));
    m_steps.clear();
    m_instruments.reset();
    m_view = std::move(view);
    m_limits = std::move(limits);
    makePlan();
    return {};
}

const QList<Instrument> &JobSession::instruments()
{
    static const QList<Instrument> none;
    if (!m_instruments)
        if (auto read = loopwright::instruments(records()))
            m_instruments = std::move(*read);
    return m_instruments ? *m_instruments : none;
}

void JobSession::setInstaller(const QString &key)
{
    if (key == installer())
        return;
    m_context.insert("installer", key);
    if (const QString remembered = rememberedInstrument(); !remembered.isEmpty())
        m_context.insert(instrumentKey, remembered);
    keepDraft(contextPart, m_context);
    makePlan();
    emit contextChanged();
}

QString JobSession::rememberedInstrument() const
{
    const auto kept = m_workplace.drafts().ofOrder({});
    return kept ? kept->value(instrumentPart(installer())).value(instrumentKey).toString()
                : QString();
}

void JobSession::setInstrument(const QString &key)
{
    if (!installer().isEmpty() && key != rememberedInstrument())
        m_workplace.drafts().keep({}, instrumentPart(installer()), {{instrumentKey, key}});
    setContext(instrumentKey, key);
}

std::optional<Path> JobSession::path() const
{
    return fromText<Path>(m_context.value("path").toString());
}

void JobSession::setAlarm(const QString &alarm)
{
    if (alarm == m_alarm)
        return;
    m_alarm = alarm;
    emit alarmed();
}

void JobSession::setContext(const QString &key, const QString &value)
{
    if (m_context.value(key).toString() == value)
        return;
    m_context.insert(key, value);
    keepDraft(contextPart, m_context);
    makePlan();
    emit contextChanged();
}

std::optional<Visit> JobSession::visit() const
{
    return openVisit(view().visits, order().number, installer(), now());
}

/// A visit is told in one order: its leaving stands where its arrival does.
QString JobSession::orderFor(const FactObjects &facts) const
{
    const auto open = visit();
    const bool leaving = open && facts.size() == 1 && isLeaving(facts.front());
    return leaving && !open->orders.contains(order().number) ? open->orders.front()
                                                             : order().number;
}

QJsonObject JobSession::recordOf(const FactObjects &facts, bool corrects) const
{
    QJsonArray list;
    const auto open = visit();
    for (QJsonObject fact : facts) {
        if (open && !corrects && isLeaving(fact))
            fact.insert("arrived", open->arrived.text());
        if (!fact.contains("at"))
            fact.insert("at", now().text());
        list.append(fact);
    }
    const QString number = corrects ? order().number : orderFor(facts);
    QJsonObject record{{"order", number}, {"facts", list}};
    if (number == order().number && !order().pair.isEmpty())
        record.insert("pair", order().pair);
    if (!installer().isEmpty())
        record.insert("installer", installer());
    if (!instrument().isEmpty())
        record.insert("instrument", instrument());
    return record;
}

Result<JobRecord> JobSession::read(const FactObjects &facts, const QString &part) const
{
    LOOPWRIGHT_ASSIGN(const FactObjects whole, withKept(part, facts));
    return readRecord(recordOf(whole, !corrects(part).isEmpty()));
}

Result<JobRecord> JobSession::readRecord(const QJsonObject &object) const
{
    auto record = readJobRecord(object, {}, newFactId);
    if (!record)
        return record;
    for (std::size_t i = 0; i < record->facts.size(); ++i)
        LOOPWRIGHT_TRY(checkFits(record->facts[i], order(), QString("facts[%1]").arg(i)));
    return record;
}

Result<RecordReport> JobSession::record(const QString &part, const FactObjects &facts)
{
    const QString old = corrects(part);
    LOOPWRIGHT_ASSIGN(auto read, this->read(facts, part));
    const QString recordedIn = read.order;
    const QString place = tr("the page");
    auto report = old.isEmpty() ? recordFacts(records(), std::move(read), place)
                                : correctFact(records(), old, std::move(read), place);
    if (!report)
        return report;
    QStringList sentences;
    if (!old.isEmpty())
        sentences << tr("It takes the place of the entry that it corrects.");
    keepDraft(part, {});
    if (recordedIn != order().number)
        sentences << tr("It stands with order %1, where the visit began.").arg(recordedIn);
    for (const Finding &finding : report->told)
        sentences << localized(finding.reason);
    wasChanged(sentences.isEmpty() ? tr("Recorded.") : tr("Recorded. %1").arg(sentences.join(' ')));
    return report;
}

Result<void> JobSession::voidFact(const QString &id, const QString &because)
{
    LOOPWRIGHT_TRY(loopwright::voidFact(records(), id, because));
    wasChanged(tr("It no longer counts. The entry stays on record with your reason."));
    return {};
}

void JobSession::wasChanged(const QString &sentence)
{
    if (auto reloaded = reload(); !reloaded) {
        emit troubled(tr("It was recorded, but the order cannot be read anew: %1")
                          .arg(localized(reloaded.error())));
        return;
    }
    emit said(sentence);
    emit changed();
}

QString JobSession::corrects(const QString &part) const
{
    return m_drafts.value(part).value(correctsKey).toString();
}

void JobSession::setCorrects(const QString &part, const Fact &fact, const QStringList &asked)
{
    QJsonObject kept = fact.toJson();
    for (const char *key : {"installer", "instrument", "pair"}) // also that none was said
        kept.insert(key, kept.value(key).toString());
    for (const QString &key : QStringList{"id", "order"} + asked)
        kept.remove(key);
    QJsonObject content = m_drafts.value(part);
    content.insert(correctsKey, fact.id);
    content.insert(keptKey, kept);
    storeDraft(part, content);
}

/// The entry that corrects, with what it keeps of the old one; the others as they are.
Result<FactObjects> JobSession::withKept(const QString &part, FactObjects facts) const
{
    if (corrects(part).isEmpty() || facts.empty())
        return facts;
    const QJsonObject kept = m_drafts.value(part).value(keptKey).toObject();
    const auto same = std::ranges::find_if(facts, [&kept](const QJsonObject &each) {
        return each.value("kind") == kept.value("kind") &&
               each.value("quantity") == kept.value("quantity");
    });
    if (same == facts.end())
        return failure(ErrorCode::Refused,
                       tr("What corrects the recorded entry is empty; the old one stays."));
    for (auto it = kept.begin(); it != kept.end(); ++it)
        same->insert(it.key(), it.value());
    return facts;
}

void JobSession::keepDraft(const QString &part, const QJsonObject &content)
{
    QJsonObject whole = content;
    if (const QString old = corrects(part); !old.isEmpty() && !content.isEmpty())
        for (const QString &key : {correctsKey, keptKey})
            whole.insert(key, m_drafts.value(part).value(key));
    storeDraft(part, whole);
}

void JobSession::storeDraft(const QString &part, const QJsonObject &content)
{
    if (m_drafts.value(part) == content)
        return;
    m_workplace.drafts().keep(order().number, part, content);
    if (content.isEmpty())
        m_drafts.remove(part);
    else
        m_drafts.insert(part, content);
    if (part == runPart)
        emit runChanged();
}

} // namespace loopwright
