#pragma once
// A list of sentences, each with its sign, as high as it is long: it scrolls with the page that it
// stands on. One stop of the Tab key; up and down walk, Enter, a double-click or, where the rows
// are links, a click opens.

#include "app/desktop/widgets/SignLine.h"

#include <QAbstractListModel>
#include <QListView>

#include <vector>

class QScrollArea;

namespace loopwright {

struct SignItem
{
    QString key;
    Status status = Status::None;
    QString title; ///< in bold above the text; may be empty
    QString text;
    QString tip = {}; ///< shown under the mouse

    bool operator==(const SignItem &) const = default;
};

class SignModel : public QAbstractListModel
{
    Q_OBJECT
public:
    enum Role
    {
        KeyRole = Qt::UserRole,
        StatusRole, ///< int of a Status
        TitleRole
    };
    using QAbstractListModel::QAbstractListModel;

    void setItems(std::vector<SignItem> items);
    const std::vector<SignItem> &items() const { return m_items; }
    int rowOf(const QString &key) const; ///< -1: none

    int rowCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;

private:
    std::vector<SignItem> m_items;
};

class SignList : public QListView
{
    Q_OBJECT
public:
    /// `spoken`: for a screen reader.
    SignList(const QString &objectName, const QString &spoken, QWidget *parent = nullptr);

    /// The current row stays current where its key is still there. Hidden while it is empty.
    void setItems(std::vector<SignItem> items);
    const std::vector<SignItem> &items() const { return m_model->items(); }
    /// Key of the current row; empty if there is none.
    QString chosen() const;
    /// Makes that row the current one; false if it is not there.
    bool choose(const QString &key);
    /// Only to be read: no stop of the Tab key, nothing opens.
    void setStill();
    /// One click opens, and the title is drawn as a link.
    void setLinks(bool on);
    /// The current row, into the clipboard.
    void copyRow() const;

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void opened(const QString &key);
    void chosenChanged();

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void contextMenuEvent(QContextMenuEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void currentChanged(const QModelIndex &current, const QModelIndex &previous) override;

private:
    SignModel *m_model;
};

/// The list where it does not scroll with a page: in an area of its own, in which the frame of the
/// focus has room.
QScrollArea *makeListArea(SignList *list);

} // namespace loopwright
