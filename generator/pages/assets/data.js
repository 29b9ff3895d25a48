// What a page is given, made whole: packing.py says what was left out of it.
Guide.page = { data: {} };

Guide.add = (function () {
  "use strict";
  const T = Guide.tables;

  // A list of like records comes as {$: names, _: for each name the list of its values, or the one value that all have}.
  function unpacked(thing) {
    if (thing === null || typeof thing !== "object") { return thing; }
    if (Array.isArray(thing)) { return thing.map(unpacked); }
    const made = {};
    if (!thing.$) { Object.keys(thing).forEach((name) => { made[name] = unpacked(thing[name]); }); return made; }
    const columns = thing._.map(unpacked);
    return columns[0].map((first, row) => {
      const one = {};
      thing.$.forEach((name, place) => { one[name] = Array.isArray(columns[place]) ? columns[place][row] : columns[place]; });
      return one;
    });
  }

  function span(one) { return typeof one === "number" ? T.Span(one, true, one, true) : T.Span(one[0], one[1], one[2], one[3]); }

  // Numbers that count up from 0 come as how many they are.
  function counted(given) { return typeof given === "number" ? Array.from(Array(given).keys()) : given; }

  // A text, a number's place from 0, or a word's from -1 downwards.
  function part(one) {
    return typeof one === "string" ? { text: one, number: -1, word: -1 } : { text: "", number: Math.max(one, -1), word: one < 0 ? -1 - one : -1 };
  }

  // Adds a sentence without arguments, and a word; both return the id, "" for an empty word.
  function says(catalogue, id, text) {
    if (text) { catalogue.forms.push({ id: id, parts: [part(text)], one: [], count: -1, numbers: [], words: 0 }); }
    return id;
  }

  function named(catalogue, id, text) {
    if (text) { catalogue.words.push({ id: id, text: text }); }
    return text ? id : "";
  }

  function table(bare, catalogue) {
    const words = (kind, one, text) => named(catalogue, kind + "." + bare.id + "." + one.id, text);
    return {
      id: bare.id, word: named(catalogue, "decision." + bare.id, bare.title), policy: bare.policy,
      columns: bare.columns.map((one) => T.Column(one.fact, one.kind === 1, one.kind === 2, counted(one.points))),
      rows: bare.rows.map((row) => Object.assign({ sources: [], cautions: [] }, row, {
        because: says(catalogue, bare.id + "." + row.id, row.because), cells: row.cells.map((cell) => T.Cell(cell[0], cell[1].map(span)))
      })),
      outcomes: bare.outcomes.map((one) => ({
        id: one.id, says: says(catalogue, bare.id + ".says." + one.id, one.says), word: words("outcome", one, one.label),
        sums: one.sums.map(span), layout: one.layout,
        action: words("action", one, one.action), target: words("target", one, one.target), years: words("years", one, one.years)
      }))
    };
  }

  // The id of a choice as a name: pinot_noir is Pinot Noir.
  function spelt(choice) { return choice.split("_").map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join(" "); }

  return function (given) {
    const data = unpacked(given);
    const catalogue = data.catalogue;
    catalogue.forms.forEach((form) => { form.parts = form.parts.map(part); form.one = form.one.map(part); });
    catalogue.facts.forEach((fact) => {
      fact.word = named(catalogue, "fact." + fact.id, fact.label);
      fact.labels = fact.labels.map((label, place) => label || spelt(fact.choices[place]));
      fact.default = Guide.facts.Maybe(fact.default !== null, fact.default || 0);
    });
    if (data.candidates) { data.candidates.forEach((one) => { one.numbers = counted(one.numbers); }); }
    if (data.tables) { data.tables = data.tables.map((one) => table(one, catalogue)); }
    const before = Guide.page.data.catalogue;
    Object.assign(Guide.page.data, data);
    // What comes with the sums is added to what the page had from the start.
    if (data.later) {
      ["forms", "words"].forEach((kind) => { before[kind].push.apply(before[kind], catalogue[kind]); });
      Guide.page.data.catalogue = before;
    }
  };
})();
