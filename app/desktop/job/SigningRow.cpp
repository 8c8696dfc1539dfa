#include "app/desktop/job/SigningRow.h"

#include "app/desktop/Names.h"
#include "app/desktop/job/SignaturePad.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/PageElements.h"

#include <QVBoxLayout>

namespace loopwright {

SigningRow::SigningRow(const QString &part, QWidget *parent)
    : QWidget(parent)
    , m_signers{
          {"installer", new SignaturePad(tr("Signature of the installer")), new SignLine},
          {"customer", new SignaturePad(tr("Signature of the customer")), new SignLine},
      }
{
    auto *grid = new FieldGrid(22, this);
    for (const Signer &each : m_signers) {
        auto *cell = new QWidget;
        auto *layout = new QVBoxLayout(cell);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(makeHeading(each.pad->accessibleName()));
        layout->addWidget(each.pad);
        layout->addWidget(each.done);
        layout->addStretch(1);
        each.done->hide();
        each.pad->setObjectName(part + '.' + each.role);
        connect(each.pad, &SignaturePad::drawn, this, &SigningRow::edited);
        grid->add(cell);
    }
}

void SigningRow::setSigned(const Signatures &before, QDate today)
{
    for (Signer &each : m_signers) {
        const Signature *signature = signatureOf(before, each.role);
        each.hasSigned = signature;
        each.pad->setVisible(!signature);
        each.done->setVisible(signature);
        if (signature)
            each.done->show(Status::Done,
                            tr("Signed by %1 on %2.")
                                .arg(signature->name, dayText(signature->at.localDate(), today)));
    }
}

Signatures SigningRow::drawn(const QMap<QString, QString> &names, const Moment &now) const
{
    Signatures list;
    for (const Signer &each : m_signers)
        if (!each.hasSigned && !each.pad->strokes().empty())
            list.push_back({each.role, names.value(each.role), now, each.pad->strokes()});
    return list;
}

QWidget *SigningRow::emptyPad() const
{
    for (const Signer &each : m_signers)
        if (!each.hasSigned && each.pad->strokes().empty())
            return each.pad;
    return nullptr;
}

QString SigningRow::whoLacks() const
{
    QStringList roles;
    for (const Signer &each : m_signers)
        if (!each.hasSigned)
            roles << (each.role == u"installer" ? tr("the installer") : tr("the customer"));
    return roles.join(tr(" and "));
}

void SigningRow::clear()
{
    for (const Signer &each : m_signers)
        each.pad->setStrokes({});
}

QJsonObject SigningRow::strokes() const
{
    QJsonObject strokes;
    for (const Signer &each : m_signers)
        if (!each.pad->strokes().empty())
            strokes.insert(each.role, each.pad->strokesJson());
    return strokes;
}

void SigningRow::setStrokes(const QJsonObject &strokes)
{
    for (const Signer &each : m_signers)
        each.pad->setStrokes(SignaturePad::strokesOf(strokes.value(each.role)));
}

} // namespace loopwright
