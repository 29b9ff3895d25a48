"""What each published rule makes of dead primary buds, one beside the other; none is averaged with another.

Cornell adds as many per cent as are dead, Purdue a fixed share by bands, a table-grape sheet replaces the dead share. The bands
have gaps, edges that two bands print, and one overlap (Purdue prints 15-35 and 25-50, read here as 35-50): each is told where
it matters. An edge belongs to the band that it closes. (Evidence bi-01, bi-03, bi-04, bi-06, bi-17, bi-20.)
"""

from dataclasses import dataclass

from generator.calculators.counting import up
from generator.calculators.facts import Maybe
from generator.calculators.figures import FITS, Compared, Figure
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT, share

OUR_READING: str = "our_judgement"


@dataclass(frozen=True)
class Bands:
    """The printed limits, all in % of the primaries dead or of nodes to add; see rules/values/injury_*.yml."""

    cornell_from: float
    cornell_to: float
    northern_above: float
    purdue_normal: float
    purdue_light: float
    purdue_heavy_printed: float
    purdue_heavy: float
    purdue_light_extra: float
    purdue_heavy_extra: float
    sheet_normal: float
    sheet_from: float
    sheet_to: float


@dataclass(frozen=True)
class Ruled:
    """What one source says: nodes to leave, left out where it gives no number, and how it comes to that; whether its print is followed, or
    had to be read by us."""

    nodes: Maybe
    note: Say
    as_printed: bool


def more_by(wanted: float, extra_pct: float) -> float:
    """So many per cent more nodes than wanted."""
    return wanted * (PER_CENT + extra_pct) / PER_CENT


def ruled(exact: float, note: Say) -> Ruled:
    """A rule that gives a number: rounded up, as a replacement is."""
    return Ruled(Maybe(True, float(up(exact))), note, True)


def read_by_us(exact: float, note: Say) -> Ruled:
    """A rule whose print cannot stand as it is, with the number of our reading."""
    return Ruled(Maybe(True, float(up(exact))), note, False)


def silent(note: Say) -> Ruled:
    """A rule that gives no number."""
    return Ruled(Maybe(False, 0.0), note, True)


def line_of(who: Say, one: Ruled, limits: list[Figure]) -> Compared:
    """A rule as a line of the comparison; as sure as the first of its printed limits, or as our reading."""
    standing = limits[0].standing if one.as_printed else OUR_READING
    says = Say("injury_adjustment.nodes", [one.nodes.number], []) if one.nodes.ok else Say("injury_adjustment.no_number", [], [])
    return Compared(Say("injury_adjustment.printed", [], []), who, says, one.note, standing, FITS)


def adds_nothing(wanted: float, one: Ruled) -> bool:
    """True where a rule leaves the number as it is."""
    return one.nodes.ok and one.nodes.number <= float(up(wanted))


def least_of(bands: Bands) -> float:
    """The fewest dead at which any rule changes the number (%)."""
    return min(min(bands.cornell_from, bands.northern_above), min(bands.purdue_normal, bands.sheet_normal))


def by_cornell(wanted: float, dead_pct: float, bands: Bands) -> Ruled:
    """As many per cent more as are dead, between its limits. Adding does not bring back all the living buds, which is said."""
    if dead_pct < bands.cornell_from:
        return ruled(wanted, Say("injury_adjustment.cornell_none", [bands.cornell_from], []))
    if dead_pct > bands.cornell_to:
        return silent(Say("injury_adjustment.cornell_silent", [bands.cornell_to], []))
    exact = more_by(wanted, dead_pct)
    living = exact * (1.0 - share(dead_pct))
    return ruled(exact, Say("injury_adjustment.cornell_more", [dead_pct, wanted, exact, living], []))


def by_purdue(wanted: float, dead_pct: float, bands: Bands) -> Ruled:
    """None, the lighter or the heavier share more, or no number; where two printed bands hold, both are named."""
    if dead_pct <= bands.purdue_normal:
        return ruled(wanted, Say("injury_adjustment.purdue_none", [bands.purdue_normal], []))
    if dead_pct > bands.purdue_heavy and dead_pct > bands.purdue_light:
        return silent(Say("injury_adjustment.purdue_minimal", [bands.purdue_heavy], []))
    if dead_pct > bands.purdue_light:
        exact = more_by(wanted, bands.purdue_heavy_extra)
        limits = [bands.purdue_light, bands.purdue_heavy, bands.purdue_heavy_printed]
        return read_by_us(exact, Say("injury_adjustment.purdue_heavy", limits + [bands.purdue_heavy_extra, exact], []))
    exact = more_by(wanted, bands.purdue_light_extra)
    limits = [bands.purdue_normal, bands.purdue_light]
    if dead_pct < bands.purdue_heavy_printed:
        return ruled(exact, Say("injury_adjustment.purdue_light", limits + [bands.purdue_light_extra, exact], []))
    other = [bands.purdue_heavy_extra, bands.purdue_heavy_printed, bands.purdue_heavy]
    return read_by_us(exact, Say("injury_adjustment.purdue_overlap", limits + [bands.purdue_light_extra, exact] + other, []))


def by_sheet(wanted: float, dead_pct: float, replacing: Maybe, bands: Bands) -> Ruled:
    """As usual, nothing in the gap, the dead share made up for (which is to replace it: see `replacing`), or to wait."""
    if dead_pct <= bands.sheet_normal:
        return ruled(wanted, Say("injury_adjustment.sheet_none", [bands.sheet_normal], []))
    if dead_pct < bands.sheet_from:
        return silent(Say("injury_adjustment.sheet_gap", [bands.sheet_normal, bands.sheet_from], []))
    if dead_pct > bands.sheet_to or not replacing.ok:
        return silent(Say("injury_adjustment.sheet_wait", [bands.sheet_to], []))
    return ruled(replacing.number, Say("injury_adjustment.sheet_more", [replacing.number], []))


def by_northern(wanted: float, dead_pct: float, bands: Bands) -> Ruled:
    """Only whether to adjust at all, not by how much."""
    if dead_pct > bands.northern_above:
        return silent(Say("injury_adjustment.northern_adjust", [bands.northern_above], []))
    return ruled(wanted, Say("injury_adjustment.northern_none", [bands.northern_above], []))
