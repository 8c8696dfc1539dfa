#pragma once
// A bundle in one file or in several, a number of orders in each.

#include "app/trust/BundleFile.h"

#include <QStringList>

namespace loopwright {

/// `outline` with the orders, `split` in one part at most; 0: all in one.
std::vector<BundleFile> signedParts(const Bundle &outline, std::vector<BundledOrder> orders,
                                    int split, const SigningKey &key);
/// The orders of bundles that writing these would write over, and that are in none of these.
QStringList writtenOver(const QString &out, const std::vector<BundleFile> &files);
/// "van.json", or in parts "van-1.json", "van-2.json", …: the names that were written.
Result<QStringList> writeParts(const QString &out, const std::vector<BundleFile> &files);

} // namespace loopwright
