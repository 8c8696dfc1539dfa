#include "app/desktop/widgets/FieldMark.h"

#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/PageElements.h"

#include <QAction>
#include <QComboBox>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

QString withoutKey(QString label)
{
    return label.remove(u'&');
}

} // namespace

FieldMark::FieldMark(const QString &label, QWidget *field, QWidget *parent)
    : QWidget(parent)
    , m_field(field)
    , m_label(new QLabel)
    , m_line(new SignLine)
    , m_repair(new QToolButton)
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addWidget(m_label);
    layout->addWidget(m_field);
    layout->addWidget(m_line);
    layout->addWidget(m_repair, 0, Qt::AlignLeft);
    // Beside a higher neighbour the label stays at the top, and a field that may grow grows.
    const bool grows = m_field->sizePolicy().expandingDirections().testFlag(Qt::Vertical);
    layout->setStretch(1, grows ? 1 : 0);
    if (!grows)
        layout->addStretch(1);
    m_label->setObjectName(QLatin1StringView(fieldLabelName));
    m_label->setWordWrap(true);
    m_label->setBuddy(m_field);
    setLabel(label);

    m_repair->setFocusPolicy(Qt::NoFocus); // Ctrl+R does it; Tab goes on to the next field
    m_repair->setObjectName(QStringLiteral("repair"));
    connect(m_repair, &QToolButton::clicked, this, &FieldMark::takeRepair);
    m_repairKey = addKey(this,
                         {QStringLiteral("repair.key"),
                          tr("Take the repair that is offered"),
                          {QKeySequence(Qt::CTRL | Qt::Key_R)},
                          tr("In a form")},
                         [this] { takeRepair(); });
    whenThemed(this, [this] {
        m_label->setFont(sized(0.92, QFont::DemiBold));
        m_line->setMinimumHeight(m_tight ? 0 : QFontMetrics(QApplication::font()).height());
    });
    showLine();
}

void FieldMark::setLabel(const QString &label)
{
    m_label->setText(label);
    if (m_field->accessibleName().isEmpty())
        m_field->setAccessibleName(withoutKey(label));
}

void FieldMark::setBeside(QWidget *widget)
{
    auto *column = static_cast<QBoxLayout *>(layout());
    const int place = column->indexOf(m_field);
    column->removeWidget(m_field);
    auto *row = new QHBoxLayout;
    row->addWidget(m_field, 1);
    row->addWidget(widget);
    column->insertLayout(place, row);
    setTabOrder(m_field, widget);
    whenThemed(widget, [row] { row->setSpacing(em(0.5)); });
}

void FieldMark::setBelow(QWidget *widget)
{
    static_cast<QBoxLayout *>(layout())->insertWidget(2, widget);
}

void FieldMark::setHint(const QString &hint, Status sign, const QString &spoken)
{
    m_hint = hint;
    m_spokenHint = spoken.isEmpty() ? hint : spoken;
    m_hintSign = sign;
    showLine();
}

void FieldMark::setTight(bool tight)
{
    m_tight = tight;
    m_line->setMinimumHeight(tight ? 0 : QFontMetrics(QApplication::font()).height());
    showLine();
}

void FieldMark::setFindings(const Findings &findings)
{
    if (m_findings == findings)
        return;
    m_findings = findings;
    std::ranges::stable_sort(
        m_findings, [](const Finding &a, const Finding &b) { return a.severity > b.severity; });
    showLine();
}

bool FieldMark::isInError() const
{
    return !m_findings.empty() && m_findings.front().severity == Severity::Error;
}

const Finding *FieldMark::repairable() const
{
    const auto found = std::ranges::find_if(
        m_findings, [](const Finding &finding) { return !finding.repair.isEmpty(); });
    return found == m_findings.end() ? nullptr : &*found;
}

void FieldMark::showLine()
{
    if (m_findings.empty())
        m_line->show(m_hintSign, m_hint);
    else
        m_line->show(signOf(m_findings.front().severity), localized(m_findings.front().reason));
    m_line->setVisible(!m_tight || !m_line->text().isEmpty());

    QStringList others;
    for (std::size_t i = 1; i < m_findings.size(); ++i)
        others << localized(m_findings[i].reason);
    m_line->setToolTip(asTip(others.join(u'\n')));
    // A screen reader hears the reason when the field takes the focus.
    m_field->setAccessibleDescription(
        m_findings.empty() ? m_spokenHint
                           : localizedWord(severityName(m_findings.front().severity)) + ": " +
                                 localized(m_findings.front().reason));

    const Finding *finding = repairable();
    m_repair->setVisible(finding != nullptr);
    m_repairKey->setEnabled(finding != nullptr);
    if (finding) {
        m_repair->setText(tr("Use %1   Ctrl+R").arg(finding->repair));
        m_repair->setAccessibleName(tr("Use %1 instead").arg(finding->repair));
    }
}

void FieldMark::takeRepair()
{
    const Finding *finding = repairable();
    if (!finding)
        return;
    const QString repaired = finding->repair;
    if (auto *edit = qobject_cast<QLineEdit *>(m_field)) {
        edit->setText(repaired);
        emit edit->textEdited(repaired);
    } else if (auto *combo = qobject_cast<QComboBox *>(m_field); combo && combo->isEditable()) {
        combo->setEditText(repaired);
    }
    emit repairTaken(repaired);
}

} // namespace loopwright
