// Reasons as elements: rows of tables with how sure they are and the way to them; those of a table that weighs by side.
Guide.page.reasons = (function () {
  "use strict";
  const page = Guide.page;
  const el = page.el;
  const data = page.data;
  const show = page.show;

  // A row as a reason: its sentence, how sure it is, and the way to it in its table, where its sources stand.
  function reason(one) {
    return [show.word(one.says), " ", show.standing(one.standing), " ", el("a", { "class": "small", href: data.rows[one.table] + "#" + one.row }, ["Row " + one.row.replace(/_/g, " ")])];
  }

  function number(weight) { return Guide.wording.number_text(data.catalogue.units, weight, "", Number.isInteger(weight) ? 0 : 1, "si"); }

  // One side: its reasons, each with its weight in front.
  function side(title, reasons) {
    const items = reasons.map((one) => (one.weight ? [el("b", { "class": "weight" }, [number(Math.abs(one.weight))]), " "] : []).concat(reason(one)));
    return el("div", {}, [el("h3", {}, [title]), items.length ? show.list("ul", items) : el("p", { "class": "quiet" }, ["Nothing that is known."])]);
  }

  // What a table that weighs has for either side and what that comes to; nothing for other tables.
  function weighed(table, reasons) {
    const named = data.sides[table];
    const found = Guide.sides.sides_of(reasons, table);
    return el("div", { "class": "sides" }, [
      side("Speaks for " + named[0] + ": " + number(found.above.sum), found.above.reasons),
      side("Speaks for " + named[1] + ": " + number(found.below.sum), found.below.reasons),
      found.neither.length ? side("Speaks for neither", found.neither) : null
    ]);
  }

  // The reasons of a table as a list, or weighed.
  function of(table, reasons) {
    const own = reasons.filter((one) => one.table === table);
    return own.length === 0 ? [] : [data.sides[table] ? weighed(table, own) : show.list("ol", own.map(reason))];
  }

  return { of: of, one: reason };
})();
