#!/usr/bin/env python3
"""Runs what README.md and the help tell the reader to type, in the state in which the reader then is.

  readme.py PROGRAM       the built loopwright-cli

1. The blocks of README.md, in a shell, in their order, where the demo has been run: the programs in .build/release/bin, its records
   and keys in .build/demo.
2. The commands of README.md's table, each with its places filled.
3. Every example of every --help, each command on a copy of the demo's records.
What ends with another status than it should, and a command of the table that is not filled here, is named; then it ends with 1.
"""
import pathlib
import re
import shutil
import subprocess
import sys

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE / "support"))
from desk import Desk, IN_SERVICE, ISSUED, TOP  # noqa: E402

# What a block has that needs more than the command line: the demo, a build, a package, the window.
ELSEWHERE = ("demo/run", "tests/run", "cmake ", "build/bin/loopwright ", ".ci/package", "sudo ")
# Examples whose right answer is no (status 1).
NO = {"bulk area_code --office hollow --from 217 --to 447", "audit", "decide 26-0002 --json"}

TROUBLE = IN_SERVICE + ["trouble open HR-BR-0007 --symptom noise"]
SPLIT = ["bulk area_code --office hollow --from 217 --to 447 --apply"]
# The commands of the table: filled, and what comes before.
FILLED = {
    "check identifiers --in F.csv --out G.csv": ("check identifiers --in spids.csv --out G.csv", []),
    "qualify loop F.json": ("qualify loop loop.json", []),
    "loop curve F.json --out F.svg": ("loop curve loop.json --out F.svg", []),
    "qualify office KEY --out F.csv": ("qualify office hollow --out F.csv", []),
    "qualify loop F.json --measured-resistance 472 --measured-loss 20.6":
        ("qualify loop loop.json --measured-resistance 472 --measured-loss 20.6", []),
    "analyse seconds F.csv --rate 64000": ("analyse seconds run-seconds.csv --rate 64000", []),
    "strip F.csv --out F.svg": ("strip run-seconds.csv --out F.svg", []),
    "analyse capture F.raw --pattern prbs11": ("analyse capture capture.raw --pattern prbs11", []),
    "office import": ("office import offices.csv", []),
    "issuer import": ("issuer import issuer.csv", []),
    "installer import": ("installer import installers.csv", []),
    "instrument import": ("instrument import instruments.csv", []),
    "instrument label": ("instrument label LS-7 --serial 4471 --kind handset --calibrated-on 2026-01-31 "
                         "--calibration-due not_required", []),
    "order import F.csv --rejects G.csv": ("order import orders.csv --rejects G.csv", []),
    "analyse seconds F.csv --map M.json": ("analyse seconds theirs.log --map seconds.json --rate 64000", []),
    "order assign NUMBER… --installer KEY --on DAY --because TEXT":
        ("order assign 26-0002 26-0003 --installer rivera --on 2026-03-16 --because away", []),
    "order hold NUMBER… --waiting-on permit --because TEXT": ("order hold 26-0002 --waiting-on permit --because road", []),
    "order resume NUMBER…": ("order resume 26-0002", ["order hold 26-0002 --waiting-on permit --because road"]),
    "order set NUMBER COLUMN=VALUE…": ("order set 26-0002 contact=Ada", []),
    "bulk area_code --office O --from 217 --to 447": ("bulk area_code --office hollow --from 217 --to 447", []),
    "bulk variant --office O --to KEY": ("bulk variant --office hollow --to ni1-5ess", []),
    "bulk undo": ("bulk undo", SPLIT),
    "bulk cards": ("bulk cards --out F.pdf", SPLIT),
    "order show NUMBER": ("order show 26-0002", []),
    "circuit show NUMBER": ("circuit show HR-BR-0007", []),
    "trouble open CIRCUIT --symptom TEXT": ("trouble open HR-BR-0007 --symptom noise", IN_SERVICE),
    "trouble close TROUBLE --found TEXT --cleared TEXT --cause contact":
        ("trouble close HR-BR-0007-R1 --found wet --cleared 'dried it' --cause contact", TROUBLE),
    "trouble list [--open] [--circuit CIRCUIT]": ("trouble list --open --circuit HR-BR-0007", TROUBLE),
    "pair spare NUMBER": ("pair spare 26-0002", []),
    "record F.json": ("record 26-0003.json", []),
    "record F.json --corrects FACT-ID": ("record corrected.json --corrects 273a29c8-8a35-51ea-b3a9-8fbf6b223a9f", []),
    "void FACT-ID --because TEXT": ("void 273a29c8-8a35-51ea-b3a9-8fbf6b223a9f --because 'another pair'", []),
    "decide NUMBER": ("decide 26-0007", []),
    "accept NUMBER --except KEY --because TEXT --by NAME": ("accept 26-0005 --except loop --because agreed --by hale", []),
    "certificate issue NUMBER --out F.pdf": ("certificate issue 26-0007 --out F.pdf", []),
    "card NUMBER --out F.pdf": ("card 26-0007 --out F.pdf", []),
    "handoff NUMBER --out F.pdf": ("handoff 26-0006 --out F.pdf", []),
    "day --installer CODE --out F.pdf": ("day --installer rivera --out F.pdf", []),
    "certificate issue --premises-of NUMBER --out-folder DIR": ("certificate issue --premises-of 26-0007 --out-folder DIR", []),
    "certificate verify F.pdf": ("certificate verify certificate.pdf", ISSUED),
    "certificate verify F.pdf --key K.txt": ("certificate verify certificate.pdf --key K.txt", ISSUED + ["key export --out K.txt"]),
    "key export --out K.txt": ("key export --out K.txt", ISSUED),
    "key renew --because TEXT": ("key renew --because old", ISSUED),
    "order check-completion NUMBER DIGITS": ("order check-completion 26-0007 9455526051", []),
    "report first_visit|failing|open_age|exceptions|calibration|troubles": ("report open_age", []),
    "hazard list [--open]": ("hazard list --open", []),
    "history NUMBER": ("history 26-0002", []),
    "history verify [--head F]": ("history verify --head F", ["history head --out F"]),
    "history head --out F": ("history head --out F", []),
    "person pin KEY": ("person pin hale --pin-file pin.txt", []),
    "circuit export CIRCUIT --out DIR": ("circuit export HR-BR-0007 --out DIR", []),
    "export view --out F.csv": ("export view --out F.csv", []),
    "export --out DIR": ("export --out DIR", []),
    "backup F": ("backup F", []),
    "restore F": ("restore F", ["backup F"]),
}
CORRECTED = """{"order":"26-0004","installer":"rivera","instrument":"meter-1","pair":"C7-104","facts":[
{"id":"6d3a4f0e-3c1b-4f0a-9d57-0d3b6b1f7a01","kind":"analog","at":"2026-03-10T13:17:30-06:00","quantity":"noise","value":9.5,
"unit":"dBrnC"}]}"""


