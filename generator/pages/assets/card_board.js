// Canes or vines, as the form names them: one card with one at a time, for one hand; kept on the device at every change, and undone.
Guide.page.cards = (function () {
  "use strict";
  const page = Guide.page;
  const data = page.data;
  const el = page.el;
  const STEPS = 40;
  const noun = data.each.one;
  const many = data.each.many;
  const Noun = noun.charAt(0).toUpperCase() + noun.slice(1);
  const state = { winter: page.store.winter(new Date()), rows: [{}], at: 0, steps: [] };
  const parts = {};

  function button(text, then) {
    const made = el("button", { type: "button", "class": "second" }, [text]);
    made.addEventListener("click", then);
    return made;
  }

  function number(column) { return column.kind === "number" || column.kind === "whole"; }
  function id(column) { return noun + "-" + column.id; }
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

  // The records that the sums take. Raises Error for the first that lacks something.
  page.rows = function () {
    return state.rows.map((row, place) => {
      const record = {};
      data.columns.forEach((column) => {
        if (fault(row, column)) { throw new Error(noun + " " + (place + 1) + ", " + fault(row, column).slice(0, -1)); }
        record[column.id] = value(row, column);
      });
      return record;
    });
  };

  function keep(told) {
    const why = page.tallies.save(state.winter, { rows: state.rows, at: state.at, steps: state.steps });
    parts.kept.textContent = why ? "This browser keeps nothing: the " + many + " are gone when you close the page." : "The " + many + " are kept on this device, for this block and this winter.";
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
    keep("Undone. " + Noun + " " + (state.at + 1) + ".");
  }

  function add(row) {
    if (state.rows.length >= data.most) { parts.told.textContent = "No more than " + state.rows.length + " " + many + " are taken."; return; }
    change(() => { state.rows = state.rows.concat([row]); state.at = state.rows.length - 1; }, () => Noun + " " + state.rows.length + " added.");
  }

  function remove() {
    const gone = state.at + 1;
    change(() => {
      state.rows = state.rows.filter((row, place) => place !== state.at);
      if (!state.rows.length) { state.rows = [{}]; }
      state.at = Math.min(state.at, state.rows.length - 1);
    }, () => Noun + " " + gone + " removed. Undo brings it back.");
  }

  function put(column, given) {
    const row = Object.assign({}, state.rows[state.at]);
    row[column.id] = given;
    change(() => { state.rows = state.rows.map((one, place) => place === state.at ? row : one); }, () => "");
  }

  function step(column, by) {
    const now = page.numbers.read(text(state.rows[state.at], column));
    const asked = page.numbers.read((document.getElementById(column.begin) || { value: "" }).value);
    const start = asked.ok ? asked.number : column.start;
    put(column, String(Math.min(column.high, Math.max(column.low, now.ok ? now.number + by : start))));
  }

  function how(column) {
    if (column.observe) { return el("p", { "class": "hint", id: id(column) + "-hint" }, [column.observe]); }
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
    const box = el("input", { id: id(column), type: "text", inputmode: "decimal", autocomplete: "off", "aria-describedby": (column.observe ? id(column) + "-hint " : "") + error.id, placeholder: column.usual });
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
      const go = button(String(place + 1), () => { state.at = place; keep(Noun + " " + (place + 1) + "."); });
      go.setAttribute("aria-label", Noun + " " + (place + 1));
      return el("li", place === state.at ? { "aria-current": "true" } : {}, [go]);
    }));
    parts.title.textContent = Noun + " " + (state.at + 1) + " of " + state.rows.length;
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
      data.columns.length > data.shown ? el("details", { "class": "more" }, [page.handle("More about this " + noun)].concat(data.columns.slice(data.shown).map(field))) : null
    ]));
    made.addEventListener("change", (event) => {
      const column = data.columns.filter((one) => event.target.name === id(one) || event.target.id === id(one))[0];
      if (column) { event.stopPropagation(); put(column, event.target.value.trim()); }
    });
    return made;
  }

  const questions = page.ask.all;
  page.ask.all = function () {
    return [el("section", { id: many, "class": "cards", "aria-label": "The " + many }, [
      el("h2", {}, ["The " + many]),
      part("strip", el("ol", { "class": "strip" })),
      el("div", { "class": "keys" }, [
        button("Add a " + noun, () => { add({}); }), button("Copy this one", () => { add(Object.assign({}, state.rows[state.at])); }), button("Remove it", remove), button("Undo", undo)
      ]),
      part("told", el("p", { role: "status", id: noun + "-told" })), el("div", { "class": "pad" }, [card()]), part("kept", el("p", { "class": "small quiet", id: noun + "-kept" }))
    ])].concat(questions());
  };

  page.opened = function () {
    const kept = page.tallies.load(state.winter);
    if (kept) { Object.assign(state, { rows: kept.rows.length ? kept.rows : [{}], steps: Array.isArray(kept.steps) ? kept.steps : [] }); }
    state.at = Math.min(kept && Number.isInteger(kept.at) ? kept.at : 0, state.rows.length - 1);
    show();
    document.getElementById("clear").addEventListener("click", () => { Object.assign(state, { rows: [{}], at: 0, steps: [] }); keep("The " + many + " are cleared too."); });
  };

  return { state: state };
})();
