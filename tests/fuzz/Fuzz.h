#pragma once
// The frame of the programs that throw damaged input at readers: any crash, hang, sanitizer report
// or broken promise ends them.
//
//   PROGRAM [EXECUTIONS [START [READER]]]
//
// Each execution draws its input from START plus its own number, so that one that fails can be
// repeated alone. Without a number of executions, or with 0, each reader is tried as often as its
// row says: that is the test that runs each time. A long run, under sanitizers, is made by hand.
// What is damaged is made by the reader, or one of its seeds (Seeds.h).

#include <QByteArray>

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <random>
#include <span>

namespace loopwright::fuzz {

using Random = std::mt19937_64;

inline const char *g_reader = "";
inline qint64 g_execution = 0;
inline QByteArray g_input; ///< as it was damaged last

inline void promise(bool kept, const char *what)
{
    if (kept)
        return;
    std::fprintf(stderr, "%s, execution %lld: %s\n%s\n", g_reader,
                 static_cast<long long>(g_execution), what,
                 g_input.left(100000).toPercentEncoding(" ,;:{}[]\"'/#|+=@\\").constData());
    std::abort();
}

inline qint64 below(Random &random, qint64 end)
{
    return end <= 0 ? 0 : qint64(random() % quint64(end));
}

template<std::size_t n>
QByteArray oneOf(Random &random, const char *const (&texts)[n])
{
    return texts[below(random, n)];
}

inline constexpr const char *tokens[] = {
    "0",
    "-1",
    "1e9",
    "9007199254740993",
    "64000",
    "64001",
    "0.5",
    "null",
    "true",
    "\"\"",
    "L",
    ",",
    ";",
    "\t",
    " ",
    "\n",
    "\r\n",
    "\"",
    "#",
    "{",
    "}",
    "[",
    "]",
    ":",
    "\xff",
    "\xc3\xa4",
    "\xEF\xBB\xBF",
    "second",
    "bit_errors",
    "sync_lost",
    "12:00:00",
    "23:59:59 PM",
    "2026-03-04T09:15:00Z",
    "99999999999999999999",
    "\\u0000",
    "seconds",
    "started",
    "ended",
    "B1",
    "D",
    "%1",
    "-0",
    "1e999",
    "\xED\xA0\x80", // half of a surrogate pair
    "\\uD800",
    "section",
    "26",
    "ni2",
    "01",
    "=1+1",
};

/// A few bytes changed, added, taken away, doubled, or cut off.
inline QByteArray damaged(QByteArray bytes, Random &random)
{
    for (int changes = int(below(random, 6)); changes > 0; --changes) {
        const qsizetype at = below(random, bytes.size() + 1);
        const qsizetype length = below(random, std::min<qint64>(40, bytes.size() - at + 1));
        switch (below(random, 7)) {
        case 0:
            if (at < bytes.size())
                bytes[at] = char(random());
            break;
        case 1:
            bytes.insert(at, oneOf(random, tokens));
            break;
        case 2:
            bytes.remove(at, length);
            break;
        case 3:
            bytes.replace(at, length, oneOf(random, tokens));
            break;
        case 4:
            bytes.insert(at, bytes.mid(below(random, bytes.size() + 1), length));
            break;
        case 5:
            bytes.insert(at, QByteArray(below(random, 300), char(random())));
            break;
        case 6:
            if (below(random, 4) == 0)
                bytes.truncate(at);
            break;
        }
    }
    return g_input = bytes;
}

struct Reader
{
    const char *name;
    void (*run)(Random &random);
    qint64 executions = 10'000; ///< of a run that names no number; fewer where each takes long
};

inline int runReaders(int argc, char **argv, std::span<const Reader> readers)
{
    const qint64 executions = argc > 1 ? std::atoll(argv[1]) : 0;
    const qint64 start = argc > 2 ? std::atoll(argv[2]) : 0;
    bool known = argc <= 3;
    for (const Reader &reader : readers) {
        if (argc > 3 && std::strcmp(argv[3], reader.name) != 0)
            continue;
        known = true;
        g_reader = reader.name;
        const qint64 count = executions > 0 ? executions : reader.executions;
        for (g_execution = start; g_execution < start + count; ++g_execution) {
            Random random{quint64(g_execution)};
            reader.run(random);
        }
        std::printf("%-10s %lld executions\n", reader.name, static_cast<long long>(count));
        std::fflush(stdout);
    }
    if (!known)
        std::fprintf(stderr, "there is no reader %s\n", argv[3]);
    return known ? 0 : 2;
}

} // namespace loopwright::fuzz
