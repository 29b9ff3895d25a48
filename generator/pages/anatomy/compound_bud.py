"""The compound bud: on the cane, and cut through its middle, alive and with a dead primary. In the section y = 0 is the bud's base."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.places import Curve, curve_of, outline
from generator.pages.drawing.shapes import Oval, Picture, Shape, Shapes, pin, stroke

# The node from outside: half the width of the cane at distances along it, left and right; the bud; the edges of its scales.
CANE = Spine(Point(-2.5, 21), Point(-1, 8), Point(0, 0), Point(0.5, -9), Point(2.5, -22))
LEFT: Curve = ((-1, 4.6), (9, 4.6), (16, 5.4), (21, 6.6), (26, 5.2), (33, 4.5), (46, 4.3))
RIGHT: Curve = ((-1, 4.6), (9, 4.6), (16, 5.6), (21, 7), (26, 5.4), (33, 4.5), (46, 4.3))
BUD: tuple[Curve, Curve] = (
    ((4.4, 2), (8.6, 1.9), (11.9, -1.8), (12.4, -6), (11.6, -9.6)),
    ((11.6, -9.6), (8.4, -8.4), (6, -6), (4, -3)),
)
EDGES: tuple[Curve, ...] = (
    ((6.6, 1.7), (8.1, -2.2), (9.8, -5.8), (11.4, -9.3)),
    ((5.6, -5.2), (8, -3.6), (9.2, -0.6), (9.3, 1.4)),
    ((10.2, 0.8), (11, -2.6), (11.6, -8.6)),
)
STRIPES: Curve = ((0, 2.6), (2, -1.4), (1, 0.6), (30, 2), (32, -1.8), (29, 0.2))
# The section.
CUSHION: Curve = ((-5.4, 1.5), (-4.1, 0.85), (-2.8, 0.38), (0, 0.2), (2.8, 0.38), (4.1, 0.85), (5.4, 1.5))
OUTER: tuple[Curve, Curve] = (
    ((-3.2, 0.6), (-3.55, -1.6), (-2.95, -3.9), (-1.55, -5.8), (0, -6.8)),
    ((0, -6.8), (-1.2, -5.3), (-2.35, -3.6), (-2.9, -1.6), (-2.7, 0.5)),
)
INNER: tuple[Curve, Curve] = (
    ((-2.66, 0.5), (-2.82, -1.7), (-2.2, -3.6), (-1.15, -5.1), (0, -6.0)),
    ((0, -6.0), (-0.9, -4.75), (-1.9, -3.3), (-2.52, -1.7), (-2.36, 0.45)),
)
LEAF: tuple[Curve, Curve] = (
    ((-0.15, 0.3), (0.5, -0.15), (0.68, -1.0), (0.05, -1.75)),
    ((0.05, -1.75), (0.3, -1.0), (0.14, -0.45), (-0.3, -0.25)),
)
LOBES = (
    (0.6, -0.62, 0.14),
    (0, -0.02, 0.21),
    (0.3, 0.08, 0.2),
    (-0.06, -0.36, 0.21),
    (0.58, -0.06, 0.19),
    (0.5, -0.36, 0.19),
    (0.18, -0.6, 0.19),
    (0.26, -0.24, 0.22),
)
DEAD: Curve = (
    (-0.85, 0.25),
    (-0.62, -0.9),
    (-0.75, -1.8),
    (-0.4, -2.5),
    (-0.22, -3.3),
    (0.1, -2.9),
    (0.2, -2.2),
    (0.55, -1.7),
    (0.5, -0.8),
    (0.8, 0.25),
)
CRACKS: tuple[Curve, ...] = (
    ((-0.3, 0), (-0.15, -0.8), (-0.3, -1.7)),
    ((0.25, 0), (0.1, -0.9), (0.2, -1.5)),
    ((-0.15, -1.9), (-0.1, -2.5)),
)
FLAKE: Curve = ((-0.12, 0.1), (0, -0.16), (0.14, 0.06), (-0.12, 0.1))
SECONDARY, TERTIARY = 1.95, -1.85  # their places beside the primary


def draw() -> list[Picture]:
    """At the node, a sound bud in section, a bud with a dead primary."""
    return [at_the_node(), section("alive", False), section("dead_primary", True)]


def at_the_node() -> Picture:
    """A node from outside: the bud over the scar of its leaf, the scar of the summer's side shoot beside it."""
    left, right = [[CANE.beside(s, side * w) for s, w in run] for run, side in ((LEFT, 1), (RIGHT, -1))]
    body = Shape("cane", (tuple(left), tuple(right[::-1])), closed=True)
    fine = [stroke("hair", *(CANE.beside(s + k, off) for k in (0, 5, 10))) for s, off in STRIPES]
    shapes: Shapes = [outline("bud", *BUD), body, *fine, *(curve_of("edge", edge) for edge in EDGES)]
    shapes += [Oval("scar", Point(5.6, 4.4), 1.5, 2.7, -14)]
    shapes += [Oval("pith", Point(5.5 + k * 0.25, 3 + k * 1.4), 0.32, 0.32) for k in range(3)]
    shapes += [Oval("scar", Point(3.2, -1.6), 1.15, 1.4, 10), Oval("pith", Point(3.2, -1.6), 0.4, 0.5)]
    shapes += [Oval("scar", Point(-5.6, -0.5), 0.8, 1.5, 0), stroke("joint", Point(-6, 1.8), Point(0, 3), Point(4.3, 2.4))]
    pins = (
        pin("bud_scales", (15.5, -8), (9.6, -5)),
        pin("leaf_scar", (14, 7.5), (6, 4.6)),
        pin("lateral_scar", (-9, -9), (3.1, -1.7)),
        pin("tendril_scar", (-13, -1), (-5.8, -0.5)),
        pin("node", (-12, 6.5), (-3.4, 2.2)),
        pin("internode", (-11, 14), (-2.4, 12.5)),
    )
    return Picture("node", -20, -15, 40, 31, tuple(shapes), pins)


