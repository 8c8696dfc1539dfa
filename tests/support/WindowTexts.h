#pragma once
// The texts of a window, and the figures among them that are written as in English.

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QTabWidget>

namespace loopwright {

inline void addCells(const QAbstractItemView &view, QStringList &texts)
{
    const QAbstractItemModel *model = view.model();
    if (!model)
        return;
    for (int column = 0; column < model->columnCount(view.rootIndex()); ++column) {
        texts << model->headerData(column, Qt::Horizontal).toString();
        for (int row = 0; row < std::min(model->rowCount(view.rootIndex()), 5); ++row) {
            const QModelIndex index = model->index(row, column, view.rootIndex());
            texts << index.data().toString() << index.data(Qt::AccessibleTextRole).toString()
                  << index.data(Qt::ToolTipRole).toString();
        }
    }
}

/// All that it says, shown or not.
inline QStringList textsOf(const QWidget &top)
{
    QStringList texts;
    for (const QAction *action : top.findChildren<QAction *>())
        texts << action->text();
    for (const QWidget *widget : top.findChildren<QWidget *>()) {
        texts << widget->toolTip() << widget->accessibleName() << widget->accessibleDescription()
              << widget->windowTitle();
        if (const auto *label = qobject_cast<const QLabel *>(widget))
            texts << label->text();
        if (const auto *button = qobject_cast<const QAbstractButton *>(widget))
            texts << button->text();
        if (const auto *box = qobject_cast<const QGroupBox *>(widget))
            texts << box->title();
        if (const auto *line = qobject_cast<const QLineEdit *>(widget))
            texts << line->placeholderText();
        if (const auto *view = qobject_cast<const QAbstractItemView *>(widget))
            addCells(*view, texts);
        if (const auto *combo = qobject_cast<const QComboBox *>(widget))
            for (int i = 0; i < combo->count(); ++i)
                texts << combo->itemText(i);
        if (const auto *tabs = qobject_cast<const QTabWidget *>(widget))
            for (int i = 0; i < tabs->count(); ++i)
                texts << tabs->tabText(i);
    }
    return texts;
}

/// What of a text in another language has the decimal point: no version or licence ("LGPL-2.1"),
/// paragraph of a law, moment as it is stored, file, number of a standard, nor a count whose
/// thousands are grouped ("12.345").
inline QStringList englishFigures(const QString &text)
{
    static const QRegularExpression exempt(
        "\\b\\d+\\.\\d+\\.\\d+\\b|CFR \\d+\\.\\d+|Code "
        "730\\.525|\\b663\\.3\\b|:\\d\\d\\.\\d+Z|“[^”]*”|„[^“]*“|\\S*/\\S*|"
        "(?<![\\d.,])[1-9]\\d{0,2}(?:\\.\\d{3})+(?![\\d.,])");
    static const QRegularExpression point("(?<![\\w.])(?<![A-Za-z]-|C0-)\\d+\\.\\d+\\S*");
    QStringList found;
    for (auto it = point.globalMatch(QString(text).remove(exempt)); it.hasNext();)
        found << it.next().captured();
    return found;
}

} // namespace loopwright
