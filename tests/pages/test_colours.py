"""Text stands at 7:1 or better on what it is written on, in light and in dark (WCAG 2.2, contrast ratio, 1.4.6)."""

import re
from pathlib import Path

import pytest

CSS = (Path(__file__).parents[2] / "generator/pages/assets/guide.css").read_text(encoding="utf-8")
# Written on: ink and quiet on every ground, and the pairs made for each other.
PAIRS = [(text, ground) for text in ("ink", "quiet", "mark", "rust") for ground in ("ground", "sheet")]
PAIRS += [("ink", "slate"), ("on-bark", "bark"), ("lichen-ink", "lichen"), ("mark", "lichen"), ("rust", "rust-ground"), ("mark", "slate")]


def palette(dark):
    """The named colours of the style sheet."""
    blocks = re.findall(r":root \{(.*?)\}", CSS, re.DOTALL)
    return dict(re.findall(r"--([\w-]+): (#[0-9a-f]{6});", blocks[1 if dark else 0]))


def luminance(colour):
    """Relative luminance of #rrggbb."""
    parts = [int(colour[k : k + 2], 16) / 255 for k in (1, 3, 5)]
    red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one, other):
    """The contrast ratio of two colours."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
@pytest.mark.parametrize(("text", "ground"), PAIRS)
def test_text_stands_out(text, ground, dark):
    """7:1 for every text on its ground."""
    colours = palette(dark)
    assert contrast(colours[text], colours[ground]) >= 7


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
@pytest.mark.parametrize("line", ["edge", "focus"])
def test_borders_and_focus_stand_out(line, dark):
    """3:1 for what shows where a field is and where the focus is (1.4.11)."""
    colours = palette(dark)
    assert min(contrast(colours[line], colours[ground]) for ground in ("ground", "sheet")) >= 3
