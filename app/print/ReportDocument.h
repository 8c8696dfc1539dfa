#pragma once
// A report on paper: the picture, then the figures.

#include "app/print/BarPicture.h"
#include "app/print/Document.h"

namespace loopwright {

struct ReportContent
{
    BarPicture picture; ///< with title and sum
    QString says;       ///< what is counted
    struct Column
    {
        QString name;
        bool number = false; ///< set to the right
        double share = 1;    ///< of the width, beside the others'
        bool typed = false;  ///< keys, and what people wrote: said as it stands
    };
    std::vector<Column> columns;
    std::vector<QStringList> rows; ///< as many cells as columns
    QDate made;
};
doc::Document reportDocument(const ReportContent &report);

} // namespace loopwright
