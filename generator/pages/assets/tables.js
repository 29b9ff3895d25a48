// The tables of decisions as the engine takes them, from what is sent of them (packing.py); their words and sentences join the catalogue.
Guide.wholeTables = function (data) {
  "use strict";
  const T = Guide.tables;
  const catalogue = data.catalogue;

  function span(one) { return typeof one === "number" ? T.Span(one, true, one, true) : T.Span(one[0], one[1], one[2], one[3]); }

  // Numbers that count up from 0 come as how many they are.
  function counted(given) { return typeof given === "number" ? Array.from(Array(given).keys()) : given; }

  // Adds a sentence without arguments, and a word; both return the id, "" for an empty word.
  function says(id, text) {
    if (text) { catalogue.forms.push({ id: id, parts: [{ text: text, number: -1, word: -1 }], one: [], count: -1, numbers: [], words: 0 }); }
    return id;
  }

  function named(id, text) {
    if (text) { catalogue.words.push({ id: id, text: text }); }
    return text ? id : "";
  }

  function table(bare) {
    const words = (kind, one, text) => named(kind + "." + bare.id + "." + one.id, text);
    return {
      id: bare.id, word: named("decision." + bare.id, bare.title), policy: bare.policy,
      columns: bare.columns.map((one) => T.Column(one.fact, one.kind === 1, one.kind === 2, counted(one.points))),
      rows: bare.rows.map((row) => Object.assign({ sources: [], cautions: [] }, row, {
        because: says(bare.id + "." + row.id, row.because), cells: row.cells.map((cell) => T.Cell(cell[0], cell[1].map(span)))
      })),
      outcomes: bare.outcomes.map((one) => ({
        id: one.id, says: says(bare.id + ".says." + one.id, one.says), word: words("outcome", one, one.label),
        sums: one.sums.map(span), layout: one.layout,
        action: words("action", one, one.action), target: words("target", one, one.target), years: words("years", one, one.years)
      }))
    };
  }

  if (data.candidates) { data.candidates.forEach((one) => { one.numbers = counted(one.numbers); }); }
  data.tables = data.tables.map(table);
};
