// What is said of each cane: its verdict, what to do with it, the row that decides, and every other reason folded away.
Guide.page.beside = function (result) {
  "use strict";
  const page = Guide.page;
  const el = page.el;
  const show = page.show;

  function reasons(one) {
    const plain = one.reasons.filter((reason) => !page.data.sides[reason.table]);
    const weighed = [].concat.apply([], Object.keys(page.data.sides).map((table) => page.reasons.of(table, one.reasons)));
    return el("details", {}, [el("summary", {}, ["Every reason for cane " + one.number]), show.list("ul", plain.map(page.reasons.one))].concat(weighed));
  }

  return el("section", { id: "each" }, [
    el("h2", {}, ["Cane by cane"]),
    el("ol", { "class": "list" }, result.canes.map((one) => el("li", {}, [
      el("p", {}, [el("b", {}, ["Cane " + one.number + ". " + show.word(one.says) + " "]), show.word(one.use_says) + " " + show.word(one.reasons[0].says)]), reasons(one)
    ])))
  ]);
};
