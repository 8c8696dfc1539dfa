#pragma once
// Findings of a file as a table: row, column, severity, code, reason, repair.

#include "core/base/Finding.h"

#include <QAbstractTableModel>

namespace loopwright {

class FindingModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    enum Column
    {
        Row,
        Field,
        SeverityWord,
        Code,
        Reason,
        Repair,
        ColumnCount
    };

    explicit FindingModel(QObject *parent = nullptr)
        : QAbstractTableModel(parent)
    {
    }

    void show(Findings findings);

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    Findings m_findings;
};

} // namespace loopwright
