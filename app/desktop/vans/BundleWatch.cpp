#include "app/desktop/vans/BundleWatch.h"

#include "app/desktop/DesktopContext.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLocale>

#include <algorithm>

namespace loopwright {

namespace {

/// A folder on another machine tells no changes; it has to be looked into.
constexpr int lookEveryMs = 3000;
constexpr qsizetype mostNamed = 3;

QString namesOf(const QStringList &paths)
{
    QStringList names;
    for (const QString &path : paths.first(std::min(paths.size(), mostNamed)))
        names << QFileInfo(path).fileName();
    return names.join(QStringLiteral(", ")) +
           (paths.size() > mostNamed ? QStringLiteral(", …") : QString());
}

} // namespace

BundleWatch::BundleWatch(DesktopContext &workplace, QWidget *parent)
    : QFrame(parent)
    , m_asker(workplace.longWork())
    , m_words(new SignLine)
{
    setObjectName(QStringLiteral("bundle_watch"));
    setAccessibleName(tr("Bundles in the watched folder"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    m_words->setObjectName(QStringLiteral("bundle_watch.words"));
    auto *row = new QHBoxLayout(this);
    row->addWidget(m_words, 1, Qt::AlignVCenter);
    row->addWidget(makeButton(tr("Take in…"), QStringLiteral("bundle_watch.take_in"),
                              [this] { emit takeInWished(m_waiting); }));
    row->addWidget(makeButton(tr("Later"), QStringLiteral("bundle_watch.later"), [this] {
        m_later = m_waiting;
        tell();
    }));
    whenThemed(this, [row] { row->setContentsMargins(em(1), em(0.4), em(1), em(0.4)); });
    hide();
    connect(&m_timer, &QTimer::timeout, this, &BundleWatch::look);
}

void BundleWatch::watch(const QString &folder)
{
    if (folder == m_folder)
        return;
    m_asker.supersede();
    m_folder = folder;
    m_files.clear();
    m_waiting.clear();
    m_later.clear();
    m_isTroubled = false;
    tell();
    if (m_folder.isEmpty())
        m_timer.stop();
    else
        m_timer.start(lookEveryMs);
    look();
    emit folderChanged();
}

void BundleWatch::look()
{
    if (m_folder.isEmpty() || m_asker.isBusy())
        return;
    m_asker.ask<FolderLook>(
        [folder = m_folder, files = m_files](Records &records, const Progress &) {
            return lookInto(records, folder, files);
        },
        [this](const Result<FolderLook> &found) { showLook(found); });
}

void BundleWatch::showLook(const Result<FolderLook> &found)
{
    if (!found) {
        if (!m_isTroubled)
            emit troubled(tr("The watched folder: %1").arg(localized(found.error())));
        m_isTroubled = true;
        return;
    }
    m_isTroubled = false;
    m_files = found->files;
    if (m_waiting == found->waiting)
        return;
    m_waiting = found->waiting;
    tell();
}

void BundleWatch::tell()
{
    const bool isTold = std::ranges::any_of(
        m_waiting, [this](const QString &path) { return !m_later.contains(path); });
    setVisible(isTold);
    if (isTold)
        m_words->tell(Status::Open,
                      m_waiting.size() == 1
                          ? tr("A bundle lies in the watched folder: %1.").arg(namesOf(m_waiting))
                          : tr("%1 bundles lie in the watched folder: %2.")
                                .arg(QLocale().toString(m_waiting.size()), namesOf(m_waiting)));
}

} // namespace loopwright
