"""Whatever is done to a rule file, reading and checking give problems with file and line: never a traceback, a hang, or a
schema's words."""

import re
import time
from collections.abc import Callable
from pathlib import Path
from random import Random

from generator.checks import check_rulebook
from generator.reading.ledger import add_missing
from generator.reading.read import read_rulebook
from generator.reading.yaml_lines import read_file

from tests.measured import Told
from tests.reading.spoiling import spoiled

LONGEST_S = 5.0
FAIR_SHARE = 0.8  # 88 of a hundred when this was measured; the rest are slips that leave a good file, such as a blank line more
OF_THE_MACHINE = re.compile(r"is not of type|\$ref|anyOf|allOf|Traceback|None|dict|schema|instance")


def test_spoiled_files_give_problems_in_plain_words(rules: Path, amount: Callable[[int, int], int], told: Told) -> None:
    """Every problem names a file that is there, a line that it has, and ends as a sentence; case by seed."""
    add_missing(rules, "2026-11-25")
    files = sorted(rules.rglob("*.yml"))
    cases, noticed = amount(1_000, 10_000), 0
    for seed in range(cases):
        random = Random(seed)
        path = random.choice(files)
        good = path.read_text()
        data, _, _ = read_file(path, path.name)
        path.write_text(spoiled(random, good, data), newline="")
        noticed += _told_plainly(rules, seed)
        path.write_text(good)
        told(1, "spoiled files, read and checked without a traceback")
    told(noticed, "of them told as problems in plain words", of=cases)
    assert noticed >= FAIR_SHARE * cases


def _told_plainly(rules: Path, seed: int) -> bool:
    """Reads the rules, and checks them when they can be read; true when something was wrong with them, and said as it should be."""
    start = time.process_time()
    book, problems = read_rulebook(rules)
    problems = problems or check_rulebook(book)
    assert time.process_time() - start < LONGEST_S, f"seed {seed}: slow"
    for problem in problems:
        shown = f"seed {seed}: {problem}"
        path = rules.parent / problem.path
        assert path.is_file(), shown
        assert 0 <= problem.line <= len(re.split(r"\r\n|\r|\n|\x85", path.read_bytes().decode())), shown
        assert problem.sentence.endswith((".", "?")), shown
        assert not OF_THE_MACHINE.search(re.sub(r"`[^`]*`", "``", problem.sentence)), shown
    return bool(problems)
