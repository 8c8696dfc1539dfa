#!/usr/bin/env python3
"""Validates what each command answers under --json against its schema in resources/schemas/answers, on the demo's records.

  answers.py PROGRAM      the built loopwright-cli

1. Every command has a schema, every schema a command, and `help schema` prints it as it lies there.
2. What each example of a command answers, and each line of MORE, is valid; an error is valid against error.schema.json.
3. What the contract names (CONTRACT) is required by the schema.
4. Each schema minds: an answer without one of the keys that it requires, or with one renamed, is invalid, at any depth.
77 where python3-jsonschema is not installed.
"""
import json
import pathlib
import sys
import warnings

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE / "support"))
from desk import Desk, TOP  # noqa: E402

try:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        from jsonschema import Draft202012Validator, RefResolver
except ImportError:
    print("python3-jsonschema is not installed")
    sys.exit(77)

SCHEMAS = TOP / "resources/schemas/answers"
SHARED = {"common", "error"}

# Further lines, that answers of every shape are seen; {N} in the place of an order.
ORDERS = ["26-0001", "26-0003", "26-0004", "26-0005", "26-0006", "26-0007", "26-0009", "26-0010", "26-0150"]
MORE = {
    "check spid": ["check spid --variant ni1-5ess 0155501430", "check spid --variant dss1 123",
                   "check spid --variant ni2 21755501110101 --dn 2175550111"],
    "check cause": ["check cause 17", "check cause 99"],
    "check identifiers": ["check identifiers --in spids.csv"],
    "analyse bound": ["analyse bound --errors 3 --bits 1000000 --confidence 0.9",
                      "analyse bound --errors 3 --bits 1000000 --target 1e-7"],
    "analyse capture": ["analyse capture loop.json --pattern prbs11", "analyse capture capture.raw --pattern auto"],
    "qualify loop": ["qualify loop loop-too-long.json", "qualify loop loop.json --frequency 40000 --ohms 100"],
    "order import": ["order import bad-orders.csv", "order import nothing.csv"],
    "order list": ["order list", "order list --after none"],
    "order show": [f"order show {number}" for number in ORDERS + ["none"]],
    "decide": [f"decide {number}" for number in ORDERS],
    "report": [f"report {kind}{rows} --from 2026-01-01" for kind in ("first_visit", "failing", "open_age", "exceptions", "calibration", "troubles")
               for rows in ("", " --rows")],
    "history": ["history verify", "history head", "history 26-0007", "history 26-0010"],
    "handoff": ["handoff 26-0010", "handoff 26-0003", "handoff 26-0002"],
    "circuit show": ["circuit show HR-BR-0001", "circuit show HR-BR-0010", "circuit show HR-AN-0004"],
    "hazard list": ["hazard list"],
    "trouble list": ["trouble list"],
    "variants": ["variants dss1", "variants none"],
    "help station": ["help station"],
    "help glossary": ["help glossary", "help glossary zebra"],
    "help columns": ["help columns", "help columns makeup"],
    "order set": ["order set 26-0002 contact='Ada Kestrel'"],
    "order check-completion": ["order check-completion 26-0007 0000000000"],
    "bulk area_code": ["bulk area_code --office hollow --from 217 --to 447 --apply --spids"],
    "certificate verify": ["certificate verify certificate.pdf", "certificate verify loop.json"],
    "certificate issue": ["certificate issue 26-0002 --out none.pdf"],
    "van add": ["van add van-7 --key van-7-keys.txt"],
    "van take": ["van take 26-0004 26-0009 --to van-7 --out some.json", "van take 26-0009 --to van-7 --out none.json"],
    "van open": ["van open for-van-7.json loop.json", "van open loop.json"],
    "van bring": ["van bring --out parts.json --split 1"],
    "van receive": ["van receive from-van-7.json loop.json", "van receive for-van-7.json"],
    "van list": ["van list --still-out"],
    "van known": ["van known"],
    "van recall": ["van recall 26-0009 --from van-7 --because why"],
    "van conflicts": ["van conflicts --all", "van conflicts none"],
    "van settle": ["van settle none --side both --because why"],
    "card": ["card 26-0007 --kind close_out --out slip.pdf"],
}

