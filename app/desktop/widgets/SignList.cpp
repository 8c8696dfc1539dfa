#include "app/desktop/widgets/SignList.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/RowMenu.h"

#include <QAction>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QMenu>
#include <QScrollArea>
#include <QStyledItemDelegate>

#include <algorithm>

namespace loopwright {

namespace {

constexpr int wrapped = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;

int wrappedHeight(const QFont &font, int width, const QString &text)
{
    const QRect room(0, 0, std::max(1, width), 100'000);
    return text.isEmpty() ? 0 : QFontMetrics(font).boundingRect(room, wrapped, text).height();
}

QFont titleFont()
{
    return sized(1, QFont::DemiBold);
}

QMargins rowMargins()
{
    return {0, em(0.2), em(0.3), em(0.2)};
}

int signWidth(Status status)
{
    return status == Status::None ? 0 : em(1.5);
}

Status statusOf(const QModelIndex &index)
{
    return Status(index.data(SignModel::StatusRole).toInt());
}

class SignDelegate : public QStyledItemDelegate
{
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    bool links = false;

    int heightFor(const QModelIndex &index, int width) const
    {
        const QMargins margins = rowMargins();
        const int room = width - margins.left() - margins.right() - signWidth(statusOf(index));
        return margins.top() + margins.bottom() +
               wrappedHeight(titleFont(), room, index.data(SignModel::TitleRole).toString()) +
               wrappedHeight(sized(1), room, index.data().toString());
    }

    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override
    {
        const auto *view = qobject_cast<const QListView *>(option.widget);
        const int width = view ? view->viewport()->width() : option.rect.width();
        return {width, heightFor(index, width)};
    }

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override
    {
        const Colours &c = colours();
        const auto *view = qobject_cast<const QListView *>(option.widget);
        const bool strong = view && view->hasFocus() && view->currentIndex() == index;
        const Status status = statusOf(index);
        painter->save();
        if (strong)
            painter->fillRect(option.rect, c.selected);
        QRect room = option.rect.marginsRemoved(rowMargins());
        if (status != Status::None) {
            const double line = QFontMetricsF(sized(1)).height(), side = em(1);
            drawGlyph(*painter, shapeOf(status),
                      QRectF(room.left(), room.top() + (line - side) / 2, side, side),
                      strong && c.selected == c.accent ? c.onSelected : colourOf(status),
                      strong ? c.selected : c.base);
        }
        room.setLeft(room.left() + signWidth(status));
        const QString title = index.data(SignModel::TitleRole).toString();
        painter->setFont(titleFont());
        painter->setPen(strong ? c.onSelected : links ? c.accent : c.text);
        painter->drawText(room, wrapped, title);
        room.setTop(room.top() + wrappedHeight(titleFont(), room.width(), title));
        painter->setFont(sized(1));
        const bool quiet = status == Status::None || status == Status::NotNeeded;
        painter->setPen(strong ? c.onSelected : quiet ? c.muted : c.text);
        painter->drawText(room, wrapped, index.data().toString());
        painter->restore();
    }
};

SignDelegate *delegateOf(const QListView &view)
{
    return static_cast<SignDelegate *>(view.itemDelegate());
}

} // namespace

void SignModel::setItems(std::vector<SignItem> items)
{
    if (m_items == items)
        return;
    beginResetModel();
    m_items = std::move(items);
    endResetModel();
}

int SignModel::rowOf(const QString &key) const
{
    const auto found = std::ranges::find(m_items, key, &SignItem::key);
    return found == m_items.end() ? -1 : int(found - m_items.begin());
}

int SignModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_items.size());
}

QVariant SignModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const SignItem &item = m_items[std::size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return item.text;
    case Qt::AccessibleTextRole:
        return item.title.isEmpty() ? item.text : tr("%1: %2").arg(item.title, item.text);
    case Qt::ToolTipRole:
        return asTip(item.tip);
    case KeyRole:
        return item.key;
    case StatusRole:
        return int(item.status);
    case TitleRole:
        return item.title;
    default:
        return {};
    }
}

