// The answer of a calculator: the form's facts become the calculator's own record of inputs.
Guide.page.calculator = function () {
  "use strict";
  const page = Guide.page;
  const data = page.data;
  const show = page.show;
  const el = page.el;

  const questions = [].concat.apply([], data.groups.map((group) => group.questions));

  function input(field, facts) {
    if (field.id === "rows") { return page.rows(); }
    if (field.type === "list") {
      return questions.filter((one) => one.series === field.id).map((one) => Guide.facts.maybe(facts, one.id));
    }
    if (field.type === "Maybe") { return Guide.facts.maybe(facts, field.id); }
    const number = Guide.facts.number(facts, field.id);
    return field.type === "bool" ? number === 1 : number;
  }

  function shown(output, result) {
    const raw = result[output.id];
    if (typeof raw === "boolean") { return raw ? "yes" : "no"; }
    const number = typeof raw === "object" ? raw : { ok: true, number: raw };
    return number.ok ? Guide.wording.number_text(data.catalogue.units, number.number, output.unit, output.digits, "si") : "left open";
  }

  // Rules of several authors: a table for each topic; those made for other vines are folded away below it.
  function table(lines) {
    return el("table", { "class": "stack" }, [
      el("thead", {}, [el("tr", {}, ["Whose rule", "Here", "What to know"].map((head) => el("th", { scope: "col" }, [head])))]),
      el("tbody", {}, lines.map((line) => el("tr", {}, [
        el("th", { scope: "row" }, [show.word(line.who) + " ", line.standing ? show.standing(line.standing) : ""]), el("td", { "class": "here" }, [show.word(line.says)]),
        el("td", { "class": "means" }, [line.place === 1 ? "Whether it is made for this vine is open. " : "", line.note.id ? show.word(line.note) : ""])
      ])))
    ]);
  }

  function compared(lines) {
    const topics = lines.map((line) => show.word(line.topic)).filter((topic, place, all) => all.indexOf(topic) === place);
    return show.long("Author by author: " + lines.length + (lines.length === 1 ? " rule" : " rules"), [].concat.apply([], topics.map((topic) => {
      const own = lines.filter((line) => show.word(line.topic) === topic);
      const other = own.filter((line) => line.place === 2);
      const here = own.filter((line) => line.place !== 2);
      return [
        el("h3", {}, [topic]),
        here.length ? table(here) : el("p", {}, ["No rule that was read is made for this vine."]),
        other.length ? el("details", {}, [el("summary", {}, ["Made for other vines: " + other.length]), table(other)]) : null
      ];
    })));
  }

  // Left open: what has no number, and what needs a fact that nobody gave.
  function open(output, result, facts) {
    return (typeof result[output.id] === "object" && !result[output.id].ok) || Boolean(output.needs) && !Guide.facts.known(facts, output.needs);
  }

  // The bare figures; those that are open are named in one line. Where a page shows its result in its own way, all fold away.
  function figures(result, facts) {
    const beside = page.beside || result.steps;
    const lacking = beside ? [] : data.outputs.filter((output) => open(output, result, facts));
    const list = el("dl", { "class": "outputs" }, data.outputs.filter((output) => lacking.indexOf(output) < 0).map((output) => {
      return el("div", {}, [el("dt", {}, [output.label]), el("dd", { id: "output-" + output.id }, [shown(output, result)])]);
    }));
    if (beside) { return [el("details", {}, [el("summary", {}, ["All figures in one list"]), list])]; }
    return [
      lacking.length < data.outputs.length ? list : null,
      lacking.length ? el("p", { "class": "quiet small", id: "left-open" }, ["Left open: " + lacking.map((output) => output.label).join("; ") + "."]) : null
    ];
  }

  // What the tables that it asked have for it, with the way to their rows: one list in the order in which they were asked, and what weighs.
  function why(reasons) {
    const plain = reasons.filter((one) => !data.sides[one.table]);
    const weighed = [].concat.apply([], Object.keys(data.sides).map((table) => page.reasons.of(table, reasons)));
    return show.part("Why", (plain.length ? [show.list("ol", plain.map(page.reasons.one))] : []).concat(weighed));
  }

  // What comes after the cut, as the outcomes of the tables say it: the winters, and the line for the spring card.
  function comes(reasons) {
    const said = reasons.map((one) => (data.after[one.table] || {})[one.outcome]).filter((one, place, all) => one && all.indexOf(one) === place);
    const winters = [].concat.apply([], said.map((one) => one.winters));
    const spring = said.filter((one) => one.spring).map((one) => one.spring + ".");
    return [
      show.part("Winter by winter", winters.length ? [show.list("ol", winters.map((one) =>
        [one[0] + ". ", one[1] ? "The summer after: " + one[1] + ". " : "", show.standing(one[2])]))] : []),
      show.part("For the spring card", spring.length ? [show.list("ul", spring)] : [])
    ];
  }

  function answer(result, facts, rests, fragment, inputs, again) {
    return [
      result.steps ? show.part("What to do", result.steps.length ? [show.list("ol", result.steps.map(show.word))] : []) : null,
      page.beside ? page.beside(result, fragment, inputs, again) : null,
      result.drawing ? el("div", { "class": "option" }, [page.drawing.figure(result.drawing, show.word)]) : null,
    ].concat(result.reasons ? comes(result.reasons) : [], figures(result, facts), [
      page.ranked ? page.ranked(result) : null,
      result.compared ? compared(result.compared) : null,
      result.reasons ? why(result.reasons) : null,
      show.part("What to know about it", result.notes.length ? [show.list("ul", result.notes.map(show.word))] : []),
      page.uses ? page.uses(result, fragment) : null,
      show.folded("The working", [show.list("ol", result.working.map(show.word))]),
      show.folded("What it rests on", [show.list("ul", rests.map(show.rest))]),
      show.care(),
      show.keep(fragment),
      show.version()
    ]);
  }

  page.answer = function (all, fragment, headline, rest) {
    const inputs = {};
    if (data.tables) { data.values.tables = data.tables; }
    let result = null;
    try {
      data.inputs.forEach((field) => { inputs[field.id] = input(field, all.facts); });
      result = Guide[data.name][data.name](inputs, data.values);
    } catch (error) {
      headline.textContent = "This cannot be worked out: " + error.message + ".";
      page.fill(rest, []);
      return;
    }
    const specs = data.catalogue.facts.filter((spec) => spec.kind !== "text");
    // In the order of the form, as the reader filled it in.
    const used = questions.map((one) => specs.filter((spec) => spec.id === one.id)[0]).filter((spec) => spec && Guide.facts.known(all.facts, spec.id));
    headline.textContent = show.word(result.headline);
    // The same with other rows, for a page that compares.
    const again = (rows) => Guide[data.name][data.name](Object.assign({}, inputs, { rows: rows }), data.values);
    page.fill(rest, answer(result, all.facts, used.map((spec) => Guide.answer.rest(specs, all.facts, spec.id)), fragment, inputs, again));
  };
};
