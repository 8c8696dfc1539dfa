#pragma once
// A key that is twice in one JSON object: a reader keeps one of the two values and says
// nothing (RFC 8259 clause 4 leaves open which). Evidence with two values for one thing is none.

#include <QByteArray>

#include <optional>

namespace loopwright {

/// Where the second of two equal keys of an object begins. `json` must be valid JSON.
std::optional<qsizetype> repeatedKeyAt(const QByteArray &json);

} // namespace loopwright