def section(name: str, dead: bool) -> Picture:
    """The bud cut lengthwise through its middle."""
    shapes: Shapes = [*_cushion(), *_scales(), *_wool()]
    shapes += _small_bud(SECONDARY, 1.9 if dead else 1.45) + _small_bud(TERTIARY, 1.0)
    shapes += _dead_primary() if dead else _primary()
    pins = [
        pin("primary", (-3.8, -5.1), (-0.15, -2.6 if dead else -1.5)),
        pin("secondary", (4, -3.2), (SECONDARY, -1.1)),
        pin("tertiary", (-4, -2), (TERTIARY, -0.6)),
        pin("bud_scales", (3.5, -5.6), (2.3, -4)),
        pin("cushion", (3.9, 1.7), (1.3, 1.3)),
    ]
    if dead:
        pins.append(pin("gap", (-3.9, -3.6), (-1.05, -2.5)))
    else:
        pins.append(pin("primordium", (4.05, -4.4), (1.3, -2.4)))
        pins.append(pin("wool", (-3.2, -6.4), (-0.5, -5)))
        pins.append(pin("leaf_beginnings", (-4.1, -3.7), (-1.6, -1.2)))
    return Picture(name, -4.6, -7.1, 9.2, 9.4, tuple(shapes), tuple(pins))


def _cushion() -> Shapes:
    """The cane below: bark, green layer, wood, and the strands that lead into the three buds."""
    base = outline("wood", ((-5.4, 3), *CUSHION, (5.4, 3)))
    green = outline("green", CUSHION, tuple((x, y + 0.34) for x, y in CUSHION[::-1]))
    strand = ((0.5, 2.6), (0.8, 1.4), (1, 0.5))
    ways = [(bud, off) for bud in (TERTIARY, 0.0, SECONDARY) for off in (-0.22, 0.0, 0.22)]
    return [base, green, *(curve_of("hair", tuple((bud * part + off * (1.4 - part * 0.8), y) for part, y in strand)) for bud, off in ways)]


