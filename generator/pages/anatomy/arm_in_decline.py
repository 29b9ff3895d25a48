"""An arm in decline: as it is found, two faces of cuts across it, and the new arm in its place. y = 0 is the ground; mm."""

import math

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Picture, Shapes, patch, pin, stroke
from generator.pages.drawing.vine import HEAD, TRUNK, WIRE, arm, arms, full_position, pruned_position, wire
from generator.pages.drawing.wood import cane, cut_face, cut_line, limb, spaced

OLD = arm(1, 700)
DYING = 430  # along the arm: beyond it the wood is dead
SLICES = (640, 540, 440)
LAST = 300  # the cut that ends in clean wood
NEW = Spine(Point(14, HEAD - 4), Point(44, HEAD - 40), Point(96, WIRE - 8), Point(190, WIRE - 2), Point(430, WIRE + 2), Point(700, WIRE))
LOW = Spine(Point(26, HEAD + 6), Point(60, HEAD - 60), Point(92, HEAD - 190), Point(100, HEAD - 420))
FACE = 60  # half the width of a face


def draw() -> list[Picture]:
    """The arm, two faces, the new arm."""
    return [_found(), _face("stained"), _face("clean"), _after()]


def _dead_stub(x: float) -> Shapes:
    """A dead spur without a cane."""
    way = Spine(Point(x, WIRE - 6), Point(x + 3, WIRE - 40), Point(x + 10, WIRE - 74))
    return limb("dead", way, 26, 18, 1, 0.1)


def _weak(x: float) -> Shapes:
    """A position with one thin, short cane."""
    two = Spine(Point(x, WIRE - 6), Point(x + 2, WIRE - 60))
    way = Spine(two.at(46), Point(x - 12, WIRE - 120), Point(x - 16, WIRE - 200))
    return [*cane(way, [24, 56, 90, 124], 9, 4).shapes, *limb("two", two, 22, 18, 0, 0.06)]


def _found() -> Picture:
    """Live near the head, weak further out, dead at the end."""
    sound, dead = OLD.part(0, DYING), OLD.part(DYING, OLD.length)
    shapes: Shapes = [*wire(-320, 880), *full_position(-250, 380), *full_position(190, 400), *_weak(310)]
    shapes += [shape for x in (440, 550, 640) for shape in _dead_stub(x)]
    shapes += [*cane(LOW, spaced(44, 58, 7, 0.7), 18, 12).shapes, *limb("old", TRUNK, 80, 60, furrows=4)]
    shapes += [*limb("dead", dead, 46, 36, 3, 0.12), *limb("old", sound, 54, 46, 3), *arms(-1)]
    shapes += [cut_line(OLD, s, 46, 8) for s in (*SLICES, LAST)]
    pins = (
        pin("live", (210, -1290), (190, WIRE - 90)),
        pin("weak", (350, -1120), (300, WIRE - 140)),
        pin("dead_spurs", (560, -1060), (448, WIRE - 66), (558, WIRE - 66), (648, WIRE - 66)),
        pin("dead_end", (790, -740), OLD.at(680)),
        pin("slices", (560, -700), *(OLD.at(s).moved(6, 40) for s in SLICES)),
        pin("last_cut", (260, -700), OLD.at(LAST).moved(4, 42)),
        pin("new_cane", (20, -1280), LOW.at(300)),
        pin("clean_arm", (-270, -700), (-250, WIRE + 4)),
        pin("trunk", (130, -590), TRUNK.at(680)),
    )
    return Picture("found", -320, -1340, 1200, 860, tuple(shapes), pins)


def _face(name: str) -> Picture:
    """A cut across the arm, seen from its end: with a dark wedge, or clean."""
    middle = Point(0, 0)
    rings = [Oval("ray", middle, FACE * part, FACE * part) for part in (0.3, 0.5, 0.72)]
    shapes: Shapes = [Oval("rind", middle, FACE + 6, FACE + 6), Oval("two", middle, FACE, FACE), *rings]
    stained = name == "stained"
    if stained:
        rim = [middle.away(angle, FACE) for angle in range(200, 281, 20)]
        shapes.append(patch("dead", [middle, middle.away(200, FACE * 0.6)], rim, [middle.away(280, FACE * 0.6), middle]))
    shapes.append(Oval("pith", middle, 4, 4))
    wedge = pin("wedge", (-100, 66), middle.away(240, FACE * 0.6)) if stained else pin("pale", (-100, 66), middle.away(220, FACE * 0.7))
    pins = (wedge, pin("bark", (100, -62), Point((FACE + 3) * math.cos(0.7), -(FACE + 3) * math.sin(0.7))))
    return Picture(name, -125, -95, 250, 190, tuple(shapes), pins, half=True)


def _after() -> Picture:
    """A cane lies in the place of the sick arm; the other arm is pruned as ever."""
    stub = OLD.part(0, 70)
    spur = Spine(Point(-6, HEAD - 10), Point(-18, HEAD - 70), Point(-20, HEAD - 150))
    low = cane(spur, [50, 110], 16, 14)
    shapes: Shapes = [*wire(-420, 880), *limb("gone", OLD.part(90, OLD.length), 48, 36, 0, 0.04)]
    shapes += [shape for x in (-160, -285) for shape in pruned_position(x)]
    shapes += [*cane(NEW, [s for s in spaced(60, 70, 12, 0.8) if s < NEW.length - 24], 24, 16).shapes, *low.shapes]
    shapes += [*cut_face(spur, spur.length, 14, pith=False), *limb("old", TRUNK, 80, 60, furrows=4)]
    shapes += [*limb("old", stub, 50, 48, 1), *cut_face(stub, stub.length, 50, pith=False), *arms(-1)]
    shapes += [Oval("tie", NEW.at(s), 6, 22) for s in (170, NEW.length - 26)]
    shapes.append(stroke("wire", Point(386, WIRE - 20), Point(410, WIRE - 10), Point(438, WIRE + 12), Point(462, WIRE + 20)))
    pins = (
        pin("new_arm", (300, -1010), NEW.at(300)),
        pin("once", (420, -700), (424, WIRE + 14)),
        pin("end_tie", (720, -1000), NEW.at(NEW.length - 26)),
        pin("gone", (620, -700), (600, WIRE + 18)),
        pin("cut_face", (170, -680), stub.at(stub.length)),
        pin("renewal_spur", (-60, -1080), low.nodes[1]),
        pin("clean_arm", (-330, -720), (-330, WIRE + 4)),
    )
    return Picture("after", -420, -1130, 1300, 650, tuple(shapes), pins)
