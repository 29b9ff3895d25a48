"""The varieties behind the table that is made from them: what each list says, and what was found of the fruit by node."""

from dataclasses import dataclass

from generator.pages.cites import Rest, rests
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Decision

SAYS = {"spur": "spurs", "cane": "canes", "either": "either"}


@dataclass(frozen=True)
class Told:
    """What one list says, how sure that is, and where it stands."""

    says: str
    standing: str
    rests: list[Rest]


@dataclass(frozen=True)
class Named:
    """A variety as shown: its names, what the lists come to, each list by itself, the note and what that rests on."""

    id: str
    name: str
    synonyms: tuple[str, ...]
    use: str
    verdict: str
    told: list[Told]
    note: str
    noted: list[Rest]


def named(rulebook: Rulebook, table: Decision) -> list[Named]:
    """Every variety in the order of the table's rows; none for a table that a person wrote."""
    labels = {outcome.id: outcome.label for outcome in table.outcomes}
    verdicts = {row.id: labels[row.then] for row in table.rows} if table.generated else {}
    return [
        Named(
            variety.id,
            variety.name,
            variety.other_names,
            variety.use,
            verdicts[variety.id],
            [Told(SAYS[one.says], one.standing, rests(rulebook, one.cites)) for one in variety.lists],
            variety.note,
            rests(rulebook, variety.cites),
        )
        for variety in rulebook.varieties.values()
        if variety.id in verdicts
    ]
