#pragma once
// What was recorded for a part of the job, newest first; earlier attempts and voided entries stay.
// Up and Down walk. For the entry that is chosen: "Correct" (C) asks for its form to be filled with
// it, "Does not count" (Delete) asks why, on the line below.

#include "app/desktop/widgets/SignList.h"

#include <QLineEdit>
#include <QPushButton>

namespace loopwright {

/// One entry as the list shows it; what its status is, is the caller's to say.
struct Attempt
{
    QString fact; ///< id
    Status status = Status::Note;
    QString text;
    bool mayVoid = false;
    bool mayCorrect = false;
};

class AttemptList : public QWidget
{
    Q_OBJECT
public:
    /// Object names begin with `part`.
    explicit AttemptList(const QString &part, QWidget *parent = nullptr);

    /// Newest first. Only the first few are shown until more are asked for.
    void show(std::vector<Attempt> attempts);
    /// Id of the entry that is chosen; empty where none is.
    QString chosen() const { return m_list->chosen(); }
    int count() const { return int(m_attempts.size()); }
    bool has(const QString &fact) const;
    /// Chooses the entry and takes the keyboard; false where it is not of this list.
    bool goTo(const QString &fact);
    /// Why an entry could not be voided.
    void tell(const QString &reason);

signals:
    void voidWished(const QString &fact, const QString &because);
    void correctWished(const QString &fact);

protected:
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    void makeQuestion(const QString &part);
    const Attempt *chosenAttempt() const;
    void showRows();
    void showActions();
    void askWhy();
    void leaveQuestion();
    void correct();

    std::vector<Attempt> m_attempts;
    bool m_all = false; ///< else only the newest few
    SignList *m_list;
    QWidget *m_actions;
    QPushButton *m_correct;
    QPushButton *m_void;
    QWidget *m_ask; ///< the question why, with its field
    QLineEdit *m_why;
    SignLine *m_told;
};

} // namespace loopwright
