"""The compound bud: on the cane, and cut through its middle, alive and with a dead primary. Section in mm, y = 0 the bud's base."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Picture, Shape, Shapes, blob, patch, pin, stroke


def draw() -> list[Picture]:
    """At the node, a sound bud in section, a bud with a dead primary."""
    return [at_the_node(), _section("alive", False), _section("dead_primary", True)]


def at_the_node() -> Picture:
    """A node from outside: the bud over the scar of its leaf, the scar of the summer's side shoot beside it."""
    way = Spine(Point(-2.5, 21), Point(-1, 8), Point(0, 0), Point(0.5, -9), Point(2.5, -22))
    left = [way.beside(s, w) for s, w in ((-1, 4.6), (9, 4.6), (16, 5.4), (21, 6.6), (26, 5.2), (33, 4.5), (46, 4.3))]
    right = [way.beside(s, -w) for s, w in ((-1, 4.6), (9, 4.6), (16, 5.6), (21, 7), (26, 5.4), (33, 4.5), (46, 4.3))]
    shapes: Shapes = [_bud_outside(), patch("cane", left, right[::-1]), *_stripes(way)]
    shapes += [Oval("scar", Point(5.6, 4.4), 1.5, 2.7, -14), *(Oval("pith", Point(5.5 + k * 0.25, 3 + k * 1.4), 0.32, 0.32) for k in range(3))]
    shapes += [Oval("scar", Point(3.2, -1.6), 1.15, 1.4, 10), Oval("pith", Point(3.2, -1.6), 0.4, 0.5)]
    shapes += [Oval("scar", Point(-5.6, -0.5), 0.8, 1.5, 0), stroke("joint", Point(-6, 1.8), Point(0, 3), Point(4.3, 2.4))]
    pins = (
        pin("bud_scales", (15.5, -8), (9.6, -5)),
        pin("leaf_scar", (14, 7.5), (6, 4.6)),
        pin("lateral_scar", (-9, -9), (3.1, -1.7)),
        pin("tendril_scar", (-13, -1), (-5.8, -0.5)),
        pin("node", (-12, 6.5), (-3.4, 2.2)),
        pin("internode", (-11, 14.5), (-2.4, 13)),
    )
    return Picture("node", -20, -15, 40, 31, tuple(shapes), pins)


def _bud_outside() -> Shape:
    """The bud in its scales, standing off the cane."""
    return patch("bud", _places((4.4, 2), (8.6, 1.9), (11.9, -1.8), (12.4, -6), (11.6, -9.6)), _places((11.6, -9.6), (8.4, -8.4), (6, -6), (4, -3)))


def _stripes(way: Spine) -> Shapes:
    """The scales' edges on the bud, and the fine stripes of the bark."""
    edges = [_places((6.6, 1.7), (8.1, -2.2), (9.8, -5.8), (11.4, -9.3)), _places((5.6, -5.2), (8, -3.6), (9.2, -0.6), (9.3, 1.4)), _places((10.2, 0.8), (11, -2.6), (11.6, -8.6))]
    fine = [stroke("hair", *(way.beside(s, off) for s in (start, start + 5, start + 10))) for start, off in ((0, 2.6), (2, -1.4), (1, 0.6), (30, 2), (32, -1.8), (29, 0.2))]
    return [*fine, *(stroke("edge", *edge) for edge in edges)]


def _section(name: str, dead: bool) -> Picture:
    """The bud cut lengthwise through its middle."""
    shapes: Shapes = [*_cushion(), *_scales(), *_wool()]
    shapes += _small_bud(1.95, 1.9 if dead else 1.45) + _small_bud(-1.85, 1.0)
    shapes += _dead_primary() if dead else _primary()
    pins = [
        pin("primary", (-3.8, -5.1), (-0.15, -2.6 if dead else -1.5)),
        pin("secondary", (4, -3.2), (1.95, -1.1)),
        pin("tertiary", (-4, -2), (-1.85, -0.6)),
        pin("bud_scales", (3.5, -5.6), (2.3, -4)),
        pin("cushion", (3.9, 1.7), (1.3, 1.3)),
    ]
    if dead:
        pins.append(pin("gap", (-3.9, -3.6), (-1.05, -2.5)))
    else:
        pins += [pin("primordium", (4.05, -4.2), (1.3, -2.4)), pin("wool", (-3.2, -6.4), (-0.5, -5)), pin("leaf_beginnings", (-4.1, -3.7), (-1.6, -1.2))]
    return Picture(name, -4.6, -7.1, 9.2, 9.4, tuple(shapes), tuple(pins))


def _cushion() -> Shapes:
    """The cane below: bark, green layer, wood, and the strands that lead into the three buds."""
    top = ((-5.4, 1.5), (-4.1, 0.85), (-2.8, 0.38), (0, 0.2), (2.8, 0.38), (4.1, 0.85), (5.4, 1.5))
    base = patch("wood", _places((-5.4, 3), *top, (5.4, 3)))
    green = patch("green", _places(*top), _places(*((x, y + 0.34) for x, y in top[::-1])))
    strands = [stroke("hair", *_places((x * 0.5 + d, 2.6), (x * 0.8 + d, 1.4), (x + d * 0.6, 0.5))) for x in (-1.85, 0, 1.95) for d in (-0.22, 0, 0.22)]
    return [base, green, *strands]


