#pragma once
// One terminal of an order: number, SPID with its parts drawn, TEI, and the services that its
// number answers.

#include "app/desktop/order/OrderFieldEdit.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

class SpidParts;

class TerminalEdit : public QWidget
{
    Q_OBJECT
public:
    /// `number` 1 to 8; its fields are the columns dn_1, spid_1, tei_1, dn_1_services.
    explicit TerminalEdit(int number, QWidget *parent = nullptr);

    int number() const { return m_number; }
    QList<OrderFieldEdit *> fields() const { return {m_dn, m_spid, m_tei, m_services}; }
    bool isEmpty() const;
    /// Shows what the variant has. Null: not known yet, everything is shown.
    void setVariant(const ProtocolVariant *variant);
    void showParts();

private:
    int m_number;
    const ProtocolVariant *m_variant = nullptr;
    QLabel *m_title;
    OrderFieldEdit *m_dn, *m_spid, *m_tei, *m_services;
    SpidParts *m_parts;
    QLabel *m_noSpid;
};

} // namespace loopwright
