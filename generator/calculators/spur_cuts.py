"""The cuts on a spur position: over the last node, and through older wood. Rows: spur_cut and stub_cut (S19 to S21)."""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.spur_canes import LOWER, TOP, UPPER, Canes, stands
from generator.calculators.spur_choosing import ONLY_LOW, TAKE_OFF, Chosen, highest_kept
from generator.calculators.table_answers import Told, ask, given, maybe_given, no_facts
from generator.calculators.tables import Table

CUT: str = "spur_cut"
STUB: str = "stub_cut"


@dataclass(frozen=True)
class Cuts:
    """How far over the last node the cut goes (cm), and how long a dry stub is, in times of its thickness."""

    over_low_cm: float
    over_high_cm: float
    stub_low: float
    stub_high: float


@dataclass(frozen=True)
class CutsTold:
    """What the tables said of the cut over the node and of the one through older wood; old is true where older wood comes off."""

    node: Told
    stub: Told
    old: bool


def cuts_of(tables: list[Table], frost_risk: int, old_mm: Maybe, chosen: Chosen, canes: Canes) -> CutsTold:
    """Both cuts. frost_risk is the place of its choice, old_mm the thickness of the older wood."""
    node = ask(tables, CUT, given(no_facts(), "spring_frost_risk", float(frost_risk)))
    stub = ask(tables, STUB, maybe_given(no_facts(), "two_year_wood_mm", old_mm))
    return CutsTold(node, stub, cuts_old(chosen, canes))


def cuts_old(chosen: Chosen, canes: Canes) -> bool:
    """True where wood of two years or more comes off this winter: the whole position, or what stands above the highest cane that stays."""
    highest = highest_kept(chosen)
    above = any(k > highest and stands(canes, k) for k in [UPPER, TOP])
    return chosen.choice.outcome == ONLY_LOW or chosen.choice.outcome == TAKE_OFF or (highest >= LOWER and above)
