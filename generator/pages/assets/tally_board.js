// The board of the tally: its buttons, fields and tables, and how they are bound to what tally.js does.
(function () {
  "use strict";
  const page = Guide.page;
  const el = page.el;
  const tally = page.tally;
  const parts = tally.parts;
  const state = tally.state;

  function part(name, made) { parts[name] = made; return made; }

  // A big button: what is in the bud, and the key that says so too.
  function key(name, big, small) {
    return el("button", { type: "button", "class": "key", "data-key": name }, [el("b", {}, [big]), el("span", {}, [small]), el("kbd", { "aria-hidden": "true" }, [name])]);
  }

  function keys() {
    const first = part("first", el("div", { "class": "keys" }, [
      key("0", "0", "no bunch"), key("1", "1", "bunch"), key("2", "2", "bunches"), key("3", "3", "bunches or more"),
      key("D", "Primary dead", "a secondary lives"), key("X", "All dead", "nothing green"), key("R", "Cannot be read", "cut wrong, dried, lost"), key("U", "Undo", "take the last press back")
    ]));
    const second = part("second", el("div", { "class": "keys" }, [
      key("0", "0", "none in the secondary"), key("1", "1", "in the secondary"), key("2", "2", "or more in the secondary"), key("U", "Back", "the primary lives")
    ]));
    [first, second].forEach((one) => { one.addEventListener("click", pressed); });
    return [first, second];
  }

  function pressed(event) {
    const one = event.target.closest("[data-key]");
    if (!one) { return; }
    act(one.getAttribute("data-key"));
    // A button that has gone leaves the keyboard on the board.
    if (one.parentElement.hidden) { parts.pad.focus(); }
  }

  function act(name) { if (name === "U") { tally.undo(); } else { tally.press(name); } }

  // Single keys count only while the board has the focus, and never in a field.
  function typed(event) {
    const name = event.key.toUpperCase();
    const allowed = state.secondary ? "012U" : "0123DXRU";
    if (event.ctrlKey || event.altKey || event.metaKey || /^(INPUT|SELECT|TEXTAREA)$/.test(event.target.tagName)) { return; }
    if (name.length !== 1 || allowed.indexOf(name) < 0) { return; }
    event.preventDefault();
    act(name);
  }

  function field(name, label, value) {
    const id = "tally-" + name;
    return el("span", { "class": "small-field" }, [
      el("label", { "for": id }, [label]), part(name, el("input", { id: id, type: "text", inputmode: "numeric", autocomplete: "off", value: value }))
    ]);
  }

  function jumps() {
    return el("details", { "class": "jump" }, [
      el("summary", {}, ["Go to another bud"]),
      el("div", { "class": "given" }, [
        field("cane", "Cane", ""), field("node", "Node", ""), tally.button("Go", tally.jump, { "class": "second" }), tally.button("Next empty place", tally.nextEmpty, { "class": "second" })
      ]),
      part("jumpError", el("p", { "class": "error" }, []))
    ]);
  }

  function board() {
    return part("pad", el("div", { "class": "pad", id: "pad", tabindex: "-1", role: "group", "aria-labelledby": "tally-place", "aria-describedby": "tally-keys" }, [
      el("div", { "class": "board" }, [
        part("place", el("p", { "class": "place", id: "tally-place" }, [])),
        part("ask", el("p", { "class": "says" }, [])),
        part("holds", el("p", { "class": "quiet holds" }, [])),
        part("strip", el("ol", { "class": "strip", "aria-label": "The nodes of this cane" }, [])),
        part("told", el("p", { "class": "heard", id: "tally-told", role: "status", "aria-live": "polite" }, [])),
        part("total", el("p", { "class": "says", id: "tally-total" }, [])),
        jumps()
      ]),
      el("div", { "class": "side" }, keys())
    ]));
  }

  function winters() {
    const now = Number(page.store.winter(new Date()));
    const years = [];
    for (let back = 0; back < tally.WINTERS; back++) { years.push(String(now - back)); }
    const options = years.concat(page.tallies.winters().filter((year) => years.indexOf(year) < 0)).map((year) => {
      return el("option", { value: year }, ["begun in " + year + (year === String(now) ? " (this one)" : "")]);
    });
    return el("span", { "class": "small-field" }, [el("label", { "for": "tally-winter" }, ["Winter"]), part("winter", el("select", { id: "tally-winter" }, options))]);
  }

  function settings() {
    const hands = [page.ask.tick("radio", "tally-hand", "left", "Left"), page.ask.tick("radio", "tally-hand", "right", "Right")];
    return el("div", { "class": "settings" }, [
      winters(),
      field("nodes", "Nodes on each cane", ""),
      part("hand", el("fieldset", { "class": "hand" }, [el("legend", {}, ["The hand that presses"]), el("div", { "class": "ticks" }, hands)])),
      part("nodesError", el("p", { "class": "error" }, []))
    ]);
  }

  function table() {
    const heads = [["Node", ""], ["0", ""], ["1", ""], ["2", ""], ["3+", ""], ["P dead", "primary dead, secondary alive"], ["Dead", "nothing alive"], ["Not read", "cannot be read"], ["Mean", "bunch beginnings in a living primary"]];
    return part("table", el("div", { "class": "wide", role: "region", tabindex: "0", "aria-label": "Running counts by node" }, [
      el("table", { "class": "counts" }, [
        el("caption", {}, ["Buds by node, as they are counted now. Mean: bunch beginnings in a living primary."]),
        el("thead", {}, [el("tr", {}, heads.map((one) => el("th", { scope: "col" }, one[1] ? [el("abbr", { title: one[1] }, [one[0]])] : [one[0]])))]),
        part("counts", el("tbody", {}, [])), part("totals", el("tfoot", {}, []))
      ])
    ]));
  }

  // What reads a list comes with the sums, when it is first wanted.
  function files() {
    const made = el("details", { id: "tally-files" }, [el("summary", {}, ["Take over a list (CSV)"])]);
    made.addEventListener("toggle", () => {
      page.reckon(parts.told, () => { page.tallyFiles(made); });
    }, { once: true });
    return made;
  }

  function ends() {
    return el("div", { "class": "buttons" }, [
      part("save", tally.button("Save as CSV", tally.save, { "class": "second", id: "tally-save" })),
      tally.button("Empty this tally", tally.clear, { "class": "second", id: "tally-clear" })
    ]);
  }

  function made() {
    return el("section", { id: "tally", "class": "tally", "aria-label": "The tally" }, [
      el("h2", {}, ["The tally"]), settings(), board(),
      el("p", { "class": "hint", id: "tally-keys" }, ["Keys while the board has the focus: 0 to 3 bunches, D primary dead, X all dead, R cannot be read, U undo."]),
      part("kept", el("p", { "class": "small quiet", id: "tally-kept", role: "status" }, [])), table(), ends(), files()
    ]);
  }

  function bind() {
    parts.pad.addEventListener("keydown", typed);
    parts.winter.addEventListener("change", () => { tally.load(parts.winter.value); tally.show(); tally.tell("The tally of the winter begun in " + state.winter + "."); if (page.again) { page.again(); } });
    parts.nodes.addEventListener("change", () => {
      const found = tally.whole(page.numbers.read(parts.nodes.value).number, 1, tally.most.node, 0);
      parts.nodesError.textContent = found ? "" : "Nodes on each cane is a whole number from 1 to " + tally.most.node + ".";
      if (found) { state.nodes = found; tally.changed(found + " nodes on each cane."); }
    });
    parts.hand.addEventListener("change", (event) => { state.hand = event.target.value; tally.keep(); tally.show(); });
    [parts.cane, parts.node].forEach((one) => {
      one.addEventListener("keydown", (event) => { if (event.key === "Enter") { event.preventDefault(); tally.jump(); } });
    });
    window.addEventListener("beforeunload", (event) => { if (state.unkept) { event.preventDefault(); event.returnValue = ""; } });
  }

  // Another block has another tally; one that was counted before the block had a name goes with the name.
  function renamed() {
    const block = page.tallies.block();
    if (block === state.block) { return; }
    const before = state.block;
    const own = { rows: state.rows, cane: state.cane, node: state.node, steps: state.steps };
    tally.load(state.winter);
    if (before === "block" && !state.rows.length) { Object.assign(state, own); tally.keep(); }
    tally.show();
    tally.tell("The tally of this block: " + parts.total.textContent);
    if (page.again) { page.again(); }
  }

  const questions = page.ask.all;
  page.ask.all = function () {
    const all = questions();
    const rest = el("details", { "class": "more", id: "tally-more" }, [page.handle("What the reckoning takes besides: level, burst, secondaries, the crop you want")].concat(all.slice(1)));
    const section = made();
    bind();
    return [all[0], section, rest];
  };

  page.rows = function () { return state.rows; };

  // Once the form stands and is filled.
  page.opened = function () {
    tally.load(page.store.winter(new Date()));
    if (state.rows.length === 0 && page.tallies.block() === "") { tally.keep(); }
    tally.show();
    document.getElementById("form").addEventListener("change", renamed);
    document.getElementById("clear").addEventListener("click", () => { tally.load(state.winter); tally.show(); tally.tell("The tallies are cleared too."); });
  };
})();
