#pragma once
// A layout in columns of one width, as many as there is room for: fields keep their order and their
// edges stay in line at any size of window and letters. A field begins as much lower as its label
// (fieldLabelName) has fewer lines than others of its row, so that the fields stand in one line.

#include <QLayout>

#include <optional>
#include <vector>

namespace loopwright {

/// The object's name of a label that stands above a field, directly within what is laid out.
constexpr const char *fieldLabelName = "field.label";

class FieldGrid : public QLayout
{
    Q_OBJECT
public:
    /// `columnEm`: least width of a column in em (Theme.h).
    explicit FieldGrid(double columnEm = 13, QWidget *parent = nullptr);
    ~FieldGrid() override;

    /// `span`: over how many columns, or more where the widget needs them; 0: a row of its own.
    /// `newRow`: begins a row.
    void add(QWidget *widget, int span = 1, bool newRow = false);
    /// Another place for one that is there.
    void change(const QWidget *widget, int span, bool newRow);

    void addItem(QLayoutItem *item) override;
    int count() const override { return int(m_places.size()); }
    QLayoutItem *itemAt(int index) const override;
    QLayoutItem *takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override { return arrange({0, 0, width, 0}, false); }
    /// Of the label above its first field at this width, where it has one.
    std::optional<int> labelHeight(int width) const;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect &rect) override;

private:
    struct Place
    {
        QLayoutItem *item;
        int span = 1;
        bool newRow = false;
    };
    int columnsIn(int width) const;
    int arrange(const QRect &rect, bool apply) const;
    int arrangeRow(const std::vector<std::pair<QLayoutItem *, QRect>> &row, bool apply) const;

    double m_columnEm;
    std::vector<Place> m_places;
};

} // namespace loopwright