def _scales() -> Shapes:
    """Two pairs of brown scales, closed over the buds."""
    return [outline("scale", *curves, side=side) for curves in (INNER, OUTER) for side in (1, -1)]


def _wool() -> Shapes:
    """Hairs that fill the room under the scales: a tuft at the top and fringes at both sides."""
    tuft = [(x * 0.24, -4.55 + 0.055 * x * x + 0.16 * (x % 2)) for x in range(-6, 7)]
    top = [curve_of("hair", ((x, y), (x * 0.9 + 0.1, y - 0.4), (x * 0.7 - 0.04, y - 0.75))) for x, y in tuft]
    fringe = [((2.35 - 0.06 * k, -1.9), (2.1 - 0.09 * k, -2.25), (2.02 - 0.1 * k, -2.6)) for k in range(6)]
    return [*top, *(curve_of("hair", hair, side=side, y=-0.3 * k) for side in (-1, 1) for k, hair in enumerate(fringe))]


def _axis(y: float) -> float:
    """Half the width of the primary's stem at a height."""
    return 1.12 * max(0.0, 1 + y / 4.3) ** 0.7


def _primary() -> Shapes:
    """A sound primary: a green shoot in small, with beginnings of leaves and two of bunches."""
    left = tuple((-_axis(y), y) for y in (0.3, -0.8, -1.9, -2.9, -3.6, -4.05))
    axis = outline("soft", (*left, (0, -4.25), *((-x, y) for x, y in left[::-1])))
    leaves = [_leaf(side, low, size) for side, low, size in ((-1, -0.55, 1), (1, -1.1, 1), (-1, -2.75, 0.8), (1, -3.25, 0.62))]
    lines = [curve_of("hair", ((d, 0.2), (d * 0.6, -1.8), (d * 0.2, -3.5))) for d in (-0.2, 0.2)]
    return [*leaves, axis, *lines, *_lobes(1.0, -2.15, 1), *_lobes(-0.92, -2.6, -1)]


def _leaf(side: int, low: float, size: float) -> Shape:
    """The beginning of a leaf on the stem at a height, bent over the tip."""
    grown = [tuple((x * size, y * size) for x, y in curve) for curve in LEAF]
    return outline("green", *grown, side=side, x=side * _axis(low), y=low)


def _lobes(x: float, y: float, side: int) -> Shapes:
    """The beginning of a bunch: a mass of pale round lobes, wide where it sits on the shoot, narrow at its tip."""
    return [Oval("lobe", Point(x + side * across, y + down), r, r) for across, down, r in LOBES]


def _small_bud(x: float, high: float) -> Shapes:
    """A secondary or tertiary bud beside the primary: a small cone in its own scales, without a bunch."""
    wide, tip = high * 0.42, high + 0.28
    out = ((-wide - 0.14, 0.35), (-wide - 0.05, -high * 0.6), (0, -tip))
    back = ((0, -tip), (wide + 0.05, -high * 0.6), (wide + 0.14, 0.35))
    cone = ((-wide, 0.3), (-wide * 0.75, -high * 0.55), (0, -high), (wide * 0.75, -high * 0.55), (wide, 0.3))
    fold = ((wide * 0.4, -0.05), (wide * 0.5, -high * 0.5), (0, -high * 0.85))
    folds = [curve_of("hair", fold, side=side, x=x) for side in (-1, 1)]
    return [outline("scale", out, back, x=x), outline("soft", cone, x=x), *folds]


def _dead_primary() -> Shapes:
    """A dead primary: brown, dry and shrunk away from its scales."""
    flakes = [outline("dead", FLAKE, x=x, y=y) for x, y in ((0.75, -2.9), (-1.0, -3.3), (0.35, -3.9))]
    return [outline("dead", DEAD), *(curve_of("crack", crack) for crack in CRACKS), *flakes]
