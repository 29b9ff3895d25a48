"""Outcomes whose work takes several winters."""

from generator.problems import Problem
from generator.reading.build_items import cites
from generator.reading.documents import Document
from generator.reading.tables import Winter


def winters(document: Document, index: int, outcome: dict) -> tuple[Winter, ...]:
    """The work of an outcome winter by winter."""
    return tuple(
        Winter(
            one["do"], one["standing"], document.line("outcomes", index, "winters", k), tuple(map(float, one.get("crop_pct", ()))), cites(one)
        )
        for k, one in enumerate(outcome.get("winters", ()))
    )


def faults(document: Document, index: int, outcome: dict) -> list[Problem]:
    """Winters whose crop goes from more to less, and winters beside an action."""
    place = ("outcomes", index, "winters")
    found = [
        document.problem((*place, k), f"The crop goes from {low:g} to {high:g} %.", "Write the least first.")
        for k, (low, high) in enumerate(one.get("crop_pct", (0, 0)) for one in outcome.get("winters", ()))
        if low > high
    ]
    if "winters" in outcome and "action" in outcome:
        step = "Put the action into the first of the winters."
        found.append(document.problem(place, f"Outcome {outcome['id']} has an action and winters.", step))
    return found
