"""Whole plans of invented blocks, stored. A difference is a change of the advice: record it anew and say so in docs/changes.md."""

import json
from pathlib import Path

import pytest

from generator.answers.compute import plan
from generator.reading.read import read_rulebook

HERE = Path(__file__).parent
RULES = HERE.parent.parent / "rules"
BLOCKS = sorted(path.stem for path in (RULES / "blocks").glob("*.yml"))


def plan_text(rulebook, block: str) -> str:
    """The plan as stored: all of it but the digest of the rules, which changes with every comma (in the link too), and the facts, which stand in the block."""
    found = plan(rulebook, rulebook.blocks[block].facts)
    del found["rules"], found["link"], found["facts"]
    return json.dumps(found, ensure_ascii=False, indent=1, sort_keys=True) + "\n"


@pytest.mark.parametrize("block", BLOCKS)
def test_the_plan_is_the_stored_one(block, rulebook, request):
    """Every number, sentence and shape of the plan is as recorded (`--record-golden` writes it anew)."""
    stored = HERE / f"{block}.json"
    text = plan_text(rulebook, block)
    if request.config.getoption("--record-golden"):
        stored.write_text(text, encoding="utf-8")
    assert stored.read_text(encoding="utf-8") == text


def test_no_stored_plan_is_left_over():
    """Each stored plan belongs to a block of rules/blocks/."""
    assert sorted(path.stem for path in HERE.glob("*.json")) == BLOCKS


def test_a_plan_is_the_same_twice():
    """Reading the rules again and planning again gives the same text."""
    texts = [plan_text(read_rulebook(RULES)[0], BLOCKS[0]) for _ in range(2)]
    assert texts[0] == texts[1]
