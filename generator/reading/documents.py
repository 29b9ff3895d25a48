"""Documents: one item of rules/ as plain data that remembers its lines. One file an item, except messages, units and ids."""

import re
from dataclasses import dataclass
from pathlib import Path

from generator.problems import Problem
from generator.reading.items import Replaced, Where
from generator.reading.near import suggestion
from generator.reading.yaml_lines import Lines, read_file

FOLDERS = {
    "facts": "fact",
    "values": "value",
    "sources": "source",
    "evidence": "evidence",
    "messages": "message",
    "terms": "term",
    "cautions": "caution",
    "decisions": "decision",
    "calculators": "calculator",
    "stages": "stage",
    "varieties": "variety",
    "blocks": "block",
    "looks": "look",
    "hands": "hands",
    "faults": "fault",
}
SINGLE_FILES = {"units.yml": "unit", "ids.yml": "ids", "edition.yml": "edition"}
KINDS = (*FOLDERS.values(), "unit", "ids")
ID = re.compile(r"[a-z][a-z0-9]*(_[a-z0-9]+)*")
EVIDENCE_ID = re.compile(r"[A-Za-z][A-Za-z0-9]*([-_][A-Za-z0-9]+)*")
LOOSE_ID_KINDS = ("evidence",)
LONGEST_ID = 60  # an id is a file's name, and with its ending must fit every disk


@dataclass(frozen=True)
class Document:
    """One item before it is checked: its kind and id, its file, its plain data and the lines of every place in it.

    at is the place of the item inside its file (empty when the file is the item).
    """

    kind: str
    id: str
    path: str
    data: object
    lines: Lines
    at: tuple = ()
    replaced: Replaced | None = None

    def line(self, *place: object) -> int:
        """The line of a place in the item, or of the nearest place around it that has one."""
        full = (*self.at, *place)
        while full and full not in self.lines:
            full = full[:-1]
        return self.lines.get(full, 1)

    @property
    def where(self) -> Where:
        """The file and the line on which the item starts."""
        return Where(self.path, self.line())

    def problem(self, place: tuple, sentence: str, next_step: str = "") -> Problem:
        """A problem at a place of this item."""
        return Problem(self.path, self.line(*place), sentence, next_step)


def read_folder(root: Path) -> tuple[list[Document], list[Problem]]:
    """All documents under a rules or edition folder, in the order of their paths, and what is wrong with the files."""
    documents: list[Document] = []
    problems: list[Problem] = []
    if not root.is_dir():
        return [], [Problem(root.name, 0, "There is no such folder.", "Give the folder that holds the rules.")]
    for path in sorted(root.rglob("*")):
        if path.is_dir() or any(part.startswith(".") for part in path.relative_to(root).parts):
            continue
        found, faults = _read(path, path.relative_to(root).as_posix(), root.name)
        documents += found
        problems += faults
    return documents, problems


def can_be_id(kind: str, word: str) -> bool:
    """True for an id of a kind by its signs and its length; evidence keeps the ids under which it was collected."""
    pattern = EVIDENCE_ID if kind in LOOSE_ID_KINDS else ID
    return len(word) <= LONGEST_ID and bool(pattern.fullmatch(word))


def no_id(word: str) -> str:
    """A word that cannot be an id, as a sentence shows it: short."""
    return f"`{word if len(word) <= LONGEST_ID else word[: LONGEST_ID - 1] + '…'}` cannot be an id"


def _read(path: Path, inside: str, folder: str) -> tuple[list[Document], list[Problem]]:
    """The documents of one file; inside is its path in the folder."""
    shown = f"{folder}/{inside}"
    kind, fault = _kind(inside, shown)
    if fault:
        return [], [fault]
    data, lines, problems = read_file(path, shown)
    if problems:
        return [], problems
    if not isinstance(data, dict):
        sentence = "The file should hold fields (`name: ...`), one a line."
        return [], [Problem(shown, 1, sentence, f"Start from `new {kind} ID` or from a neighbour in this folder.")]
    if kind in ("message", "unit"):
        stem = f"{path.stem}." if kind == "message" else ""
        return _parts(kind, stem, shown, data, lines)
    return [Document(kind, path.stem, shown, data, lines)], []


def _parts(kind: str, stem: str, shown: str, data: dict, lines: Lines) -> tuple[list[Document], list[Problem]]:
    """The items of a file that holds many: messages, units."""
    documents, problems = [], []
    for key, part in data.items():
        if can_be_id(kind, key):
            documents.append(Document(kind, f"{stem}{key}", shown, part, lines, (key,)))
        else:
            problems.append(Problem(shown, lines[(key,)], f"{no_id(key)}.", id_rule(key)))
    return documents, problems


def _kind(inside: str, shown: str) -> tuple[str, Problem | None]:
    """The kind of the items in a file, by where it stands, or what is wrong with its place or name."""
    folder, _, name = inside.rpartition("/")
    stem, _, ending = name.rpartition(".")
    if ending != "yml":
        step = (
            f"Rename it to {stem or name}.yml."
            if ending in ("yaml", "YML") or not stem
            else "Move it out of this folder."
        )
        return "", Problem(shown, 1, "Only files that end in .yml are read here.", step)
    if not folder:
        if name in SINGLE_FILES:
            return SINGLE_FILES[name], None
        step = f"Put it in the folder of its kind: {', '.join(FOLDERS)}."
        return "", Problem(shown, 1, f"`{name}` does not belong here.", step)
    if folder not in FOLDERS:
        return "", Problem(shown, 1, f"`{folder}` is not a folder of rules.", suggestion(folder, FOLDERS, _folders()))
    kind = FOLDERS[folder]
    if not can_be_id(kind, stem):
        return "", Problem(shown, 1, f"{no_id(stem)}, and the name of the file is the id.", id_rule(stem))
    return kind, None


def _folders() -> str:
    """The folders there are, as a next step."""
    return f"Write one of: {', '.join(FOLDERS)}."


def id_rule(word: str) -> str:
    """How ids are written, with a suggestion made from the word; how long they may be when it is too long."""
    if len(word) > LONGEST_ID:
        return f"It has {len(word)} letters, and an id has at most {LONGEST_ID}: name it more shortly."
    made = re.sub(r"[^a-z0-9]+", "_", word.lower()).strip("_")
    such = f", such as `{made}`" if ID.fullmatch(made) else ""
    return f"Write small letters, digits and single underscores, a letter first{such}."
