#include "app/cli/Examples.h"

namespace loopwright {

namespace {

struct Example
{
    const char *words; ///< of the command
    const char *rest;  ///< what follows them
};

// Of the demo's records, so that whoever has run it can try each of them; tests do.
// clang-format off
constexpr Example examples[] = {
    {"check identifiers", "--in spids.csv --out checked.csv"},
    {"check identifiers", "--in - --json < spids.csv"},
    {"check spid", "--variant ni1-5ess 015550143001"},
    {"check spid", "--variant ni1-5ess --dn 5550143 015550143001"},
    {"check cause", "88"},
    {"analyse seconds", "run-seconds.csv --rate 64000"},
    {"analyse bound", "--errors 0 --bits 57600000 --target 1e-7"},
    {"analyse capture", "capture.raw --pattern prbs11"},
    {"analyse capture", "capture.raw --pattern auto"},
    {"qualify loop", "loop.json"},
    {"qualify loop", "loop.json --measured-resistance 472 --measured-loss 20.6"},
    {"qualify office", "hollow --out loops.csv"},
    {"loop curve", "loop.json --from 200 --to 80000 --out curve.svg"},
    {"strip", "run-seconds.csv --out strip.svg --order 26-0002"},
    {"variants", ""},
    {"variants", "ni1-5ess"},
    {"limits show", "--json"},
    {"limits add", "limits.json"},
    {"office import", "offices.csv"},
    {"issuer import", "issuer.csv"},
    {"office list", ""},
    {"installer import", "installers.csv --update"},
    {"installer list", "--json"},
    {"person pin", "hale --by hale --pin-file pin.txt"},
    {"instrument import", "instruments.csv --update"},
    {"instrument label", "LS-7 --serial 4471 --kind 'loss set' --calibrated-on 2026-01-31 --calibration-due 2027-01-31"},
    {"instrument list", ""},
    {"order import", "orders.csv --rejects refused.csv"},
    {"order import", "theirs.csv --map columns.json --all-or-nothing"},
    {"order put", "--check --set order_number=26-0300 order_type=new due_date=2026-03-20 customer='Ada Kestrel' "
                  "premises='4 Mill Lane' circuit_number=HR-AN-0300 kind=analog office=hollow pair=C9-301 "
                  "b1_services=voice dn_1=4475550191 nt_supplied=no"},
    {"order assign", "26-0002 26-0003 --installer rivera --on 2026-03-16 --because 'no access'"},
    {"order set", "26-0002 contact='Ada Kestrel' access_notes='ring twice'"},
    {"order set", "--in changes.csv --all-or-nothing"},
    {"order hold", "26-0002 --waiting-on permit --because 'no permit for the pole yet'"},
    {"order resume", "26-0002"},
    {"order list", "--open --late --sort office"},
    {"order list", "--criterion run --text kestrel --limit 20"},
    {"order show", "26-0002 --json"},
    {"order check-completion", "26-0007 9455 5260 51"},
    {"order complete", "26-0007"},
    {"order cancel", "26-0009 --because 'the customer moved away'"},
    {"bulk area_code", "--office hollow --from 217 --to 447"},
    {"bulk area_code", "--office hollow --from 217 --to 447 --spids --apply --out cards.pdf"},
    {"bulk variant", "--office hollow --to ni1-5ess"},
    {"bulk undo", ""},
    {"bulk cards", "--out cards.pdf --paper letter"},
    {"trouble open", "HR-BR-0007 --symptom 'noise on every call'"},
    {"trouble close", "HR-BR-0007-R1 --found 'wet splice' --cleared 'splice made anew' --cause contact"},
    {"trouble list", "--open"},
    {"hazard list", "--open"},
    {"pair spare", "26-0002 --limit 5"},
    {"report", "first_visit --from 2026-01-01 --per month --out first-visits.csv"},
    {"report", "troubles --per cable --rows"},
    {"circuit show", "HR-BR-0007"},
    {"circuit export", "HR-BR-0007 --out HR-BR-0007"},
    {"audit", ""},
    {"record", "26-0003.json"},
    {"record", "- < 26-0003.json"},
    {"void", "273a29c8-8a35-51ea-b3a9-8fbf6b223a9f --because 'read on another pair'"},
    {"decide", "26-0002 --json"},
    {"accept", "26-0005 --except loop --because 'the run was clean' --by hale"},
    {"handoff", "26-0006 --out handoff.pdf"},
    {"handoff", "26-0006 --to 'cable repair' --reference R-77 --waiting-on plant"},
    {"day", "--installer rivera --on 2026-03-12 --out day.pdf"},
    {"card", "26-0007 --out card.pdf"},
    {"card", "26-0007 --out card.pdf --language de"},
    {"certificate issue", "26-0007 --out certificate.pdf"},
    {"certificate issue", "--premises-of 26-0007 --out-folder certificates"},
    {"certificate verify", "certificate.pdf --key keys.txt"},
    {"van add", "van-7 --key van-7-keys.txt"},
    {"van lost", "van-7 --because 'stolen in Mill Lane'"},
    {"van take", "26-0002 26-0003 --to van-7 --out for-van-7.json"},
    {"van take", "--installer rivera --due-by 2026-03-12 --to van-7 --out for-van-7.json --split 50"},
    {"van open", "for-van-7.json"},
    {"van bring", "--out from-van-7.json"},
    {"van bring", "--out from-van-7.json --keep"},
    {"van receive", "from-van-7.json"},
    {"van list", ""},
    {"van recall", "26-0003 --from van-7 --because 'the file was never handed over'"},
    {"van known", ""},
    {"van conflicts", ""},
    {"van conflicts", "26-0003 --all"},
    {"van settle", "e183c2d7bf9ddd06 --side both --because 'both were at the line that day'"},
    {"history", "26-0002"},
    {"history", "verify --head certificate.pdf"},
    {"key show", ""},
    {"key export", "--out keys.txt"},
    {"key renew", "--because 'in use too long'"},
    {"backup", "records-monday.sqlite"},
    {"restore", "records-monday.sqlite"},
    {"export", "--out everything"},
    {"export view", "--out late.csv --late --office hollow"},
    {"fill", "--circuits 200 --db trial.sqlite"},
    {"help station", "error_test"},
    {"help glossary", "SPID"},
    {"help schema", "order list"},
    {"help schema", ""},
    {"help columns", "orders"},
    {"help columns", "orders --sample > orders.csv"},
};
// clang-format on

} // namespace

QStringList commandExamples(const QString &words)
{
    QStringList lines;
    for (const Example &example : examples)
        if (words == QLatin1StringView(example.words))
            lines << QString(words + ' ' + QLatin1StringView(example.rest)).trimmed();
    return lines;
}

} // namespace loopwright
