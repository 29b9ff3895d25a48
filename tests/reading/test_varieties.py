"""A variety read from its file: names, uses, lists, and what was found of its fruit by node."""

from generator.reading.items import Cite
from generator.reading.rulebook import Rulebook
from generator.reading.varieties import Finding, Synonym


def test_a_synonym_says_where_it_is_printed(good: Rulebook) -> None:
    """Without a source it is told from memory."""
    one = good.varieties["nera_prova"]
    assert one.synonyms == (Synonym("Black Trial"), Synonym("Prova Black", (Cite("hg-05"),)))
    assert one.other_names == ("Black Trial", "Prova Black")


def test_a_finding_keeps_the_figures_as_printed(good: Rulebook) -> None:
    """Nodes as the author writes them, figures as numbers."""
    (found,) = good.varieties["nera_prova"].fruitfulness
    assert found == Finding("9", "fruitful_buds", "The most.", "An invented place.", "abstract", (Cite("hg-05"),), (2.4,))


def test_a_variety_without_findings_has_none(good: Rulebook) -> None:
    """That nothing was found is said by the page; the file says nothing."""
    assert good.varieties["alba_prova"].fruitfulness == ()


def test_every_part_rests_on_what_it_cites(good: Rulebook) -> None:
    """Lists, findings, printed synonyms and the note: all are checked, and all count as uses of the evidence."""
    cited = [cite.id for cites in good.varieties["nera_prova"].resting for cite in cites]
    assert cited == ["hg-05"] * 4
