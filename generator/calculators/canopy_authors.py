"""Room in the leaf wall by the shoots that each author wants on a metre of it."""

from dataclasses import dataclass

from generator.calculators.counting import half_up
from generator.calculators.facts import Maybe
from generator.calculators.figures import FITS, Compared, Figure, compared, number_of, standing_of
from generator.calculators.say import Say


@dataclass(frozen=True)
class Wall:
    """The leaf wall of one vine: curtains, metres of all of them, non-count shoots that stand in it, and the shoots that a node gives."""

    curtains: int
    canopy_m: float
    others: float
    shoots_per_node: float


@dataclass(frozen=True)
class Bands:
    """Fewest and most shoots on a metre by every author; figures of the same id are the two ends of one band."""

    low: list[Figure]
    high: list[Figure]


@dataclass(frozen=True)
class MadeFor:
    """What figures are made for: the form of the canopy, the use and the type of grape, each the place of its choice."""

    canopy_form: Maybe
    use: Maybe
    grape_type: Maybe


def room(wall: Wall, shoots_per_m: float) -> float:
    """Nodes whose shoots fit beside the other shoots; 0 when those fill the canopy alone. Raises ZeroDivisionError when nodes give none."""
    return max(0.0, (shoots_per_m * wall.canopy_m - wall.others) / wall.shoots_per_node)


def nodes_at(wall: Wall, shoots_per_m: float) -> float:
    """The same as people cut them, nearest, half up."""
    return float(half_up(room(wall, shoots_per_m)))


def authors(bands: Bands) -> list[Figure]:
    """One figure for each author: those who print a most, then those who print a least alone."""
    return bands.high + [one for one in bands.low if not number_of(bands.high, one.id).ok]


def place_of(figure: Figure, vine: MadeFor) -> int:
    """Whether a figure is made for this vine, may be, or is not: the least of its facts counts."""
    place = max(standing_of(figure, "canopy_form", vine.canopy_form), standing_of(figure, "use", vine.use))
    return max(place, standing_of(figure, "grape_type", vine.grape_type))


def by_author(wall: Wall, bands: Bands, vine: MadeFor) -> list[Compared]:
    """The nodes that every author's shoots leave room for."""
    topic = Say("canopy_space.by_author", [], [])
    return [compared(topic, one, says_of(wall, bands, one.id), place_of(one, vine)) for one in authors(bands)]


def says_of(wall: Wall, bands: Bands, author: str) -> Say:
    """One author's shoots on a metre, and the nodes that they come to on this vine."""
    low = number_of(bands.low, author)
    high = number_of(bands.high, author)
    if low.ok and high.ok:
        nodes = [nodes_at(wall, low.number), nodes_at(wall, high.number)]
        return Say("canopy_space.author_band", [low.number, high.number] + nodes, [])
    if high.ok:
        return Say("canopy_space.author_most", [high.number, nodes_at(wall, high.number)], [])
    return Say("canopy_space.author_least", [low.number, nodes_at(wall, low.number)], [])


def wall_notes(wall: Wall, bands: Bands, vine: MadeFor) -> list[Say]:
    """That each wall of a divided canopy counts, and how far authors who wrote for this vine lie apart."""
    notes: list[Say] = []
    if wall.curtains > 1:
        notes.append(Say("canopy_space.divided", [float(wall.curtains), wall.canopy_m], []))
    most = [one.number for one in bands.high if place_of(one, vine) == FITS]
    if len(most) > 0 and max(most) > min(most):
        ends = [min(most), max(most), nodes_at(wall, min(most)), nodes_at(wall, max(most))]
        notes.append(Say("canopy_space.authors_apart", ends, []))
    return notes
