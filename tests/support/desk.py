"""The state in which somebody is who has run the demo: its records, its files, and the command line that was built.

A command is tried on a copy of its own, so that none depends on what another did; what must come before it stands in BEFORE.
A van works beside it, with records and a home of its own: the commands of VAN are said there, and each line that begins with "van: ".
"""
import json
import os
import pathlib
import shlex
import shutil
import subprocess
import sys
import tempfile

TOP = pathlib.Path(__file__).resolve().parent.parent.parent
SCENARIO = TOP / "demo/scenario"
NOW = "2026-03-12T17:00:00-06:00"
# Records of one order each that the commands speak of; the whole demo takes 150, one process each.
RECORDED = ["26-0001-first-run", "26-0001-second-run"] + [f"26-{n:04}" for n in range(2, 13) if n != 8]

# By the words of a command: what is done before its examples, each line with its own command.
ISSUED = ["certificate issue 26-0007 --out certificate.pdf"]
IN_SERVICE = ISSUED + ["order complete 26-0007"]
# A van that is known, has opened two orders, worked on them and brought them back; in the office somebody worked on them too.
VAN = (["van", "open"], ["van", "bring"])
KNOWN = ["van: key export --out van-7-keys.txt", "van add van-7 --key van-7-keys.txt"]
TAKEN = KNOWN + ["van take 26-0002 26-0003 --to van-7 --out for-van-7.json"]
OPENED = TAKEN + ["van open for-van-7.json"]
WORKED = OPENED + ["van: record in-the-van-26-0002.json", "van: record in-the-van-26-0003.json"]
BROUGHT = WORKED + ["van bring --out from-van-7.json"]
DISPUTED = BROUGHT + ["record in-the-office-26-0002.json", "record in-the-office-26-0003.json", "van receive from-van-7.json"]
BEFORE = {
    "van add": KNOWN[:1],
    "van lost": KNOWN,
    "van take": KNOWN + ["order cancel 26-0009 --because 'the customer moved away'"],
    "van open": TAKEN,
    "van bring": WORKED,
    "van receive": BROUGHT,
    "van list": BROUGHT + ["van receive from-van-7.json", "van take 26-0004 --to van-7 --out more-for-van-7.json"],
    "van recall": TAKEN,
    "van known": TAKEN,
    "van conflicts": DISPUTED + ["van settle e183c2d7bf9ddd06 --side both --because 'both were there'"],
    "van settle": DISPUTED,
    "order list": KNOWN + ["van take 26-0011 --to van-7 --out for-van-7.json"],
    "order resume": ["order hold 26-0002 --waiting-on permit --because 'no permit'"],
    "order complete": ISSUED,
    "bulk undo": ["bulk area_code --office hollow --from 217 --to 447 --apply"],
    "bulk cards": ["bulk area_code --office hollow --from 217 --to 447 --apply"],
    "trouble open": IN_SERVICE,
    "trouble close": IN_SERVICE + ["trouble open HR-BR-0007 --symptom 'noise on every call'"],
    "trouble list": IN_SERVICE + ["trouble open HR-BR-0007 --symptom 'noise on every call'"],
    "circuit show": IN_SERVICE,
    "circuit export": ISSUED,
    "certificate verify": ISSUED + ["key export --out keys.txt"],
    "history": ISSUED,
    "key show": ISSUED,
    "key export": ISSUED,
    "key renew": ISSUED,
    "report": IN_SERVICE + ["accept 26-0005 --except loop --because 'the run was clean'",
                            "trouble open HR-BR-0007 --symptom 'noise on every call'"],
    "restore": ["backup records-monday.sqlite"],
}

THEIRS = """Auftrag,Art,Termin,Kunde,Adresse,Leitung,Anschluss,Amt,protocol_variant,Ader,B1,B2,Rufnummer,spid_1,tei_1,NT,Farbe
M-1,Neu,2026-03-20,Mill Shop,2 Mill Lane,M-C-1,a/b,hollow,,M-1,voice,,4475550190,,,nein,red
"""
COLUMNS = {"columns": {"Auftrag": "order_number", "Art": "order_type", "Termin": "due_date", "Kunde": "customer",
                       "Adresse": "premises", "Leitung": "circuit_number", "Anschluss": "kind", "Amt": "office",
                       "Ader": "pair", "B1": "b1_services", "B2": "b2_services", "Rufnummer": "dn_1",
                       "NT": "nt_supplied"},
           "values": {"order_type": {"Neu": "new"}, "kind": {"a/b": "analog"}, "nt_supplied": {"nein": "no"}},
           "ignore": ["Farbe"]}


