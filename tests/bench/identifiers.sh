#!/bin/bash
# Checks lists of 10,000, 100,000 and 1,000,000 identifiers through the command line and compares
# with `wc -l` plus `sort` on the same file. Prints CPU seconds (user and system, the best of three
# runs, so that a busy machine disturbs little), the ratio, and the growth per row. About one row in
# seven is wrong or doubtful.
#
#   tests/bench/identifiers.sh BUILD/bin/loopwright-cli
set -euo pipefail
cli=${1:?usage: $0 PROGRAM}
[[ -x $cli ]] || { echo "$0: $cli is no program" >&2; exit 2; }
folder=$(mktemp -d)
trap 'rm -r "$folder"' EXIT
export LC_ALL=C QT_QPA_PLATFORM=offscreen LOOPWRIGHT_DB=$folder/records.sqlite

# Numbers of the fictional block in every area code that can be; a tenth is damaged as fingers and
# spreadsheets do it.
rows() {
    awk -v n="$1" 'BEGIN {
        srand(1)
        count = split("ni-generic ni2 ni1 ni1-5ess ni1-dms100 ni1-ewsd custom-5ess-multipoint " \
                      "custom-dms100 dss1 ts013", variants, " ")
        print "variant,spid,dn"
        for (i = 0; i < n; ++i) {
            variant = variants[1 + int(rand() * count)]
            area = 201 + 100 * int(rand() * 8) + int(rand() * 8)
            line = sprintf("01%02d", int(rand() * 100))
            if (variant == "ni1-5ess") spid = "01555" line "000"
            else if (variant == "custom-5ess-multipoint") spid = "01555" line "0"
            else if (variant == "ni1-dms100") spid = area "555" line "100"
            else if (variant == "custom-dms100") spid = area "555" line "01"
            else if (variant == "dss1" || variant == "ts013") spid = ""
            else spid = area "-555-" line " 0101"
            harm = rand()
            if (harm < 0.04) sub("0", "O", spid)
            else if (harm < 0.07) spid = substr(spid, 2)
            else if (harm < 0.10) spid = spid ".0"
            else if (harm < 0.14) area = area + 1
            printf "%s,%s,%s-555-%s\n", variant, spid, area, line
        }
    }'
}

# CPU seconds of a command, the best of three; its exit status of 1 means rows in error.
cpu() {
    local best= spent
    for _ in 1 2 3; do
        spent=$({ TIMEFORMAT='%3U %3S'; time "$@" >/dev/null 2>/dev/null || [[ $? == 1 ]]; } 2>&1 |
                awk '{ print $1 + $2 }')
        [[ -n $best ]] && awk -v a="$spent" -v b="$best" 'BEGIN { exit !(a >= b) }' || best=$spent
    done
    echo "$best"
}

count_and_sort() {
    wc -l "$1"
    sort "$1"
}

printf '%9s %10s %12s %7s %12s\n' rows check_s wc_sort_s ratio us_per_row
for n in 10000 100000 1000000; do
    list=$folder/$n.csv
    rows $n >"$list"
    ours=$(cpu "$cli" check identifiers --in "$list" --out "$folder/out.csv")
    theirs=$(cpu count_and_sort "$list")
    [[ $(wc -l <"$folder/out.csv") == $((n + 1)) ]] || { echo "rows are missing" >&2; exit 1; }
    awk -v n=$n -v a="$ours" -v b="$theirs" 'BEGIN {
        printf "%9d %10.3f %12.3f %7.2f %12.3f\n", n, a, b, a / (b > 0 ? b : 0.001), a / n * 1e6 }'
done