SignList::SignList(const QString &objectName, const QString &spoken, QWidget *parent)
    : QListView(parent)
    , m_model(new SignModel(this))
{
    setObjectName(objectName);
    setAccessibleName(spoken);
    setModel(m_model);
    setItemDelegate(new SignDelegate(this));
    setFrameShape(QFrame::NoFrame);
    viewport()->setAutoFillBackground(false);
    setEditTriggers(NoEditTriggers);
    setResizeMode(Adjust);
    setTabKeyNavigation(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(this, &QListView::doubleClicked, this, [this] { emit opened(chosen()); });
    connect(this, &QListView::clicked, this, [this] {
        if (delegateOf(*this)->links)
            emit opened(chosen());
    });
    whenThemed(this, [this] {
        scheduleDelayedItemsLayout();
        updateGeometry();
    });
    addCopyKey(this, [this] { copyRow(); });
    hide();
}

void SignList::setItems(std::vector<SignItem> items)
{
    const QString kept = chosen();
    m_model->setItems(std::move(items));
    choose(kept);
    setVisible(m_model->rowCount() > 0);
    updateGeometry();
}

QString SignList::chosen() const
{
    return currentIndex().data(SignModel::KeyRole).toString();
}

bool SignList::choose(const QString &key)
{
    const int row = m_model->rowOf(key);
    if (row < 0 || key.isEmpty())
        return false;
    setCurrentIndex(m_model->index(row));
    return true;
}

void SignList::setStill()
{
    setFocusPolicy(Qt::NoFocus);
    setSelectionMode(NoSelection);
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

void SignList::setLinks(bool on)
{
    delegateOf(*this)->links = on;
    viewport()->setCursor(on ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

int SignList::heightForWidth(int width) const
{
    int height = 0;
    for (int row = 0; row < m_model->rowCount(); ++row)
        height += delegateOf(*this)->heightFor(m_model->index(row), width);
    return height;
}

QSize SignList::sizeHint() const
{
    const int wide = std::max(width(), em(16));
    return {em(16), heightForWidth(wide)};
}

QSize SignList::minimumSizeHint() const
{
    return {em(8), em(1.4)};
}

void SignList::keyPressEvent(QKeyEvent *event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && currentIndex().isValid() && !(event->modifiers() & ~Qt::KeypadModifier)) {
        emit opened(chosen());
        return;
    }
    QListView::keyPressEvent(event);
}

void SignList::copyRow() const
{
    const QModelIndex row = currentIndex();
    if (row.isValid())
        QGuiApplication::clipboard()->setText(
            QStringList{row.data(SignModel::TitleRole).toString(), row.data().toString()}
                .join(u' ')
                .trimmed());
}

void SignList::contextMenuEvent(QContextMenuEvent *event)
{
    const QModelIndex at = rowOfMenu(*this, *event);
    if (!at.isValid())
        return;
    setCurrentIndex(at);
    QMenu *menu = makeRowMenu(this);
    QAction *copy = menu->addAction(tr("&Copy   Ctrl+C"));
    copy->setObjectName(QStringLiteral("copy.row"));
    connect(copy, &QAction::triggered, this, &SignList::copyRow);
    showRowMenu(menu, *this, *event, at);
}

void SignList::focusInEvent(QFocusEvent *event)
{
    QListView::focusInEvent(event);
    if (!currentIndex().isValid() && m_model->rowCount() > 0)
        setCurrentIndex(m_model->index(0));
}

void SignList::currentChanged(const QModelIndex &current, const QModelIndex &previous)
{
    QListView::currentChanged(current, previous);
    emit chosenChanged();
    for (QWidget *up = parentWidget(); up && hasFocus(); up = up->parentWidget())
        if (auto *area = qobject_cast<QScrollArea *>(up)) {
            const QPoint middle = viewport()->mapTo(area->widget(), visualRect(current).center());
            area->ensureVisible(middle.x(), middle.y(), 0, em(2));
            return;
        }
}

QScrollArea *makeListArea(SignList *list)
{
    auto *sheet = new QWidget;
    auto *column = new QVBoxLayout(sheet);
    column->addWidget(list);
    column->addStretch(1);
    QScrollArea *area = inScrollArea(sheet);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    whenThemed(area, [column] { column->setContentsMargins(em(0.3), em(0.3), em(0.3), em(0.3)); });
    return area;
}

} // namespace loopwright
