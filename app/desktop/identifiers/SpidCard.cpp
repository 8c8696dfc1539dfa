#include "app/desktop/identifiers/SpidCard.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SpidParts.h"
#include "core/identifiers/Spid.h"
#include "core/turnup/Cause.h"

#include <QComboBox>
#include <QLineEdit>

namespace loopwright {

namespace {

void dressCard(QFrame *card, QVBoxLayout *column)
{
    card->setAutoFillBackground(true);
    card->setBackgroundRole(QPalette::Base);
    outlineWhereFlat(card);
    whenThemed(card, [column] {
        column->setContentsMargins(em(1.1), em(0.9), em(1.1), em(0.9));
        column->setSpacing(em(0.5));
    });
}

} // namespace

SpidCard::SpidCard(QWidget *parent)
    : QFrame(parent)
    , m_variant(new QComboBox)
    , m_spid(new QLineEdit)
    , m_dn(new QLineEdit)
    , m_mark(new FieldMark(tr("SPID"), m_spid))
    , m_parts(new SpidParts)
    , m_verdict(new SignLine)
{
    m_variant->setObjectName(QStringLiteral("identifiers.variant"));
    m_variant->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    for (const ProtocolVariant &variant : allVariants())
        if (!variant.isAnalog)
            m_variant->addItem(
                QStringLiteral("%1 (%2)").arg(localizedWord(variant.name), variant.key),
                variant.key);
    m_spid->setObjectName(QStringLiteral("identifiers.spid"));
    m_dn->setObjectName(QStringLiteral("identifiers.dn"));
    m_verdict->setObjectName(QStringLiteral("identifiers.verdict"));
    m_parts->setTimes(1.25);
    auto *variant = new FieldMark(tr("Protocol variant"), m_variant);
    auto *dn = new FieldMark(tr("Directory number"), m_dn);
    dn->setHint(tr("may be left empty"));

    auto *column = new QVBoxLayout(this);
    dressCard(this, column);
    column->addWidget(makeHeading(tr("One SPID, taken apart"), 1.1));
    auto *fields = new QWidget;
    auto *grid = new FieldGrid(14, fields);
    grid->add(variant);
    grid->add(m_mark);
    grid->add(dn);
    column->addWidget(fields);
    column->addWidget(m_parts);
    column->addWidget(m_verdict);
    column->addStretch(1);
    whenThemed(m_spid, [this] {
        m_spid->setFont(digitsFont());
        m_dn->setFont(digitsFont());
    });
    connect(m_spid, &QLineEdit::textChanged, this, &SpidCard::check);
    connect(m_dn, &QLineEdit::textChanged, this, &SpidCard::check);
    connect(m_variant, &QComboBox::currentIndexChanged, this, [this] {
        check();
        emit variantChanged();
    });
    check();
}

QString SpidCard::variant() const
{
    return m_variant->currentData().toString();
}

void SpidCard::look(const QString &variant, const QString &spid, const QString &dn)
{
    const QSignalBlocker quiet(m_variant);
    if (const int known = m_variant->findData(variant); known >= 0)
        m_variant->setCurrentIndex(known);
    m_spid->setText(spid);
    m_dn->setText(dn);
    check();
}

void SpidCard::check()
{
    const ProtocolVariant *variant = findVariant(this->variant());
    const QString spid = m_spid->text().trimmed();
    m_mark->setHint(variant && variant->hasSpid() ? localizedSentence(variant->spidShapes)
                                                  : tr("this variant has no SPID"));
    if (!variant || spid.isEmpty()) {
        m_mark->clearFindings();
        m_parts->hide();
        m_verdict->show(Status::None, tr("Type one here, or choose a row of the list below."));
        return;
    }
    const SpidCheck result = checkSpid(*variant, spid, m_dn->text().trimmed());
    m_mark->setFindings(result.findings);
    m_parts->setCheck(result);
    m_parts->setVisible(!result.parts.empty());
    const QString words = localizedParts(result), verdict = localizedWord(result.verdict());
    const Status sign = result.worst() == Severity::Note ? Status::Done : signOf(result.worst());
    m_verdict->show(sign, words.isEmpty() ? verdict : QStringLiteral("%1: %2").arg(verdict, words));
}

CauseCard::CauseCard(QWidget *parent)
    : QFrame(parent)
    , m_number(new QLineEdit)
    , m_name(new SignLine)
    , m_first(new SignLine)
{
    m_number->setObjectName(QStringLiteral("identifiers.cause"));
    m_number->setMaxLength(3);
    m_name->setObjectName(QStringLiteral("identifiers.cause_name"));
    auto *mark = new FieldMark(tr("Cause value"), m_number);
    mark->setHint(tr("1 to 127, ITU-T Q.850"));
    auto *column = new QVBoxLayout(this);
    dressCard(this, column);
    column->addWidget(makeHeading(tr("What a cause means"), 1.1));
    column->addWidget(mark);
    column->addWidget(m_name);
    column->addWidget(m_first);
    column->addStretch(1);
    connect(m_number, &QLineEdit::textChanged, this, &CauseCard::lookUp);
    lookUp();
}

void CauseCard::lookUp()
{
    bool isNumber = false;
    const int number = m_number->text().trimmed().toInt(&isNumber);
    const auto cause = isNumber ? causeOf(number) : std::nullopt;
    m_first->setVisible(cause && !cause->checkFirst.isEmpty());
    if (m_number->text().trimmed().isEmpty())
        m_name->show(Status::None,
                     tr("The number that the switch or the test set shows when a call "
                        "or a layer fails."));
    else if (!cause)
        m_name->show(Status::Failed, tr("A cause is a number from 1 to 127."));
    else
        m_name->show(cause->inList ? Status::Note : Status::Doubtful,
                     QStringLiteral("%1 — %2 (%3)")
                         .arg(QString::number(cause->number), localized(cause->name),
                              localized(cause->classText)));
    if (cause)
        m_first->show(Status::None, tr("Check first: %1").arg(localized(cause->checkFirst)));
}

} // namespace loopwright
