"""The table made from rules/varieties/: one row a variety, saying what the lists say and no more."""

from dataclasses import replace

import pytest

from generator.reading.items import Cite, Where
from generator.reading.rulebook import Rulebook
from generator.reading.varieties import Listing, Variety
from generator.reading.variety_lists import variety_rows, verdict


def variety(*says: str) -> Variety:
    """A variety of which the lists say these words."""
    lists = tuple(Listing(word, "abstract", (Cite("hg-05"),)) for word in says)
    return Variety("prova", Where("f.yml", 1), name="Prova", use="wine", lists=lists)


@pytest.mark.parametrize(
    ("says", "expected"),
    [
        ((), "nothing_published"),
        (("spur",), "spur"),
        (("cane", "cane"), "cane"),
        (("spur", "cane"), "conflict"),
        (("either",), "conflict"),
        (("spur", "either"), "conflict"),
    ],
)
def test_the_verdict_of_the_lists(says: tuple[str, ...], expected: str) -> None:
    """One side when every list says just that; a list that allows either differs from one that does not (dis-02)."""
    assert verdict(variety(*says)) == expected


def test_every_choice_has_its_row(good: Rulebook) -> None:
    """Nothing is left without an answer, `other` included."""
    rows = good.decisions["variety_lists"].rows
    assert [(row.id, row.then) for row in rows] == [
        ("alba_prova", "spur"),
        ("nera_prova", "conflict"),
        ("rosa_prova", "nothing_published"),
        ("other", "nothing_published"),
    ]


def test_a_row_is_as_sure_as_its_weakest_list(good: Rulebook) -> None:
    """One published and one second-hand list together are second-hand."""
    assert [row.standing for row in good.decisions["variety_lists"].rows][:2] == ["abstract", "second_hand"]


def test_a_row_cites_each_list_once(good: Rulebook) -> None:
    """Two lists that rest on the same evidence cite it once."""
    assert good.decisions["variety_lists"].rows[1].cites == (Cite("hg-05"),)


def test_what_the_note_rests_on_stands_apart(good: Rulebook) -> None:
    """The outcome rests on the lists alone; the note's sources come with the note and change no verdict."""
    noted = {"prova": replace(variety("spur"), note="Node 9 bears most.", cites=(Cite("sl-01"),))}
    row, _ = variety_rows(noted, good.decisions["variety_lists"].outcomes, 1)
    assert (row.then, row.cites) == ("spur", (Cite("hg-05"),))
    assert (row.note, row.note_cites) == ("Node 9 bears most.", (Cite("sl-01"),))


def test_the_table_says_that_it_is_made(good: Rulebook) -> None:
    """Checks and the ledger treat made rows apart."""
    assert [name for name, table in good.decisions.items() if table.generated] == ["variety_lists"]
