#pragma once
// What E.164 country codes say about a number's form. Facts of the public numbering plans; a test
// compares them with the metadata of libphonenumber 8.12.

#include <QStringView>

namespace loopwright {

/// Length of the country code at the front of international digits: 1, 2 or 3; 0 if there is
/// none (no digits, a 0 in front, fewer digits than the code has).
int countryCodeLength(QStringView digits);

/// True if a 0 is dialled in front of a national number inside the country and is no part of it.
bool dialsZeroInside(QStringView country);

} // namespace loopwright
