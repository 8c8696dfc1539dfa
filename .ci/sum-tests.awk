# Reads CTest's log of a run and prints one line per test that failed, then the sum of all checks.
# A QtTest program tells its numbers in its "Totals:" line; another test counts as one check. A
# program that ended without its totals, or failed though its totals are clean (a crash, a leak, a
# time-out), counts as one failed check more.
/^[0-9]+\/[0-9]+ Test: / { name = $3; good = bad = totals = qt = lost = 0; blocked = "" }
/^\*+ Start testing of / { qt = 1 }
/^(PASS|XFAIL) / { lost++ }
/^Totals: / { totals = 1; good += $2; bad += $4 }
/^Test (Passed|Failed)\.$/ || /^Test timed out/ || /^Test .*Not Run/ {
    passed = /Passed/
    if (!qt && !totals) { good = passed; bad = !passed }
    else if (!totals) { good = lost; bad = 1 }
    else if (!passed && bad == 0) bad = 1
    all_good += good; all_bad += bad
    if (bad) print "  failed: " name " (" bad ")"
    name = ""
}
END { printf "%d passed, %d failed\n", all_good, all_bad }
