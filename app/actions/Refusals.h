#pragma once
// Why orders are refused, all of them together, so that none is found out after another.

#include "core/base/Result.h"

#include <QStringList>

#include <optional>

namespace loopwright {

class Refusals
{
public:
    /// Whether an error speaks of one order, and was told before anything of it was written.
    static bool isOfOne(ErrorCode code)
    {
        return code == ErrorCode::BadInput || code == ErrorCode::NotFound ||
               code == ErrorCode::Refused || code == ErrorCode::OrderOut;
    }

    /// The error itself if it is none of the order's: it ends the work.
    Result<void> note(const Result<void> &done)
    {
        if (done)
            return {};
        if (!isOfOne(done.error().code))
            return failure(done.error());
        if (!m_first)
            m_first = done.error();
        if (!m_reasons.contains(done.error().message))
            m_reasons << done.error().message;
        return {};
    }

    /// `last`: what is said once, after them.
    Result<void> answer(const QString &last = {}) const
    {
        if (!m_first)
            return {};
        QStringList said = m_reasons.mid(0, reasonsTold);
        if (m_reasons.size() > reasonsTold)
            said << QString("And %1 more.").arg(m_reasons.size() - reasonsTold);
        if (!last.isEmpty())
            said << last;
        return failure(m_first->code, said.join(' '), m_first->place);
    }

private:
    static constexpr qsizetype reasonsTold = 8;
    std::optional<Error> m_first;
    QStringList m_reasons;
};

} // namespace loopwright