# What is fixed of the answers: of an object, or of the objects in a list.
SECONDS = ("seconds available_seconds unavailable_seconds errored_seconds severely_errored_seconds error_free_seconds esr sesr "
           "bits bit_errors ber ber_upper_95")
IMPORT = "accepted held refused unchanged findings"
CONTRACT = {
    "check identifiers": "rows", "check cause": "cause name class check_first", "analyse seconds": SECONDS,
    "analyse bound": "poisson_upper clopper_pearson_upper",
    "analyse capture": SECONDS + " pattern inverted synchronised_at_bit slips sync_losses per_second",
    "qualify loop": "insertion_loss_db dc_resistance_ohm working_length_ft bridged_tap_ft verdict reasons",
    "office import": IMPORT, "issuer import": IMPORT, "installer import": IMPORT, "instrument import": IMPORT,
    "order import": IMPORT,
    "order list": "order_number circuit_number customer office stage outcome due_date installer reason criterion late waiting_on "
                  "premises pair hazard out conflicts",
    "order show": "order circuit terminals facts decision events plan",
    "record": "added already_there findings", "decide": "decision order outcome limit_set criteria",
    "certificate issue": "certificate digest pages copy",
    "certificate verify": "verdict stands because certificate claims record",
    "history": "verdict events broken", "audit": "findings broken",
    "trouble open": "trouble circuit repeat previous", "trouble close": "trouble circuit repeat previous",
    "van add": "station tag fingerprint added", "van take": "bundle station tag orders files findings",
    "van open": "files", "van receive": "files", "van bring": "bundle station answers orders facts files",
    "van list": "station tag order bundle since state", "van known": "station tag fingerprint state orders",
    "van recall": "station orders",
    "van conflicts": "conflict order code stations facts since sides settled", "van settle": "conflict order side",
    "bulk area_code": "applied changes cannot", "bulk variant": "applied changes cannot",
}
# The same of what several have in common.
SHARED_CONTRACT = {
    "finding": "row column code severity reason", "criterion": "key outcome measured limit unit source reason evidence class",
    "step": "criterion station need group kind preset fields after before state counts because", "fact": "id kind voided",
    "error": "error", "joined_order": "order verdict code added already_there certificates conflicts findings", "out_at": "station since",
}


class Schema:
    def __init__(self, name):
        self.path = SCHEMAS / f"{name}.schema.json"
        self.document = json.loads(self.path.read_text(encoding="utf-8"))
        Draft202012Validator.check_schema(self.document)
        self.resolver = RefResolver(self.path.as_uri(), self.document)
        self.validator = Draft202012Validator(self.document, resolver=self.resolver)

    def faults(self, answer):
        for error in self.validator.iter_errors(answer):
            deepest = max([error, *error.context], key=lambda each: len(each.absolute_path))
            yield f"{'.'.join(map(str, deepest.absolute_path))}: {deepest.message[:300]}"

    def minds(self, answer):
        return not self.validator.is_valid(answer)

    def alternatives(self, schema=None):
        """What an answer may be, references and lists taken away."""
        schema = self.document if schema is None else schema
        if "$ref" in schema:
            with self.resolver.resolving(schema["$ref"]) as found:
                yield from self.alternatives(found)
        elif "anyOf" in schema:
            for each in schema["anyOf"]:
                yield from self.alternatives(each)
        elif schema.get("type") == "array":
            yield from self.alternatives(schema["items"])
        else:
            yield schema


# Keys of these stand for data: columns of an order that are not empty, what a kind of event or fact says, a make-up.
OPEN = {"detail", "preset", "columns", "proven", "facts", "order", "makeup"}


