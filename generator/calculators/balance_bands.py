"""Bands of vine balance: a measure against the low and the high end of every author, and whose band leads for this vine.

Both ends belong to the band. An author may print one end only; figures of the same id are the two ends of one band. A band that is made for
this vine leads, but a remembered one never before one that was read; where bands that may be made for it say otherwise, no verdict is given
and what is not known of the vine is named.
"""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.figures import FITS, OPEN, OTHER, Compared, Figure, compared, number_of, standing_of
from generator.calculators.say import Say

GRAPE: str = "grape_type"
CANOPY: str = "canopy_form"
FACTS: list[str] = ["grape_type", "canopy_form", "use", "climate"]
REMEMBERED: str = "from_memory"
UNDER: int = 0
INSIDE: int = 1
OVER: int = 2
TOPICS: list[str] = ["vine_balance.on_ravaz", "vine_balance.on_per_m", "vine_balance.on_cane", "vine_balance.on_density"]
CONFLICTS: list[str] = ["vine_balance.ravaz_disputed", "vine_balance.per_m_disputed", "vine_balance.cane_disputed", "vine_balance.density_disputed"]
UNDERS: list[str] = ["vine_balance.ravaz_under", "vine_balance.per_m_under", "vine_balance.cane_under", "vine_balance.density_under"]
INSIDES: list[str] = ["vine_balance.ravaz_inside", "vine_balance.per_m_inside", "vine_balance.cane_inside", "vine_balance.density_inside"]
NOT_UNDERS: list[str] = [
    "vine_balance.ravaz_not_under",
    "vine_balance.per_m_not_under",
    "vine_balance.cane_not_under",
    "vine_balance.density_not_under",
]
NOT_OVERS: list[str] = ["vine_balance.ravaz_not_over", "vine_balance.per_m_not_over", "vine_balance.cane_not_over", "vine_balance.density_not_over"]
OVERS: list[str] = ["vine_balance.ravaz_over", "vine_balance.per_m_over", "vine_balance.cane_over", "vine_balance.density_over"]


@dataclass(frozen=True)
class Vine:
    """What bands are made for: the facts grape_type, use, canopy_form and climate, each the place of its choice."""

    grape_type: Maybe
    use: Maybe
    canopy_form: Maybe
    climate: Maybe


@dataclass(frozen=True)
class Measure:
    """One measure of a vine: its place among the four (0 Ravaz index, 1 prunings per metre, 2 mean cane, 3 shoots per metre), the number,
    and the two ends of every author's band."""

    kind: int
    number: float
    low: list[Figure]
    high: list[Figure]


@dataclass(frozen=True)
class Band:
    """One author's band; an end that the author does not print is not ok."""

    low: Maybe
    high: Maybe


def authors(measure: Measure) -> list[Figure]:
    """One figure for each author: those with a low end, then those with a high end alone."""
    return measure.low + [figure for figure in measure.high if not number_of(measure.low, figure.id).ok]


def band_of(measure: Measure, name: str) -> Band:
    """The band of one author. Raises ValueError when its ends are the wrong way round."""
    band = Band(number_of(measure.low, name), number_of(measure.high, name))
    if band.low.ok and band.high.ok and band.low.number > band.high.number:
        raise ValueError("the low end of a band lies over its high end")
    return band


def verdict(band: Band, number: float) -> int:
    """UNDER the band, INSIDE it (both ends included), or OVER it."""
    if band.low.ok and number < band.low.number:
        return UNDER
    if band.high.ok and number > band.high.number:
        return OVER
    return INSIDE


def place_of(figure: Figure, vine: Vine) -> int:
    """Whether a band is made for this vine, may be, or is not: the least of its facts counts."""
    place = max(standing_of(figure, "grape_type", vine.grape_type), standing_of(figure, "use", vine.use))
    place = max(place, standing_of(figure, "canopy_form", vine.canopy_form))
    return max(place, standing_of(figure, "climate", vine.climate))


def possible(measure: Measure, vine: Vine) -> list[Figure]:
    """The authors whose bands are made for this vine or may be: those that were read before remembered ones, then those that are made for it;
    else in the order of the file."""
    may = [figure for figure in authors(measure) if place_of(figure, vine) != OTHER]
    return sorted(may, key=lambda figure: place_of(figure, vine) + (OTHER if figure.standing == REMEMBERED else 0))


def others(measure: Measure, may: list[Figure]) -> list[Figure]:
    """Those of the authors that may hold who say otherwise than the first of them."""
    own = verdict(band_of(measure, may[0].id), measure.number)
    return [figure for figure in may if speaks_against(band_of(measure, figure.id), measure.number, own)]


def speaks_against(band: Band, number: float, own: int) -> bool:
    """Whether a band says otherwise than a verdict; one that lacks the end in question says nothing about it."""
    if (own == UNDER and not band.low.ok) or (own == OVER and not band.high.ok):
        return verdict(band, number) != INSIDE
    return verdict(band, number) != own


def open_fact(figures: list[Figure], vine: Vine) -> str:
    """The first fact that is not known and decides whether these bands are made for the vine; "" for none."""
    answers = [vine.grape_type, vine.canopy_form, vine.use, vine.climate]
    for place, answer in enumerate(answers):
        if any(standing_of(figure, FACTS[place], answer) == OPEN for figure in figures):
            return FACTS[place]
    return ""


def depends_on(measure: Measure, may: list[Figure], vine: Vine) -> str:
    """The fact that a verdict waits for; "" where the first band is made for this vine and no other kind of grape or canopy would say
    otherwise, or where all agree."""
    differing = others(measure, may)
    if len(differing) == 0:
        return ""
    if place_of(may[0], vine) == OPEN:
        return open_fact(may, vine)
    fact = open_fact(differing, vine)
    return fact if fact == GRAPE or fact == CANOPY else ""


def classed(measure: Measure, vine: Vine) -> list[Compared]:
    """The measure by every author."""
    return [
        compared(Say(TOPICS[measure.kind], [measure.number], []), figure, says_of(measure, figure), place_of(figure, vine))
        for figure in authors(measure)
    ]


def says_of(measure: Measure, figure: Figure) -> Say:
    """What one author says of the number."""
    band = band_of(measure, figure.id)
    found = verdict(band, measure.number)
    if found == UNDER:
        return Say(UNDERS[measure.kind], [band.low.number], [])
    if found == OVER:
        return Say(OVERS[measure.kind], [band.high.number], [])
    if band.low.ok and band.high.ok:
        return Say(INSIDES[measure.kind], [band.low.number, band.high.number], [])
    if band.low.ok:
        return Say(NOT_UNDERS[measure.kind], [band.low.number], [])
    return Say(NOT_OVERS[measure.kind], [band.high.number], [])


def conflicts(measures: list[Measure], vine: Vine) -> list[Say]:
    """For each measure on which authors whose bands hold or may hold disagree: how many say otherwise than the first, and who for one."""
    notes: list[Say] = []
    for measure in measures:
        may = possible(measure, vine)
        if len(may) > 0:
            differing = others(measure, may)
            if len(differing) > 0:
                notes.append(Say(CONFLICTS[measure.kind], [float(len(differing)), float(len(may))], [may[0].word, differing[0].word]))
    return notes
