// A decision page: facts in, the table's answer out; what would change it is reckoned once the answer is on the screen.
Guide.page.decision = function () {
  "use strict";
  const page = Guide.page;
  const data = page.data;
  data.tables = page.tables(data.tables);

  page.open((all, fragment, headline, rest) => {
    const specs = data.catalogue.facts.filter((spec) => spec.kind !== "text");
    const answer = Guide.answer.answer(data.tables, specs, all.facts, data.name);
    const later = page.el("section", {}, []);
    headline.textContent = page.show.word(answer.headline);
    page.fill(rest, page.show.decision(answer, specs, fragment, answer.settled ? later : null));
    Array.from(document.querySelectorAll("tr.fits")).forEach((row) => { row.classList.remove("fits"); });
    answer.reasons.filter((one) => one.table === data.name).forEach((one) => {
      document.getElementById(one.row).classList.add("fits");
    });
    if (answer.settled) {
      window.setTimeout(() => {
        const found = Guide.changes.would_change(data.tables, specs, all.facts, data.candidates, data.name);
        page.fill(later, [page.el("h2", {}, ["What would change it"]), page.show.changes(found)]);
      }, 0);
    }
  });
};
