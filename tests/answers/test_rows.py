"""Rows as an input: from JSON every fault stops the answer, from CSV a bad line is named and left out."""

import pytest

from generator.answers.compute import BadInput, compute, describe
from generator.answers.rows_csv import read_sheet

NAME = "bud_fruitfulness"
HEAD = "cane,node,buds_0,buds_1,buds_2,dead_primary,secondary_1"


def sheet(rulebook, *lines, end="\n"):
    """The sheet of some lines."""
    return read_sheet(rulebook, rulebook.calculators[NAME], end.join(lines))


def faults(rulebook, **inputs):
    """The faults of inputs that will not do."""
    with pytest.raises(BadInput) as bad:
        compute(rulebook, NAME, inputs)
    return bad.value.faults


def test_a_column_left_out_counts_nothing(rulebook):
    """Three rows, each with what was counted alone: node 1 holds two buds with one beginning each, and one dead primary."""
    rows = [{"node": 1, "buds_1": 1}, {"node": 1, "buds_1": 1, "cane": None}, {"node": 1, "dead_primary": 1}]
    answer = compute(rulebook, NAME, {"rows": rows})
    assert (answer["outputs"]["buds"], answer["outputs"]["mean_live"]) == (3, 1.0)


def test_the_facts_go_on_as_they_are(rulebook):
    """The mapping is an input of other calculators without a change."""
    rows = [{"cane": cane, "node": node, f"buds_{(cane + node) % 3}": 1} for cane in range(1, 13) for node in (1, 2, 3)]
    answer = compute(rulebook, NAME, {"rows": rows})
    wish = {"target_yield_t_ha": 6, "bearing_vines_per_ha": 4000, "bunch_weight_g": 115, "vine_spacing_m": 1.2}
    taken = {name: x for name, x in answer["facts"].items() if name != "buds_cut"}
    there = compute(rulebook, "bearer_reach", taken | wish)["outputs"]
    assert there["spur_reach"] == compute(rulebook, NAME, {"rows": rows} | wish)["outputs"]["spur_reach"]
    assert answer["facts"]["buds_cut"] == "yes"
    plan = compute(rulebook, "block_plan", answer["facts"])
    assert plan["facts"]["primordia_node_1"]["value"] == answer["facts"]["primordia_node_1"]


def test_what_was_left_out_is_not_there(rulebook):
    """A single bud has no interval: no null, no zero, no word."""
    (row,) = compute(rulebook, NAME, {"rows": [{"node": 1, "buds_2": 1}]})["rows"]
    assert row["mean_live"] == 2.0
    assert not {"se", "low", "high"} & set(row)


@pytest.mark.parametrize(
    ("rows", "said"),
    [
        ([{"buds_1": 1}], ["rows: row 1: node: is missing, every row needs it"]),
        ([{"node": 1, "bud_1": 1}], ["rows: row 1: `bud_1` is no column, did you mean buds_1?"]),
        ([{"node": 1}, {"node": 16}], ["rows: row 2: node: Node is out of range; allowed is 0 to 15."]),
        ([{"node": 1, "buds_1": "two"}], ["rows: row 1: buds_1: `two` is not a number, allowed is a number such as 2.5"]),
        ([{"node": 1, "buds_1": -1}], ["rows: row 1: buds_1: Primary alive, one beginning is out of range; allowed is 0 to 1000."]),
        ([{"node": 1.5}], ["rows: row 1: node: Node takes whole numbers only; allowed is 0 to 15."]),
        ([{"node": 1, "buds_1": True}], ["rows: row 1: buds_1: `true` is not a number, allowed is a number such as 2.5"]),
        ([[1, 2]], ['rows: row 1: a list is no row, allowed is {"cane": 1, "node": 1, "buds_0": 1}']),
        ([], ['rows: a list will not do, allowed is a list of rows such as {"cane": 1, "node": 1, "buds_0": 1}']),
        ("many", ['rows: `many` will not do, allowed is a list of rows such as {"cane": 1, "node": 1, "buds_0": 1}']),
        ([{"node": 1, "buds_1": 1, "secondary_1": 2}], ["rows: row 1: More secondaries are counted than buds with something alive; each such bud has one that counts."]),
    ],
)
def test_every_bad_row_is_told(rulebook, rows, said):
    """By its number from 1, with what is allowed."""
    assert faults(rulebook, rows=rows) == said


def test_faults_of_facts_and_rows_come_together(rulebook):
    """One run tells all."""
    told = faults(rulebook, rows=[{"node": 99}], confidence_pct=100)
    assert [fault.split(":")[0] for fault in told] == ["confidence_pct", "rows"]
    assert faults(rulebook) == ["rows: is missing, this calculator needs a list of rows"]


def test_another_calculator_takes_no_rows(rulebook):
    """There `rows` is a name that is not asked."""
    with pytest.raises(BadInput, match="rows: is not asked here"):
        compute(rulebook, "vine_density", {"row_spacing_m": 2, "vine_spacing_m": 1, "rows": []})


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("mark", [",", ";", "\t"])
def test_a_spreadsheets_habits_are_read(rulebook, mark, end):
    """Any order and case of the columns, blanks in names and around cells, quotes, a mark of the encoding, empty lines and cells."""
    head = mark.join(["\ufeffNode", "CANE", '"Buds 1"', "dead-primary"])
    lines = [head, mark.join(["1", " 4 ", "1", ""]), "", mark * 3, mark.join(['"2"', "4", "", "1"]), mark.join(["3", "4"])]
    read = sheet(rulebook, *lines, end=end)
    assert (read.faults, read.left_out) == ([], 0)
    assert [(row["node"], row["cane"]) for row in read.rows] == [("1", "4"), ("2", "4"), ("3", "4")]
    assert (read.rows[0]["buds_1"], read.rows[1]["dead_primary"]) == ("1", "1")


