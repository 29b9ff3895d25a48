"""compute from a CSV file: the answer is for the lines that will do, the others are named, and the status says so."""

import json

import pytest

GOOD = "cane;node;buds_0;buds_1\n1;1;0;1\n1;2;1;0\n2;1;0;1\n2;2;0;1\n"


@pytest.fixture
def tally(command, tmp_path):
    """tally(text, *words): compute from a CSV file with that text."""

    def run(text, *words):
        (tmp_path / "tally.csv").write_text(text)
        return command("compute", "bud_fruitfulness", "--input", str(tmp_path / "tally.csv"), *words)

    return run


def test_a_good_file_is_answered(tally):
    """Three of four buds hold one: status 0 and no line left out."""
    done = tally(GOOD)
    answer = json.loads(done.stdout)
    assert (done.returncode, answer["outputs"]["mean_live"], answer["lines_left_out"]) == (0, 0.75, 0)
    assert done.stderr.startswith("rules ")


def test_bad_lines_are_told_and_the_rest_is_answered(tally):
    """Status 2, as a part of a tally is not the whole; the answer is that of the file without them."""
    done = tally(GOOD + "3;99;1;0\n3;1;one;0\n")
    answer, told = json.loads(done.stdout), done.stderr.splitlines()
    assert (done.returncode, answer["lines_left_out"]) == (2, 2)
    assert [line.partition("tally.csv:")[2][:2] for line in told[:2]] == ["6:", "7:"]
    assert answer["rows"] == json.loads(tally(GOOD).stdout)["rows"]


def test_facts_come_beside_the_rows(tally, tmp_path):
    """A second --input holds what is no row."""
    (tmp_path / "facts.json").write_text('{"confidence_pct": 95}')
    done = tally(GOOD, "--input", str(tmp_path / "facts.json"))
    assert "95" in json.loads(done.stdout)["working"][1]


@pytest.mark.parametrize("text", ["", "cane;buds_1\n1;1\n", "node;buds_1\n16;1\n"])
def test_a_file_without_a_good_line_gives_no_answer(tally, text):
    """Nothing on stdout, the reason on stderr."""
    done = tally(text)
    assert (done.returncode, done.stdout) == (2, "")
    assert "tally.csv:" in done.stderr


def test_what_two_files_may_be_is_said(tally, command, tmp_path):
    """Two of a kind, rows twice, rows for a calculator that takes none."""
    (tmp_path / "facts.json").write_text('{"rows": []}')
    (tmp_path / "wide.csv").write_text(GOOD)
    assert "holds rows, and so does" in tally(GOOD, "--input", str(tmp_path / "facts.json")).stderr
    assert "takes one JSON file and one .csv file" in tally(GOOD, "--input", str(tmp_path / "wide.csv")).stderr
    other = command("compute", "vine_density", "--input", str(tmp_path / "wide.csv"))
    assert (other.returncode, other.stdout) == (2, "")
    assert "vine_density takes no rows" in other.stderr
