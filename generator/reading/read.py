"""Reads rules/ (and an edition over it) into a Rulebook. Bad items are left out and told as problems; nothing is raised."""

from collections.abc import Sequence
from pathlib import Path

from generator.problems import Problem
from generator.reading import build_items as build
from generator.reading import build_varieties
from generator.reading.build_items import BadItem
from generator.reading.build_looks import hands, look
from generator.reading.build_tables import Columns, calculator, decision, derived_column
from generator.reading.build_work_faults import work_fault
from generator.reading.by_node import FIELD, clashes, facts_of, form_of, stage_of, whole
from generator.reading.cells import FAR, Column
from generator.reading.digest import rules_version
from generator.reading.documents import FOLDERS, Document, read_folder
from generator.reading.editions import Documents, merge, read_edition
from generator.reading.items import Choice, Fact
from generator.reading.rulebook import BASE_EDITION, Edition, LedgerEntry, Rulebook
from generator.reading.schema import check_shape
from generator.reading.variety_lists import variety_choices
from generator.reading.work_faults import in_order

SIMPLE = {
    "value": build.value,
    "source": build.source,
    "evidence": build.evidence,
    "message": build.message,
    "term": build.term,
    "caution": build.caution,
    "unit": build.unit,
    "calculator": calculator,
    "stage": build.stage,
    "variety": build_varieties.variety,
    "block": build.block,
    "look": look,
    "hands": hands,
    "fault": work_fault,
}


def read_rulebook(rules: Path, edition: Path | None = None) -> tuple[Rulebook, list[Problem]]:
    """The rulebook of everything that could be read under rules, with edition laid over it, and all problems, sorted."""
    base, problems = read_folder(rules)
    problems += _no_edition_in_base(base)
    problems += _no_units(rules, base)
    over: list[Document] = []
    if edition is not None:
        over, more = read_edition(edition)
        problems += more
    identity = _identity(over, edition, problems)
    documents = merge(base, over, identity.id)
    reading = _Reading(documents, problems)
    rulebook = reading.rulebook(identity)
    return rulebook, sorted(set(reading.problems))


class _Reading:
    """One reading of a merged folder: keeps the documents of the right shape, the built items and the problems."""

    def __init__(self, documents: Documents, problems: list[Problem]) -> None:
        self.problems = problems
        self.documents = documents
        self.sound: dict[str, list[Document]] = {}
        self.lost = _unread(problems)
        for document in documents.values():
            faults = check_shape(document)
            self.problems += faults
            if faults:
                self.lost.add((document.kind, document.id))
            else:
                self.sound.setdefault(document.kind, []).append(document)

    def rulebook(self, edition: Edition) -> Rulebook:
        """Everything built, what feeds others first."""
        simple = {kind: self._all(kind, builder) for kind, builder in SIMPLE.items()}
        varieties = simple["variety"]
        choices = variety_choices(varieties)
        facts, by_node = self._facts(choices)
        columns = self._columns(facts)
        decisions = self._all("decision", lambda document: decision(document, columns, varieties))
        asked = {name: stage_of(stage, facts) for name, stage in simple["stage"].items()}
        stages = dict(sorted(asked.items(), key=lambda pair: (pair[1].number, pair[0])))
        forms = {name: form_of(form, facts) for name, form in simple["calculator"].items()}
        return Rulebook(
            facts=_by_stage(facts, stages, [name for stage in stages.values() for name in stage.asks]),
            by_node=by_node,
            values=simple["value"],
            sources=simple["source"],
            evidence=simple["evidence"],
            messages=simple["message"],
            terms=simple["term"],
            cautions=simple["caution"],
            units=simple["unit"],
            decisions=_by_stage(decisions, stages),
            calculators=_by_stage(forms, stages),
            stages=stages,
            varieties=varieties,
            blocks=simple["block"],
            looks=simple["look"],
            hands=dict(sorted(simple["hands"].items(), key=lambda pair: (pair[1].number, pair[0]))),
            faults=in_order(simple["fault"]),
            ids=self._ledger(),
            edition=edition,
            version=rules_version({key: document.data for key, document in self.documents.items()}),
        )

    def _all(self, kind: str, builder) -> dict:
        """Every item of a kind that can be built, by id."""
        built = {}
        for document in self.sound.get(kind, ()):
            try:
                built[document.id] = builder(document)
            except BadItem as bad:
                self.problems += bad.problems
                self.lost.add((kind, document.id))
        return built

    def _facts(self, varieties: tuple[Choice, ...]) -> tuple[dict[str, Fact], dict[str, Fact]]:
        """Every fact by id, and those that are asked by node once, by the stem of their file."""
        files = self._all("fact", lambda document: facts_of(document, varieties))
        self.problems += clashes(files)
        by_node = [document for document in self.sound.get("fact", ()) if FIELD in document.data and document.id in files]
        facts = {one.id: one for of_file in files.values() for one in of_file}
        return facts, {document.id: whole(document, varieties) for document in by_node}

    def _columns(self, facts: dict[str, Fact]) -> Columns:
        """What tables may ask: all facts, and all decisions whose outcomes can be read."""
        known = {name: _column(fact) for name, fact in facts.items()}
        for document in self.sound.get("decision", ()):
            if document.id in facts:
                sentence = f"`{document.id}` is the id of a fact, and a table's outcome becomes a fact of its own."
                self.problems.append(document.problem((), sentence, "Rename the file of one of the two."))
            known.setdefault(document.id, derived_column(document.data))
        lost = {name for kind, name in self.lost if kind in ("fact", "decision")} - known.keys()
        return Columns(known, frozenset(lost))

    def _ledger(self) -> tuple[LedgerEntry, ...]:
        """The entries of ids.yml, the edition's own last."""
        return tuple(entry for document in self.sound.get("ids", ()) for entry in build.ledger(document))


