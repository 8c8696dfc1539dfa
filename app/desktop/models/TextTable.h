#pragma once
// A table of texts: what most lists of the program are. A row may have a sign in one of its cells,
// and a key by which it is opened.

#include "app/desktop/widgets/SignLine.h"

#include <QAbstractTableModel>
#include <QStringList>

#include <set>

namespace loopwright {

struct TextRow
{
    QStringList cells = {}; ///< as many as the header
    Status sign = Status::None;
    QString key = {};   ///< what opening the row opens; may be empty
    bool quiet = false; ///< done with: written in muted letters
    double bar = 0;     ///< what a BarDelegate draws, 0 to 1
};

class TextTable : public QAbstractTableModel
{
    Q_OBJECT
public:
    static constexpr int BarRole = Qt::UserRole + 1;

    /// `signColumn`: the cell that carries the sign, -1 for none; `digitColumns`: written in
    /// letters of one width.
    explicit TextTable(QStringList header, int signColumn = -1, std::set<int> digitColumns = {},
                       QObject *parent = nullptr);

    void show(std::vector<TextRow> rows);
    const TextRow &row(int row) const { return m_rows[std::size_t(row)]; }

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QStringList m_header;
    int m_signColumn;
    std::set<int> m_digitColumns;
    std::vector<TextRow> m_rows;
};

} // namespace loopwright
