#include "app/desktop/widgets/WorkBar.h"

#include "app/desktop/Lanes.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QHBoxLayout>
#include <QProgressBar>

namespace loopwright {

WorkBar::WorkBar(const QString &name, const QString &spoken, Asker &asker)
{
    setObjectName(name);
    QProgressBar *progress = makeProgress(name + ".progress", spoken, asker);
    QPushButton *stop = makeButton(tr("Stop"), name + ".stop", [&asker] { asker.stop(); });
    stop->setAutoDefault(false);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(progress, 1);
    row->addWidget(stop);
    whenThemed(this, [row] { row->setSpacing(em(0.7)); });
    connect(&asker, &Asker::busyChanged, this, [this, progress](bool busy) {
        progress->setRange(0, 0); // to and fro until it says how much there is
        setVisible(busy);
    });
    hide();
}

} // namespace loopwright
