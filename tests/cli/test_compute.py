"""compute: JSON on stdout, notes on stderr, one line a fault and status 2 for bad input."""

import json

import pytest

DENSITY = '{"row_spacing_m": 2.4, "vine_spacing_m": 1.2}'


def test_an_answer_is_json_and_nothing_else_is_on_stdout(command):
    """One hectare is 10 000 m2, so 2.4 m by 1.2 m gives 10 000 / 2.88 vines."""
    done = command("compute", "vine_density", "--input", "-", given=DENSITY)
    assert json.loads(done.stdout)["outputs"]["vines_per_ha"] == pytest.approx(10000 / 2.88)
    assert done.returncode == 0
    assert done.stderr.startswith("rules ")


def test_a_file_gives_what_standard_input_gives(command, tmp_path):
    """--input takes either."""
    (tmp_path / "facts.json").write_text(DENSITY)
    from_file = command("compute", "vine_density", "--input", str(tmp_path / "facts.json"))
    assert from_file.stdout == command("compute", "vine_density", "--input", "-", given=DENSITY).stdout


def test_the_names_are_listed(command, rulebook):
    """Calculators, decisions and the plan."""
    names = command("compute", "--list").stdout.split()
    assert {*rulebook.calculators, *rulebook.decisions, "block_plan"} == set(names)


def test_a_name_is_described(command):
    """What it asks and what it gives, as JSON."""
    described = json.loads(command("compute", "vine_density", "--describe").stdout)
    assert "row_spacing_m" in json.dumps(described)


@pytest.mark.parametrize(
    ("words", "given", "line"),
    [
        (["vine_density", "--input", "-"], "{", "error: standard input:1:2: this is not JSON"),
        (["vine_density", "--input", "-"], "[]", "error: standard input: give one object of facts"),
        (["vine_density", "--input", "-"], "[" * 100_000, "error: standard input: brackets are nested too deep"),
        (["vine_density", "--input", "-"], f'{{"row_spacing_m": {"9" * 5000}}}', "error: standard input: a number has too many"),
        (["vine_density", "--input", "-"], '{"area_ha": 1, "area_ha": 2}', "error: standard input: `area_ha` is given twice"),
        (["vine_density", "--input", "no-such-file"], "", "error: no-such-file cannot be read"),
        (["vine_densty", "--input", "-"], "{}", "error: There is nothing called vine_densty. Did you mean `vine_density`?"),
        (["--describe"], "", "error: Give a NAME"),
        (["vine_density", "--input", "-"], '{"row_spacing_m": "wide", "vine_spacing_m": 1.2}', "row_spacing_m: "),
    ],
)
def test_bad_input_is_one_line_and_status_2(command, words, given, line):
    """Nothing is on stdout, so nothing half-right is piped on."""
    done = command("compute", *words, given=given)
    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr.startswith(line)
    assert len(done.stderr.splitlines()) == 1


def test_every_fault_has_its_line(command):
    """All faults of the input are told at once: what does not fit, what is not asked, what is missing."""
    done = command("compute", "vine_density", "--input", "-", given='{"row_spacing_m": "wide", "rows": 3}')
    assert sorted(line.split(":")[0] for line in done.stderr.splitlines()) == ["row_spacing_m", "rows", "vine_spacing_m"]
