#pragma once
// One part of the job page: what is needed, the entry, what was recorded. A panel is one file pair
// and one row in PanelTable.cpp. It shows what the desk holds and records through the desk; it
// knows no other panel.

#include "app/desktop/job/JobSession.h"
#include "app/desktop/widgets/SignLine.h"

#include <QFrame>

class QVBoxLayout;

namespace loopwright {

class AttemptList;
class Form;
class StationPanel;

struct PanelInfo
{
    const char *key; ///< stable; object names of its fields begin with it
    const char *title;
    Station station;      ///< of the job line
    const char *criteria; ///< keys that it provides evidence for, joined by blanks; "*": any other
    std::initializer_list<FactKind> kinds; ///< of fact that are listed under it
    bool measures; ///< on the pair: closed while the safety card reads a hazard
    bool (*applies)(const OrderView &view);
    StationPanel *(*make)(const PanelInfo &info, JobSession &desk);
};

class StationPanel : public QFrame
{
    Q_OBJECT
public:
    StationPanel(const PanelInfo &info, JobSession &desk, QWidget *parent = nullptr);

    const PanelInfo &info() const { return m_info; }
    QString key() const { return QString::fromLatin1(m_info.key); }
    /// The order was read anew.
    virtual void showOrder();
    /// The line below the title alone; what is typed or focused is not touched.
    void showNeed();
    /// Where the next entry of this part is made; for a criterion where it says which.
    virtual QWidget *entry(const QString &criterion) const = 0;
    /// Whether it provides evidence for the criterion.
    bool serves(const QString &criterion) const;
    AttemptList *attempts() const { return m_attempts; }
    /// Closes the entry with the reason, or opens it where there is none.
    void setStopped(const QString &why);

signals:
    void recorded(); ///< a step was confirmed; the page offers the next one

protected:
    JobSession &desk() const { return m_desk; }
    /// Entries for which `isOf` says yes can be corrected in this form.
    void correctIn(Form *form, std::function<bool(const Fact &)> isOf);
    /// Where a panel puts its entry, below what is needed and above what was recorded.
    QVBoxLayout *body() const { return m_body; }
    /// Criteria of this panel as they are decided now, in the order of the decision.
    std::vector<const CriterionResult *> ownCriteria() const;
    /// The line below the title; by default the first open criterion's reason and what is next.
    virtual std::pair<Status, QString> need() const;

private:
    struct Correcting
    {
        Form *form;
        std::function<bool(const Fact &)> isOf;
    };
    void showAttempts();
    const Correcting *correctingOf(const Fact &fact) const;
    void correct(const QString &fact);

    const PanelInfo &m_info;
    JobSession &m_desk;
    SignLine *m_need;
    SignLine *m_stop;
    QWidget *m_entry;
    QVBoxLayout *m_body;
    AttemptList *m_attempts;
    std::vector<Correcting> m_correcting;
};

/// The sign of a criterion, and the word that stands beside it.
Status signOf(const CriterionResult &criterion);
QString wordOf(const CriterionResult &criterion);

} // namespace loopwright
