"""Sampling of buds against what is printed: schemes, their precision, the rate of work, and when a dissection is worth it."""

import math

import pytest
from scipy import stats

from generator.answers.compute import compute
from generator.reading.rulebook import Rulebook
from tests.published.printed import numbers_in, prints

# Evidence, the scheme's id in the guide, its place in the table bd-01.
SCHEMES = [
    ("bd-02", "raisin_canes", 0),
    ("bd-02", "wine_spurs", 1),
    ("bd-03", "laboratory", 2),
    ("bd-04", "second_laboratory", 3),
    ("bd-05", "indian_course", 4),
]


def sample(rulebook: Rulebook, **inputs: float) -> dict:
    """The answer of the guide for single buds at 95 %, with some of that changed."""
    return compute(rulebook, "bud_sample_size", {"precision_pct": 10, "confidence_pct": 95, "buds_per_cane": 1, "likeness": 0.2} | inputs)


def scheme(rulebook: Rulebook, name: str, **inputs: float) -> dict:
    """The line of one printed scheme."""
    word = f"figure.bud_scheme_units.{name}"
    return next(line for line in sample(rulebook, **inputs)["compared"] if word in line["who"]["words"])


@pytest.mark.parametrize(("evidence", "name", "row"), SCHEMES)
def test_a_scheme_has_the_canes_and_buds_that_its_author_prints(rulebook: Rulebook, evidence: str, name: str, row: int) -> None:
    """The canes or spurs stand in the author's own evidence, and so does what is cut of each, or all the buds together."""
    canes, each, buds = scheme(rulebook, name)["says"]["numbers"][:3]
    printed = prints(rulebook, evidence)
    assert canes in printed and (each in printed or buds in printed)
    assert canes * each == buds


@pytest.mark.parametrize(("evidence", "name", "row"), SCHEMES)
def test_a_scheme_is_that_of_the_table(rulebook: Rulebook, evidence: str, name: str, row: int) -> None:
    """bd-01: the table of schemes side by side, row by row."""
    printed = rulebook.evidence["bd-01"].table[row]
    assert scheme(rulebook, name)["says"]["numbers"][:3] == [printed["units"], printed["positions"], printed["buds_total"]]
    assert printed["id"] == evidence


@pytest.mark.parametrize(("buds", "printed"), [(20, 0.1753), (30, 0.1431), (100, 0.0784)])
def test_the_half_width_of_a_share_asks_for_as_many_buds(rulebook: Rulebook, buds: int, printed: float) -> None:
    """bd-11: so many buds come so near a share of 80 % at 95 %; asked the other way round the guide wants as many (to the last digit
    of the half width)."""
    assert printed in prints(rulebook, "bd-11")
    assert sample(rulebook, share_pct=80, precision_pct=100 * printed)["outputs"]["buds_exact"] == pytest.approx(buds, rel=0.002)


@pytest.mark.parametrize(("buds", "printed"), [(20, 0.307), (30, 0.25), (100, 0.137)])
def test_a_mean_asks_for_more_than_the_table_by_what_t_is_over_z(rulebook: Rulebook, buds: int, printed: float) -> None:
    """bd-11: the table takes 1.96 for a spread of 0.7 known beforehand. The guide takes t, so that as many canes come a little less near."""
    assert printed in prints(rulebook, "bd-11")
    t = stats.t.ppf(0.975, buds - 1)
    assert sample(rulebook, cv_pct=70, precision_pct=100 * printed * t / 1.96)["outputs"]["buds_exact"] == pytest.approx(buds, rel=0.006)


@pytest.mark.parametrize(("buds", "points"), [(20, 18), (30, 14), (100, 8)])
def test_the_precision_of_twenty_thirty_and_a_hundred(rulebook: Rulebook, buds: int, points: int) -> None:
    """dis-09: near 80 % these are half widths of about 18, 14 and 8 points: the guide needs no more buds for half a point more, and
    more for half a point less."""
    assert {float(buds), float(points)} <= prints(rulebook, "dis-09")
    wider, nearer = (sample(rulebook, share_pct=80, precision_pct=points + step)["outputs"]["buds_exact"] for step in (0.5, -0.5))
    assert wider <= buds <= nearer