def _unread(problems: list[Problem]) -> set[tuple[str, str]]:
    """The items whose files could not be read, so that what rests on them is not reported a second time."""
    parts = (problem.path.split("/") for problem in problems)
    return {(FOLDERS[part[1]], part[2].removesuffix(".yml")) for part in parts if len(part) == 3 and part[1] in FOLDERS}


def _column(fact: Fact) -> Column:
    """What a cell may say of a fact; a date without range may be any day."""
    free = fact.kind == "date" and fact.low == fact.high
    low, high = (-FAR, FAR) if free else (fact.low, fact.high)
    return Column(fact.kind, tuple(choice.id for choice in fact.choices), low, high)


def _by_stage(items: dict, stages: dict, walk: Sequence[str] = ()) -> dict:
    """Items in the order of the stages, in the order of the walk within a stage, then by id; those of an unknown stage last."""
    places = {name: place for place, name in enumerate(stages)}
    steps = {name: step for step, name in enumerate(walk)}

    def order(name: str) -> tuple:
        item = items[name]
        nodes = (getattr(item, "series", "") or name, getattr(item, "node", 0))
        return places.get(item.stage, len(places)), steps.get(name, len(steps)), *nodes

    return {name: items[name] for name in sorted(items, key=order)}


def _identity(over: list[Document], folder: Path | None, problems: list[Problem]) -> Edition:
    """Who the edition is; the folder's name stands in when edition.yml is missing or bad."""
    if folder is None:
        return BASE_EDITION
    for document in over:
        if document.kind == "edition":
            faults = check_shape(document)
            problems += faults
            if not faults and document.data["id"] == BASE_EDITION.id:
                problems.append(
                    document.problem(("id",), "`base` is the id of the guide's own edition.", "Choose another id.")
                )
            elif not faults:
                return Edition(document.data["id"], document.data["name"], document.data["by"])
    return Edition(folder.name, folder.name, "")


def _no_edition_in_base(base: list[Document]) -> list[Problem]:
    """edition.yml belongs in the folder of a local edition only."""
    step = "Move it to the folder of the local edition."
    found = (document for document in base if document.kind == "edition")
    return [document.problem((), "The guide's own rules are no local edition.", step) for document in found]


def _no_units(rules: Path, base: list[Document]) -> list[Problem]:
    """One problem for the file of the units, not one for every number."""
    if not base or (rules / "units.yml").exists():
        return []
    step = "Bring it back: every number of the rules is in one of its units."
    return [Problem(f"{rules.name}/units.yml", 0, f"{rules.name}/units.yml is missing.", step)]
