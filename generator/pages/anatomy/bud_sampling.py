"""Taking a sample of buds: the wood, the nodes, and cuttings forced in water. Lengths in mm."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Picture, Shapes, patch, pin, straight, stroke
from generator.pages.drawing.summer import shoot
from generator.pages.drawing.wood import blend, cane, cut_face, cut_line, limb, spaced

ARM = Spine(Point(-230, 4), Point(-60, -3), Point(60, 3), Point(230, -3))
# The canes on the arm: where they stand, how thick they are, and how they lean.
WEAK, KEPT, BULL = (-135.0, 4.5, -12.0), ((-45.0, 9.0, -6.0), (45.0, 9.0, 8.0)), (135.0, 17.0, 12.0)
PIECE = Spine(Point(0, 0), Point(160, -12), Point(370, -4), Point(580, -16), Point(760, -8))
NODES = [12.0, *spaced(50, 60, 12)]  # the bud in the angle, then nodes 1 to 12
SAMPLED = (3, 6, 9, 12)
PARENT = Spine(Point(-26, 66), Point(-8, 14), Point(-2, -22))
WATER = 26.0


def draw() -> list[Picture]:
    """Which wood, which nodes, and what to do without a lens."""
    return [wood(), nodes(), forced()]


def wood() -> Picture:
    """Four canes on an arm: a thin one, two that the crew would keep, a bull cane."""
    shapes: Shapes = []
    for x, thick, lean in (WEAK, *KEPT, BULL):
        way = Spine(Point(x, -40), Point(x + lean * 0.6, -150), Point(x + lean, -320))
        knob = Spine(Point(x, 4), Point(x, -30), Point(x, -48))
        buds = cane(way, spaced(22, 40 + 2.2 * thick, 6), thick, thick * 0.8, bud=8 + thick * 0.8)
        shapes += [*buds.shapes, *limb("two", knob, 15 + thick * 0.7, 11 + thick * 0.6, furrows=2, knots=0.06)]
    shapes += limb("old", ARM, 34, 32, furrows=4)
    shapes += [blend(Spine(Point(x, 4), Point(x, -30)), 14, 22) for x, *_ in (WEAK, *KEPT, BULL)]
    first, second = ((x + lean * 0.5, -130) for x, _, lean in KEPT)
    pins = (
        pin("weak", (-185, -210), (-144, -200)),
        pin("kept", (2, -215), first, second),
        pin("bull", (190, -210), (144, -200)),
    )
    return Picture("wood", -220, -270, 440, 300, tuple(shapes), pins)


def nodes() -> Picture:
    """A cane as it leaves the vineyard: its base, its nodes, its label."""
    grown = cane(PIECE, NODES, 12, 9, bud=20)
    end = PIECE.length
    shapes: Shapes = [*limb("two", PARENT, 22, 20, furrows=2, knots=0.05), *cut_face(PARENT, PARENT.length, 20), *cut_face(PARENT, 0, 22)]
    shapes += [*grown.shapes, *cut_face(PIECE, end, 10), cut_line(PIECE, end - 20, 24, 16), *_label(PIECE.at(108))]
    pins = (
        pin("base_bud", (-70, -74), grown.nodes[0]),
        pin("first_node", (28, -100), grown.nodes[1]),
        pin("sampled", (400, -104), *(grown.nodes[k] for k in SAMPLED)),
        pin("label", (274, 96), (180, 92)),
        pin("old_base", (-86, 70), PARENT.at(22)),
        pin("end", (780, 70), PIECE.at(end - 20).moved(-3, 18)),
    )
    return Picture("nodes", -120, -134, 950, 276, tuple(shapes), pins)


def _label(at: Point) -> Shapes:
    """A paper label tied to the cane, with writing."""
    paper = patch("cut", *([at.moved(x, y)] for x, y in ((-22, 74), (104, 74), (104, 138), (-22, 138))))
    lines = [stroke("hair", at.moved(-8, 92 + 14 * k), at.moved(88 - 24 * k, 92 + 14 * k)) for k in range(3)]
    return [stroke("tie", at.moved(0, -7), at.moved(4, 36), at.moved(12, 80)), paper, *lines]


def forced() -> Picture:
    """Two single-node cuttings in water: one shoot with two bunches to be, one without."""
    shapes: Shapes = []
    for x in (-42, 42):
        way = Spine(Point(x - 4, 72), Point(x, 10), Point(x + 1, -34))
        node = way.length - 16
        grown = cane(way, [node], 9, 8.4, side=1 if x < 0 else -1, bud=0.01)
        side = -1 if x < 0 else 1
        foot = way.beside(node, -side * 4)
        shapes += shoot(foot, 90 - side * 16, 96, 4.6, 40, sway=-side * 10)
        if x < 0:
            shapes += [*_inflorescence(foot.moved(-14, -50), foot.moved(-38, -64), 22, -1)]
            shapes += [*_inflorescence(foot.moved(-21, -72), foot.moved(8, -88), 20, 1)]
        shapes += [*grown.shapes, *cut_face(way, way.length, 8.4)]
    shapes += [straight("wire", Point(-88, -8), Point(-80, 84), Point(80, 84), Point(88, -8)), stroke("ground", Point(-85, WATER), Point(85, WATER))]
    pins = (
        pin("cutting", (-112, 8), (-43, 4)),
        pin("water", (112, 44), (70, WATER)),
        pin("one_node", (0, -40), (-40, -20), (40, -20)),
        pin("inflorescence", (6, -122), (-38, -104), (-86, -80)),
        pin("no_fruit", (112, -100), (60, -70)),
    )
    return Picture("forced", -130, -138, 260, 230, tuple(shapes), pins)


def _inflorescence(stem: Point, top: Point, size: float, side: int) -> Shapes:
    """The beginning of a bunch on a young shoot: round green grains on a stalk from the stem."""
    rows = ((0.0, 0.0), (0.18, 0.28), (-0.14, 0.32), (0.04, 0.55), (0.3, 0.6), (0.14, 0.82))
    grains = [Oval("soft", top.moved(side * size * x, size * y), size * 0.16, size * 0.16) for x, y in rows]
    return [stroke("stalk", stem, Point((stem.x + top.x) / 2, top.y - size * 0.1), top), *grains]