@pytest.mark.parametrize(("share", "printed"), [(50, 5.6), (90, 3.4)])
def test_eighty_buds_have_the_printed_standard_error(rulebook: Rulebook, share: int, printed: float) -> None:
    """es-18: 20 canes at four nodes are 80 buds; were they independent, the standard error would be 5.6 points at a half and 3.4 at
    nine tenths."""
    assert printed in prints(rulebook, "es-18")
    together = scheme(rulebook, "laboratory", share_pct=share, likeness=0)["says"]["numbers"][3]
    assert together / stats.norm.ppf(0.975) == pytest.approx(printed, abs=0.05)


def test_a_half_fruitful_needs_the_most(rulebook: Rulebook) -> None:
    """es-18: variance, and so the sample, is greatest when about half the buds are fruitful."""
    worst = rulebook.evidence["es-18"].outputs["worst_case_share"]
    sizes = {share: sample(rulebook, share_pct=share)["outputs"]["buds_exact"] for share in range(1, 100)}
    assert max(sizes, key=sizes.__getitem__) == 100 * worst


def test_more_canes_tell_more_than_more_buds_of_each(rulebook: Rulebook) -> None:
    """bd-03: look at four nodes of more canes rather than at every bud of fewer. Four of a cane need fewer buds than sixteen."""
    each = rulebook.evidence["bd-03"].outputs["buds per cane"]
    assert sample(rulebook, buds_per_cane=each)["outputs"]["buds"] < sample(rulebook, buds_per_cane=4 * each)["outputs"]["buds"]


@pytest.mark.parametrize("likeness", [0.1, 0.5, 1.0])
def test_alike_buds_never_need_fewer_canes(rulebook: Rulebook, likeness: float) -> None:
    """bd-03: more canes rather than more buds holds whatever the likeness: the canes asked for rise with it."""
    four = sample(rulebook, buds_per_cane=rulebook.evidence["bd-03"].outputs["buds per cane"], likeness=likeness)["outputs"]
    none = sample(rulebook, buds_per_cane=rulebook.evidence["bd-03"].outputs["buds per cane"], likeness=0)["outputs"]
    assert four["canes"] > none["canes"]


@pytest.mark.parametrize("near", [19.6, 10, 5])
def test_one_of_each_of_25_is_worth_two_of_each_of_21(rulebook: Rulebook, near: float) -> None:
    """es-14: both plans have the same standard error. With the variance within over that between vines as worked out there, two of a
    vine are alike by 1 / 1.471, and the guide's two plans stand as 42 to 25 at every precision."""
    printed = rulebook.evidence["es-14"]
    within = printed.our_arithmetic["within_over_between_variance_ignoring_finite_correction"]
    one = sample(rulebook, share_pct=50, precision_pct=near, likeness=1 / (1 + within))["outputs"]["buds_exact"]
    two = sample(rulebook, share_pct=50, precision_pct=near, likeness=1 / (1 + within), buds_per_cane=2)["outputs"]["buds_exact"]
    assert two / one == pytest.approx(printed.inputs["plan_b"]["bunches"] / printed.inputs["plan_a"]["bunches"], abs=0.001)


@pytest.mark.parametrize(("cv", "near", "block"), [(43.4, 10, 125), (70, 10, 1000), (70, 20, 40), (120, 5, 100_000)])
def test_the_two_step_formula(rulebook: Rulebook, cv: float, near: float, block: int) -> None:
    """es-02: n = (t CV / E)^2, then n / (1 + n / N); t from scipy for the sample that comes out."""
    assert rulebook.evidence["es-02"].outputs == {"n": "(t x CV / E)^2"}
    found = sample(rulebook, cv_pct=cv, precision_pct=near, buds_in_block=block)["outputs"]
    n = (stats.t.ppf(0.975, found["canes"] - 1) * cv / near) ** 2
    assert found["buds_exact"] == pytest.approx(n / (1 + n / block), rel=1e-9)


def test_the_hours_are_those_of_the_laboratory(rulebook: Rulebook) -> None:
    """bd-04: 30 canes of five buds at two to three a minute are 50 to 75 minutes of pure cutting."""
    found = sample(rulebook, share_pct=50, precision_pct=8.01, buds_per_cane=5, likeness=0)["outputs"]
    assert (found["canes"], found["buds"]) == (30, 150)
    assert rulebook.evidence["bd-04"].outputs["pure dissecting time (DERIVED)"] == "[50, 75] min"
    assert [60 * found["hours_low"], 60 * found["hours_high"]] == pytest.approx([50, 75])


