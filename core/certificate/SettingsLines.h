#pragma once
// What is programmed into the terminal equipment: numbers as they are read aloud and keyed, and the
// settings, each with one value.

#include "core/certificate/CertificateContent.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

/// What a channel or the line carries, for a person: "B1": "voice, data at 64 kbit/s".
std::vector<CertificateLine> serviceLines(const ServiceOrder &order);
/// The terminals of an order with their numbers and identifiers grouped for reading aloud.
std::vector<CertificateTerminal> terminalLines(const ServiceOrder &order);
/// What every terminal is programmed with: protocol variant, line, TEI, data rate, prefix, head
/// number and range; each with one value.
std::vector<CertificateLine> terminalSettings(const ServiceOrder &order);

} // namespace loopwright
