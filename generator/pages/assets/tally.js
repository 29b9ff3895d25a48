// The tally page: buds entered one press at a time, kept at every press, undone, pasted or opened as CSV and saved as CSV.
Guide.page.tally = (function () {
  "use strict";
  const page = Guide.page;
  const data = page.data;
  const el = page.el;
  const T = Guide.tally;
  const STEPS = 60;
  const WINTERS = 10;
  const most = {};
  data.rows.forEach((column) => { most[column.id] = column.high; });
  // The rows, the place that is asked for, nodes on a cane, the hand, and what undo needs: each step with what stood there before.
  const state = { winter: "", rows: [], cane: 1, node: 1, nodes: data.nodes, hand: "right", steps: [], secondary: false, block: "" };
  const parts = {};

  function button(text, then, more, small) {
    const made = el("button", Object.assign({ type: "button" }, more), [el("span", {}, [text])].concat(small ? [el("small", {}, [small])] : []));
    made.addEventListener("click", then);
    return made;
  }

  function where(cane, node) { return "cane " + cane + ", node " + node; }
  function upper(text) { return text.charAt(0).toUpperCase() + text.slice(1); }
  function tell(text) { parts.told.textContent = text; }
  function at() { return state.rows[T.place(state.rows, state.cane, state.node)]; }

  // ---- what is kept

  function keep() {
    const why = page.tallies.save(state.winter, {
      rows: T.packed(state.rows), cane: state.cane, node: state.node, nodes: state.nodes, hand: state.hand, steps: state.steps
    });
    const lines = {
      "": "Every press is kept on this device, for this block and this winter.",
      denied: "This browser does not let the page keep anything: save the tally as a file before you close the page.",
      full: "This device has no room left: save the tally as a file before you close the page."
    };
    parts.kept.textContent = lines[why];
    parts.kept.className = why ? "error" : "small quiet";
    state.unkept = why !== "" && state.rows.length > 0;
  }

  function whole(number, low, high, otherwise) { return Number.isInteger(number) && number >= low && number <= high ? number : otherwise; }

  function load(winter) {
    const kept = page.tallies.load(winter) || { rows: [] };
    state.winter = winter;
    state.block = page.tallies.block();
    state.rows = T.unpacked(kept.rows);
    state.cane = whole(kept.cane, 1, most.cane, 1);
    state.node = whole(kept.node, 0, most.node, 1);
    state.nodes = whole(kept.nodes, 1, most.node, state.nodes);
    state.hand = kept.hand === "left" || kept.hand === "right" ? kept.hand : state.hand;
    state.steps = Array.isArray(kept.steps) ? kept.steps : [];
    state.secondary = false;
  }

  // ---- changes: each is one step that undo takes back

  function step(rows) {
    const before = rows.map((row) => [row.cane, row.node, T.packed(state.rows.filter((one) => one.cane === row.cane && one.node === row.node))]);
    state.steps = state.steps.concat([{ cane: state.cane, node: state.node, before: before }]).slice(-STEPS);
  }

  function put(row) {
    state.rows = state.rows.filter((one) => one.cane !== row.cane || one.node !== row.node).concat(T.buds(row) ? [row] : []);
  }

  function onwards() {
    if (state.node < state.nodes) { state.node += 1; } else { state.node = 1; state.cane = Math.min(state.cane + 1, most.cane); }
  }

  function press(key) {
    if (key === "D" && !state.secondary) {
      state.secondary = true;
      show();
      tell("Primary dead. What does the secondary hold?");
      return;
    }
    const row = T.bud(state.cane, state.node, state.secondary ? "D" + key : key);
    state.secondary = false;
    step([row]);
    put(row);
    onwards();
    changed(upper(where(row.cane, row.node)) + ": " + T.says(row) + ". Next: " + where(state.cane, state.node) + ".");
  }

  function undo() {
    if (state.secondary) { state.secondary = false; show(); tell("Back. What is in this bud?"); return; }
    const last = state.steps[state.steps.length - 1];
    if (!last) { tell("There is nothing to undo."); return; }
    state.steps = state.steps.slice(0, -1);
    last.before.forEach((one) => {
      state.rows = state.rows.filter((row) => row.cane !== one[0] || row.node !== one[1]).concat(T.unpacked(one[2]));
    });
    state.cane = last.cane;
    state.node = last.node;
    changed("Undone. Again: " + where(state.cane, state.node) + ".");
  }

  function go(cane, node) {
    state.cane = cane;
    state.node = node;
    state.secondary = false;
    changed(upper(where(cane, node)) + (at() ? " holds: " + T.says(at()) + ". A press replaces it." : "."));
  }

  // To the first place without a bud, cane by cane.
  function toEmpty() {
    state.cane = 1;
    state.node = 1;
    while (state.cane < most.cane && at()) { onwards(); }
    state.secondary = false;
  }

  function nextEmpty() { toEmpty(); go(state.cane, state.node); }

  function jump() {
    const cane = page.numbers.read(parts.cane.value).number;
    const node = page.numbers.read(parts.node.value === "" ? "1" : parts.node.value).number;
    const right = whole(cane, 1, most.cane, 0) > 0 && whole(node, 0, most.node, -1) >= 0;
    parts.jumpError.textContent = right ? "" : "Cane is a whole number from 1 to " + most.cane + ", node from 0 to " + most.node + ".";
    if (right) { go(cane, node); parts.pad.focus(); }
  }

  function clear() {
    if (state.rows.length) { step(state.rows); }
    state.rows = [];
    state.cane = 1;
    state.node = 1;
    changed("The tally of this winter is empty. Undo brings it back.");
  }

  function save() {
    const rows = state.rows.slice().sort((a, b) => a.cane - b.cane || a.node - b.node);
    const file = el("a", {
      download: ["tally", state.block || "block", state.winter].join("-") + ".csv",
      href: URL.createObjectURL(new Blob([T.write(rows)], { type: "text/csv" }))
    }, []);
    document.body.appendChild(file);
    file.click();
    document.body.removeChild(file);
    tell(rows.length + (rows.length === 1 ? " line" : " lines") + " saved as " + file.download + ".");
  }

  // ---- what is shown

  // After every change: keep it, show it, say it, and reckon again where an answer stands.
  function changed(text) {
    keep();
    show();
    tell(text);
    if (page.again) { page.again(); }
  }

  function strip() {
    const nodes = [];
    for (let node = 1; node <= Math.max(state.nodes, state.node); node++) { nodes.push(node); }
    const shortly = (row) => Object.keys(T.BUDS).filter((key) => T.says(row) === T.BUDS[key].says)[0] || String(T.buds(row));
    return nodes.map((node) => {
      const row = state.rows[T.place(state.rows, state.cane, node)];
      return el("li", node === state.node ? { "aria-current": "true" } : {}, [el("small", {}, [String(node)]), el("b", {}, [row ? shortly(row) : "·"])]);
    });
  }

  function counts() {
    const cells = (row) => {
      const live = row.buds_0 + row.buds_1 + row.buds_2 + row.buds_3;
      const mean = live ? Guide.wording.number_text(data.catalogue.units, (row.buds_1 + 2 * row.buds_2 + 3 * row.buds_3) / live, "ratio", 2, "si") : "–";
      return [row.buds_0, row.buds_1, row.buds_2, row.buds_3, row.dead_primary, row.dead_node, row.unreadable].map(String).concat([mean]);
    };
    const line = (title, row) => el("tr", {}, [el("th", { scope: "row" }, [title])].concat(cells(row).map((text) => el("td", { "class": "number" }, [text]))));
    page.fill(parts.counts, T.byNode(state.rows).map((row) => line(String(row.node), row)));
    page.fill(parts.totals, [line("All", T.sum(state.rows, 0))]);
    const canes = state.rows.map((row) => row.cane).filter((cane, place, all) => cane > 0 && all.indexOf(cane) === place).length;
    const buds = T.buds(T.sum(state.rows, 0));
    parts.total.textContent = buds ? buds + (buds === 1 ? " bud from " : " buds from ") + canes + (canes === 1 ? " cane." : " canes.") : "No bud is counted yet.";
    parts.table.hidden = buds === 0;
    parts.save.disabled = buds === 0;
  }

  function show() {
    const there = at();
    parts.place.textContent = upper(where(state.cane, state.node));
    parts.ask.textContent = state.secondary ? "Primary dead. What does the secondary hold?" : "What is in this bud?";
    parts.holds.textContent = there ? "Counted already: " + T.says(there) + ". A press replaces it." : "";
    page.fill(parts.strip, strip());
    parts.first.hidden = state.secondary;
    parts.second.hidden = !state.secondary;
    parts.pad.className = "pad " + state.hand;
    parts.nodes.value = String(state.nodes);
    parts.winter.value = state.winter;
    Array.from(parts.hand.querySelectorAll("input")).forEach((one) => { one.checked = one.value === state.hand; });
    counts();
  }

  return {
    state: state, parts: parts, most: most, WINTERS: WINTERS, button: button, tell: tell, load: load, keep: keep, press: press, undo: undo, go: go, nextEmpty: nextEmpty,
    jump: jump, step: step, put: put, toEmpty: toEmpty, clear: clear, save: save, changed: changed, show: show, whole: whole
  };
})();