def _scales() -> Shapes:
    """Two pairs of brown scales, closed over the buds."""
    outer = ((-3.2, 0.6), (-3.55, -1.6), (-2.95, -3.9), (-1.55, -5.8), (0, -6.8)), ((0, -6.8), (-1.2, -5.3), (-2.35, -3.6), (-2.9, -1.6), (-2.7, 0.5))
    inner = ((-2.66, 0.5), (-2.82, -1.7), (-2.2, -3.6), (-1.15, -5.1), (0, -6.0)), ((0, -6.0), (-0.9, -4.75), (-1.9, -3.3), (-2.52, -1.7), (-2.36, 0.45))
    return [patch("scale", *(_places(*((side * x, y) for x, y in run)) for run in runs)) for runs in (inner, outer) for side in (1, -1)]


def _wool() -> Shapes:
    """Hairs that fill the room under the scales."""
    roots = [(x * 0.24, -4.55 + 0.055 * x * x + 0.16 * (x % 2)) for x in range(-6, 7)]
    tuft = [stroke("hair", *_places((x, y), (x * 0.9 + 0.1, y - 0.4), (x * 0.7 - 0.04, y - 0.75))) for x, y in roots]
    sides = [
        stroke("hair", *_places((side * (2.35 - 0.06 * k), -1.9 - k * 0.3), (side * (2.1 - k * 0.09), -2.25 - k * 0.3), (side * (2.02 - k * 0.1), -2.6 - k * 0.3)))
        for side in (-1, 1)
        for k in range(6)
    ]
    return [*tuft, *sides]


def _axis(y: float) -> float:
    """Half the width of the primary's stem at a height."""
    return 1.12 * max(0.0, 1 + y / 4.3) ** 0.7


def _primary() -> Shapes:
    """A sound primary: a green shoot in small, with beginnings of leaves and two of bunches."""
    heights = (0.3, -0.8, -1.9, -2.9, -3.6, -4.05)
    sides = [[(side * _axis(y), y) for y in heights] for side in (-1, 1)]
    axis = patch("soft", _places(*sides[0], (0, -4.25), *sides[1][::-1]))
    leaves = [_leaf(side, low, size) for side, low, size in ((-1, -0.55, 1), (1, -1.1, 1), (-1, -2.75, 0.8), (1, -3.25, 0.62))]
    lines = [stroke("hair", *_places((d, 0.2), (d * 0.6, -1.8), (d * 0.2, -3.5))) for d in (-0.2, 0.2)]
    return [*leaves, axis, *lines, *_lobes(1.0, -2.15, 1), *_lobes(-0.92, -2.6, -1)]


def _leaf(side: int, low: float, size: float) -> Shape:
    """The beginning of a leaf, bent over the tip."""
    foot = _axis(low)
    out = ((foot - 0.15, 0.3), (foot + 0.5, -0.15), (foot + 0.68, -1.0), (foot + 0.05, -1.75))
    back = ((foot + 0.05, -1.75), (foot + 0.3, -1.0), (foot + 0.14, -0.45), (foot - 0.3, -0.25))
    runs = [_places(*((side * (foot + (x - foot) * size), low + y * size) for x, y in run)) for run in (out, back)]
    return patch("green", *runs)


def _lobes(x: float, y: float, side: int) -> Shapes:
    """The beginning of a bunch: a mass of pale round lobes, wide where it sits on the shoot, narrow at its tip."""
    spots = ((0.72, -0.62, 0.14), (0.12, -0.02, 0.21), (0.42, 0.08, 0.2), (0.06, -0.36, 0.21), (0.7, -0.06, 0.19), (0.62, -0.36, 0.19), (0.3, -0.6, 0.19), (0.38, -0.24, 0.22))
    return [Oval("lobe", Point(x + side * (dx - 0.12), y + dy), r, r) for dx, dy, r in spots]


def _small_bud(x: float, high: float) -> Shapes:
    """A secondary or tertiary bud beside the primary: a small cone in its own scales, without a bunch."""
    wide = high * 0.42
    scales = patch("scale", _places((x - wide - 0.14, 0.35), (x - wide - 0.05, -high * 0.6), (x, -high - 0.28)), _places((x, -high - 0.28), (x + wide + 0.05, -high * 0.6), (x + wide + 0.14, 0.35)))
    cone = patch("soft", _places((x - wide, 0.3), (x - wide * 0.75, -high * 0.55), (x, -high), (x + wide * 0.75, -high * 0.55), (x + wide, 0.3)))
    folds = [stroke("hair", *_places((x - side * wide * 0.4, -0.05), (x - side * wide * 0.5, -high * 0.5), (x, -high * 0.85))) for side in (-1, 1)]
    return [scales, cone, *folds]


def _dead_primary() -> Shapes:
    """A dead primary: brown, dry and shrunk away from its scales."""
    body = patch("dead", _places((-0.85, 0.25), (-0.62, -0.9), (-0.75, -1.8), (-0.4, -2.5), (-0.22, -3.3), (0.1, -2.9), (0.2, -2.2), (0.55, -1.7), (0.5, -0.8), (0.8, 0.25)))
    cracks = [stroke("crack", *_places(*way)) for way in (((-0.3, 0), (-0.15, -0.8), (-0.3, -1.7)), ((0.25, 0), (0.1, -0.9), (0.2, -1.5)), ((-0.15, -1.9), (-0.1, -2.5)))]
    flakes = [blob("dead", *(Point(x + dx, y + dy) for dx, dy in ((-0.12, 0.1), (0, -0.16), (0.14, 0.06)))) for x, y in ((0.75, -2.9), (-1.0, -3.3), (0.35, -3.9))]
    return [body, *cracks, *flakes]


def _places(*pairs: tuple[float, float]) -> list[Point]:
    """Places from pairs of numbers."""
    return [Point(x, y) for x, y in pairs]
