#pragma once
// Says what the columns of somebody else's file stand for: each beside its first rows, with ours to
// choose; below, the words that are other than ours. Can be saved as JSON and loaded from it.

#include "app/desktop/screens/ImportKinds.h"

#include <QDialog>

class QComboBox;
class QPushButton;
class QStandardItemModel;

namespace loopwright {

class SignLine;
class Table;

class ColumnMapDialog : public QDialog
{
    Q_OBJECT
public:
    ColumnMapDialog(const ImportKind &kind, ImportHead head, const ColumnMap &proposed,
                    QWidget *parent);

    /// As it is chosen.
    ColumnMap map() const;
    /// Chooses what it says.
    void take(const ColumnMap &map);

    void saveTo(const QString &path);
    void loadFrom(const QString &path);

private:
    QWidget *makeColumns();
    QWidget *makeWords();
    QWidget *makeButtons();
    QComboBox *chooserOf(int row) const;
    void columnChosen();
    void showWords();
    void addWord(const QString &ours, const QString &value);
    QStringList wordsLeft() const;
    void check();
    /// Empty if the file can be read so.
    QString trouble() const;

    const ImportKind &m_kind;
    ImportHead m_head;
    QMap<QString, QMap<QString, QString>> m_values; ///< of ours: theirs to ours, as it was chosen

    QStandardItemModel *m_columnRows, *m_wordRows;
    Table *m_columns = nullptr, *m_words = nullptr;
    QWidget *m_wordBox = nullptr;
    SignLine *m_state = nullptr;
    QPushButton *m_use = nullptr;
};

} // namespace loopwright
