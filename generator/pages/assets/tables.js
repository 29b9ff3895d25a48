// The engine's tables made whole again: what follows from ids, and spans that are one point (see bare() in scripts.py).
Guide.page.tables = function (bare) {
  "use strict";
  const T = Guide.tables;
  const words = Guide.page.data.catalogue.words.map((one) => one.id);

  function span(one) { return typeof one === "number" ? T.Span(one, true, one, true) : T.Span(one[0], one[1], one[2], one[3]); }

  // The word for what an outcome means for the work; "" where the page does not have it.
  function work(kind, table, outcome) {
    const word = kind + "." + table.id + "." + outcome.id;
    return words.indexOf(word) < 0 ? "" : word;
  }

  return bare.map((table) => Object.assign({}, table, {
    word: "decision." + table.id,
    rows: table.rows.map((row) => Object.assign({}, row, {
      because: table.id + "." + row.id,
      cells: row.cells.map((cell) => T.Cell(cell[0], cell[1].map(span)))
    })),
    outcomes: table.outcomes.map((one) => Object.assign({}, one, {
      says: table.id + ".says." + one.id, word: "outcome." + table.id + "." + one.id,
      action: work("action", table, one), target: work("target", table, one), years: work("years", table, one)
    }))
  }));
};
