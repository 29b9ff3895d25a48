"""The ledger of ids, rules/ids.yml: every id that was ever published, so that links and printed codes keep their meaning.

Lines are added and never taken away or changed by the generator; a person marks an entry as moved or retired, with a reason.
`python3 -m generator ids` adds what is missing.
"""

from collections.abc import Iterator
from pathlib import Path

from generator.problems import Problem
from generator.reading.documents import FOLDERS
from generator.reading.items import Where
from generator.reading.near import suggestion
from generator.reading.read import read_rulebook
from generator.reading.rulebook import LedgerEntry, Rulebook
from generator.reading.yaml_lines import read_text

FILE = "ids.yml"
PAGES = ("index", "plan", "how-sure-we-are", "facts", "values", "sources", "glossary", "varieties", "looks", "hands", "train", "sheet", "changes", "404")
PARTS = {"choice": "fact", "row": "decision", "outcome": "decision"}  # ids that are `item.part`
HEADING = """# The ledger of ids: every id that was ever published. Lines are added, never taken away and never changed, so that a link
# or a printed code keeps its meaning. An id that goes is marked `state: moved` (with `to`) or `state: retired`, with a `reason`.
"""
Ids = dict[str, dict[str, str]]


def live_ids(rulebook: Rulebook) -> Ids:
    """Every id of a rulebook by kind, with the code of a fact and empty text for all others.

    Generated tables and the choices made from varieties follow from the ids of the varieties; only those are listed.
    """
    tables = [table for table in rulebook.decisions.values() if not table.generated]
    facts = rulebook.facts.values()
    return {
        "page": dict.fromkeys(PAGES, ""),
        "stage": dict.fromkeys(rulebook.stages, ""),
        "fact": {fact.id: fact.code for fact in facts},
        "choice": {
            f"{fact.id}.{choice.id}": ""
            for fact in facts
            for choice in fact.choices
            if choice.id not in rulebook.varieties
        },
        "decision": dict.fromkeys(rulebook.decisions, ""),
        "row": {f"{table.id}.{row.id}": "" for table in tables for row in table.rows},
        "outcome": {
            f"{table.id}.{outcome.id}": "" for table in rulebook.decisions.values() for outcome in table.outcomes
        },
        "calculator": dict.fromkeys(rulebook.calculators, ""),
        "value": dict.fromkeys(rulebook.values, ""),
        "unit": dict.fromkeys(rulebook.units, ""),
        "message": dict.fromkeys(rulebook.messages, ""),
        "term": dict.fromkeys(rulebook.terms, ""),
        "caution": dict.fromkeys(rulebook.cautions, ""),
        "variety": dict.fromkeys(rulebook.varieties, ""),
        "source": dict.fromkeys(rulebook.sources, ""),
        "evidence": dict.fromkeys(rulebook.evidence, ""),
        "block": dict.fromkeys(rulebook.blocks, ""),
        "look": dict.fromkeys(rulebook.looks, ""),
        "hands": dict.fromkeys(rulebook.hands, ""),
        "fault": dict.fromkeys(rulebook.faults, ""),
    }


def missing(rulebook: Rulebook) -> Ids:
    """The live ids that the ledger does not list, by kind; kinds without any are left out."""
    listed = {(entry.kind, entry.id) for entry in rulebook.ids}
    found = {
        kind: {name: code for name, code in ids.items() if (kind, name) not in listed}
        for kind, ids in live_ids(rulebook).items()
    }
    return {kind: ids for kind, ids in found.items() if ids}


def vanished(rulebook: Rulebook) -> list[LedgerEntry]:
    """Entries listed as live whose item is gone."""
    alive = live_ids(rulebook)
    return [entry for entry in rulebook.ids if entry.state == "live" and entry.id not in alive[entry.kind]]


def ledger_faults(rulebook: Rulebook, path: str = "rules/ids.yml") -> list[Problem]:
    """Everything in which the ledger and the rulebook differ; path is where the ledger stands."""
    return [
        *_unlisted(rulebook, path),
        *(
            _fault(entry, "is listed as live, and there is none.", _gone(rulebook, entry))
            for entry in vanished(rulebook)
        ),
        *_risen(rulebook),
        *_codes(rulebook),
    ]


def add_missing(rules: Path, today: str) -> list[str]:
    """Adds every missing id to the ledger of a rules folder; gives them as `kind id`, in the order written.

    What is in the file stays as it is, line for line. Raises ValueError when the ledger cannot be read.
    """
    rulebook, problems = read_rulebook(rules)
    broken = [problem for problem in problems if problem.path == f"{rules.name}/{FILE}"]
    if broken:
        raise ValueError(str(broken[0]))
    new = missing(rulebook)
    write_ids(rules, new, today)
    return [f"{kind} {name}" for kind, ids in new.items() for name in ids]


