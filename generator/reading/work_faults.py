"""Faults of the pruner's work: what an assessor looks for on a pruned vine and beside it, in three grades."""

import re
from dataclasses import dataclass

from generator.reading.items import Cite, Item

GRADES = ("vine", "crop", "untidy")  # the worst first
JOBS = ("safety", "vine", "spur", "cane", "cut", "tidying")
TEXTS = ("label", "what", "see", "why", "do")
NAMED = re.compile(r"\{(\w+)\}")


@dataclass(frozen=True)
class WorkFault(Item):
    """A fault: label (a line of the assessor's sheet), its grade and the job that it belongs to, then what it is, how an assessor sees it,
    why it matters and what to do. {id} in a text stands for the number of one of `values`. rows are `decision.row` that say so; an
    unsafe fault fails a test whatever the vine looks like."""

    label: str
    grade: str
    job: str
    what: str
    see: str
    why: str
    do: str
    standing: str
    cites: tuple[Cite, ...] = ()
    rows: tuple[str, ...] = ()
    values: tuple[str, ...] = ()
    looks: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    unsafe: bool = False


def in_order(faults: dict[str, WorkFault]) -> dict[str, WorkFault]:
    """The worst grade first; within a grade what is unsafe, then by the order of the work, then as the files are named."""
    return dict(sorted(faults.items(), key=lambda pair: (GRADES.index(pair[1].grade), not pair[1].unsafe, JOBS.index(pair[1].job), pair[0])))
