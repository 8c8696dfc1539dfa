#!/usr/bin/env python3
"""Makes a large database for bench.records out of a small one, in minutes instead of an hour.

  multiply.py FROM TO TIMES      TIMES at most 10

Every circuit with its orders, facts, decisions, certificates and events is there TIMES times, under
numbers of its own, as if it had been invented (circuits T00100001 and so on after T00000001 to
T00100000). What the board and the reports read is as it would be. Digests are those of the first
copy: the history of the result does not hold, and nothing but its speed can be learned from it.
"""
import shutil
import sqlite3
import sys
import time

BASE = 10_000_000  # above every id of the small database
VERSIONS = "0abcdef789"  # in the place of a UUID's version: no other UUID is so


def shifted(column):
    return f"{column} + :k * {BASE}"


def number(column):
    return f"substr({column}, 1, 1) || printf('%08d', CAST(substr({column}, 2) AS INTEGER) + :k * :circuits)"


def circuit(column):
    return f"substr({column}, 1, 3) || printf('%07d', CAST(substr({column}, 4) AS INTEGER) + :k * :circuits)"


def uuid(column):
    return f"substr({column}, 1, 14) || :version || substr({column}, 16)"


def apart(column):
    """A value that must not be held twice."""
    return f"CASE {column} WHEN '' THEN '' ELSE {column} || '~' || :k END"


def circuit_of(subject):
    return "'circuit:' || " + circuit(f"substr({subject}, 9)")


# What is otherwise in a copy, by table; other columns are copied.
OTHERWISE = {
    "circuit": {"id": shifted("id"), "uuid": uuid("uuid"), "circuit_number": circuit("circuit_number")},
    "service_order": {
        "id": shifted("id"),
        "uuid": uuid("uuid"),
        "order_number": number("order_number"),
        "circuit": shifted("circuit"),
        "premises_key": apart("premises_key"),
        "pair_key": apart("pair_key"),
        "pair_identity": apart("pair_identity"),
        "completed_rank": shifted("completed_rank"),
        "content": "json_set(content, '$.order_number', " + number("order_number") + ", '$.circuit_number', "
        + circuit("json_extract(content, '$.circuit_number')") + ")",
    },
    "order_terminal": {
        "id": shifted("id"),
        "service_order": shifted("service_order"),
        "dn_key": apart("dn_key"),
        "spid": apart("spid"),
    },
    "assignment": {
        "id": shifted("id"),
        "value": apart("value"),
        "circuit": shifted("circuit"),
        "service_order": shifted("service_order"),
    },
    "fact": {
        "id": shifted("id"),
        "uuid": uuid("uuid"),
        "service_order": shifted("service_order"),
        "voids": uuid("voids"),
        "content": "json_set(content, '$.id', " + uuid("uuid") + ", '$.order', "
        + number("json_extract(content, '$.order')") + ")",
    },
    "decision": {"id": shifted("id"), "decision": apart("decision"), "service_order": shifted("service_order")},
    "certificate": {
        "id": shifted("id"),
        "number": apart("number"),
        "service_order": shifted("service_order"),
        "decision": shifted("decision"),
    },
    "certificate_issue": {"id": shifted("id"), "certificate": shifted("certificate")},
    "event": {
        "log_position": shifted("log_position"),
        "subject": circuit_of("subject"),
        "order_number": f"CASE order_number WHEN '' THEN '' ELSE {number('order_number')} END",
    },
    "chain_head": {"subject": circuit_of("subject")},
    "order_state": {
        "service_order": shifted("service_order"),
        "order_number": number("order_number"),
        "circuit_number": circuit("circuit_number"),
        "search": "replace(replace(search, lower(order_number), lower(" + number("order_number")
        + ")), lower(circuit_number), lower(" + circuit("circuit_number") + "))",
    },
    "hazard_order": {"id": shifted("id"), "pair": apart("pair"), "service_order": shifted("service_order")},
}
ONLY = {"event": "subject GLOB 'circuit:*'", "chain_head": "subject GLOB 'circuit:*'"}


def main():
    if len(sys.argv) != 4 or not 2 <= int(sys.argv[3]) <= len(VERSIONS):
        sys.exit(__doc__)
    source, target, times = sys.argv[1], sys.argv[2], int(sys.argv[3])
    with sqlite3.connect(source) as small:
        small.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    shutil.copyfile(source, target)
    big = sqlite3.connect(target, isolation_level=None)
    big.execute("PRAGMA journal_mode = OFF")
    big.execute("PRAGMA synchronous = OFF")
    big.execute("PRAGMA cache_size = -2000000")
    again = big.execute(
        "SELECT type, name, sql FROM sqlite_master WHERE sql IS NOT NULL AND"
        " (type = 'trigger' OR type = 'index') ORDER BY type, rowid"
    ).fetchall()
    for kind, name, _ in again:
        big.execute(f"DROP {kind} {name}")
    circuits = big.execute("SELECT count(*) FROM circuit").fetchone()[0]
    began = time.monotonic()
    for table, otherwise in OTHERWISE.items():
        columns = [row[1] for row in big.execute(f"PRAGMA table_info({table})")]
        missing = set(otherwise) - set(columns)
        if missing:
            sys.exit(f"{table} has no {missing}: this script is older than the records")
        rows = f"FROM {table} AS first WHERE {ONLY.get(table, '1')}"
        big.execute(f"CREATE TEMP TABLE first AS SELECT * {rows}")
        for k in range(1, times):
            values = ", ".join(otherwise.get(column, column) for column in columns)
            big.execute(
                f"INSERT INTO {table} ({', '.join(columns)}) SELECT {values} FROM temp.first",
                {"k": k, "circuits": circuits, "version": VERSIONS[k]},
            )
        big.execute("DROP TABLE temp.first")
        print(f"{time.monotonic() - began:6.0f} s  {table}", flush=True)
    big.execute("UPDATE board_tally SET orders = orders * ?", (times,))
    big.execute("INSERT INTO order_search (order_search) VALUES ('rebuild')")
    print(f"{time.monotonic() - began:6.0f} s  order_search", flush=True)
    for _, name, sql in again:
        big.execute(sql)
    big.execute("PRAGMA analysis_limit = 1000")
    big.execute("ANALYZE")
    big.close()
    print(f"{time.monotonic() - began:6.0f} s  indexes and triggers")


if __name__ == "__main__":
    main()
