"""Why cutting drives growth: which nodes burst on an upright, a bent and a cut cane; few and many shoots on the same roots."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Picture, Shapes, pin, stroke
from generator.pages.drawing.summer import shoot
from generator.pages.drawing.wood import cane, cut_face, limb, spaced

ROOTS = (
    ((-8, 16), (-60, 66), (-140, 92), (-210, 130)),
    ((8, 16), (60, 72), (130, 100), (205, 120)),
    ((0, 20), (10, 80), (-8, 130), (2, 175)),
)
OLD = Spine(Point(-110, 2), Point(-30, -2), Point(30, 2), Point(110, -2))


def draw() -> list[Picture]:
    """An upright cane, a bent one, a spur; hard and light pruning side by side."""
    return [upright(), arched(), spur(), long_spur(), hard(), light()]


def upright() -> Picture:
    """Left upright: the end bursts first and grows most, the base sleeps."""
    way = Spine(Point(0, -6), Point(4, -80), Point(-3, -180), Point(0, -292))
    nodes = spaced(26, 41, 7, 0.9)
    grown = cane(way, nodes, 10, 8, bud=13)
    shapes: Shapes = list(grown.shapes)
    for k, long in ((3, 9), (4, 22), (5, 52), (6, 84)):
        side = 1 if k % 2 == 0 else -1
        shapes += shoot(grown.nodes[k].moved(-side * 4, 0), 90 + side * 42, long, 6, 26)
    shapes += [*cut_face(way, way.length, 9), *limb("old", OLD, 34, 32, furrows=3)]
    pins = (
        pin("end_node", (58, -150), grown.nodes[6].moved(2, 2)),
        pin("base_nodes", (-52, -66), grown.nodes[0], grown.nodes[1]),
    )
    return Picture("upright", -90, -350, 180, 376, tuple(shapes), pins, half=True)


def arched() -> Picture:
    """Bent over a wire: the highest nodes burst with the end."""
    way = Spine(Point(-58, -6), Point(-62, -110), Point(-34, -192), Point(16, -198), Point(48, -150), Point(58, -86))
    nodes = spaced(34, 45, 9, 0.9)[:8]
    grown = cane(way, nodes, 10, 8, bud=13)
    shapes: Shapes = [stroke("wire", Point(-98, -186), Point(98, -186)), *grown.shapes]
    for k, long, angle in ((2, 26, 152), (3, 50, 128), (4, 64, 100), (5, 56, 70), (6, 40, 40), (7, 34, 20)):
        shapes += shoot(grown.nodes[k], angle, long, 6, 24)
    shapes += [*cut_face(way, way.length, 9), *limb("old", OLD, 34, 32, furrows=3)]
    pins = (pin("arch", (70, -340), way.at(way.length * 0.55)), pin("base_nodes", (-24, -62), grown.nodes[0], grown.nodes[1]))
    return Picture("arched", -98, -380, 196, 410, tuple(shapes), pins, half=True)


def spur() -> Picture:
    """Cut to two nodes: the nodes that slept on the cane are end nodes now, and both burst."""
    way = Spine(Point(0, -6), Point(4, -50), Point(0, -98))
    grown = cane(way, [34, 76], 13, 12, bud=16)
    gone = cane(Spine(Point(0, -104), Point(-6, -200), Point(0, -372)), [], 11, 8, part="gone").shapes
    shapes: Shapes = [*gone, *grown.shapes]
    shapes += shoot(grown.nodes[0].moved(-4, 0), 116, 118, 8, 34) + shoot(grown.nodes[1].moved(4, 0), 62, 126, 8, 34)
    shapes += [*cut_face(way, way.length, 13), *limb("old", OLD, 34, 32, furrows=3)]
    pins = (pin("new_end_nodes", (60, -72), grown.nodes[0], grown.nodes[1]), pin("removed", (-54, -262), (-5, -240)))
    return Picture("spur", -90, -300, 180, 326, tuple(shapes), pins, half=True)


def long_spur() -> Picture:
    """Cut to three nodes: the outer two burst, the lowest often sleeps."""
    way = Spine(Point(0, -6), Point(4, -60), Point(-2, -146))
    grown = cane(way, [34, 80, 124], 13, 12, bud=16)
    shapes: Shapes = list(grown.shapes)
    shapes += shoot(grown.nodes[1].moved(4, 0), 56, 96, 8, 34) + shoot(grown.nodes[2].moved(-4, 0), 118, 108, 8, 34)
    shapes += [*cut_face(way, way.length, 13), *limb("old", OLD, 34, 32, furrows=3)]
    pins = (
        pin("new_end_nodes", (70, -216), grown.nodes[2], grown.nodes[1]),
        pin("sleeping_node", (-58, -60), grown.nodes[0].moved(-4, -4)),
    )
    return Picture("long_spur", -90, -300, 180, 326, tuple(shapes), pins, half=True)


def hard() -> Picture:
    """Four nodes on strong roots: few shoots, each long and thick, and shoots from old wood."""
    shapes = _vine([(x, 430, 15, 74) for x in (-150, -60, 60, 150)])
    shapes += shoot(Point(-14, -330), 140, 150, 8, 52) + shoot(Point(12, -200), 36, 130, 8, 48)
    pins = (
        pin("reserves", (-170, 110), (-12, -90), (-84, 80)),
        pin("strong_shoots", (212, -985), (134, -800)),
        pin("watershoot", (186, -190), (92, -266)),
    )
    return Picture("hard", -250, -1040, 500, 1220, tuple(shapes), pins, half=True)


def light() -> Picture:
    """Many nodes on the same roots: many shoots, each short and thin."""
    shapes = _vine([(-208 + 38 * k, 170 + 22 * (k * 3 % 4), 8, 46) for k in range(12)])
    pins = (pin("reserves", (-170, 110), (-12, -90), (-84, 80)), pin("weak_shoots", (206, -860), (144, -680)))
    return Picture("light", -250, -1040, 500, 1220, tuple(shapes), pins, half=True)


def _vine(shoots: list[tuple[float, float, float, float]]) -> Shapes:
    """A small vine with its roots and stores; each shoot by its place, length, thickness and size of leaf."""
    stem = Spine(Point(0, 30), Point(-6, -160), Point(5, -330), Point(0, -450))
    ways = [Spine(Point(side * 4, -440), Point(side * 40, -478), Point(side * 110, -490), Point(side * 228, -488)) for side in (-1, 1)]
    shapes: Shapes = [stroke("ground", Point(-250, 8), Point(-120, 2), Point(0, 9), Point(120, 3), Point(250, 8))]
    for k, way in enumerate(ROOTS):
        shapes += limb("root", Spine(*(Point(*at) for at in way)), 34, 8, 0, seed=k)
    for x, long, thick, size in shoots:
        shapes += shoot(Point(x, -500), 90 + x * 0.02, long, thick, size, sway=4, fine=size > 60)
    for side, way in zip((-1, 1), ways, strict=True):
        shapes += limb("old", way, 36, 26, furrows=2, seed=side + 1)
    shapes += [*limb("old", stem, 54, 46, furrows=0), Oval("joined_old", Point(0, -444), 28, 24), Oval("joined_old", Point(0, 24), 22, 14)]
    stores = [(-10 + 9 * (k % 3), -60 - 52 * k) for k in range(7)] + [(-50, 57), (-84, 76), (52, 66), (86, 85), (3, 60)]
    return [*shapes, *(Oval("reserve", Point(x, y), 7, 7) for x, y in stores)]
