// The engine's tables made whole again: what follows from ids, and spans that are one point (see bare() in scripts.py).
Guide.page.tables = function (bare) {
  "use strict";
  const T = Guide.tables;

  function span(one) { return typeof one === "number" ? T.Span(one, true, one, true) : T.Span(one[0], one[1], one[2], one[3]); }

  return bare.map((table) => Object.assign({}, table, {
    word: "decision." + table.id,
    rows: table.rows.map((row) => Object.assign({}, row, {
      because: table.id + "." + row.id,
      cells: row.cells.map((cell) => T.Cell(cell[0], cell[1].map(span)))
    })),
    outcomes: table.outcomes.map((one) => Object.assign({}, one, {
      says: table.id + ".says." + one.id, word: "outcome." + table.id + "." + one.id
    }))
  }));
};
