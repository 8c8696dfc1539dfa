#include "tests/pictures/EarlierPicture.h"

#include <QFile>
#include <QFileInfo>
#include <QPainter>

namespace loopwright {

namespace {

constexpr int frame = 3, gap = 16;

struct Difference
{
    QRect around;
    qint64 pixels = 0;
};

/// Where one is larger, what the other lacks differs.
Difference between(const QImage &earlier, const QImage &now)
{
    Difference found;
    const QSize size = earlier.size().expandedTo(now.size());
    const QRect both = earlier.rect() & now.rect();
    for (int y = 0; y < size.height(); ++y)
        for (int x = 0; x < size.width(); ++x)
            if (!both.contains(x, y) || earlier.pixel(x, y) != now.pixel(x, y)) {
                found.around |= QRect(x, y, 1, 1);
                ++found.pixels;
            }
    return found;
}

QImage sideBySide(const QImage &earlier, const QImage &now, const QRect &around)
{
    QImage both(earlier.width() + gap + now.width(), std::max(earlier.height(), now.height()),
                QImage::Format_RGB32);
    both.fill(Qt::gray);
    QPainter painter(&both);
    painter.setPen(QPen(Qt::red, frame));
    int left = 0;
    for (const QImage &each : {earlier, now}) {
        painter.drawImage(left, 0, each);
        painter.drawRect(around.translated(left, 0).adjusted(-frame, -frame, frame, frame));
        left += earlier.width() + gap;
    }
    return both;
}

void write(const QImage &picture, const QString &path)
{
    if (!picture.save(path))
        qFatal("%s cannot be written", qPrintable(path));
}

} // namespace

QString keepBesideEarlier(const QImage &picture, const QString &path)
{
    const QString changed = path.chopped(4) + ".changed.png";
    QFile::remove(changed);
    QImage earlier(path), now = picture.convertToFormat(QImage::Format_RGB32);
    earlier.convertTo(QImage::Format_RGB32);
    earlier.setDevicePixelRatio(1);
    now.setDevicePixelRatio(1);
    write(picture, path);
    if (earlier.isNull())
        return {};
    const Difference found = between(earlier, now);
    if (found.pixels == 0)
        return {};
    write(sideBySide(earlier, now, found.around), changed);
    const double percent = 100.0 * double(found.pixels) / (double(now.width()) * now.height());
    return QString("%1: %2 % is another, see %3")
        .arg(QFileInfo(path).completeBaseName())
        .arg(percent, 0, 'g', 2)
        .arg(changed);
}

} // namespace loopwright
