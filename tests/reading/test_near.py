"""Did you mean: the nearest word, a short list when none is near, and nothing made up."""

import pytest

from generator.reading.near import nearest, suggestion

KNOWN = ("sources", "standing", "because")


@pytest.mark.parametrize(
    ("word", "near"),
    [("sorces", "sources"), ("Sources", "sources"), ("becuase", "because"), ("stand-ing", "standing"), ("zzz", "")],
)
def test_the_nearest_word(word: str, near: str) -> None:
    """Letters lost, swapped or in capitals, and signs put in, are seen through."""
    assert nearest(word, KNOWN) == near


def test_a_short_list_when_none_is_near() -> None:
    """All of a few words; of many, only what the caller says."""
    assert suggestion("zzz", KNOWN) == "Write one of: sources, standing, because."
    assert suggestion("zzz", [f"word{number}" for number in range(40)], "Look them up.") == "Look them up."


def test_nothing_known_suggests_nothing() -> None:
    """An empty list makes no sentence."""
    assert suggestion("zzz", ()) == ""
