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
    {Counted::Bit, QT_TRANSLATE_NOOP("core", "%n bit"), QT_TRANSLATE_NOOP("core", "%n bits")},
    {Counted::Octet, QT_TRANSLATE_NOOP("core", "%n octet"), QT_TRANSLATE_NOOP("core", "%n octets")},
    {Counted::Error, QT_TRANSLATE_NOOP("core", "%n error"), QT_TRANSLATE_NOOP("core", "%n errors")},
    {Counted::BitError, QT_TRANSLATE_NOOP("core", "%n bit error"),
     QT_TRANSLATE_NOOP("core", "%n bit errors")},
    {Counted::Second, QT_TRANSLATE_NOOP("core", "%n second"),
     QT_TRANSLATE_NOOP("core", "%n seconds")},
    {Counted::Minute, QT_TRANSLATE_NOOP("core", "%n minute"),
     QT_TRANSLATE_NOOP("core", "%n minutes")},
    {Counted::ErroredSecond, QT_TRANSLATE_NOOP("core", "%n errored second"),
     QT_TRANSLATE_NOOP("core", "%n errored seconds")},
    {Counted::SeverelyErroredSecond, QT_TRANSLATE_NOOP("core", "%n severely errored second"),
     QT_TRANSLATE_NOOP("core", "%n severely errored seconds")},
    {Counted::UnavailableSecond, QT_TRANSLATE_NOOP("core", "%n unavailable second"),
     QT_TRANSLATE_NOOP("core", "%n unavailable seconds")},
    {Counted::SevereOrUnavailableSecond,
     QT_TRANSLATE_NOOP("core", "%n severely errored or unavailable second"),
     QT_TRANSLATE_NOOP("core", "%n severely errored or unavailable seconds")},
    {Counted::LossOfSync, QT_TRANSLATE_NOOP("core", "%n loss of synchronisation"),
     QT_TRANSLATE_NOOP("core", "%n losses of synchronisation")},
    {Counted::Slip, QT_TRANSLATE_NOOP("core", "%n slip"), QT_TRANSLATE_NOOP("core", "%n slips")},
};

} // namespace

Text countText(qint64 count, Counted what)
{
    const Word &word = words[std::size_t(what)];
    Q_ASSERT(word.what == what);
    return Text::counted(word.one, word.many, count);
}

} // namespace loopwright
