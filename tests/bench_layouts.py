"""How long the search for layouts takes in Chromium on a slowed processor; docs/performance.md says how to read it.

    python3 -m generator build --out site
    .venv/bin/python -m tests.bench_layouts site

Two lines a vine, the search alone and the whole answer with all drawings, in milliseconds: the least of the runs unslowed and that times six, then
slowed the middle of the runs and the 95th of a hundred. The browser slows by pauses, which a short run may slip through: slowed runs have no least.
"""

import sys
from pathlib import Path
from statistics import median, quantiles
from urllib.parse import urlencode

from playwright.sync_api import Page, sync_playwright

from generator.setting_up import browser as resolver
from tests.browsing import FLAGS, LONGEST_MS

SLOWED = 6
RUNS = 100
WARM_UP = 10
PLAIN = {
    "curtains": 1, "tip_gap_m": 0.1, "first_spur_from_head_m": 0.15, "head_below_wire_cm": 12, "internode_cm": 8, "present_structure": "spur_cordon",
    "good_canes_per_vine": 8, "budburst_pct": 90, "shoots_per_burst_node": 1,
}  # fmt: skip
BUDS = {f"primordia_node_{node}": 1.0 + node / 20 for node in range(1, 16)} | {"dead_node_pct": 3, "dead_primary_pct": 4}
VINES = {
    "60 nodes on 3 m of wire, 28 positions": {"nodes": 60, "vine_spacing_m": 3.0, "live_spur_positions_per_vine": 28},
    "the same with buds cut open to node 15": {"nodes": 60, "vine_spacing_m": 3.0, "live_spur_positions_per_vine": 28, **BUDS},
    "26 nodes on 1.5 m, 10 positions": {"nodes": 26, "vine_spacing_m": 1.5, "live_spur_positions_per_vine": 10},
    "120 nodes on 4 m, 60 positions": {"nodes": 120, "vine_spacing_m": 4.0, "live_spur_positions_per_vine": 60},
}
# Keeps what the page asks its calculator, so that the same can be asked again and again.
KEEP = """() => {
  const plain = Guide.layout_options.layout_options;
  Guide.layout_options.layout_options = (inputs, values) => { window.asked = [inputs, values]; return plain(inputs, values); };
}"""
# [search, whole answer]: the milliseconds of each run.
TIME = """([runs, warmUp]) => {
  const [inputs, values] = window.asked;
  const own = Guide.layout_options;
  const asked = {
    layout: own.lengths_of(inputs), good_canes: inputs.good_canes_per_vine, structure: inputs.present_structure,
    shoots_per_node: inputs.budburst_pct / 100 * inputs.shoots_per_burst_node, buds: own.buds_given(inputs)
  };
  const limits = own.limits_of(values);
  const timed = (work) => {
    const found = [];
    for (let run = -warmUp; run < runs; run += 1) {
      const start = performance.now();
      work();
      if (run >= 0) { found.push(performance.now() - start); }
    }
    return found;
  };
  return [timed(() => Guide.option_search.ranked_options(asked, limits)), timed(() => own.layout_options(inputs, values))];
}"""


def measured(page: Page, site: Path, vine: dict[str, object]) -> list[list[float]]:
    """The milliseconds of each run: of the search, of the whole answer."""
    page.goto("about:blank")
    page.goto(f"{(site / 'c' / 'layout_options.html').resolve().as_uri()}#v=1&{urlencode(PLAIN | vine)}")
    page.wait_for_selector(".option")
    page.evaluate(KEEP)
    page.click("#form button[type=submit]")
    page.wait_for_function("() => Boolean(window.asked)")
    return page.evaluate(TIME, [RUNS, WARM_UP])


def main(site: Path) -> None:
    """Prints two lines a vine."""
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=resolver.find() or None, args=FLAGS)
        page = browser.new_page()
        page.set_default_timeout(LONGEST_MS)
        protocol = page.context.new_cdp_session(page)
        print(f"Chromium {browser.version}, {RUNS} runs each, ms: least, that times {SLOWED}; slowed {SLOWED} times: middle, 95th of a hundred")
        for name, vine in VINES.items():
            times = {}
            for rate in (1, SLOWED):
                protocol.send("Emulation.setCPUThrottlingRate", {"rate": rate})
                times[rate] = measured(page, site, vine)
            for what, plain, slow in zip(("search", "whole answer"), times[1], times[SLOWED], strict=True):
                print(f"{name}, {what}: {min(plain):.1f}, {SLOWED * min(plain):.0f}; {median(slow):.1f}, {quantiles(slow, n=20)[-1]:.1f}")
        browser.close()


if __name__ == "__main__":
    main(Path(sys.argv[1]))
