#include "app/desktop/widgets/ServicesEdit.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"

#include <QHBoxLayout>

namespace loopwright {

ServicesEdit::ServicesEdit(const QString &name, const QString &spoken, Services offered,
                           QWidget *parent)
    : QWidget(parent)
{
    setObjectName(name);
    setAccessibleName(spoken);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    for (const Service service : each(offered)) {
        auto *box = new QCheckBox(localizedWord(toText(service)));
        box->setObjectName(QStringLiteral("%1.%2").arg(name, toText(service)));
        box->setAccessibleName(QStringLiteral("%1 %2").arg(spoken, localizedWord(toText(service))));
        connect(box, &QCheckBox::clicked, this, &ServicesEdit::edited);
        row->addWidget(box);
        m_boxes.append({service, box});
    }
    row->addStretch(1);
    if (!m_boxes.isEmpty())
        setFocusProxy(m_boxes.front().second);
    whenThemed(this, [this, row] {
        row->setSpacing(em(0.9));
        setMinimumHeight(em(1.9));
    });
}

QString ServicesEdit::text() const
{
    Services services;
    for (const auto &[service, box] : m_boxes)
        services.setFlag(service, box->isChecked());
    return servicesText(services);
}

void ServicesEdit::setText(const QString &text)
{
    const Services services = servicesFromText(text).value_or(Services());
    for (const auto &[service, box] : m_boxes)
        box->setChecked(services.testFlag(service));
}

} // namespace loopwright
