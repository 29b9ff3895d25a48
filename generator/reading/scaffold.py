"""`new KIND ID`: begins an item of the rules with a commented starter file and its line in the ledger of ids."""

import re
from collections.abc import Iterable
from datetime import date
from itertools import product
from pathlib import Path
from string import Template, ascii_uppercase

from generator.reading.documents import FOLDERS, can_be_id, id_rule, no_id
from generator.reading.items import Fact
from generator.reading.ledger import FILE, live_ids, write_ids
from generator.reading.near import suggestion
from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook

STARTERS = Path(__file__).parent / "starters"
KINDS = (*FOLDERS.values(), "unit")
COMMENTS_FROM = 36
NEXT = {
    "fact": "Write its words, then ask it in a decision or a calculator.",
    "value": "Write its figures with their sources, then name it in the `values` of a calculator.",
    "decision": "Write its outcomes, rows and examples; when their ids are final, run `python3 -m generator ids`.",
    "calculator": "Write the sums in generator/calculators/{id}.py and their sentences in rules/messages/{id}.yml.",
    "look": "Write its words, and draw its pictures in generator/pages/anatomy/{id}.py.",
    "hands": "Write its steps, each with how sure we are of it.",
    "fault": "Write its words, and name the rows and values that say so.",
    "evidence": "Write what the source says, then name it in `sources` where it is used.",
    "message": "Write the sentence with its numbers and words, then say it in a calculator.",
}


def new_item(rules: Path, kind: str, name: str) -> list[Path]:
    """Begins an item and lists it in the ledger; gives the files written. Raises ValueError, in the author's words, when
    there is no such kind, the id will not do, or the id is taken (now or in the past)."""
    kind = _kind(kind)
    path, key = _place(rules, kind, name)
    rulebook, _ = read_rulebook(rules)
    _refuse_taken(rulebook, kind, name, path, key)
    text = _starter(kind, name, key, rulebook)
    path.parent.mkdir(parents=True, exist_ok=True)
    before = path.read_text(encoding="utf-8") if key and path.exists() else ""
    path.write_text(before + text, encoding="utf-8")
    again, _ = read_rulebook(rules)
    write_ids(rules, {kind: {name: live_ids(again)[kind].get(name, "")}}, date.today().isoformat())
    return [path, rules / FILE]


def what_next(kind: str, name: str) -> str:
    """What to do with the new item, in one or two sentences."""
    step = NEXT.get(kind, "Write its words.")
    return f"{step.format(id=name)} `python3 -m generator check` tells what is still missing."


def _kind(word: str) -> str:
    """The kind that a word names, in the singular or as the name of its folder."""
    kind = FOLDERS.get(word, "unit" if word == "units" else word)
    if kind not in KINDS:
        raise ValueError(
            f"There is no kind `{word}`. {suggestion(word, KINDS, 'The kinds are: ' + ', '.join(KINDS) + '.')}"
        )
    return kind


def _place(rules: Path, kind: str, name: str) -> tuple[Path, str]:
    """The file of an item, and its key in that file when the file holds many."""
    stem, key = name, ""
    if kind == "message":
        stem, _, key = name.partition(".")
        if not key:
            raise ValueError(f"The id of a message is file.key, such as `{stem}.first_line`.")
    for word in filter(None, (stem, key)):
        if not can_be_id(kind, word):
            raise ValueError(f"{no_id(word)}. {id_rule(word)}")
    if kind == "unit":
        return rules / "units.yml", name
    folder = next(folder for folder, of in FOLDERS.items() if of == kind)
    return rules / folder / f"{stem}.yml", key


def _refuse_taken(rulebook: Rulebook, kind: str, name: str, path: Path, key: str) -> None:
    """An id is given once and for all; facts and decisions share one set of ids. Raises ValueError."""
    alike = ("fact", "decision") if kind in ("fact", "decision") else (kind,)
    alive = live_ids(rulebook)
    for other in alike:
        if name in alive[other]:
            raise ValueError(f"There is a {other} `{name}` already. Choose another id, or change that one.")
        for entry in rulebook.ids:
            if (entry.kind, entry.id) == (other, name):
                raise ValueError(
                    f"`{name}` was a {other} once ({entry.where.path}:{entry.where.line}), and an id is never used again."
                )
    if path.exists() and not key:
        raise ValueError(f"There is a file {path.name} already. Choose another id, or mend that file.")


def _starter(kind: str, name: str, key: str, rulebook: Rulebook) -> str:
    """The text of the starter, with what the rulebook has filled in so that it can be read at once."""
    unit = _unit(name, rulebook)
    words = (key or name).removesuffix(f"_{unit}").replace("_", " ").replace("-", " ")
    yes_no = _first(rulebook, ("yes_no",), "some_fact")
    number = _first(rulebook, ("number", "whole"), "some_fact")
    fact = rulebook.facts.get(number)
    text = Template((STARTERS / f"{kind}.yml").read_text(encoding="utf-8")).substitute(
        id=name,
        key=key,
        words=words,
        label=words.capitalize(),
        code=free_code(name, _codes(rulebook)),
        unit=unit,
        stage=next(iter(rulebook.stages), "assess"),
        term=next(iter(rulebook.terms), "some_term"),
        source=next(iter(rulebook.sources), "some_source"),
        next=max((stage.number for stage in rulebook.stages.values()), default=0) + 1,
        fact=yes_no,
        cell="yes",
        answer="yes",
        number=number,
        low=f"{fact.low:g}" if fact else "1",
        today=date.today().isoformat(),
    )
    return re.sub(r"(?m)^( *[^ #].*?) +(# .*)$", _aligned, text)


def _aligned(match: re.Match) -> str:
    """A line whose comment starts in the column of all comments, where there is room."""
    return f"{match[1]:<{COMMENTS_FROM}}  {match[2]}"


def _first(rulebook: Rulebook, kinds: tuple[str, ...], else_name: str) -> str:
    """The id of the first fact of one of these kinds."""
    return next((fact.id for fact in rulebook.facts.values() if fact.kind in kinds), else_name)


def _unit(name: str, rulebook: Rulebook) -> str:
    """The unit that the id ends in (`row_spacing_m` is in m), else `count`."""
    ends = [unit for unit in rulebook.units if name.endswith(f"_{unit}")]
    return max(ends, key=len, default="count")


def _codes(rulebook: Rulebook) -> set[str]:
    """Every code that is or was given to a fact."""
    facts: Iterable[Fact] = rulebook.facts.values()
    return {fact.code for fact in facts} | {entry.code for entry in rulebook.ids if entry.code}


def free_code(name: str, taken: set[str]) -> str:
    """Two capitals for a fact that no fact has or had: from its initials, else from its letters, else the first free."""
    letters = re.sub(r"[^a-z]", "", name.lower()).upper()
    initials = "".join(word[0] for word in name.split("_") if word[:1].isalpha()).upper()
    wishes = [initials[:2], *(letters[:1] + letter for letter in letters[1:])]
    for code in (*wishes, *("".join(pair) for pair in product(ascii_uppercase, repeat=2))):
        if len(code) == 2 and code not in taken:
            return code
    raise ValueError("All two-letter codes are given; facts need longer codes.")