def write_ids(rules: Path, new: Ids, today: str) -> None:
    """Puts new ids at the end of the part of their kind, keeping every line that is there."""
    path = rules / FILE
    text = path.read_text(encoding="utf-8") if path.exists() else HEADING
    lines = text.splitlines()
    for kind, ids in new.items():
        added = [f"  {name}: {_entry(code, today)}" for name, code in ids.items()]
        place = _end_of_part("\n".join(lines), kind)
        if place:
            lines[place:place] = added
        elif added:
            lines += [f"{kind}:", *added]
    if new:
        path.write_text("\n".join(lines) + "\n", encoding="utf-8")


def _end_of_part(text: str, kind: str) -> int:
    """How many lines lead up to the end of a kind's part (its last line with an entry), 0 when there is no such part."""
    _, lines, _ = read_text(text, FILE)
    return max((line for place, line in lines.items() if place[:1] == (kind,)), default=0)


def _entry(code: str, today: str) -> str:
    """A live entry on one line."""
    return f"{{since: {today}, code: {code}}}" if code else f"{{since: {today}}}"


def _unlisted(rulebook: Rulebook, path: str) -> Iterator[Problem]:
    """Live ids that the ledger lacks, each where its item stands; the id of a page stands in no file but the ledger."""
    for kind, ids in missing(rulebook).items():
        for name in ids:
            step = "Run `python3 -m generator ids`, and keep the line that it adds."
            place = _place(rulebook, kind, name) or Where(path, 1)
            yield Problem(place.path, place.line, f"The {kind} `{name}` is not in the ledger of ids.", step)


def _place(rulebook: Rulebook, kind: str, name: str) -> Where | None:
    """Where the item of an id stands; of a row its own line, of a choice or an outcome the item that holds it."""
    holder, of = (PARTS[kind], name.partition(".")[0]) if kind in PARTS else (kind, name)
    folder = next((folder for folder, held in (*FOLDERS.items(), ("units", "unit")) if held == holder), "")
    item = getattr(rulebook, folder)[of] if folder else None
    for row in item.rows if kind == "row" and item else ():
        if f"{of}.{row.id}" == name:
            return Where(item.where.path, row.line)
    return item.where if item else None


def _gone(rulebook: Rulebook, entry: LedgerEntry) -> str:
    """What to do about an id that has vanished."""
    near = suggestion(entry.id, missing(rulebook).get(entry.kind, {}), "-")
    renamed = f"{near[:-1]}, which is new? An id stays as it is. " if near != "-" else ""
    return f"{renamed}Bring it back, or mark it `state: moved` with `to`, or `state: retired`, with a `reason`."


def _risen(rulebook: Rulebook) -> Iterator[Problem]:
    """Ids that are live again after they were moved or retired."""
    alive = live_ids(rulebook)
    for entry in rulebook.ids:
        if entry.state != "live" and entry.id in alive[entry.kind]:
            yield _fault(entry, f"is {entry.state}, and yet there is one.", "Give the new thing an id of its own.")
        if entry.state == "moved" and entry.to not in alive[entry.kind]:
            yield _fault(entry, f"moved to `{entry.to}`, and there is none.", suggestion(entry.to, alive[entry.kind]))


def _codes(rulebook: Rulebook) -> Iterator[Problem]:
    """Codes of facts: as recorded, and never given twice, not even after a fact is gone."""
    owners: dict[str, str] = {}
    for fact in rulebook.facts.values():
        if owners.setdefault(fact.code, fact.id) != fact.id:
            sentence = f"The fact `{fact.id}` has the code {fact.code}, which `{owners[fact.code]}` has."
            yield Problem(fact.where.path, fact.where.line, sentence, "Give the newer of the two a free code.")
    first: dict[str, str] = {}
    for entry in rulebook.ids:
        if entry.kind == "fact" and entry.code and first.setdefault(entry.code, entry.id) != entry.id:
            yield _fault(entry, f"has the code {entry.code}, which `{first[entry.code]}` has.", "Give it a free code.")
        fact = rulebook.facts.get(entry.id) if entry.kind == "fact" else None
        if fact and fact.code != entry.code:
            step = f"Write `code: {entry.code}` in the fact again: printed links carry it."
            yield Problem(
                fact.where.path,
                fact.where.line,
                f"The fact `{fact.id}` has the code {fact.code}; it was published as {entry.code}.",
                step,
            )


def _fault(entry: LedgerEntry, sentence: str, step: str) -> Problem:
    """A problem at a line of the ledger."""
    return Problem(entry.where.path, entry.where.line, f"The {entry.kind} `{entry.id}` {sentence}", step)
