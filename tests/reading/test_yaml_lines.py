"""YAML as authors mean it: words stay words, numbers are numbers, every place has its line."""

import pytest

from generator.reading.yaml_lines import core_value, read_text


@pytest.mark.parametrize(
    "text",
    [
        "no",
        "yes",
        "on",
        "off",
        "y",
        "1:30",
        "010",
        "2026-11-25",
        "1_000",
        "0x1f",
        ".nan",
        ".inf",
        "1e999",
        "12345678901234567",
    ],
)
def test_words_that_old_yaml_bends_stay_text(text: str) -> None:
    """YAML 1.1 makes truth values, minutes, octal numbers and dates of these; here they stay what was written."""
    assert core_value(text) == text


@pytest.mark.parametrize(
    ("text", "number"),
    [("0", 0), ("-3", -3), ("+4", 4), ("0.10", 0.1), (".5", 0.5), ("2.", 2.0), ("1e3", 1000.0), ("-1.5E-2", -0.015)],
)
def test_numbers_are_read(text: str, number: float) -> None:
    """Whole numbers and decimals as in the YAML 1.2 core schema."""
    assert core_value(text) == number
    assert type(core_value(text)) is type(number)


@pytest.mark.parametrize(("text", "value"), [("", None), ("~", None), ("null", None), ("true", True), ("False", False)])
def test_nothing_and_truth_are_read(text: str, value: object) -> None:
    """The few words of the core schema that are not text."""
    assert core_value(text) is value


def test_quoted_numbers_are_text() -> None:
    """Quotes always mean text."""
    assert read_text("a: '3'\nb: \"4\"\n", "f.yml")[0] == {"a": "3", "b": "4"}


def test_names_of_fields_are_text() -> None:
    """A field called 2026 or no is a field of that name."""
    assert read_text("2026: a\nno: b\n", "f.yml")[0] == {"2026": "a", "no": "b"}


def test_every_place_has_its_line() -> None:
    """The line of a field is that of its name, even when its text starts further down."""
    _, lines, _ = read_text("a: 1\nb:\n  - x\n  - c: >-\n      long\n      text\n", "f.yml")
    assert lines == {(): 1, ("a",): 1, ("b",): 2, ("b", 0): 3, ("b", 1): 4, ("b", 1, "c"): 4}


def test_the_mark_of_some_editors_is_read_over() -> None:
    """A byte order mark and the line ends of Windows change nothing."""
    assert read_text("a: 1\r\nb: 2\r\n", "f.yml")[0] == {"a": 1, "b": 2}


def test_a_field_given_twice_keeps_the_first() -> None:
    """The second is reported with the line of the first."""
    data, _, problems = read_text("a: 1\nb: 2\na: 3\n", "f.yml")
    assert data == {"a": 1, "b": 2}
    assert [(problem.line, problem.sentence) for problem in problems] == [
        (3, "`a` is given twice; the first is on line 1.")
    ]


def test_endless_copies_are_refused_at_once() -> None:
    """A file that would grow without end by copying itself is refused at its first copy, not followed."""
    bomb = "a: &a [x]\n" + "".join(f"{new}: &{new} [*{old}, *{old}]\n" for old, new in zip("abcdefgh", "bcdefghi"))
    _, _, problems = read_text(bomb, "f.yml")
    assert "copying" in problems[0].sentence


def test_a_copy_for_the_name_of_a_field_is_refused_too() -> None:
    """Found by spoiling: a name in the place of a field."""
    _, _, problems = read_text("a: &x b\n*x : 3\n", "f.yml")
    assert [problem.line for problem in problems] == [1, 2]


def test_deep_nesting_is_a_problem() -> None:
    """Nobody writes so many brackets on purpose; a recursion error would follow."""
    for depth in (25, 50_000):
        _, _, problems = read_text("a: " + "[" * depth, "f.yml")
        assert "deep" in problems[0].sentence
