#pragma once
// Lays widgets out like words: from left to right, and on a further row where there is no more
// room.

#include <QLayout>

namespace loopwright {

class FlowLayout : public QLayout
{
    Q_OBJECT
public:
    explicit FlowLayout(QWidget *parent = nullptr);
    ~FlowLayout() override;

    void addItem(QLayoutItem *item) override;
    int count() const override { return int(m_items.size()); }
    QLayoutItem *itemAt(int index) const override { return m_items.value(index); }
    QLayoutItem *takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect &rect) override;

private:
    /// Places the items where `place`, and answers with the height that they need.
    int flow(const QRect &rect, bool place) const;

    QList<QLayoutItem *> m_items;
};

} // namespace loopwright
