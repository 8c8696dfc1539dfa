#pragma once
// The register: serving offices with their test lines (for installers; never on a paper for a
// customer), people, instruments with the day on which their calibration ends, and the limits in
// force with their sources. It is read here and changed by importing a file.

#include "app/desktop/Screen.h"

class QTabWidget;

namespace loopwright {

class TextTable;

class RegisterScreen : public Screen
{
    Q_OBJECT
public:
    explicit RegisterScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("register"); }
    QString title() const override { return tr("Register"); }
    void refresh() override;
    void takeFocus() override;

private:
    TextTable *addTable(const QString &key, const QString &name, const QString &emptyWords,
                        TextTable *model, std::vector<double> ems);
    QString chosenOffice() const;
    void showOffices();
    void showPeople();
    void showInstruments();
    void showLimits();

    QTabWidget *m_tabs;
    TextTable *m_offices;
    TextTable *m_people;
    TextTable *m_instruments;
    TextTable *m_limits;
};

} // namespace loopwright
