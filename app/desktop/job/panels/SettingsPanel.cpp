// The settings to program into test set and terminal, in large digits for reading aloud; a key that
// copies them, a card to print. Below, for the installer alone, the office's test lines.

#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/CardPapers.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"
#include "core/order/OrderIdentifiers.h"

#include <QApplication>
#include <QClipboard>
#include <QRegularExpression>

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

/// "Directory number 2", in the language of the window.
QString settingName(const QString &english)
{
    static const QRegularExpression numbered("^(.+?)( \\d+)?$");
    const auto match = numbered.match(english);
    return localizedWord(match.captured(1)) + match.captured(2);
}

bool isNumber(const QString &value)
{
    return std::ranges::count_if(value, [](QChar each) { return each.isDigit(); }) >= 3 &&
           std::ranges::none_of(value, [](QChar each) { return each.isLetter(); });
}

/// Names and values, numbers in large digits. The cells that there are show what is new.
class SettingsGrid : public QWidget
{
public:
    explicit SettingsGrid(double columnEm)
        : m_grid(new FieldGrid(columnEm, this))
        , m_head(makeHeading({}))
    {
        m_grid->add(m_head, 0);
        m_head->hide();
        whenThemed(this, [this] {
            for (const Cell &cell : m_cells)
                dress(cell);
        });
    }

    enum class Words
    {
        OfTheProgram,
        Typed
    };

    void show(const std::vector<TerminalSetting> &settings, Words words, const QString &head = {})
    {
        static const QString rowHead = QStringLiteral("Directory number");
        m_head->setText(head);
        m_head->setVisible(!head.isEmpty());
        while (m_cells.size() < settings.size())
            addCell();
        for (std::size_t i = 0; i < m_cells.size(); ++i) {
            const Cell &cell = m_cells[i];
            cell.holder->setVisible(i < settings.size());
            if (i >= settings.size())
                continue;
            const auto &[name, value] = std::tie(settings[i].name, settings[i].value);
            const bool typed = words == Words::Typed;
            cell.name->setText(typed ? name : settingName(name));
            cell.value->setText(typed ? value : localizedSentence(value));
            dress(cell);
            // Each terminal in a row of its own: its number never stands beside another's SPID.
            const bool number = isNumber(value);
            m_grid->change(cell.holder, number && value.size() > 14 ? 2 : 1,
                           number && name.startsWith(rowHead));
        }
    }

private:
    struct Cell
    {
        QWidget *holder;
        QLabel *name, *value;
    };

    void addCell()
    {
        const Cell cell{new QWidget, makeMuted({}), makeText({})};
        auto *layout = new QVBoxLayout(cell.holder);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(0);
        layout->addWidget(cell.name);
        layout->addWidget(cell.value);
        layout->addStretch(1);
        m_grid->add(cell.holder);
        m_cells.push_back(cell);
    }

    static void dress(const Cell &cell)
    {
        cell.value->setFont(isNumber(cell.value->text()) ? digitsFont(1.7, QFont::Bold)
                                                         : sized(1.15, QFont::DemiBold));
    }

    FieldGrid *m_grid;
    QLabel *m_head;
    std::vector<Cell> m_cells;
};

class SettingsPanel : public StationPanel
{
public:
    SettingsPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_findings(new SignList(key() + ".findings", tr("What is wrong with the settings")))
        , m_list(new SettingsGrid(15))
        , m_testLines(new SettingsGrid(15))
    {
        body()->addWidget(m_findings);
        m_findings->setStill();
        body()->addWidget(m_list);
        m_copy = makeButton(tr("Copy all (F6)"), key() + ".copy", [this] { copy(); });
        m_edit = makeButton(tr("Change the order…"), key() + ".edit",
                            [this] { emit this->desk().orderFormWished(); });
        QPushButton *card = makeButton(tr("Print the card…"), key() + ".print", [this] {
            tell(printCard(this, this->desk(), CardKind::Settings));
        });
        offerPrint(this, card);
        body()->addWidget(makeButtonRow(
            {m_copy, card,
             makeButton(tr("Save the card as PDF…"), key() + ".save",
                        [this] { tell(saveCard(this, this->desk(), CardKind::Settings)); }),
             m_edit}));
        m_told = new SignLine;
        m_told->hide();
        body()->addWidget(m_told);
        body()->addWidget(m_testLines);
        addKey(this, {QString(key() + ".copy_key"), m_copy->text(), {QKeySequence(Qt::Key_F6)}},
               [this] { copy(); })
            ->setShortcutContext(Qt::WindowShortcut);
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
        m_list->show(settingsOf(desk().order()), SettingsGrid::Words::OfTheProgram);
        std::vector<TerminalSetting> lines;
        for (const TestLine &line : desk().view().testLines)
            lines.push_back({line.label, line.number.forInstallersOnly()});
        m_testLines->show(lines, SettingsGrid::Words::Typed,
                          tr("Test lines of %1. For installers only: never on a customer's paper.")
                              .arg(desk().view().office.name));
        m_testLines->setVisible(!lines.empty());
    }

protected:
    std::pair<Status, QString> standing() const override
    {
        const Step *step = desk().step("identifiers");
        if (step && step->isToDo())
            return {statusOf(step->state), QString("%1: %2 %3")
                                               .arg(stateName(step->state),
                                                    localized(step->because), localized(step->next))
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
                localized(finding.reason) +
                    (finding.repair.isEmpty() ? QString() : tr(" Repair: %1").arg(finding.repair)));
        for (const Conflict &conflict : desk().view().input.conflicts)
            add(Status::Failed, localized(conflict.reason()));
        m_findings->setItems(std::move(items));
    }

    void tell(Status sign, const QString &text) { m_told->tell(sign, text); }

    void copy()
    {
        QStringList lines;
        for (const TerminalSetting &setting : settingsOf(desk().order()))
            lines << settingName(setting.name) + ": " + localizedSentence(setting.value);
        QApplication::clipboard()->setText(lines.join(u'\n'));
        tell(Status::Done, tr("Copied: %1 settings.").arg(lines.size()));
    }

    void tell(const CardTold &told)
    {
        if (!told.sentence.isEmpty())
            tell(told.sign, told.sentence);
    }

    SignList *m_findings;
    SettingsGrid *m_list;
    SettingsGrid *m_testLines;
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
