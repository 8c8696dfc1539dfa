#pragma once
// Limits are data: each has a key, a value with its unit, what it is for in words, and where it
// comes from. A set has a version and a day from which it holds; it is never edited, only followed
// by another version.

#include "core/base/Json.h"

#include <QDate>
#include <QMap>

namespace loopwright {

struct Limit
{
    QString key;
    double value = 0;
    QString unit; ///< "s", "ohm", "dB", …; empty for a pure number
    QString name; ///< for a person, e.g. "DC resistance of the loop, at most"
    /// A text that could be read, "common practice", or "published equipment practice".
    QString source;
    /// Further texts whose bound excludes the value itself ("below 8.5"): named for what is off it.
    QString sourceBeyond = {};

    /// Where the bound comes from that a figure is held against.
    QString sourceFor(double figure) const;
    /// It names a text that was published, in the place of common practice or nothing.
    bool namesPublished() const;
};

class LimitSet
{
public:
    /// BadInput naming the place where a key is missing, doubled or of a wrong type, or where a
    /// limit that every set has is of another unit, negative, or contradicts its counterpart.
    static Result<LimitSet> fromJson(const QJsonObject &object, const QString &place);
    QJsonObject toJson() const;

    QString version() const { return m_version; }
    QDate validFrom() const { return m_validFrom; }
    bool has(const QString &key) const { return m_limits.contains(key); }
    /// The limit of this key; asking for one that no rule needs is a bug and asserts.
    const Limit &limit(const QString &key) const;
    double value(const QString &key) const { return limit(key).value; }
    QList<Limit> all() const { return m_limits.values(); }
    /// A limit of another value than in `published` must not go on naming the published text that
    /// has that one: BadInput naming the limit. It names another source, or none.
    Result<void> checkSources(const LimitSet &published) const;

private:
    QString m_version;
    QDate m_validFrom;
    QMap<QString, Limit> m_limits;
};

} // namespace loopwright
