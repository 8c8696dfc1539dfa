#pragma once
// --anyway: what a van has is changed all the same (AtHome.h). One wording for every command that
// changes orders.

#include "app/actions/Records.h"
#include "app/cli/Options.h"

namespace loopwright {

class AnywayOption
{
public:
    void declare(Options &options)
    {
        options.flag("--anyway", m_on,
                     "Also what a van has, which will not know of it until it is home");
    }
    void tell(Records &records) const { records.changeWhatIsOut(m_on); }

private:
    bool m_on = false;
};

} // namespace loopwright
