#pragma once
// A job that is not accepted, handed on: which part failed and how, whose part it is and whom to
// call, in large letters to read aloud, and as a page to print or to save. That it was handed on,
// and to whom, is recorded here.

#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"
#include "app/print/Sheet.h"
#include "core/acceptance/Handoff.h"

class QLabel;
class QPushButton;
class QTextBrowser;

namespace loopwright {

class Form;
class SheetView;

class HandoffScreen : public Screen
{
    Q_OBJECT
public:
    explicit HandoffScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("handoff"); }
    QString title() const override;
    void refresh() override;
    void open(const QString &order) override;
    void takeFocus() override;
    QJsonObject place() const override { return {{"order", m_order}}; }
    void restore(const QJsonObject &place) override { open(place.value("order").toString()); }

private:
    void showHandoff(const Result<Handoff> &handoff);
    void sayHandoff(const Handoff &handoff);
    void showWords();
    void addWords(const QString &head, const QString &text);
    void addSaid(const QString &head, const QString &english); ///< of core
    Form *makeReferral();
    bool recordReferral();
    void print();
    void save();

    Asker m_worker;
    QString m_order;
    Handoff m_handoff;
    Sheet m_sheet; ///< of it, for preview and file
    QLabel *m_heading;
    struct Words
    {
        QString head, text;
        bool isHazard = false;
    };
    std::vector<Words> m_said;
    Form *m_referral;
    QTextBrowser *m_words;
    QPushButton *m_print;
    QPushButton *m_save;
    SheetView *m_view;
};

} // namespace loopwright
