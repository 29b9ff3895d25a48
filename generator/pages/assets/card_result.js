// What is said of each cane or vine: its verdict, what to do with it, the row that decides, and every other reason folded away.
Guide.page.beside = function (result) {
  "use strict";
  const page = Guide.page;
  const el = page.el;
  const show = page.show;
  const noun = page.data.each.one;
  const Noun = noun.charAt(0).toUpperCase() + noun.slice(1);

  function reasons(one) {
    if (!one.reasons) { return null; }
    const plain = one.reasons.filter((reason) => !page.data.sides[reason.table]);
    const weighed = [].concat.apply([], Object.keys(page.data.sides).map((table) => page.reasons.of(table, one.reasons)));
    return el("details", {}, [el("summary", {}, ["Every reason for " + noun + " " + one.number]), show.list("ul", plain.map(page.reasons.one))].concat(weighed));
  }

  return el("section", { id: "each" }, [
    el("h2", {}, [Noun + " by " + noun]),
    el("ol", { "class": "list" }, result[page.data.each.many].map((one) => el("li", {}, [
      el("p", {}, [el("b", {}, [Noun + " " + one.number + ". " + show.word(one.says) + " "]), one.use_says ? show.word(one.use_says) + " " : null, one.reasons ? show.word(one.reasons[0].says) : null]), reasons(one)
    ])))
  ]);
};
