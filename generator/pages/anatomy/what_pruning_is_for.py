"""What pruning is for, in four small pictures: form, load, balance of shoots and fruit, next winter's wood."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Picture, Shapes, pin, straight, stroke
from generator.pages.drawing.summer import bunch, shoot
from generator.pages.drawing.vine import HEAD, WIRE, arms, gone_position, pruned_position, trunk, wire
from generator.pages.drawing.wood import cane, cut_face, limb

ARM = Spine(Point(-420, 0), Point(-140, -4), Point(140, 4), Point(420, 0))


def draw() -> list[Picture]:
    """Four small pictures."""
    return [form(), load(), balance(), next_wood()]


def form() -> Picture:
    """Last summer's growth as broken lines, and the vine that stays under it."""
    places = (-560, -390, -220, 220, 390, 560)
    shapes: Shapes = wire(-700, 700)
    for x in places:
        shapes += gone_position(x, 360)
    for x in places:
        shapes += pruned_position(x)
    pins = (
        pin("grown", (0, -1240), (-186, WIRE - 290), (190, WIRE - 290)),
        pin("form", (280, -580), (30, -640), (230, WIRE + 8)),
    )
    return Picture("form", -700, -1330, 1400, 1080, (*shapes, *trunk(), *arms(-1, 1)), pins, half=True)


def load() -> Picture:
    """Each node left gives a shoot, and most shoots a bunch or two: the nodes are the crop."""
    shapes: Shapes = [stroke("wire", Point(-420, 6), Point(420, 6))]
    for x in (-270, 0, 270):
        way = Spine(Point(x, -10), Point(x + 6, -70), Point(x, -142))
        grown = cane(way, [50, 106], 24, 22, bud=32)
        low, high = grown.nodes
        shapes += shoot(low.moved(-10, 0), 112, 270, 12, 84) + shoot(high.moved(10, 0), 72, 290, 12, 84)
        shapes += [*bunch(low.moved(-74, -74), 120), *bunch(high.moved(84, -60), 120), *grown.shapes, *cut_face(way, way.length, 23)]
    shapes += limb("old", ARM, 58, 52, furrows=3)
    pins = (
        pin("load_node", (-130, 120), (-264, -62), (2, -62)),
        pin("load_shoot", (140, -520), (80, -350)),
        pin("load_bunch", (366, 112), (356, -110)),
    )
    return Picture("load", -420, -570, 840, 740, tuple(shapes), pins, half=True)


def balance() -> Picture:
    """A pair of scales on the trunk of a vine: shoots in one pan, fruit in the other."""
    stem = Spine(Point(0, 260), Point(-8, 60), Point(6, -120), Point(0, -250))
    beam = Spine(Point(-330, -232), Point(-120, -250), Point(0, -256), Point(120, -250), Point(330, -232))
    shapes: Shapes = [*limb("old", stem, 74, 52, furrows=4), *limb("old", beam, 34, 32, furrows=2)]
    shapes.append(Oval("joined_old", Point(0, -246), 30, 22))
    for x in (-300, 300):
        ties = [straight("tie", Point(x, -226), Point(x + d, -10)) for d in (-110, 110)]
        shapes += [*ties, *limb("two", Spine(Point(x - 126, -8), Point(x, 4), Point(x + 126, -8)), 18, 18, 0, 0.03)]
    for x, angle in ((-370, 104), (-300, 90), (-230, 76)):
        shapes += shoot(Point(x, -16), angle, 186, 10, 66)
    for x in (242, 300, 358):
        shapes += bunch(Point(x, -118), 112)
    shapes.append(stroke("ground", Point(-440, 262), Point(-150, 256), Point(0, 263), Point(150, 257), Point(440, 262)))
    pins = (pin("growth_pan", (-300, 110), (-300, -50)), pin("fruit_pan", (300, 110), (300, -44)))
    return Picture("balance", -465, -330, 930, 640, tuple(shapes), pins, half=True)


def next_wood() -> Picture:
    """A renewal spur below the laid cane: its two shoots of this summer are the wood of next winter."""
    head = Spine(Point(-150, 330), Point(-156, 200), Point(-150, 60))
    laid = Spine(Point(-140, 80), Point(-90, -20), Point(10, -86), Point(200, -90), Point(430, -90))
    way = Spine(Point(-156, 70), Point(-170, 16), Point(-172, -74))
    grown, spur = cane(laid, [90, 180, 270, 360, 450, 540], 26, 20, bud=32), cane(way, [54, 112], 26, 24, bud=32)
    shapes: Shapes = [stroke("wire", Point(-420, -86), Point(420, -86)), *grown.shapes]
    for place in grown.nodes[1:]:
        shapes += [*shoot(place, 88, 200, 10, 62, fine=False), *bunch(place.moved(34, 14), 84)]
    low, high = spur.nodes
    for base, lean in ((low, -1), (high, 1)):
        growth = Spine(base, base.moved(lean * 54 - 30, -130), base.moved(lean * 62 - 34, -400))
        shapes += cane(growth, [60 + 56 * k for k in range(6)], 24, 16, bud=30).shapes
    shapes += [*spur.shapes, *cut_face(way, way.length, 24), *limb("old", head, 96, 108, furrows=4)]
    shapes.append(Oval("joined_old", Point(-150, 62), 36, 20))
    pins = (
        pin("renewal_spur", (-350, 60), (-166, 0)),
        pin("next_wood", (-360, -440), low.moved(-88, -300), high.moved(20, -270)),
        pin("laid_cane", (200, 60), (200, -86)),
    )
    return Picture("next_wood", -420, -560, 840, 800, tuple(shapes), pins, half=True)
