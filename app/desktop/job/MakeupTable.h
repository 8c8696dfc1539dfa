#pragma once
// The make-up of a pair as a small table, one element a row, from the office towards the customer:
// what it is, its wire, its length. Typed from left to right with Enter; the row behind the last
// one is always there and empty. It knows the form of a loop.json and nothing of its meaning: the
// codec judges.

#include <QJsonObject>
#include <QWidget>

#include <vector>

class QGridLayout;
class QLabel;
class QLineEdit;

namespace loopwright {

class KeyedChoice;
class SignLine;

class MakeupTable : public QWidget
{
    Q_OBJECT
public:
    /// Object names begin with `part`.
    explicit MakeupTable(const QString &part, QWidget *parent = nullptr);

    /// Content of a loop.json; empty where nothing is typed.
    QJsonObject makeup() const;
    /// What stands in the fields, for the draft.
    QJsonObject typed() const;
    void setTyped(const QJsonObject &typed);
    /// Fills the rows from the content of a loop.json.
    void setMakeup(const QJsonObject &makeup);
    void clear() { setTyped({}); }

    /// Marks the row that an error's place speaks of ("elements[2].length_ft"). False where none
    /// does.
    bool mark(const QString &place, const QString &reason);
    void clearMark();
    /// Somebody confirms: what is wrong is told, even if it was told before.
    void tellAnew();
    QWidget *firstEmpty() const;
    QWidget *firstField() const;

signals:
    void edited();
    void left();
    void entered(); ///< Enter in the empty row: the table is finished

protected:
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    struct Row
    {
        KeyedChoice *what;
        QLineEdit *wire;
        QLineEdit *length;
    };
    void addRow();
    void kindEdited(const Row &row);
    void ensureEmptyRow();
    void showWhatIsAsked(const Row &row);
    bool isEmpty(const Row &row) const;
    QJsonObject element(const Row &row) const;
    QString unclearAt(int row, const QString &place) const;
    void goOnFrom(QObject *editor);
    QLineEdit *makeEdit(const QString &name, const QString &accessibleName, const QString &sample);

    QString m_part;
    QGridLayout *m_grid;
    std::vector<Row> m_rows;
    QLineEdit *m_temperature = nullptr;
    SignLine *m_mark;
};

} // namespace loopwright
