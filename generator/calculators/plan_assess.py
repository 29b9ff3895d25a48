"""The plan's first part: how many vines there are."""

from generator.calculators.facts import Facts, known, maybe, missing, number
from generator.calculators.plan_records import BlockPlanValues, Named, Part, first_of, known_of, status_of, waiting
from generator.calculators.say import Say
from generator.calculators.vine_density import VineDensityInputs, VineDensityResult, VineDensityValues, vine_density

ASSESS: str = "assess"
ASKED: list[str] = ["row_spacing_m", "vine_spacing_m", "missing_vines_pct"]


def assess(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """Vines per hectare and in the block. Without the missing vines only the planting places are known; they are not asked for when
    the grower counted the bearing vines."""
    if not known(facts, "row_spacing_m") or not known(facts, "vine_spacing_m"):
        return waiting(ASSESS, ASSESS, facts, ASKED, Say("plan.assess_open", [], []))
    counted = known(facts, "missing_vines_pct")
    gone = maybe(facts, "missing_vines_pct").number
    result = vine_density(
        VineDensityInputs(number(facts, "row_spacing_m"), number(facts, "vine_spacing_m"), maybe(facts, "area_ha"), gone), VineDensityValues()
    )
    rests_on = known_of(facts, ["row_spacing_m", "vine_spacing_m", "missing_vines_pct", "area_ha"])
    needs: list[str] = []
    if not known(facts, "bearing_vines_per_ha"):
        needs = missing(facts, ASKED)
    return Part(
        id=ASSESS,
        stage=ASSESS,
        ready=True,
        settled=len(needs) == 0,
        choice="",
        possible=[],
        uses=["vine_density"],
        needs=needs,
        ask_next=first_of(needs),
        rests_on=rests_on,
        status=status_of(facts, rests_on),
        headline=result.headline if counted else Say("plan.assess_places", [result.vines_per_ha], []),
        numbers=numbers_of(result, counted),
        lines=result.working if counted else result.working[: 2 + 1],
        notes=result.notes,
        sources=[],
        cautions=[],
    )


def numbers_of(result: VineDensityResult, counted: bool) -> list[Named]:
    """The numbers known: those of bearing vines only when the missing ones are counted, those of the block only with its area."""
    numbers = [Named("vines_per_ha", result.vines_per_ha), Named("row_m_per_ha", result.row_m_per_ha)]
    if counted:
        numbers.append(Named("bearing_vines_per_ha", result.bearing_vines_per_ha))
    if result.vines_in_block.ok:
        numbers.append(Named("vines_in_block", result.vines_in_block.number))
    if counted and result.bearing_vines.ok:
        numbers.append(Named("bearing_vines", result.bearing_vines.number))
    return numbers
