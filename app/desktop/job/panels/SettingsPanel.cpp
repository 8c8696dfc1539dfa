// The settings to program into test set and terminal, in large digits for reading aloud; a key that
// copies them, a card to print. Below, for the installer alone, the office's test lines.

#include "app/desktop/PrintDialogs.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"
#include "app/print/WorkSheets.h"
#include "core/order/OrderIdentifiers.h"

#include <QApplication>
#include <QClipboard>
#include <QShortcut>

namespace loopwright {

namespace {

std::vector<TerminalSetting> settingsOf(const ServiceOrder &order)
{
    const ProtocolVariant *variant = findVariant(order.variant);
    if (!variant)
        return {};
    const bool data = order.bServices().testFlag(Service::Data);
    return settingsToProgram(*variant, identifiersOf(order), data ? order.dataRate : 0);
}

bool isNumber(const QString &value)
{
    return std::ranges::count_if(value, [](QChar each) { return each.isDigit(); }) >= 3 &&
           std::ranges::none_of(value, [](QChar each) { return each.isLetter(); });
}

class SettingsPanel : public StationPanel
{
public:
    SettingsPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_findings(new SignList(key() + ".findings", tr("What is wrong with the settings")))
        , m_list(new QWidget)
        , m_testLines(new QWidget)
    {
        body()->addWidget(m_findings);
        m_findings->setStill();
        body()->addWidget(m_list);
        m_copy = makeButton(tr("Copy all (F6)"), key() + ".copy", [this] { copy(); });
        m_edit = makeButton(tr("Change the order…"), key() + ".edit",
                            [this] { emit this->desk().orderFormWished(); });
        body()->addWidget(makeButtonRow(
            {m_copy, makeButton(tr("Print the card…"), key() + ".print", [this] { print(); }),
             makeButton(tr("Save the card as PDF…"), key() + ".save", [this] { save(); }),
             m_edit}));
        m_told = new SignLine;
        m_told->hide();
        body()->addWidget(m_told);
        body()->addWidget(m_testLines);
        auto *shortcut = new QShortcut(QKeySequence(Qt::Key_F6), this);
        shortcut->setContext(Qt::WindowShortcut);
        connect(shortcut, &QShortcut::activated, this, [this] { copy(); });
    }

    /// What is wrong with identifiers is mended in the order.
    QWidget *entry(const QString &) override
    {
        const Step *step = desk().step("identifiers");
        return step && step->isToDo() ? m_edit : m_copy;
    }

    void showOrder() override
    {
        StationPanel::showOrder();
        showFindings();
        fill(m_list, settingsOf(desk().order()), 15);
        std::vector<TerminalSetting> lines;
        for (const TestLine &line : desk().view().testLines)
            lines.push_back({line.label, line.number.forInstallersOnly()});
        fill(m_testLines, lines, 15,
             tr("Test lines of %1. For installers only: never on a customer's paper.")
                 .arg(desk().view().office.name));
        m_testLines->setVisible(!lines.empty());
    }

protected:
    std::pair<Status, QString> standing() const override
    {
        const Step *step = desk().step("identifiers");
        if (step && step->isToDo())
            return {statusOf(step->state),
                    QString("%1: %2 %3")
                        .arg(stateName(step->state), step->because.english(), step->next.english())
                        .trimmed()};
        QStringList numbers;
        for (const TerminalSetting &setting : settingsOf(desk().order()))
            if (isNumber(setting.value))
                numbers << setting.value;
        numbers.removeDuplicates();
        return {step ? statusOf(step->state) : Status::NotNeeded, numbers.join(" · ")};
    }

private:
    void showFindings()
    {
        std::vector<SignItem> items;
        const auto add = [&items](Status sign, const QString &text) {
            items.push_back({{}, sign, {}, text});
        };
        for (const Finding &finding : checkOrderIdentifiers(desk().order()))
            add(loopwright::signOf(finding.severity),
                finding.reason +
                    (finding.repair.isEmpty() ? QString() : tr(" Repair: %1").arg(finding.repair)));
        for (const Conflict &conflict : desk().view().input.conflicts)
            add(Status::Failed, conflict.reason());
        m_findings->setItems(std::move(items));
    }

    static void fill(QWidget *holder, const std::vector<TerminalSetting> &settings, double columnEm,
                     const QString &head = {})
    {
        static const QString rowHead = QStringLiteral("Directory number");
        if (QLayout *old = holder->layout()) {
            clearLayout(old);
            delete old;
        }
        auto *grid = new FieldGrid(columnEm, holder);
        if (!head.isEmpty())
            grid->add(makeHeading(head), 0);
        for (const TerminalSetting &setting : settings) {
            auto *cell = new QWidget;
            auto *layout = new QVBoxLayout(cell);
            layout->setContentsMargins(0, 0, 0, 0);
            layout->setSpacing(0);
            layout->addWidget(makeMuted(setting.name));
            auto *value = makeText(setting.value);
            const bool number = isNumber(setting.value);
            whenThemed(value, [value, number] {
                value->setFont(number ? digitsFont(1.7, QFont::Bold)
                                      : sized(1.15, QFont::DemiBold));
            });
            layout->addWidget(value);
            layout->addStretch(1);
            // Each terminal in a row of its own: its number never stands beside another's SPID.
            grid->add(cell, number && setting.value.size() > 14 ? 2 : 1,
                      number && setting.name.startsWith(rowHead));
        }
    }

    Sheet card() const
    {
        return settingsCard(desk().order(), desk().view().office.name, localPaper());
    }

    void tell(Status sign, const QString &text)
    {
        m_told->show(sign, text);
        m_told->setVisible(true);
    }

    void copy()
    {
        QStringList lines;
        for (const TerminalSetting &setting : settingsOf(desk().order()))
            lines << setting.name + ": " + setting.value;
        QApplication::clipboard()->setText(lines.join(u'\n'));
        tell(Status::Done, tr("Copied: %1 settings.").arg(lines.size()));
    }

    void print()
    {
        if (const auto printed = printSheet(this, card()); !printed)
            tell(Status::Failed, printed.error().text());
    }

    void save()
    {
        const auto path = saveSheet(
            this, card(), QString("settings-%1.pdf").arg(desk().order().number), desk().now());
        if (!path)
            tell(Status::Failed, path.error().text());
        else if (!path->isEmpty())
            tell(Status::Done, tr("Saved as %1.").arg(*path));
    }

    SignList *m_findings;
    QWidget *m_list;
    QWidget *m_testLines;
    QPushButton *m_copy;
    QPushButton *m_edit;
    SignLine *m_told;
};

} // namespace

StationPanel *makeSettingsPanel(const PanelInfo &info, JobSession &desk)
{
    return new SettingsPanel(info, desk);
}

} // namespace loopwright
