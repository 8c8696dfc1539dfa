#include "app/desktop/RunNotices.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"

#include <QHBoxLayout>

namespace loopwright {

RunNotices::RunNotices(QWidget *parent)
    : QFrame(parent)
    , m_column(new QVBoxLayout(this))
{
    setObjectName(QStringLiteral("notices"));
    setAccessibleName(tr("Runs that are over"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    whenThemed(this, [this] {
        m_column->setContentsMargins(em(1), em(0.4), em(1), em(0.4));
        m_column->setSpacing(em(0.3));
    });
    hide();
}

void RunNotices::show(const QStringList &orders)
{
    for (auto it = m_lines.begin(); it != m_lines.end();) {
        if (orders.contains(it.key())) {
            ++it;
            continue;
        }
        it.value()->hide();
        it.value()->deleteLater(); // one of its buttons may be speaking
        it = m_lines.erase(it);
    }
    QStringList added;
    for (const QString &order : orders)
        if (!m_lines.contains(order)) {
            QWidget *line = makeLine(order);
            m_lines.insert(order, line);
            m_column->addWidget(line);
            line->show();
            added << order;
        }
    setVisible(!m_lines.isEmpty());
    for (const QString &order : std::as_const(added)) // once they can be seen
        m_lines[order]
            ->findChild<SignLine *>("notice." + order)
            ->tell(
                Status::Open,
                tr("The run of order %1 is over. Read the counters of the test set and record it.")
                    .arg(order));
}

QWidget *RunNotices::makeLine(const QString &order)
{
    auto *line = new QWidget;
    auto *row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    auto *words = new SignLine;
    words->setObjectName("notice." + order);
    row->addWidget(words, 1);
    row->addWidget(makeButton(tr("Open the run (F8)"), "notice.open." + order,
                              [this, order] { emit openWished(order); }));
    row->addWidget(makeButton(tr("Dismiss"), "notice.dismiss." + order,
                              [this, order] { emit dismissed(order); }));
    return line;
}

} // namespace loopwright
