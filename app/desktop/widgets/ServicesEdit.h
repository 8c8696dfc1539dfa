#pragma once
// Which services a channel or a number has: one box each, read and written as "voice+data".

#include "core/order/Services.h"

#include <QCheckBox>
#include <QWidget>

namespace loopwright {

class ServicesEdit : public QWidget
{
    Q_OBJECT
public:
    /// Boxes for these services; their object names are "<name>.<service>".
    ServicesEdit(const QString &name, const QString &spoken, Services offered,
                 QWidget *parent = nullptr);

    QString text() const;
    /// Anything that is no list of services unticks all.
    void setText(const QString &text);

signals:
    void edited();

private:
    QList<std::pair<Service, QCheckBox *>> m_boxes;
};

} // namespace loopwright
