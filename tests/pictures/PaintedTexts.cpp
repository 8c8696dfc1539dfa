#include "tests/pictures/PaintedTexts.h"

#include <QBuffer>
#include <QPainter>
#include <QSvgGenerator>
#include <QWidget>
#include <QXmlStreamReader>

namespace loopwright {

QStringList paintedTexts(QWidget &widget)
{
    QBuffer svg;
    QSvgGenerator generator;
    generator.setOutputDevice(&svg);
    generator.setSize(widget.size());
    QPainter painter(&generator);
    widget.render(&painter);
    painter.end();
    QStringList texts;
    for (QXmlStreamReader reader(svg.data()); !reader.atEnd();)
        if (reader.readNext() == QXmlStreamReader::StartElement && reader.name() == u"text")
            texts << reader.readElementText();
    return texts;
}

} // namespace loopwright