def told(done):
    return f"ended with {done.returncode}: {(done.stdout + done.stderr).decode(errors='replace')[-600:]}"


def blocks(text):
    """Lines that are indented by four blanks after an empty line, without comments."""
    found, before, inside = [], "", False
    for line in text.splitlines():
        inside = line.startswith("    ") and (inside or not before.strip())
        if inside:
            found.append(re.sub(r"\s+# .*", "", line[4:]))
        before = line
    return found


def run_blocks(desk):
    place = desk.top / "project"
    (place / ".build/release").mkdir(parents=True)
    (place / "build").mkdir()
    for programs in (place / ".build/release/bin", place / "build/bin"):
        programs.symlink_to(desk.program.parent)
    demo = place / ".build/demo"
    shutil.copytree(desk.base, demo)
    (demo / "demo.sqlite").rename(demo / "records.sqlite")
    lines = [line for line in blocks((TOP / "README.md").read_text(encoding="utf-8")) 
             if not (line + " ").startswith(ELSEWHERE)]
    if sum("loopwright-cli" in line for line in lines) < 10:
        yield "README.md: its blocks were not found"
    # One shell for all; each line says how it ended.
    script = "".join(f"{line}\necho \"@@ $? {number}\"\n" for number, line in enumerate(lines))
    environment = {"PATH": "/usr/bin:/bin", "HOME": str(place), "LC_ALL": "C.UTF-8"}
    done = subprocess.run(["bash", "-c", script], cwd=place, env=environment, capture_output=True, text=True)
    ended = dict(reversed(mark.split()) for mark in re.findall(r"^@@ (\d+ \d+)$", done.stdout, re.M))
    for number, line in enumerate(lines):
        if ended.get(str(number)) != "0":
            yield f"README.md: {line}: ended with {ended.get(str(number))}: {done.stderr[-600:]}"


def table_of(text):
    rows = text.split("The command line in short", 1)[1].split("What `export --out DIR` writes", 1)[0]
    for row in rows.splitlines():
        if row.startswith("| ") and not row.startswith("| to |"):
            cell = row.replace("\\|", "¦").split("|")[2].replace("¦", "|")
            yield from re.findall(r"`([^`]+)`", cell)


def run_table(desk):
    commands = desk.commands()
    firsts = {word.split()[0] for word in commands}
    spans = [span for span in table_of((TOP / "README.md").read_text(encoding="utf-8"))
             if span.split()[0] in firsts and not span in ("installer",)]
    if len(spans) < 50:
        yield "README.md: its table was not found"
    for span in dict.fromkeys(spans):
        filled, before = FILLED.get(span, (span, []))
        if span not in FILLED and re.search(r"\b[A-Z]{2,}\b|…|\[|\b[A-Z]\.", span.replace("SPID", "")):
            yield f"README.md: {span}: is not filled in tests/readme.py"
            continue
        folder = desk.copy("")
        (folder / "corrected.json").write_text(CORRECTED)
        (folder / "theirs.log").write_text("T,Temp,Err\n0,20,0\n1,20,4\n")
        (folder / "seconds.json").write_text('{"columns":{"T":"second","Err":"bit_errors"},"ignore":["Temp"]}')
        for line in before:
            desk.must(folder, line, (0, 1))
        done = desk.run(folder, filled)
        if done.returncode not in (0, 1):
            yield f"README.md: {span}: {filled}: {told(done)}"


def run_examples(desk):
    for command in desk.commands():
        examples = desk.examples(command)
        if not examples:
            yield f"{command} --help: has no example"
        folder = desk.copy(command)
        for example in examples:
            done = desk.run(folder, example)
            if done.returncode != (1 if example in NO else 0):
                yield f"{command} --help: {example}: {told(done)}"


def main():
    with Desk(sys.argv[1]) as desk:
        faults = [*run_blocks(desk), *run_table(desk), *run_examples(desk)]
    for fault in faults:
        print(fault)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
