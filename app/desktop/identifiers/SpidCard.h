#pragma once
// One SPID looked at closely: its parts, its verdict, every reason, and the repair where there is
// exactly one. And beside it what a cause value means.

#include "core/identifiers/ProtocolVariant.h"

#include <QFrame>

class QComboBox;
class QLineEdit;

namespace loopwright {

class FieldMark;
class SignLine;
class SpidParts;

class SpidCard : public QFrame
{
    Q_OBJECT
public:
    explicit SpidCard(QWidget *parent = nullptr);

    /// Looks at another SPID, as if it had been typed.
    void look(const QString &variant, const QString &spid, const QString &dn);
    QString variant() const;

signals:
    void variantChanged();

private:
    void check();

    QComboBox *m_variant;
    QLineEdit *m_spid;
    QLineEdit *m_dn;
    FieldMark *m_mark;
    SpidParts *m_parts;
    SignLine *m_verdict;
};

class CauseCard : public QFrame
{
    Q_OBJECT
public:
    explicit CauseCard(QWidget *parent = nullptr);

private:
    void lookUp();

    QLineEdit *m_number;
    SignLine *m_name;
    SignLine *m_first;
};

} // namespace loopwright
