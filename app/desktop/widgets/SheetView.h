#pragma once
// The pages of a sheet on the screen, as wide as there is room, one below the other. It is paper:
// black on white in every look.

#include "app/print/Sheet.h"

#include <QScrollArea>

namespace loopwright {

class SheetView : public QScrollArea
{
    Q_OBJECT
public:
    explicit SheetView(QWidget *parent = nullptr);

    using QScrollArea::show;
    /// `spoken`: the words of the sheet, for a screen reader.
    void show(const Sheet &sheet, const QString &spoken);
    int pages() const { return int(m_sheet.pages.size()); }

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    class Pages;
    void fit();

    Sheet m_sheet;
    Pages *m_pages;
};

} // namespace loopwright
