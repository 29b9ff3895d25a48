"""Pages that show how to look at something: our own drawings with numbers, the list of the numbers, plain text with sources."""

from functools import cache
from importlib import import_module
from importlib.util import find_spec

from markupsafe import Markup

from generator.pages import wording
from generator.pages.drawing.shapes import Picture
from generator.pages.drawing.svg import picture_tree
from generator.pages.hands import asked_by, said
from generator.pages.jinja import render
from generator.pages.paths import Links, page_path
from generator.pages.svg import markup
from generator.problems import Problem, ProblemsFound
from generator.reading.looks import Look, Scene
from generator.reading.near import suggestion
from generator.reading.rulebook import Rulebook

PACKAGE = "generator.pages.anatomy"
STYLE = "assets/guide/look.css"
TRUE_SIZE = "assets/guide/true_size.js"
TALL = 0.8


def look_pages(rulebook: Rulebook) -> dict[str, str]:
    """The page of every look, and the list of them. Raises ProblemsFound when a look and its drawing do not fit each other."""
    problems = undrawn(rulebook)
    if problems:
        raise ProblemsFound(problems)
    pages = {page_path("look", look.id): look_page(rulebook, look) for look in rulebook.looks.values()}
    return {**pages, "looks.md": looks_list(rulebook)}


def looks_list(rulebook: Rulebook) -> str:
    """Every look under the first stage that wants it."""
    groups = [(stage, [look for look in rulebook.looks.values() if look.stages[0] == stage.id]) for stage in rulebook.stages.values()]
    return render("looks.md.jinja", links=Links("looks.md"), groups=[(stage, looks) for stage, looks in groups if looks])


def look_page(rulebook: Rulebook, look: Look) -> str:
    """The pictures first, then what the numbers name, then what is to be said."""
    links = Links(page_path("look", look.id))
    pictures = drawn(look.id)
    return render(
        "look.md.jinja",
        words=wording,
        links=links,
        style=links.to(STYLE),
        scripts=[TRUE_SIZE] if any(picture.true for picture in pictures.values()) else [],
        look=look,
        stages=[rulebook.stages[name] for name in look.stages],
        scenes=[{"scene": scene, "shape": shape_of(pictures[scene.id]), "svg": svg(look, scene)} for scene in look.scenes],
        marks=[{"mark": mark, "term": rulebook.terms[mark.term]} for mark in look.marks],
        says=said(rulebook, look.says),
        hands=asked_by(rulebook, "looks", look.id),
        decisions=[rulebook.decisions[name] for name in look.decisions],
        see=[rulebook.looks[name] for name in look.see],
    )


def shape_of(picture: Picture) -> str:
    """How a picture is placed: two small ones always side by side, two tall ones where there is room, a wide one alone."""
    if picture.true:
        return "half true"
    return "half" if picture.half else "tall" if picture.height > TALL * picture.width else "wide-one"


def svg(look: Look, scene: Scene) -> Markup:
    """A picture of a look with its numbers; its words for those who do not see it stand beside it on the page."""
    picture = drawn(look.id)[scene.id]
    named = {"role": "img", "aria-label": scene.caption, "aria-describedby": f"said-{scene.id}"}
    size = {"width": f"{picture.width:g}mm", "height": f"{picture.height:g}mm"} if picture.true else {}
    return markup(picture_tree(picture, look.number, named | size))


def of_stage(rulebook: Rulebook, stage: str) -> list[Look]:
    """The looks that a stage wants."""
    return [look for look in rulebook.looks.values() if stage in look.stages]


def of_decision(rulebook: Rulebook, decision: str) -> list[Look]:
    """The looks that help with a decision."""
    return [look for look in rulebook.looks.values() if decision in look.decisions]


def of_term(rulebook: Rulebook, term: str) -> list[tuple[Look, list[int]]]:
    """The looks that show a term, with its numbers in each."""
    found = [(look, [n for n, mark in enumerate(look.marks, 1) if mark.term == term]) for look in rulebook.looks.values()]
    return [(look, numbers) for look, numbers in found if numbers]


@cache
def drawn(look: str) -> dict[str, Picture]:
    """The pictures that generator/pages/anatomy/ has for a look, by id; empty when there is no such drawing."""
    name = f"{PACKAGE}.{look}"
    pictures = import_module(name).draw() if find_spec(name) else []
    return {picture.id: picture for picture in pictures}


def undrawn(rulebook: Rulebook) -> list[Problem]:
    """What a look names and its drawing has not."""
    return [problem for look in rulebook.looks.values() for problem in _faults(look)]


def _faults(look: Look) -> list[Problem]:
    """The problems of one look with its drawing."""
    pictures = drawn(look.id)
    if not pictures:
        step = f"Write generator/pages/anatomy/{look.id}.py with a function `draw`, as its neighbours have it."
        return [Problem(look.where.path, look.where.line, f"Nobody has drawn `{look.id}` yet.", step)]
    faults = []
    for scene in look.scenes:
        if scene.id not in pictures:
            sentence = f"The drawing has no picture `{scene.id}`."
            faults.append(Problem(look.where.path, look.where.line, sentence, suggestion(scene.id, pictures)))
    places = {pin.mark: None for scene in look.scenes if scene.id in pictures for pin in pictures[scene.id].pins}
    for mark in look.marks:
        if mark.id not in places:
            sentence = f"The pictures shown have no place `{mark.id}`."
            faults.append(Problem(look.where.path, mark.line, sentence, suggestion(mark.id, places)))
    return faults
