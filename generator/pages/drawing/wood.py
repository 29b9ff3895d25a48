"""Wood as a pruner sees it in winter: old wood thick and furrowed, last year's wood smooth, with a bud at each node left and right
in turn. Lengths in mm."""

import math
from dataclasses import dataclass

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Shape, Shapes, patch, stroke


FINE = 1.7  # below this % of its length, wood is too thin for the outline of each node to be seen


@dataclass(frozen=True)
class Grown:
    """Shapes of a piece of wood, the places of its nodes from the base, and its buds' tips."""

    shapes: Shapes
    nodes: list[Point]
    tips: list[Point]


def limb(part: str, spine: Spine, thick: float, thin: float, furrows: int = 3, knots: float = 0.07, seed: int = 0) -> Shapes:
    """Old wood along a way, from its thick end to its thin one: an uneven outline, and furrows of the bark inside it."""
    count = max(4, round(spine.length / max(thick, thin) * 1.6))
    left, right = [], []
    for k in range(count + 1):
        s = spine.length * k / count
        half = _taper(thick, thin, k / count) / 2
        left.append(spine.beside(s, half * (1 + knots * _sway(k, seed))))
        right.append(spine.beside(s, -half * (1 + knots * _sway(k, seed + 5))))
    shade = shaded(spine, thick, thin) if furrows > 2 else []
    return [patch(part, left, right[::-1]), *bark(spine, thick, thin, furrows, seed), *shade]


def shaded(spine: Spine, thick: float, thin: float) -> Shapes:
    """Short strokes along the shaded side of round wood: below a lying piece, to the right of a standing one."""
    lines: Shapes = []
    step, s = max(thick, thin) * 0.13, max(thick, thin) * 0.1
    while s < spine.length - step:
        half = _taper(thick, thin, s / spine.length) / 2
        deep = 0.62 + 0.16 * _sway(round(s), 2)
        lines.append(stroke("shade", spine.beside(s, -half * 0.93), spine.beside(s + step * 0.8, -half * deep)))
        s += step * (1.15 + 0.2 * _sway(round(s), 7))
    return lines


def blend(spine: Spine, s: float, width: float, part: str = "joined_old") -> Oval:
    """A patch without an outline that lets one piece of wood grow out of another."""
    return Oval(part, spine.at(s), width / 2, width / 4, spine.heading(s) - 90)


def bark(spine: Spine, thick: float, thin: float, furrows: int, seed: int = 0) -> Shapes:
    """Furrows along old wood: broken lines that never cross the outline."""
    lines: Shapes = []
    piece = max(thick, thin) * 1.5
    for lane in range(furrows):
        off = (lane + 1) / (furrows + 1) * 2 - 1
        s = piece * (0.2 + 0.37 * ((lane + seed) % 3))
        while s < spine.length - piece * 0.4:
            end = min(s + piece * (0.7 + 0.25 * _sway(lane + round(s), seed)), spine.length - piece * 0.1)
            points = []
            for step in range(3):
                here = s + (end - s) * step / 2
                half = _taper(thick, thin, here / spine.length) / 2
                points.append(spine.beside(here, half * (off + 0.07 * _sway(step + lane * 3 + round(s), seed))))
            lines.append(stroke("bark", *points))
            s = end + piece * 0.45
    return lines


def cane(
    spine: Spine, nodes: list[float], thick: float, thin: float, part: str = "cane", side: int = 1, bud: float = 0.0
) -> Grown:
    """One-year wood along a way, with a swelling and a bud at each node (distances from the base), left and right in turn.

    bud is the length of a bud, 0 for one that goes with the thickness, below 0 for wood drawn without buds."""
    fine = thin > FINE * spine.length / 100
    around = (-0.9, 0.0, 0.9) if fine else (0.0,)
    ends = [s for s in (0, spine.length / 2, spine.length) if all(abs(s - node) > 1.6 * thick for node in nodes)]
    places = sorted({*ends, *(min(max(s + d * thick, 0), spine.length) for s in nodes for d in around)})
    left, right, shapes, tips = [], [], [], []
    for s in places:
        swelling = max((0.3 * math.exp(-(((s - node) / (0.6 * thick)) ** 2)) for node in nodes), default=0.0)
        half = _taper(thick, thin, s / spine.length) / 2 * (1 + swelling)
        left.append(spine.beside(s, half))
        right.append(spine.beside(s, -half))
    joints, buds = [], []
    for k, s in enumerate(nodes):
        way = side if k % 2 == 0 else -side
        half = _taper(thick, thin, s / spine.length) / 2
        long = bud or half * 3.2
        foot = spine.beside(s, way * half * 0.9)
        angle = spine.heading(s) + way * 38
        tips.append(foot.away(angle, long))
        if bud >= 0 and part == "cane":
            joints.append(stroke("joint", spine.beside(s, half * 1.2), spine.beside(s, -half * 1.2)))
            buds.append(teardrop(foot, angle, long, fine=fine))
    shapes += [patch(part, left, right[::-1]), *joints, *buds]
    return Grown(shapes, [spine.at(s) for s in nodes], tips)


def teardrop(foot: Point, angle: float, long: float, part: str = "bud", fine: bool = True) -> Shape:
    """A bud: round at its foot, pointed at its tip; with fewer places when it is too small to be seen well."""
    sides = []
    for turn in (90, -90):
        hip, belly = foot.away(angle, long * 0.08), foot.away(angle, long * 0.36)
        places = [foot, hip.away(angle + turn, long * 0.22), belly.away(angle + turn, long * 0.32)]
        sides.append(places if fine else [foot, belly.away(angle + turn, long * 0.34)])
    tip = foot.away(angle, long)
    return patch(part, [*sides[0], tip], [tip, *sides[1][::-1]])


def cut_face(spine: Spine, s: float, width: float, pith: bool = True) -> Shapes:
    """The pale face of a cut across wood, seen a little from above, with its pith."""
    at, turn = spine.at(s), spine.heading(s) - 90
    face: Shapes = [Oval("cut", at, width / 2, width / 5, turn)]
    return [*face, Oval("pith", at, width / 9, width / 18, turn)] if pith else face


def cut_line(spine: Spine, s: float, reach: float, lean: float = 20) -> Shape:
    """Where the shears go: a bold line across the wood that stands out on both sides."""
    at, across = spine.at(s), spine.heading(s) + 90 + lean
    return stroke("shears", at.away(across, reach), at.away(across + 180, reach))


def spaced(first: float, step: float, count: int, short: float = 0.55) -> list[float]:
    """Distances of nodes from the base: internodes are short at the base of a cane (by this share) and reach their step at the fifth."""
    places, s = [], first
    for k in range(count):
        places.append(s)
        s += step * min(1.0, short + (1 - short) * k / 4)
    return places


def _taper(thick: float, thin: float, part: float) -> float:
    """The width between two ends."""
    return thick + (thin - thick) * min(max(part, 0.0), 1.0)


def _sway(k: int, seed: int) -> float:
    """An uneven but always equal number between -1 and 1."""
    return math.sin(k * 2.39 + seed * 1.7) * 0.6 + math.sin(k * 5.11 + seed) * 0.4
