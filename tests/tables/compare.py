#!/usr/bin/env python3
"""Runs clinic.sql on gathered lines in DuckDB and in Apache Spark, and compares each view of both with the other and with
the core's own numbers. One line a view, then `N passed, N failed`, and how long each took.

Usage: compare.py GATHERED CORE-TABLES.json
"""
import json
import math
import os
import pathlib
import sys
import time

gathered, core_file = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
columns = json.loads((gathered / "columns.json").read_text(encoding="utf-8"))
core = json.loads(core_file.read_text(encoding="utf-8"))
text = (gathered / "clinic.sql").read_text(encoding="utf-8")
# Comments go first, so that a semicolon in one splits nothing; no string in the file holds two hyphens.
bare = "\n".join(line.split("--")[0] for line in text.splitlines())
statements = [one.strip() for one in bare.split(";") if one.strip()]
views = [one.split("VIEW", 1)[1].split()[0] for one in statements]


def duck():
    import duckdb

    base = duckdb.connect()
    for name, of in columns.items():
        sorts = ", ".join(f"{one['name']}: '{one['sort']}'" for one in of)
        base.execute(
            f"CREATE TEMP VIEW {name} AS SELECT * FROM read_json('{gathered / name}.ndjson', "
            f"format = 'newline_delimited', columns = {{{sorts}}})"
        )
    for one in statements:
        base.execute(one)
    return {view: base.execute(f"SELECT * FROM {view}").fetchall() for view in views}


def spark():
    # Only this machine: no other address is listened on or looked up.
    os.environ["SPARK_LOCAL_IP"] = "127.0.0.1"
    from pyspark.sql import SparkSession

    session = (
        SparkSession.builder.master("local[2]")
        .config("spark.ui.enabled", "false")
        .config("spark.driver.host", "127.0.0.1")
        .config("spark.driver.bindAddress", "127.0.0.1")
        .config("spark.sql.shuffle.partitions", "4")
        .getOrCreate()
    )
    session.sparkContext.setLogLevel("ERROR")
    for name, of in columns.items():
        schema = ", ".join(f"{one['name']} {one['sort']}" for one in of)
        session.read.schema(schema).json(str(gathered / f"{name}.ndjson")).createOrReplaceTempView(name)
    for one in statements:
        session.sql(one)
    found = {view: [tuple(row) for row in session.table(view).collect()] for view in views}
    session.stop()
    return found


def plain(row):
    """A row in Python's own sorts: engines have their own for decimals and large whole numbers."""
    return [
        cell if cell is None or isinstance(cell, (str, bool)) else (int(cell) if float(cell).is_integer() else float(cell))
        for cell in row
    ]


def rows(table):
    return sorted((plain(row) for row in table), key=lambda row: [(cell is None, str(cell)) for cell in row])


def same(one, other):
    if len(one) != len(other):
        return f"{len(one)} rows and {len(other)}"
    # Sorted by their text, so that rounding in the last place could part two rows: the keys stand first.
    for left, right in zip(one, other):
        if len(left) != len(right):
            return f"{left} and {right}"
        for a, b in zip(left, right):
            close = isinstance(a, (int, float)) and isinstance(b, (int, float)) and math.isclose(a, b, rel_tol=1e-9, abs_tol=1e-12)
            if not (a == b or close):
                return f"{left} and {right}"
    return None


def timed(name, run):
    began = time.monotonic()
    found = run()
    print(f"{name}: {time.monotonic() - began:.1f} s")
    return found


lines = sum(1 for _ in open(gathered / "sessions.ndjson", encoding="utf-8"))
diaries = sum(1 for _ in open(gathered / "diaries.ndjson", encoding="utf-8"))
print(f"{diaries} diaries, {lines} sessions")
by_duck, by_spark = timed("DuckDB", duck), timed("Spark with its start", spark)
passed = failed = 0
for view in views:
    ours = rows(core.get(view, []))
    for name, found in (("DuckDB", by_duck[view]), ("Spark", by_spark[view])):
        wrong = same(rows(found), ours)
        # A view without a row would show nothing.
        if wrong is None and not ours:
            wrong = "it has no row at all"
        if wrong is None:
            passed += 1
            print(f"ok: {view}: {name} and the core agree on {len(ours)} rows")
        else:
            failed += 1
            print(f"FAILED: {view}: {name} and the core: {wrong}")
print(f"{passed} passed, {failed} failed")
sys.exit(0 if failed == 0 and passed > 0 else 1)