# Facts that leave every row but the tried one aside.
PLAIN = {
    "buds_cut": "no",
    "system_change_planned": "no",
    "bud_losses_suspected": "no",
    "variety": "merlot",
    "crop_made_in_two_of_three_years": "yes",
    "crop_promised_early": "no",
}


@pytest.mark.parametrize(
    ("evidence", "changed"),
    [
        ("dis-01", {"variety": "pinot_noir", "system_change_planned": "yes"}),
        ("nf-06", {"variety": "pinot_noir", "system_change_planned": "yes"}),
        ("pbn-04", {"variety": "shiraz"}),
        ("nf-14", {"variety": "shiraz"}),
        ("pbn-01", {"variety": "riesling"}),
        ("bi-14", {"bud_losses_suspected": "yes"}),
        ("bd-04", {"crop_made_in_two_of_three_years": "no"}),
        ("nf-20", {"crop_promised_early": "yes"}),
    ],
)
def test_what_the_source_speaks_of_is_a_reason_to_look(rulebook: Rulebook, evidence: str, changed: dict) -> None:
    """Each of these alone turns the answer from spring counts to bud counts, and the row cites its source."""
    assert compute(rulebook, "bud_counts_needed", PLAIN)["outcome"] == "spring_tells"
    found = compute(rulebook, "bud_counts_needed", PLAIN | changed)
    assert found["outcome"] == "needed" and evidence in found["reasons"][0]["sources"]


@pytest.mark.parametrize(
    ("evidence", "table", "row", "number"),
    [
        ("nf-21", "bud_counts_needed", "N5_short", 60),
        ("bd-04", "bud_counts_needed", "N5_short", 1),
        ("bi-14", "bud_counts_needed", "N3_losses", 100),
        ("bd-09", "cut_buds_this_winter", "C5_force", 20),
        ("bd-09", "cut_buds_this_winter", "C5_force", 7),
    ],
)
def test_a_row_tells_the_number_that_its_source_prints(rulebook: Rulebook, evidence: str, table: str, row: str, number: float) -> None:
    """In the reason or the note of the row."""
    one = next(line for line in rulebook.decisions[table].rows if line.id == row)
    assert number in numbers_in(f"{one.because} {one.note}") and number in prints(rulebook, evidence) and evidence in [cite.id for cite in one.cites]


@pytest.mark.parametrize(("evidence", "cv", "near", "vines"), [("od-01", 43.4, 10, 73), ("od-01", 43.4, 20, 19), ("es-05", 43.49, 10, 73)])
def test_single_vines_of_a_real_block(rulebook: Rulebook, evidence: str, cv: float, near: int, vines: int) -> None:
    """od-01 and es-05, Strickland 1932, Rutherglen: yields of single vines spread by 43.4 %, so 73 vines come within 10 % and 19 within 20 % (our arithmetic with
    1.96). The guide takes t for the sample that comes out, so that it asks for as many once the precision is widened by t over 1.96."""
    assert cv in prints(rulebook, evidence) and vines in prints(rulebook, "od-01")
    exact = (1.96 * cv / near) ** 2
    assert math.ceil(exact) == vines
    t = stats.t.ppf(0.975, vines - 1)
    asked = sample(rulebook, cv_pct=cv, precision_pct=near * t / 1.96)["outputs"]
    assert asked["buds_exact"] == pytest.approx(exact, rel=0.01) and asked["buds"] == vines


def test_canes_of_a_district_are_more_than_a_block_needs(rulebook: Rulebook) -> None:
    """bd-06, Antcliff and Webster 1955: 20 canes of each of ten vineyards tell the share of fruitful buds of a district well enough. For one block the guide asks
    fewer canes for the same share within ten points, one bud of each, and for more than the 20 of one vineyard."""
    assert {20, 10} <= prints(rulebook, "bd-06")
    asked = sample(rulebook, share_pct=50, precision_pct=10)["outputs"]["canes"]
    assert 20 < asked < 20 * 10
