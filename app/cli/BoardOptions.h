#pragma once
// The filters of the board as options, for the commands that list what it shows and that write it.

#include "app/actions/Board.h"
#include "app/cli/Options.h"

#include <array>

namespace loopwright {

class BoardOptions
{
public:
    /// `outFlag`: what the filter of what is out is called, where --out is a file.
    void declare(Options &options, const char *outFlag = "--out");
    /// What was asked for; Usage if two of the filters do not go together.
    Result<BoardFilter> filter() const;

private:
    static constexpr std::size_t facetOptions = 6, flagOptions = 4;

    BoardFilter m_filter; ///< what the options fill themselves
    std::array<QString, facetOptions> m_values;
    std::array<bool, flagOptions> m_flags{};
    bool m_late = false, m_atRisk = false, m_missed = false;
    QString m_sort;
    qint64 m_limit = -1;
};

} // namespace loopwright
