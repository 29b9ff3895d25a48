"""The one formatter: digits fixed by the message, units, singulars, words by id, and the values of facts."""

import pytest

from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.specs import FactSpec, UnitSpec
from generator.calculators.wording import Catalogue, MessageForm, NumberForm, Part, Word, worded

NOTHING = Maybe(False, 0.0)
UNITS = [UnitSpec("count", "", 0, "", 1.0, 0), UnitSpec("m", "\u00a0m", 2, "\u00a0ft", 3.280839895013123, 1)]


def text(piece: str) -> Part:
    """A part that is text."""
    return Part(piece, -1, -1)


def spec(name: str, kind: str, unit: str = "", digits: int = 0, labels: tuple[str, ...] = ()) -> FactSpec:
    """A fact's spec with what the formatter looks at."""
    return FactSpec(
        name,
        f"fact.{name}",
        name.title(),
        kind,
        unit,
        0.0,
        1.0,
        1.0,
        digits,
        list(labels),
        list(labels),
        "block",
        "AA",
        NOTHING,
    )


FORMS = [
    MessageForm("t.gap", [text("A gap of "), Part("", 0, -1), text(".")], [], -1, [NumberForm("m", 2)], 0),
    MessageForm("t.vines", [Part("", 0, -1), text(" vines")], [Part("", 0, -1), text(" vine")], 0, [NumberForm("count", 0)], 0),
    MessageForm("t.choose", [text("Choose "), Part("", -1, 0), text("!")], [], -1, [], 1),
    MessageForm("t.fact", [Part("", -1, 0), text(": "), Part("", 0, -1)], [], -1, [NumberForm("fact", 0)], 1),
]
FACTS = [spec("spacing", "number", "m", 1), spec("climate", "choice", labels=("Cool", "Warm")), spec("cut", "date")]
CATALOGUE = Catalogue(FORMS, [Word("choice.spur", "spurs"), Word("fact.climate", "Climate")], UNITS, FACTS)


@pytest.mark.parametrize(
    ("say", "system", "sentence"),
    [
        (Say("t.gap", [0.125], []), "si", "A gap of 0.13\u00a0m."),
        (Say("t.gap", [1.0], []), "si", "A gap of 1.00\u00a0m."),
        (Say("t.gap", [1.0], []), "us", "A gap of 3.3\u00a0ft."),
        (Say("t.vines", [1.0], []), "si", "1 vine"),
        (Say("t.vines", [0.0], []), "si", "0 vines"),
        (Say("t.vines", [12000.0], []), "us", "12\u202f000 vines"),
        (Say("t.choose", [], ["choice.spur"]), "si", "Choose spurs!"),
        (Say("t.choose", [], ["Upper block"]), "si", "Choose Upper block!"),
        (Say("t.fact", [1.0], ["fact.climate"]), "si", "Climate: Warm"),
        (Say("t.fact", [2.25], ["fact.spacing"]), "si", "fact.spacing: 2.3\u00a0m"),
        (Say("t.fact", [20512.0], ["fact.cut"]), "si", "fact.cut: 2026-02-28"),
    ],
)
def test_sentences(say, system, sentence):
    """Each argument is shown as its message, its unit and its fact say."""
    assert worded(CATALOGUE, say, system) == sentence


@pytest.mark.parametrize(
    ("say", "fault"),
    [
        (Say("t.none", [], []), "no such message"),
        (Say("t.gap", [], []), "the message takes other arguments"),
        (Say("t.choose", [], []), "the message takes other arguments"),
        (Say("t.fact", [1.0], ["fact.nothing"]), "no such fact"),
    ],
)
def test_what_cannot_be_worded_is_refused(say, fault):
    """A message that is missing or given other arguments is an error, never a half sentence."""
    with pytest.raises(ValueError, match=fault):
        worded(CATALOGUE, say, "si")