def test_bad_lines_are_named_and_the_rest_is_kept(rulebook):
    """Each by the number that a spreadsheet or an editor shows for it; empty lines count."""
    read = sheet(rulebook, HEAD, "1,1,1,0,0,0,0", "", "1,x,1", "1,99,1", "1,2,0,1,0,0,0,7", "1,,1", "1,2,0,0,0,0,1", "2,1,0,1,0,0,0")
    assert [(row["cane"], row["node"]) for row in read.rows] == [("1", "1"), ("2", "1")]
    assert [fault.split(":")[0] for fault in read.faults] == ["4", "5", "6", "7", "8"]
    assert read.left_out == 5
    assert read.faults[1] == "5: node: Node is out of range; allowed is 0 to 15."
    assert read.faults[2] == "6: `7` stands beyond the last column, allowed are 7 cells"
    assert read.faults[3] == "7: node: is missing, every row needs it"


def test_a_quote_left_open_spoils_its_line_alone(rulebook):
    """The next line is read as if nothing had been."""
    read = sheet(rulebook, "node,buds_1", '"1,1', "2,1")
    assert [row["node"] for row in read.rows] == ["2"]
    assert [fault.split(":")[0] for fault in read.faults] == ["2"]


def test_a_column_that_there_is_not_is_named_and_left_out(rulebook):
    """A misspelt column would change every figure in silence."""
    read = sheet(rulebook, "node,buds_1,dead_primry,buds_1", "1,1,1,0")
    assert read.faults == [
        "1: `dead_primry` is no column, did you mean dead_primary? The column is left out.",
        "1: the column buds_1 is there twice; the first one counts",
    ]
    assert read.rows == [{"node": "1", "buds_1": "1"}]


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        ([], "1: nothing is in it, the first line names the columns: cane, node, "),
        (["cane,buds_1", "1,1"], "1: the column node is missing, every row needs it"),
    ],
)
def test_a_sheet_that_holds_no_rows_says_why(rulebook, lines, said):
    """Nothing is kept, and there is one fault."""
    read = sheet(rulebook, *lines)
    assert read.rows == []
    assert len(read.faults) == 1 and read.faults[0].startswith(said)


def test_the_columns_are_described(rulebook):
    """With label, range, what is counted there, and whether a row may leave it out."""
    columns = describe(rulebook, NAME)["rows"]
    assert [one["id"] for one in columns if not one["optional"]] == ["node"]
    assert all(one["label"] and one["observe"] and len(one["range"]) == 2 for one in columns)
    assert "rows" not in describe(rulebook, "vine_density")


CANE = {"cane_diameter_mm": 9, "cane_ripe_nodes": 12, "cane_origin": "renewal_spur"}
VINE = {"canes_wanted_per_vine": 1, "vine_spacing_m": 1.2}


def canes(rulebook, *rows, **vine):
    """The answer on some canes, each a good one but for what is said."""
    return compute(rulebook, "cane_choice", {"rows": [CANE | row for row in rows]} | VINE | vine)


def test_columns_that_are_facts_take_what_the_facts_take(rulebook):
    """Choices by their ids, yes and no, numbers with decimals; what is left out is as the fact assumes, or not known."""
    answer = canes(rulebook, {}, {"cane_green": "no"}, {"cane_diameter_mm": 6.3}, {"cane_section": "flat", "internode_cm": "unknown"})
    assert [one["verdict"] for one in answer["canes"]] == ["keep", "reject", "reject", "reject"]
    assert "Internodes of 4 canes were not measured" in " ".join(answer["notes"])


@pytest.mark.parametrize(
    ("row", "said"),
    [
        ({"cane_diameter_mm": None}, "cane_diameter_mm: is missing, every row needs it"),
        ({"cane_section": "square"}, "cane_section: `square` is not one of its choices, allowed are round, oval, flat"),
        ({"cane_green": 3}, "cane_green: `3` is neither yes nor no, allowed are yes and no"),
        ({"cane_diameter_mm": 30}, "cane_diameter_mm: Thickness of the canes is out of range; allowed is 2"),
        ({"diameter": 9}, "`diameter` is no column, did you mean cane_diameter_mm?"),
    ],
)
def test_wrong_answers_to_facts_are_told_as_in_a_form(rulebook, row, said):
    """By row and column, with what is allowed."""
    with pytest.raises(BadInput) as bad:
        canes(rulebook, {}, row)
    assert len(bad.value.faults) == 1
    assert bad.value.faults[0].startswith(f"rows: row 2: {said}")


def test_a_sheet_of_canes(rulebook):
    """From a file: words for choices; a line that will not do is named and left out."""
    text = "cane_diameter_mm;cane_ripe_nodes;cane_origin;cane_section\n9;12;renewal_spur;\n9;12;somewhere;flat\n"
    found = read_sheet(rulebook, rulebook.calculators["cane_choice"], text)
    assert (len(found.rows), found.left_out) == (1, 1)
    assert found.faults[0].startswith("3: cane_origin: `somewhere` is not one of its choices")


def test_columns_that_are_facts_are_described(rulebook):
    """With their choices, units and what is assumed."""
    columns = {one["id"]: one for one in describe(rulebook, "cane_choice")["rows"]}
    assert columns["cane_section"]["choices"] == ["round", "oval", "flat"] and columns["cane_section"]["default"] == "round"
    assert columns["cane_diameter_mm"]["unit"] == "mm" and not columns["cane_diameter_mm"]["optional"]
    assert columns["internode_cm"]["optional"] and "default" not in columns["internode_cm"]
