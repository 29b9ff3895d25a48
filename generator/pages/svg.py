"""Drawings as SVG, for pages that are read with scripts off. assets/drawing.js makes the same tree in the browser.

A tree is `[tag, {attribute: text}, [children or one text]]`; a test compares both sides. Colours and strokes are the style
sheet's, by class; nothing is styled here.
"""

from collections.abc import Callable

from markupsafe import Markup, escape

from generator.calculators.drawing_shapes import Drawing, Shape
from generator.calculators.say import Say

Tree = list
Word = Callable[[Say], str]


def tree(drawing: Drawing, word: Word) -> Tree:
    """The drawing as a tree; word makes a sentence of a Say."""
    attributes = {
        "viewBox": f"{drawing.left} {drawing.top} {drawing.width} {drawing.height}",
        "role": "img",
        "aria-label": " ".join(word(say) for say in drawing.describe),
        "font-size": str(drawing.text_mm),
    }
    return ["svg", attributes, [_shape(shape, word) for shape in drawing.shapes]]


def _shape(shape: Shape, word: Word) -> Tree:
    """One shape as a branch of the tree."""
    css = f"v-{shape.css}"
    if shape.kind == "line":
        return ["polyline", {"class": css, "points": " ".join(f"{point.x},{point.y}" for point in shape.points)}, []]
    at = shape.points[0]
    if shape.kind == "circle":
        return ["circle", {"class": css, "cx": str(at.x), "cy": str(at.y), "r": str(shape.radius)}, []]
    place = {"class": css, "x": str(at.x), "y": str(at.y), "text-anchor": shape.anchor}
    return ["text", place, [word(shape.label)]]


def markup(branch: Tree | str) -> Markup:
    """A tree as text."""
    if isinstance(branch, str):
        return escape(branch)
    tag, attributes, children = branch
    inner = Markup("").join(markup(child) for child in children)
    pairs = Markup("").join(Markup(' {}="{}"').format(Markup(name), text) for name, text in attributes.items())
    space = Markup(' xmlns="http://www.w3.org/2000/svg"') if tag == "svg" else ""
    return Markup("<{0}{1}{2}>{3}</{0}>").format(Markup(tag), space, pairs, inner)


def figure(drawing: Drawing, word: Word) -> Markup:
    """The drawing with its description under it; empty when there is nothing to draw."""
    if not drawing.shapes:
        return Markup("")
    caption = " ".join(word(say) for say in drawing.describe)
    return Markup('<figure class="drawing">{}<figcaption>{}</figcaption></figure>').format(markup(tree(drawing, word)), caption)
