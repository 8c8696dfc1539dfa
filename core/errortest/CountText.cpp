#include "core/errortest/CountText.h"

namespace loopwright {

namespace {

struct Word
{
    Counted what;
    const char *one, *many;
};

// In the order of the enumeration.
constexpr Word words[] = {
    {Counted::Bit, "%n bit", QT_TRANSLATE_N_NOOP("core", "%n bits")},
    {Counted::Octet, "%n octet", QT_TRANSLATE_N_NOOP("core", "%n octets")},
    {Counted::Error, "%n error", QT_TRANSLATE_N_NOOP("core", "%n errors")},
    {Counted::BitError, "%n bit error", QT_TRANSLATE_N_NOOP("core", "%n bit errors")},
    {Counted::Second, "%n second", QT_TRANSLATE_N_NOOP("core", "%n seconds")},
    {Counted::Minute, "%n minute", QT_TRANSLATE_N_NOOP("core", "%n minutes")},
    {Counted::ErroredSecond, "%n errored second",
     QT_TRANSLATE_N_NOOP("core", "%n errored seconds")},
    {Counted::SeverelyErroredSecond, "%n severely errored second",
     QT_TRANSLATE_N_NOOP("core", "%n severely errored seconds")},
    {Counted::UnavailableSecond, "%n unavailable second",
     QT_TRANSLATE_N_NOOP("core", "%n unavailable seconds")},
    {Counted::SevereOrUnavailableSecond, "%n severely errored or unavailable second",
     QT_TRANSLATE_N_NOOP("core", "%n severely errored or unavailable seconds")},
    {Counted::LossOfSync, "%n loss of synchronisation",
     QT_TRANSLATE_N_NOOP("core", "%n losses of synchronisation")},
    {Counted::Slip, "%n slip", QT_TRANSLATE_N_NOOP("core", "%n slips")},
};

} // namespace

Text countText(qint64 count, Counted what)
{
    const Word &word = words[std::size_t(what)];
    Q_ASSERT(word.what == what);
    return Text::counted(word.one, word.many, count);
}

} // namespace loopwright
