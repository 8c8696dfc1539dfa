"""The messages of the program that are no texts of the window: errors, findings and sentences of core, db and the actions. They
are found where they stand, so that none can be forgotten: each string of these rooms that reads like a sentence is one, unless
what stands below says why it is not. The window reads them backwards (core/base/Phrasebook.h). So a message should stand there
whole, with %1 for what changes; one that is put together of pieces is listed in messages.cpp as it can be read.
"""
import re

FOLDERS = ["core", "db", "app/actions", "app/trust", "app/print"]

# Calls whose strings are messages in whatever file they stand.
CALLS = re.compile(r"failure|Error|fail|refuse\w*|\w*[tT]rouble")

# Those of the file itself that only make an error.
HELPERS = re.compile(r"(?:(\w+)|auto (\w+) = \[[^\]]*\])\([^()]*\)\s*\{\s*return failure\(")

# Files whose other strings are none, by what they are.
OTHER = {
    # Said on papers, and listed as they can be read there in papers.cpp.
    "papers": r"app/print/.*|core/certificate/.*|core/base/PaperTime\..*|app/actions/(DayList|CertificateSetCover)\..*|core/acceptance/(Decision|Evidence|FactWords|Handoff|"
              r"Judge\w+|RunList|RunWords|SafetyCards|Visits|Criteria)\..*|core/safety/(SafetyFact|SafetyVerdict|Cautions)\..*",
    # Names and words of the trade, which words.cpp lists where the window shows them.
    "names": r"core/identifiers/(ProtocolVariant|Spid|TerminalIdentifiers)\.cpp|core/loop/(AnalogQuantity|LoopKernel|Wire|"
             r"RuleResult)\.cpp|core/errortest/CountText\.cpp",
    # Said by the command line alone.
    "command line": r"core/errortest/(CaptureResult|Bounds)\.cpp|app/actions/(ManualPage|HelpPages|FileForms)\.cpp",
    # What is signed, and must be the same for ever.
    "signed": r"core/history/(PublicKey|StationLog)\.cpp",
    # One of something, where the many are marked.
    "counted": r"app/actions/Reports\.cpp",
    # Invented names and remarks of the records that are filled.
    "invented": r"app/actions/(Fill|Invented\w*)\.cpp",
}
NONE = re.compile("|".join(OTHER.values()))

# Strings that are none wherever they stand: statements of SQLite, forms of dates, commands of the command line, one of
# something whose many are marked.
NOT_SAID = re.compile(r"(-- |PRAGMA|SELECT|BEGIN|INSERT|DELETE FROM|NOTIFY|COMMENT ON|SET|SAVEPOINT|RELEASE SAVEPOINT|ROLLBACK TO|; SELECT|\); SET| INDEXED BY | NOT INDEXED| CURSOR FOR |SQLite format|Loopwright )|.* (WHERE|ORDER BY) .*|M?M?MMM d|d MMM|-%1 days|"
                      r"(office|issuer|installer|instrument|order|limits|record) (import|add|set|records)|.*%n ")

TOKEN = re.compile(r'//[^\n]*|/\*.*?\*/|R"(?P<mark>\w*)\(.*?\)(?P=mark)"|u?"(?P<text>(?:[^"\\\n]|\\.)*)"'
                   r"|\d[\w.']*|'(?:[^'\\]|\\.)+'|#include[^\n]*|[A-Za-z_]\w*|\S|\n", re.S)


def strings(source):
    """Of a file: line, string (those that follow each other are one), the calls that it stands in."""
    calls, word, text, line, began = [], "", None, 1, 1
    for token in TOKEN.finditer(source):
        found = token[0]
        if token["text"] is not None:
            began = line if text is None else began
            text = (text or "") + re.sub(r"\\(.)", lambda m: {"n": "\n", "t": "\t"}.get(m[1], m[1]), token["text"])
        elif not found.isspace() and not found.startswith(("//", "/*", "#include")):
            if text is not None:
                yield began, text, calls
                text = None
            if found in "({[":
                calls = calls + [word]
            elif found in ")}]":
                calls = calls[:-1]
            word = found
        line += found.count("\n")


def is_sentence(text):
    return re.search(r"[A-Za-z]{2,}\S* (\S* )*[A-Za-z]{2,}|%\d \S*[a-z]{2}|[a-z]{2,}:? “?\"?%\d", text)


def is_piece(text):
    return text != text.strip() or text.startswith(tuple(",;:.)")) or text.endswith("(")


def of_file(name, source):
    """Line and string of its messages and their pieces."""
    helpers = {first or second for first, second in HELPERS.findall(source)}
    for line, text, calls in strings(source):
        within = any(CALLS.fullmatch(call) or call in helpers for call in calls)
        if not NOT_SAID.match(text) and (within or not NONE.fullmatch(name)):
            if is_piece(text) and re.search("[A-Za-z]{2}", text) or is_sentence(text):
                yield line, text


def messages(top):
    """By text, where it stands; and the pieces of such."""
    found, pieces = {}, {}
    for folder in FOLDERS:
        for path in sorted((top / folder).rglob("*.[ch]*")):
            name = path.relative_to(top).as_posix()
            for line, text in of_file(name, path.read_text(encoding="utf-8")):
                (pieces if is_piece(text) else found).setdefault(text, f"{name}:{line}")
    return found, pieces


def unlisted(pieces, texts):
    """The pieces that no text has: what they are put together to is forgotten."""
    places = re.compile(r"%?\d+")
    texts = [places.sub("%", text) for text in texts]
    for piece, place in sorted(pieces.items()):
        own = places.sub("%", piece.strip(" .,;:()"))
        if " " in own and not any(own in text for text in texts):
            yield f"{place}: a piece of a message that messages.cpp does not list: {piece!r}"


EXAMPLE = r"""
#include "core/base/Result.h"
/// A "comment of some words" is none.
auto wrong(const QString &what)
{
    return failure(ErrorCode::BadInput, what, "row 1");
}
Result<void> check(const QString &name)
{
    run("PRAGMA data_version", 30'000);
    if (name == "some_key" || name == '"')
        return wrong("begins with \"something\" odd");
    QString text = QString("The pair of %1 was "
                           "changed.").arg(name);
    return failure(ErrorCode::Refused, "there is no order " + name);
}
"""


def faults_of_reading():
    """Whether a message is found at all, first in a room of messages, then in one of papers."""
    said = 'begins with "something" odd'
    for name, texts in [("db/X.cpp", [said, "The pair of %1 was changed.", "there is no order "]),
                        ("app/print/X.cpp", [said, "there is no order "])]:
        found = [text for _, text in of_file(name, EXAMPLE)]
        if found != texts:
            yield f"messages.py: reads in {name}: {found}"
    if [*unlisted({"there is no order ": "X"}, ["there is no order %1"])] or not [*unlisted({"there is no pair ": "X"}, ["no"])]:
        yield "messages.py: misjudges a piece"