def spoilt(answer, path=()):
    """Copies of the answer with one key left out, or renamed, each with where."""
    if isinstance(answer, list):
        for index in range(min(len(answer), 2)):
            for where, changed in spoilt(answer[index], path + (index,)):
                yield where, answer[:index] + [changed] + answer[index + 1:]
    elif isinstance(answer, dict):
        for key, value in answer.items():
            yield path + (key, "left out"), {each: old for each, old in answer.items() if each != key}
            yield path + (key, "renamed"), {(f"{each}_x" if each == key else each): old for each, old in answer.items()}
            if key not in OPEN:
                for where, changed in spoilt(value, path + (key,)):
                    yield where, {**answer, key: changed}


def optional_keys(schema):
    """Keys that some object of the schema does not require."""
    found = set()
    if isinstance(schema, dict):
        found |= set(schema.get("properties", {})) - set(schema.get("required", []))
        for each in schema.values():
            found |= optional_keys(each)
    elif isinstance(schema, list):
        for each in schema:
            found |= optional_keys(each)
    return found


def check_strictness(name, schema, answer, common):
    may_lack = optional_keys(schema.document) | common
    for where, changed in spoilt(answer):
        if where[-1] == "left out" and where[-2] in may_lack:
            continue
        if not schema.minds(changed):
            yield f"{name}: does not mind {'.'.join(map(str, where))}"


def check_answers(desk):
    error = Schema("error")
    common = optional_keys(json.loads((SCHEMAS / "common.schema.json").read_text(encoding="utf-8")))
    for command in desk.commands():
        name = command.replace(" ", "-")
        if not (SCHEMAS / f"{name}.schema.json").exists():
            yield f"{command}: has no schema"
            continue
        schema = Schema(name)
        folder = desk.copy(command)
        minded = False
        for line in desk.examples(command) + MORE.get(command, []):
            line = line.replace(" --json", "").split(" > ")[0]
            done = desk.run(folder, line, "--json")
            try:
                answer = json.loads(done.stdout)
            except ValueError:
                yield f"{line}: is no JSON: {(done.stdout + done.stderr).decode(errors='replace')[:300]}"
                continue
            failed = isinstance(answer, dict) and set(answer) == {"error"}
            for fault in (error if failed else schema).faults(answer):
                yield f"{line}: {fault}"
            if not failed and answer and not minded and command != "help schema":
                minded = True
                yield from check_strictness(name, schema, answer, common)
        if not minded and command != "help schema":
            yield f"{command}: gave no answer to try its schema on"
        printed = desk.run(folder, f"help schema {command}")
        if printed.stdout.strip() != schema.path.read_bytes().strip():
            yield f"help schema {command}: prints something else"


def check_contract():
    for command, keys in CONTRACT.items():
        schema = Schema(command.replace(" ", "-"))
        if not any(set(keys.split()) <= set(each.get("required", [])) for each in schema.alternatives()):
            yield f"{command}: its schema does not require what is fixed: {keys}"
    common = json.loads((SCHEMAS / "common.schema.json").read_text(encoding="utf-8"))["$defs"]
    for name, keys in SHARED_CONTRACT.items():
        if not set(keys.split()) <= set(common[name].get("required", [])):
            yield f"common.schema.json: {name} does not require what is fixed: {keys}"


def check_names(commands):
    names = {path.name.removesuffix(".schema.json") for path in SCHEMAS.glob("*.schema.json")}
    for name in sorted(names - {command.replace(" ", "-") for command in commands} - SHARED):
        yield f"{name}.schema.json: there is no such command"


def main():
    with Desk(sys.argv[1]) as desk:
        faults = [*check_contract(), *check_names(desk.commands()), *check_answers(desk)]
    for fault in faults:
        print(fault)
    return 1 if faults else 0


if __name__ == "__main__":
    warnings.simplefilter("ignore")
    sys.exit(main())