def loop_reading(order, pair, where, number):
    """A job record of one reading, which nobody else has made."""
    return {"order": order, "installer": "rivera", "instrument": "set-1", "pair": pair, "facts": [
        {"id": f"0f4b1e5a-7d0c-4a55-9d0b-5d4f1c2a{where}{number:03}", "kind": "loop", "at": "2026-03-12T15:05:00-06:00",
         "dc_resistance_ohm": 680, "loss_db": 27.6, "frequency_hz": 40000}]}


class Desk:
    """One folder with everything; `with Desk(program) as desk`."""

    def __init__(self, program):
        self.program = pathlib.Path(program).resolve()
        self._folder = tempfile.TemporaryDirectory()
        self.top = pathlib.Path(self._folder.name)

    def __enter__(self):
        self.base = self.top / "base"
        self.base.mkdir()
        for file in [*SCENARIO.glob("*.*"), *(SCENARIO / "records").glob("*.json")]:
            shutil.copy(file, self.base)
        limits = json.loads((TOP / "resources/limits/2026-1.json").read_text(encoding="utf-8"))
        limits["version"] = "hollow-1"
        (self.base / "limits.json").write_text(json.dumps(limits), encoding="utf-8")
        (self.base / "theirs.csv").write_text(THEIRS, encoding="utf-8")
        (self.base / "columns.json").write_text(json.dumps(COLUMNS), encoding="utf-8")
        (self.base / "changes.csv").write_text("order_number,column,value\n26-0002,contact,Ada Kestrel\n")
        for number in (2, 3):
            for where, digit in (("van", 7), ("office", 8)):
                (self.base / f"in-the-{where}-26-{number:04}.json").write_text(
                    json.dumps(loop_reading(f"26-{number:04}", f"C7-{100 + number}", digit, number)), encoding="utf-8")
        (self.base / "pin.txt").write_text("4711\n")
        spids = subprocess.run([self.program, "help", "columns", "identifiers", "--sample"], capture_output=True, check=True)
        (self.base / "spids.csv").write_bytes(spids.stdout)
        for what in ("office", "issuer", "installer", "instrument"):
            self.must(self.base, f"{what} import {what if what == 'issuer' else what + 's'}.csv", (0,))
        self.must(self.base, "order import orders.csv", (1,))  # two are held
        for name in RECORDED:
            self.must(self.base, f"record {name}.json --by okafor", (0,))
        return self

    def __exit__(self, *_):
        self._folder.cleanup()

    def words(self, line):
        """As a shell takes them; what redirects to a file or from one stands apart."""
        words = shlex.split(line)
        source = words[words.index("<") + 1] if "<" in words else None
        return [word for word in words[:words.index("<")]] if source else words, source

    def run(self, folder, line, *more):
        in_van = line.startswith("van: ")
        words, source = self.words(line.removeprefix("van: "))
        home, records = ("van-home", "van.sqlite") if in_van or words[:2] in VAN else ("home", "demo.sqlite")
        target = None
        if ">" in words:
            target = words[words.index(">") + 1]
            words = words[:words.index(">")]
        environment = {**os.environ, "XDG_DATA_HOME": str(folder / home), "LOOPWRIGHT_DB": str(folder / records), "TZ": "UTC"}
        own = ["--now", NOW] + ([] if "--by" in words else ["--by", "hale"])
        data = (folder / source).read_bytes() if source else b""
        done = subprocess.run([self.program, *words, *own, *more], cwd=folder, env=environment, input=data,
                              capture_output=True, timeout=300)
        if target:
            (folder / target).write_bytes(done.stdout)
        return done

    def must(self, folder, line, statuses):
        done = self.run(folder, line)
        if done.returncode not in statuses:
            sys.exit(f"{line}: ended with {done.returncode}\n{done.stdout.decode()}{done.stderr.decode()}")
        return done

    def copy(self, command):
        """A folder in the state before the command."""
        folder = self.top / f"copy-{command.replace(' ', '-')}"
        if folder.exists():
            shutil.rmtree(folder)
        shutil.copytree(self.base, folder)
        for line in BEFORE.get(command, []):
            no = ("bulk", "van receive")  # some SPIDs stay; what two worked on is to be settled
            self.must(folder, line, (0, 1) if line.startswith(no) else (0,))
        return folder

    def commands(self):
        """Words of every command, in the order of the register."""
        said = subprocess.run([self.program, "--help"], capture_output=True, text=True, check=True).stdout
        lines = said.split("Commands:\n", 1)[1].splitlines()
        found = []
        for line in lines:
            if line.startswith("  ") and line.strip():
                found.append(line.strip().split("  ")[0])
        return found

    def examples(self, command):
        said = subprocess.run([self.program, *command.split(), "--help"], capture_output=True, text=True, check=True).stdout
        lines = said.split("Examples:\n", 1)[1].splitlines()
        return [line.strip().removeprefix("loopwright-cli ") for line in lines if line.strip().startswith("loopwright-cli ")
                and "--help" not in line]
