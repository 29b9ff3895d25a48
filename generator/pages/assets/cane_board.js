// The canes of one vine: one card with a cane at a time, for one hand; kept on the device at every change, and undone.
Guide.page.canes = (function () {
  "use strict";
  const page = Guide.page;
  const data = page.data;
  const el = page.el;
  const STEPS = 40;
  const state = { winter: page.store.winter(new Date()), rows: [{}], at: 0, steps: [] };
  const parts = {};

  function button(text, then) {
    const made = el("button", { type: "button", "class": "second" }, [text]);
    made.addEventListener("click", then);
    return made;
  }

  function number(column) { return column.kind === "number" || column.kind === "whole"; }
  function id(column) { return "cane-" + column.id; }
  function text(row, column) { return row[column.id] || column.usual; }

  // What is wrong with an answer; "" where nothing is.
  function fault(row, column) {
    const given = text(row, column);
    if (given === "") { return column.needed ? column.label + " is needed here." : ""; }
    const found = number(column) ? page.numbers.read(given) : null;
    if (!found || (found.ok && found.number >= column.low && found.number <= column.high && (column.kind === "number" || Number.isInteger(found.number)))) { return ""; }
    return column.label + " is a" + (column.kind === "whole" ? " whole" : "") + " number from " + column.low + " to " + column.high + column.after + ".";
  }

  function value(row, column) {
    const given = text(row, column);
    const read = number(column) && given !== "" ? page.numbers.read(given).number : column.choices.indexOf(given);
    if (column.type === "Maybe") { return Guide.facts.Maybe(given !== "", given === "" ? 0 : read); }
    return column.type === "bool" ? read === 1 : read;
  }

  // The records that the sums take. Raises Error for the first cane that lacks something.
  page.rows = function () {
    return state.rows.map((row, place) => {
      const record = {};
      data.columns.forEach((column) => {
        if (fault(row, column)) { throw new Error("cane " + (place + 1) + ", " + fault(row, column).slice(0, -1)); }
        record[column.id] = value(row, column);
      });
      return record;
    });
  };

  function keep(told) {
    const why = page.tallies.save(state.winter, { rows: state.rows, at: state.at, steps: state.steps });
    parts.kept.textContent = why ? "This browser keeps nothing: the canes are gone when you close the page." : "The canes are kept on this device, for this block and this winter.";
    show();
    if (told) { parts.told.textContent = told; }
    if (page.again) { page.again(); }
  }

  function change(then, told) {
    state.steps = state.steps.concat([JSON.stringify([state.rows, state.at])]).slice(-STEPS);
    then();
    keep(told());
  }

  function undo() {
    const last = state.steps.pop();
    if (!last) { parts.told.textContent = "There is nothing to undo."; return; }
    const before = JSON.parse(last);
    state.rows = before[0];
    state.at = before[1];
    keep("Undone. Cane " + (state.at + 1) + ".");
  }

  function add(row) {
    if (state.rows.length >= data.most) { parts.told.textContent = "No more than " + state.rows.length + " canes are compared."; return; }
    change(() => { state.rows = state.rows.concat([row]); state.at = state.rows.length - 1; }, () => "Cane " + state.rows.length + " added.");
  }

  function remove() {
    const gone = state.at + 1;
    change(() => {
      state.rows = state.rows.filter((row, place) => place !== state.at);
      if (!state.rows.length) { state.rows = [{}]; }
      state.at = Math.min(state.at, state.rows.length - 1);
    }, () => "Cane " + gone + " removed. Undo brings it back.");
  }

  function put(column, given) {
    const row = Object.assign({}, state.rows[state.at]);
    row[column.id] = given;
    change(() => { state.rows = state.rows.map((one, place) => place === state.at ? row : one); }, () => "");
  }

  function step(column, by) {
    const now = page.numbers.read(text(state.rows[state.at], column));
    put(column, String(Math.min(column.high, Math.max(column.low, (now.ok ? now.number : column.start) + (now.ok ? by : 0)))));
  }

  function how(column) {
    return el("a", { "class": "small", href: data.root + "f/" + column.id + ".html", "aria-label": "How to find out: " + column.label }, ["How to find out"]);
  }

  function field(column) {
    const error = el("p", { "class": "error", id: id(column) + "-error" });
    if (!number(column)) {
      return el("fieldset", { "class": "ask", role: "radiogroup", "aria-labelledby": id(column) + "-ask" }, [
        el("legend", { id: id(column) + "-ask" }, [column.label]),
        how(column), el("div", { "class": "ticks" }, column.choices.map((choice, place) => page.ask.tick("radio", id(column), choice, column.labels[place])))
      ]);
    }
    const box = el("input", { id: id(column), type: "text", inputmode: "decimal", autocomplete: "off", "aria-describedby": error.id });
    const less = button("\u2212", () => { step(column, -column.step); });
    const more = button("+", () => { step(column, column.step); });
    less.setAttribute("aria-label", column.label + ": less");
    more.setAttribute("aria-label", column.label + ": more");
    return el("div", { "class": "ask" }, [
      el("label", { "for": id(column) }, [column.label]), how(column),
      el("div", { "class": "given" }, [less, box, more, el("span", { "class": "unit" }, [column.after.trim()])]), error
    ]);
  }

  function show() {
    const row = state.rows[state.at];
    page.fill(parts.strip, state.rows.map((one, place) => {
      const go = button(String(place + 1), () => { state.at = place; keep("Cane " + (place + 1) + "."); });
      go.setAttribute("aria-label", "Cane " + (place + 1));
      return el("li", place === state.at ? { "aria-current": "true" } : {}, [go]);
    }));
    parts.title.textContent = "Cane " + (state.at + 1) + " of " + state.rows.length;
    data.columns.forEach((column) => {
      if (!number(column)) {
        Array.from(parts.card.querySelectorAll("[name=" + id(column) + "]")).forEach((one) => { one.checked = one.value === text(row, column); });
        return;
      }
      const box = document.getElementById(id(column));
      box.value = row[column.id] || "";
      const wrong = row[column.id] ? fault(row, column) : "";
      document.getElementById(id(column) + "-error").textContent = wrong;
      if (wrong) { box.setAttribute("aria-invalid", "true"); } else { box.removeAttribute("aria-invalid"); }
    });
  }

  function part(name, made) { parts[name] = made; return made; }

  function card() {
    const made = part("card", el("div", { "class": "board" }, [
      part("title", el("p", { "class": "place" })),
      ...data.columns.slice(0, data.shown).map(field),
      el("details", { "class": "more" }, [page.handle("More about this cane")].concat(data.columns.slice(data.shown).map(field)))
    ]));
    made.addEventListener("change", (event) => {
      const column = data.columns.filter((one) => event.target.name === id(one) || event.target.id === id(one))[0];
      if (column) { event.stopPropagation(); put(column, event.target.value.trim()); }
    });
    return made;
  }

  const questions = page.ask.all;
  page.ask.all = function () {
    return [el("section", { id: "canes", "aria-label": "The canes" }, [
      el("h2", {}, ["The canes"]),
      part("strip", el("ol", { "class": "strip" })),
      el("div", { "class": "keys" }, [
        button("Add a cane", () => { add({}); }), button("Copy this one", () => { add(Object.assign({}, state.rows[state.at])); }), button("Remove it", remove), button("Undo", undo)
      ]),
      part("told", el("p", { role: "status", id: "cane-told" })), el("div", { "class": "pad" }, [card()]), part("kept", el("p", { "class": "small quiet", id: "cane-kept" }))
    ])].concat(questions());
  };

  page.opened = function () {
    const kept = page.tallies.load(state.winter);
    if (kept) { Object.assign(state, { rows: kept.rows.length ? kept.rows : [{}], steps: Array.isArray(kept.steps) ? kept.steps : [] }); }
    state.at = Math.min(kept && Number.isInteger(kept.at) ? kept.at : 0, state.rows.length - 1);
    show();
    document.getElementById("clear").addEventListener("click", () => { Object.assign(state, { rows: [{}], at: 0, steps: [] }); keep("The canes are cleared too."); });
  };

  return { state: state };
})();
