#include "core/identifiers/CountryCodes.h"

#include <QString>

#include <algorithm>
#include <iterator>

namespace loopwright {

namespace {

// World zones 1 and 7 are one plan each. In the other zones these codes have two digits, all else
// has three.
constexpr int twoDigitCodes[] = {20, 27, 30, 31, 32, 33, 34, 36, 39, 40, 41, 43, 44, 45, 46,
                                 47, 48, 49, 51, 52, 53, 54, 55, 56, 57, 58, 60, 61, 62, 63,
                                 64, 65, 66, 81, 82, 84, 86, 90, 91, 92, 93, 94, 95, 98};

constexpr int zeroInside[] = {
    20,  27,  31,  32,  33,  40,  41,  43,  44,  46,  49,  51,  53,  54,  55,  57,  58,
    60,  61,  62,  63,  64,  66,  81,  82,  84,  86,  90,  91,  92,  93,  94,  95,  98,
    211, 212, 213, 218, 231, 232, 233, 234, 243, 249, 250, 251, 252, 254, 255, 256, 260,
    261, 262, 263, 264, 265, 291, 353, 355, 358, 359, 373, 374, 377, 380, 381, 382, 383,
    385, 386, 387, 389, 421, 423, 508, 590, 591, 593, 594, 595, 596, 598, 686, 850, 855,
    856, 880, 886, 961, 962, 963, 964, 966, 967, 970, 971, 972, 976, 977, 994, 995, 996};

bool isAsciiDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

} // namespace

int countryCodeLength(QStringView digits)
{
    if (digits.isEmpty() || !isAsciiDigit(digits[0]) || digits[0] == u'0')
        return 0;
    if (digits[0] == u'1' || digits[0] == u'7')
        return 1;
    const bool two = std::binary_search(std::begin(twoDigitCodes), std::end(twoDigitCodes),
                                        digits.left(2).toInt());
    const int length = two ? 2 : 3;
    return digits.size() < length ? 0 : length;
}

bool dialsZeroInside(QStringView country)
{
    return std::binary_search(std::begin(zeroInside), std::end(zeroInside), country.toInt());
}

} // namespace loopwright
