#pragma once
// In the van: what the office handed out comes into the van's records.

#include "app/actions/BundleAnswer.h"

namespace loopwright {

/// Each file by itself, each order whole or not at all. The first one that is opened says to which
/// office the van belongs, and by its issuer who else is believed. Where that issuer has a new key,
/// nothing that is signed proves it: `newIssuer` is its fingerprint as the office read it out, in
/// groups or not. BadInput if that is none. Refused when it is stopped; what is in stays.
Result<std::vector<TakenBundle>> openBundles(Records &records,
                                             const std::vector<BundleInput> &files,
                                             const QString &newIssuer = {},
                                             const Progress &progress = {});

/// The fingerprint of the issuer that the van works for: empty before it opened anything.
Result<QString> issuerOfOffice(const Database &database);

} // namespace loopwright
