"""A picture as SVG, in units that are the same for all pictures, so that line weights and numbers match."""

from collections.abc import Callable, Sequence
from itertools import groupby

from generator.pages.drawing.geometry import Point, bends
from generator.pages.drawing.shapes import Oval, Picture, Pin, Shape
from generator.pages.svg import Tree

DISC, DIGITS = 9.0, 12.0


class _Sheet:
    """The window of a picture: from mm to units, rounded to a tenth."""

    def __init__(self, picture: Picture) -> None:
        self.left, self.top, self.scale = picture.left, picture.top, picture.units / picture.width

    def place(self, point: Point) -> tuple[str, str]:
        """A place in units."""
        return _short((point.x - self.left) * self.scale), _short((point.y - self.top) * self.scale)

    def size(self, mm: float) -> str:
        """A length in units."""
        return _short(mm * self.scale)

    def tenths(self, point: Point) -> tuple[int, int]:
        """A place in whole tenths of a unit."""
        return round((point.x - self.left) * self.scale * 10), round((point.y - self.top) * self.scale * 10)

    def pair(self, point: Point) -> str:
        """A place as a path has it."""
        return ",".join(self.place(point))


def picture_tree(picture: Picture, number: Callable[[str], int], attributes: dict[str, str]) -> Tree:
    """The picture as a tree; number gives the number of a mark, 0 for one that the page does not name."""
    sheet = _Sheet(picture)
    high = _short(picture.height * sheet.scale)
    named = [pin for pin in picture.pins if number(pin.mark)]
    inner = [branch for _, alike in groupby(enumerate(picture.shapes), _apart) for branch in _drawn(sheet, [shape for _, shape in alike])]
    inner += [_line(sheet, pin, place) for pin in named for place in pin.places]
    inner += [branch for pin in named for branch in _disc(sheet, pin, number(pin.mark))]
    return ["svg", {"viewBox": f"0 0 {picture.units} {high}", **attributes}, inner]


def _apart(placed: tuple[int, Shape | Oval]) -> tuple[str, int]:
    """Shapes next to each other that can be one path: lines and buds of one part, which never cover each other."""
    place, shape = placed
    return (shape.part, -1) if isinstance(shape, Shape) and (not shape.closed or shape.part == "bud") else (shape.part, place)


def _drawn(sheet: _Sheet, alike: list[Shape | Oval]) -> list[Tree]:
    """Shapes that belong together as one path, a single one as it is."""
    if len(alike) == 1:
        return [_shape(sheet, alike[0])]
    return [["path", {"class": f"k-{alike[0].part}", "d": "".join(_way(sheet, shape) for shape in alike)}, []]]


def _shape(sheet: _Sheet, shape: Shape | Oval) -> Tree:
    """One shape."""
    css = {"class": f"k-{shape.part}"}
    if isinstance(shape, Oval):
        x, y = sheet.place(shape.middle)
        turned = {"transform": f"rotate({_short(-shape.turn)} {x} {y})"} if shape.turn else {}
        return ["ellipse", {**css, "cx": x, "cy": y, "rx": sheet.size(shape.across), "ry": sheet.size(shape.down), **turned}, []]
    return ["path", {**css, "d": _way(sheet, shape)}, []]


def _way(sheet: _Sheet, shape: Shape) -> str:
    """The outline as the commands of a path: after the first place all steps are told from the place before, which is short."""
    runs = [list(run) for run in shape.runs]
    if shape.loop:
        around = runs[0]
        return _Path(sheet, around[0]).curves(bends([around[-1], *around, *around[:2]])[1:-1]).text + "z"
    path = _Path(sheet, runs[0][0])
    for place, run in enumerate(runs):
        path = (path.line(run[0]) if place else path).curves(bends(run))
    return path.text + ("z" if shape.closed else "")


class _Path:
    """The text of a path, and where it has come to, in tenths of a unit."""

    def __init__(self, sheet: _Sheet, start: Point) -> None:
        self.sheet, self.here = sheet, sheet.tenths(start)
        self.text = f"M{_joined(self.here)}"

    def line(self, to: Point) -> "_Path":
        """Straight on to a place."""
        self.text += "l" + self._steps([to])
        return self

    def curves(self, pieces: list[tuple[Point, Point, Point]]) -> "_Path":
        """On along Bézier pieces."""
        for piece in pieces:
            self.text += "c" + self._steps(list(piece))
        return self

    def _steps(self, points: list[Point]) -> str:
        """Places as steps from where the path is; the last one is where it is then."""
        x, y = self.here
        found = [self.sheet.tenths(point) for point in points]
        self.here = found[-1]
        return _joined([number for px, py in found for number in (px - x, py - y)])


def _joined(tenths: Sequence[int]) -> str:
    """Numbers in as few signs as a path needs."""
    words = [_short(number / 10).replace("0.", ".", 1) if abs(number) < 10 else _short(number / 10) for number in tenths]
    return "".join(word if place == 0 or word.startswith("-") else " " + word for place, word in enumerate(words))


def _line(sheet: _Sheet, pin: Pin, place: Point) -> Tree:
    """The line from a number to what it names."""
    return ["path", {"class": "k-leader", "d": f"M{sheet.pair(pin.disc)}L{sheet.pair(place)}"}, []]


def _disc(sheet: _Sheet, pin: Pin, number: int) -> list[Tree]:
    """A number on its disc."""
    x, y = sheet.place(pin.disc)
    dots = [["circle", {"class": "k-dot", "cx": px, "cy": py, "r": "1.8"}, []] for px, py in map(sheet.place, pin.places)]
    return [
        *dots,
        ["circle", {"class": "k-disc", "cx": x, "cy": y, "r": _short(DISC)}, []],
        ["text", {"class": "k-number", "x": x, "y": _short(float(y) + DIGITS * 0.36)}, [str(number)]],
    ]


def _short(number: float) -> str:
    """A number with one digit after the point at most."""
    text = f"{number:.1f}".removesuffix(".0")
    return "0" if text == "-0" else text
