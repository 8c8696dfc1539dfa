#include "app/desktop/models/FindingModel.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/SignLine.h"

namespace loopwright {

namespace {

constexpr const char *columnNames[FindingModel::ColumnCount] = {
    QT_TRANSLATE_NOOP("FindingModel", "Row"),    QT_TRANSLATE_NOOP("FindingModel", "Column"),
    QT_TRANSLATE_NOOP("FindingModel", "What"),   QT_TRANSLATE_NOOP("FindingModel", "Code"),
    QT_TRANSLATE_NOOP("FindingModel", "Reason"), QT_TRANSLATE_NOOP("FindingModel", "Repair")};

QString textOf(const Finding &finding, int column)
{
    switch (column) {
    case FindingModel::Row:
        return finding.row > 0 ? QString::number(finding.row) : QString();
    case FindingModel::Field:
        return finding.field;
    case FindingModel::SeverityWord:
        return severityName(finding.severity);
    case FindingModel::Code:
        return finding.code;
    case FindingModel::Reason:
        return finding.reason;
    case FindingModel::Repair:
        return finding.repair;
    default:
        return {};
    }
}

} // namespace

void FindingModel::show(Findings findings)
{
    beginResetModel();
    m_findings = std::move(findings);
    endResetModel();
}

int FindingModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_findings.size());
}

int FindingModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant FindingModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const Finding &finding = m_findings[std::size_t(index.row())];
    if (role == Qt::DisplayRole)
        return textOf(finding, index.column());
    if (role == Qt::ToolTipRole)
        return finding.reason;
    if (role == Qt::DecorationRole && index.column() == SeverityWord) {
        const Sign sign = signOf(finding.severity);
        return glyphIcon(shapeOf(sign), colourOf(sign), colours().base);
    }
    if (role == Qt::FontRole && index.column() == Repair)
        return digitsFont(0.96);
    return {};
}

QVariant FindingModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount)
        return {};
    if (role == Qt::DisplayRole)
        return tr(columnNames[section]);
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignLeft | Qt::AlignVCenter);
    return {};
}

} // namespace loopwright
