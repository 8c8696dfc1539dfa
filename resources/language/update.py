#!/usr/bin/env python3
"""Brings the catalogues of resources/language up to date with the texts of the source.

  update.py [--check] [--lupdate FILE]

The texts are those that the source marks, the messages (messages.py), and what the shipped limits are named and come from. A catalogue holds each text once, in the one context "loopwright": a text reads the same wherever it
stands, unless a comment in the source tells two apart. What has gone from the source goes from the
catalogue; what is new stands there as unfinished. --check changes nothing; it ends with 1, and names
the texts, where a catalogue is not up to date, or a translation is missing or has other places
(%1, %n, &) than its source.
"""
import argparse
import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree
from xml.sax.saxutils import escape

sys.dont_write_bytecode = True  # nothing is left in the source
import messages  # noqa: E402

FOLDER = pathlib.Path(__file__).resolve().parent
TOP = FOLDER.parent.parent
FORMS = {"de": 2}  # how many forms of plural a language has


def texts_of_source(lupdate):
    """By text and comment, whether it counts."""
    with tempfile.TemporaryDirectory() as folder:
        made = pathlib.Path(folder, "source.ts")
        said = subprocess.run([lupdate, "-silent", "-locations", "none", "-I", TOP, "-tr-function-alias",
                               "tr+=words,tr+=trField,QT_TR_NOOP+=TEXT", TOP / "app/desktop", TOP / "core",
                               TOP / "app/actions", FOLDER,
                               "-ts", made], capture_output=True, text=True)
        if said.returncode != 0:
            sys.exit("update.py: lupdate: " + said.stderr)
        root = ElementTree.parse(made).getroot()
    texts = {}
    for message in root.iter("message"):
        key = (message.findtext("source", ""), message.findtext("comment", ""))
        texts[key] = texts.get(key, False) or message.get("numerus") == "yes"
    return texts


def with_messages(texts, found):
    """A message has no comment, and needs none where a text is the same."""
    for text in found:
        texts.setdefault((text, ""), False)
    return texts


def of_limits():
    """What each shipped limit is named, whole and as a finding names it, and where it comes from."""
    for path in sorted((TOP / "resources/limits").glob("*.json")):
        for limit in json.loads(path.read_text(encoding="utf-8"))["limits"]:
            yield from (limit["name"], limit["name"].split(", at ")[0])
            yield from (limit[key] for key in ("source", "source_beyond") if key in limit)


def read(path):
    """By text and comment, the translation's forms."""
    known = {}
    if path.exists():
        for message in ElementTree.parse(path).getroot().iter("message"):
            said = message.find("translation")
            forms = [form.text or "" for form in said.findall("numerusform")] or [said.text or ""]
            known[(message.findtext("source", ""), message.findtext("comment", ""))] = forms
    return known


def catalogue(code, texts, known):
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>", f'<TS version="2.1" language="{code}" sourcelanguage="en">',
             "<context>", "    <name>loopwright</name>"]
    for (text, comment), counts in sorted(texts.items()):
        forms = known.get((text, comment), [])
        done = any(forms)
        lines.append('    <message numerus="yes">' if counts else "    <message>")
        lines.append(f"        <source>{escape(text)}</source>")
        if comment:
            lines.append(f"        <comment>{escape(comment)}</comment>")
        kind = "" if done else ' type="unfinished"'
        if counts:
            forms = (forms + [""] * FORMS[code])[:FORMS[code]]
            inner = "".join(f"<numerusform>{escape(form)}</numerusform>" for form in forms)
        else:
            inner = escape(forms[0]) if done else ""
        lines.append(f"        <translation{kind}>{inner}</translation>")
        lines.append("    </message>")
    lines += ["</context>", "</TS>", ""]
    return "\n".join(lines)


def places(text):
    """What a translation must have as often; "&" once at most, as the key of a menu."""
    return sorted(re.findall(r"%(?:\d|L?n)", text)) + sorted(re.findall(r"&(?=\w)", text))[:1]


def faults(texts, known):
    for (text, comment), counts in sorted(texts.items()):
        forms = known.get((text, comment), [""])
        if not all(forms):
            yield f"not translated: {text!r}"
        elif counts and any(set(places(form)) - set(places(text)) for form in forms):
            yield f"other places than its source: {text!r}"
        elif not counts and places(forms[0]) != places(text):
            yield f"other places than its source: {text!r}: {forms[0]!r}"
    for text, comment in sorted(known.keys() - texts.keys()):
        yield f"gone from the source: {text!r}"


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--check", action="store_true")
    parser.add_argument("--lupdate", default=shutil.which("lupdate", path="/usr/lib/qt6/bin") or "lupdate")
    said = parser.parse_args()
    found, pieces = messages.messages(TOP)
    texts = with_messages(texts_of_source(said.lupdate), [*found, *of_limits()])
    status = 0
    for fault in [*messages.faults_of_reading(), *messages.unlisted(pieces, [text for text, _ in texts])]:
        print(fault)
        status = 1
    for code in FORMS:
        path = FOLDER / f"{code}.ts"
        known = read(path)
        if not said.check:
            path.write_text(catalogue(code, texts, known), encoding="utf-8")
            known = read(path)
        for fault in faults(texts, known):
            print(f"{path.name}: {fault}")
            status = 1
    return status if said.check else 0


if __name__ == "__main__":
    sys.exit(main())
