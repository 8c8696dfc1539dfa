#pragma once
// One part of the job page: what is needed, the entry, what was recorded. A part that is finished
// folds to one line with its result. A panel is one row in PanelTable.cpp. It shows what the
// session holds and records through the session; it knows no other panel and no rule.

#include "app/desktop/job/JobSession.h"
#include "app/desktop/widgets/SignLine.h"

#include <QFrame>

class QLabel;
class QVBoxLayout;

namespace loopwright {

class AttemptList;
class PanelTitle;
class StationPanel;
class StepEditor;

struct PanelInfo
{
    const char *title;
    /// The steps that it enters; none: the panel is no entry of evidence.
    std::optional<StepGroup> group;
    const char *ownKey;                   ///< of a panel without steps; else the group's word
    Station station;                      ///< of the job line
    std::initializer_list<FactKind> also; ///< kinds that are listed under it, beside its steps' own
    bool always;                          ///< also where it has no step
    StationPanel *(*make)(const PanelInfo &info, JobSession &desk);
    /// The editors of its steps; null: a form for each.
    std::vector<StepEditor *> (*editors)(JobSession &desk, const QString &panel) = nullptr;
    /// What stands above the entries; null: nothing.
    QWidget *(*above)(JobSession &desk, const QString &panel) = nullptr;
    /// How it stands in one line; null: as its steps do.
    std::pair<Status, QString> (*standing)(JobSession &desk) = nullptr;

    /// Stable; object names of its fields begin with it.
    QString key() const { return group ? toText(*group) : QString::fromLatin1(ownKey); }
};

class StationPanel : public QFrame
{
    Q_OBJECT
public:
    StationPanel(const PanelInfo &info, JobSession &desk, QWidget *parent = nullptr);

    const PanelInfo &info() const { return m_info; }
    QString key() const { return m_info.key(); }
    /// The order was read anew, or its plan was made anew; what is typed stays.
    virtual void showOrder();
    /// Where the next entry of this part is made; for a need where it enters that one.
    virtual QWidget *entry(const QString &need) = 0;
    /// Whether the widget belongs to the entry of the need.
    virtual bool enters(const QString &, const QWidget *) const { return false; }
    AttemptList *attempts() const { return m_attempts; }
    bool isFolded() const;
    /// Nothing where it was folded or unfolded by hand.
    void setFolded(bool folded);
    void unfold();
    /// Shows or hides what the part is for and what to do when it fails.
    void toggleHelp();
    /// Unfolds it and puts the keyboard at the entry; at its title where nothing can be entered
    /// now. Returns what has the keyboard.
    QWidget *takeKeyboard(const QString &need);

signals:
    void recorded(const QString &need); ///< confirmed; the page offers the next step

protected:
    JobSession &desk() const { return m_desk; }
    /// Where a panel puts its entry, below the title and above what was recorded.
    QVBoxLayout *body() const { return m_body; }
    /// How the part stands, in one line.
    virtual std::pair<Status, QString> standing() const = 0;
    /// Whether a recorded entry can be corrected here.
    virtual bool corrects(const Fact &) const { return false; }
    /// Fills the entry with it; returns what takes the keyboard.
    virtual QWidget *refill(const Fact &) { return nullptr; }
    virtual bool lists(const Fact &fact) const;

private:
    QWidget *makeHead();
    void fold(bool folded);
    void showAttempts();
    void correct(const QString &fact);

    const PanelInfo &m_info;
    JobSession &m_desk;
    PanelTitle *m_title;
    QLabel *m_help; ///< hidden until it is asked for: the work has the room
    SignLine *m_standing;
    QWidget *m_entry;
    QVBoxLayout *m_body;
    AttemptList *m_attempts;
    bool m_byHand = false;
};

/// The sign of a criterion, and the word that stands beside it.
Status signOf(const CriterionResult &criterion);
QString wordOf(const CriterionResult &criterion);

} // namespace loopwright
