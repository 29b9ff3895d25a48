// The answer of a decision: facts in, the table's answer out; what would change it is reckoned once the answer is on the screen.
Guide.page.decision = function () {
  "use strict";
  const page = Guide.page;
  const data = page.data;
  const el = page.el;
  const show = page.show;
  const FEW = 6;

  const WINTERS = ["This winter", "Next winter", "The winter after"];

  function named(id) { return Guide.wording.word_text(data.catalogue.words, id); }

  function said(title, id) { return id ? [title, [named(id) + "."]] : null; }

  // What an outcome means for the work, where the table says it; what has to be done besides stands right after the main thing. Of work
  // that takes several winters each is told with the crop of the summer after it, and how sure that is.
  function work(answer) {
    const table = Guide.tables.table_of(data.tables, data.name);
    const found = table.outcomes.filter((one) => one.id === answer.outcome)[0];
    const after = data.after[answer.outcome] || { spring: "", winters: [] };
    const winters = after.winters.map((one, k) => [
      WINTERS[k] || "Winter " + (k + 1), [one[0] + ". ", one[1] ? "The summer after: " + one[1] + ". " : "", show.standing(one[2])]
    ]);
    const lines = [said("This winter", found.action)].concat(
      winters.slice(0, 1), answer.also.map((say) => said("Also this winter", say.words[0])),
      after.spring ? [["In spring", [after.spring + "."]]] : [], winters.slice(1), [said("The aim", found.target), said("How long it takes", found.years)]
    ).filter((line) => line);
    const items = [].concat.apply([], lines.map((line) => [el("dt", {}, [line[0]]), el("dd", {}, line[1])]));
    return items.length ? el("dl", { "class": "work" }, items) : null;
  }

  // What a table that fed this one gave: how sure that is, and the way to its own page with the same facts.
  function step(say, answer, fragment) {
    const table = say.words[0].replace("decision.", "");
    const rows = data.sides[table] ? [] : answer.reasons.filter((one) => one.table === table).map((one) => show.standing(one.standing));
    return [show.word(say), " "].concat(rows, [" ", el("a", { href: table + ".html" + fragment, "class": "small" }, ["Why"])]);
  }

  // What is weighed in the tables that fed this one.
  function evidence(answer) {
    return Object.keys(data.sides).filter((table) => table !== data.name)
      .map((table) => show.part(named("decision." + table), page.reasons.of(table, answer.reasons)));
  }

  // What is still possible; many answers only as their number, unfolded on wish.
  function possible(answer) {
    const names = show.list("ul", answer.possible.map((id) => named("outcome." + data.name + "." + id)));
    return answer.possible.length > FEW
      ? el("details", {}, [el("summary", {}, [answer.possible.length + " answers are still possible"]), names]) : show.part("Still possible", [names]);
  }

  function next(id, specs) {
    const button = el("button", { type: "button", "class": "second" }, ["Answer this next: " + Guide.specs.spec_of(specs, id).label]);
    button.addEventListener("click", () => { page.form.goTo(id); });
    return button;
  }

  function whole(answer, specs, fragment, later) {
    const steps = answer.steps.filter((say) => say.words[0] !== "decision." + data.name).map((say) => step(say, answer, fragment));
    return [
      answer.ask_next ? next(answer.ask_next, specs) : null,
      answer.settled ? work(answer) : possible(answer),
      show.onward(answer.outcome),
      show.part("Why", page.reasons.of(data.name, answer.reasons))
    ].concat(evidence(answer), [
      show.part("What led to it", steps.length ? [show.list("ol", steps)] : []),
      show.part("What it rests on", answer.rests_on.length ? [show.list("ul", answer.rests_on.map(show.rest))] : []),
      later,
      show.care(),
      show.keep(fragment),
      show.version()
    ]);
  }

  page.answer = function (all, fragment, headline, rest) {
    const specs = data.catalogue.facts.filter((spec) => spec.kind !== "text");
    const answer = Guide.answer.answer(data.tables, specs, all.facts, data.name);
    const later = answer.settled ? el("section", {}, []) : null;
    headline.textContent = show.word(answer.headline);
    page.fill(rest, whole(answer, specs, fragment, later));
    const fits = answer.reasons.filter((one) => one.table === data.name).map((one) => one.row);
    Array.from(document.querySelectorAll(".rules tbody tr")).forEach((row) => { row.classList.toggle("fits", fits.indexOf(row.id) >= 0); });
    if (later) {
      window.setTimeout(() => {
        const found = Guide.changes.would_change(data.tables, specs, all.facts, data.candidates, data.name);
        page.fill(later, [el("h2", {}, ["What would change it"]), show.changes(found)]);
      }, 0);
    }
  };
};
