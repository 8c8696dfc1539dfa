#pragma once
// What a text must not be, wherever it comes in: too long, with control characters, or no text at
// all in Unicode.

#include "core/base/Text.h"

#include <QByteArrayView>

namespace loopwright {

/// The whole of it: Qt takes a U+FEFF that a text begins with for the mark of a file, and drops it.
QString textFromUtf8(QByteArrayView utf8);

/// As spreadsheets save "Unicode text": by its byte-order mark, or by the empty octets of two Latin
/// letters. No file of the program is.
bool isUtf16(QByteArrayView bytes);

/// Empty, or what is wrong: "is longer than 200 characters", "holds a control character" (line
/// break and tab are allowed), "holds half a character" (an unpaired surrogate, which no UTF-8 can
/// hold). Lengths in UTF-16 code units.
Text textTrouble(QStringView text, qsizetype longest);

/// Of a name by which records are told apart: empty, or why another could be taken for it:
/// invisible or private characters, line breaks, a form that is written in two ways (Unicode NFKC,
/// so that a full-width letter is none), letters of two scripts (a Cyrillic one among Latin ones).
Text identifierTrouble(const QString &text);

} // namespace loopwright
