#pragma once
// The job that is open on the page: the order as it stands, its plan, the limits in force, with
// which instrument and by whom the entries are made, and the drafts of what is being typed. It is
// the one way from the page to the actions. Panels hand in the facts as the objects of a job
// record, which go through the same codec as a record file, so that page and file cannot differ.

#include "app/actions/Drafts.h"
#include "app/actions/Evidence.h"
#include "app/actions/LimitSets.h"
#include "app/actions/Orders.h"
#include "app/actions/Register.h"
#include "app/desktop/DesktopContext.h"

#include <QObject>

namespace loopwright {

/// A fact as an object of a job record, without id; `at` where it is not now.
using FactObjects = std::vector<QJsonObject>;

class JobSession : public QObject
{
    Q_OBJECT
public:
    explicit JobSession(DesktopContext &workplace, QObject *parent = nullptr);

    /// Reads the order, its limits and its drafts. NotFound where there is no such order.
    Result<void> open(const QString &number);
    /// Reads the order anew; the drafts stay as they are.
    Result<void> reload();
    bool isOpen() const { return m_view.has_value(); }

    const OrderView &view() const { return *m_view; }
    const ServiceOrder &order() const { return m_view->order; }
    const Decision &decision() const { return m_view->decision; }
    const LimitSet &limits() const { return m_limits; }
    /// Who has the order now, and what stations say otherwise of it.
    Records &records() const { return m_workplace.records(); }
    Moment now() const { return records().now(); }
    /// All of the register; read once until something is read anew. None if they cannot be read.
    const QList<Instrument> &instruments();
    void instrumentsChanged() { m_instruments.reset(); }

    /// The steps as they stand now for the person, the instrument and the path of the context, in
    /// the order of the work.
    const std::vector<Step> &steps() const { return m_steps; }
    /// Null if the order has no such need.
    const Step *step(const QString &need) const { return findStep(m_steps, need); }
    /// A hazard that was read and of which nobody said yet how it was closed.
    bool isStopped() const;

    /// Key of the person and of the instrument that new facts carry; kept as a draft of the order.
    QString installer() const { return m_context.value("installer").toString(); }
    QString instrument() const { return m_context.value("instrument").toString(); }
    /// The instrument becomes the one that this person used last.
    void setInstaller(const QString &key);
    /// Remembered for the person, whatever order is opened next.
    void setInstrument(const QString &key);
    /// Of the error test, as it was chosen; none: the usual one of the order.
    std::optional<Path> path() const;
    void setPath(Path path) { setContext("path", toText(path)); }

    /// The visit that is going on, for whichever line at the premises it was recorded.
    std::optional<Visit> visit() const;

    /// Reads facts as a record file is read, with what the part keeps of an entry that it corrects,
    /// and records nothing. The error's place begins with "facts[i]".
    Result<JobRecord> read(const FactObjects &facts, const QString &part = {}) const;
    /// Records them (in the place of what the part corrects; what ends a visit that was begun in
    /// another order, in that order) and drops the draft of the part; then everything is read anew.
    Result<RecordReport> record(const QString &part, const FactObjects &facts);
    /// What `part` records next takes the place of that fact, which is voided as "corrected". What
    /// the part does not ask for stays as it was recorded: time, person, instrument, pair, and
    /// every key but those `asked` for. Kept with the part's draft until it is recorded or emptied.
    void setCorrects(const QString &part, const Fact &fact, const QStringList &asked);
    /// Id of that fact; empty if the part corrects none.
    QString corrects(const QString &part) const;
    Result<void> voidFact(const QString &id, const QString &because);
    /// A dangerous voltage stands in a field and is not recorded yet: what to do; empty: none does.
    void setAlarm(const QString &alarm);
    QString alarm() const { return m_alarm; }
    /// For actions other than recording: reads anew and tells the page.
    void wasChanged(const QString &sentence);

    /// As they are kept now, also by what watches the runs. Part to content.
    Result<QMap<QString, QJsonObject>> drafts() const
    {
        return m_workplace.drafts().ofOrder(order().number);
    }
    QJsonObject draft(const QString &part) const { return m_drafts.value(part); }
    /// An empty content drops the draft (DraftKeeper).
    void keepDraft(const QString &part, const QJsonObject &content);

signals:
    void changed();                     ///< the view was read anew
    void contextChanged();              ///< installer, instrument or path; the plan is made anew
    void alarmed();                     ///< another alarm, or none any more
    void said(const QString &sentence); ///< what was done
    void troubled(const QString &sentence);   ///< what could not be done, and what was kept
    void runChanged();                        ///< the run of the order, as it is kept
    void orderFormWished();                   ///< the order itself is to be changed
    void evidenceWished(const QString &fact); ///< show this fact on the page
    void jobWished(const QString &number);    ///< another order at the premises

private:
    void storeDraft(const QString &part, const QJsonObject &content);
    void setContext(const QString &key, const QString &value);
    QString rememberedInstrument() const;
    void makePlan();
    QString orderFor(const FactObjects &facts) const;
    QJsonObject recordOf(const FactObjects &facts, bool corrects = false) const;
    Result<FactObjects> withKept(const QString &part, FactObjects facts) const;
    Result<JobRecord> readRecord(const QJsonObject &record) const;

    DesktopContext &m_workplace;
    std::optional<OrderView> m_view;
    LimitSet m_limits;
    std::optional<QList<Instrument>> m_instruments;
    std::vector<Step> m_steps; ///< point into the view
    QJsonObject m_context;
    QString m_alarm;
    QMap<QString, QJsonObject> m_drafts;
};

} // namespace loopwright
