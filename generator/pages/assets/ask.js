// The questions of a form, made from the facts: one field a fact, with its words, unit, range, default and "I do not know".
Guide.page.ask = (function () {
  "use strict";
  const el = Guide.page.el;
  const data = Guide.page.data;

  function shown(spec, number) { return Guide.wording.fact_text(data.catalogue.units, spec, number, "si"); }
  function unit(spec) {
    const found = data.catalogue.units.filter((one) => one.id === spec.unit)[0];
    return found ? found.after.trim() : "";
  }

  function range(spec) {
    if (spec.kind !== "number" && spec.kind !== "whole") { return ""; }
    const ends = [spec.low, spec.high].map((end) => String(end).replace("-", "\u2212"));
    return (spec.kind === "whole" ? " A whole number from " : " From ") + ends[0] + " to " + ends[1] + (unit(spec) ? "\u00a0" + unit(spec) : "") + ".";
  }

  // What stands under a question: how to find it out, what is allowed, what is assumed when it stays empty.
  function hint(spec, question) {
    const assumed = spec.default.ok
      ? el("span", { "class": "assumed" }, ["Assumed if left empty: " + shown(spec, spec.default.number) + " (" + question.standing + ")."])
      : null;
    return el("p", { "class": "hint", id: spec.id + "-hint" }, [
      question.observe + range(spec) + " ", assumed, question.optional && !assumed ? " This one may be left out. " : " ",
      el("a", { href: data.root + "f/" + (question.series || spec.id) + ".html" }, [question.observe ? "More on this" : "How to find this out"])
    ]);
  }

  function tick(type, name, value, label, note) {
    const words = note ? [label + " ", el("span", { "class": "quiet small" }, [note])] : [label];
    return el("label", { "class": "tick" }, [el("input", { type: type, name: name, value: value }), el("span", {}, words)]);
  }

  function after(spec) {
    return [el("p", { "class": "state", id: spec.id + "-state" }), el("p", { "class": "error", id: spec.id + "-error" })];
  }

  function described(spec) { return spec.id + "-hint " + spec.id + "-error"; }

  // A question with few choices: one button for each.
  function choices(spec, question) {
    const order = spec.kind === "yes_no" ? [1, 0] : spec.choices.map((choice, place) => place);
    const buttons = order.map((place) => {
      const label = spec.labels[place].charAt(0).toUpperCase() + spec.labels[place].slice(1);
      return tick("radio", spec.id, spec.choices[place], label, (question.notes || [])[place]);
    });
    return el("fieldset", {
      "class": "ask", role: "radiogroup", "data-fact": spec.id, id: spec.id, "aria-labelledby": spec.id + "-ask", "aria-describedby": described(spec)
    }, [
      el("legend", { id: spec.id + "-ask" }, [question.ask]), hint(spec, question),
      el("div", { "class": "ticks" }, buttons.concat([tick("radio", spec.id, "unknown", "I do not know")]))
    ].concat(after(spec)));
  }

  // A question with many choices: a list.
  function pick(spec, question) {
    const options = [el("option", { value: "" }, ["Not answered yet"])].concat(spec.choices.map((choice, place) => {
      return el("option", { value: choice }, [spec.labels[place]]);
    }), [el("option", { value: "unknown" }, ["I do not know"])]);
    return box(spec, question, [el("select", { id: spec.id, "aria-describedby": described(spec) }, options)]);
  }

  // A question that is answered by writing.
  function write(spec, question) {
    const more = { number: { inputmode: "decimal" }, whole: { inputmode: "numeric" }, text: { "class": "long", maxlength: "60" }, date: {} };
    const field = el("input", Object.assign({
      id: spec.id, type: spec.kind === "date" ? "date" : "text", autocomplete: "off", "aria-describedby": described(spec)
    }, more[spec.kind]));
    const given = [field, el("span", { "class": "unit" }, [unit(spec)])];
    return box(spec, question, spec.kind === "text" ? [field] : given.concat([tick("checkbox", spec.id + "-unknown", "unknown", "I do not know")]));
  }

  function box(spec, question, given) {
    return el("div", { "class": "ask", "data-fact": spec.id }, [
      el("label", { "for": spec.id }, [question.ask]), hint(spec, question), el("div", { "class": "given" }, given)
    ].concat(after(spec)));
  }

  function one(question) {
    const spec = Guide.specs.spec_of(data.catalogue.facts, question.id);
    const few = spec.kind === "yes_no" || (spec.kind === "choice" && spec.choices.length <= 8);
    if (few) { return choices(spec, question); }
    return spec.kind === "choice" ? pick(spec, question) : write(spec, question);
  }

  // The questions of a list as fields; those of a series together.
  function fields(questions) {
    return questions.filter((question) => question.node < 2).map((question) => {
      return question.series ? Guide.page.series(questions.filter((other) => other.series === question.series)) : one(question);
    });
  }

  // All questions, group by group; what may be left out stands folded at the end of its group.
  function all() {
    const made = [];
    data.groups.forEach((group) => {
      const needed = group.questions.filter((question) => !question.optional && question.series).map((question) => question.series);
      const isMore = (question) => question.fold && needed.indexOf(question.series) < 0;
      const folds = group.questions.filter(isMore).map((question) => question.fold).filter((fold, place, all) => all.indexOf(fold) === place);
      if (group.title) { made.push(el("h2", {}, [group.title])); }
      made.push.apply(made, fields(group.questions.filter((question) => !isMore(question))));
      folds.forEach((fold) => {
        const more = group.questions.filter((question) => isMore(question) && question.fold === fold);
        made.push(el("details", { "class": "more" }, [Guide.page.handle(fold)].concat(fields(more))));
      });
    });
    return made;
  }

  return { all: all, hint: hint, unit: unit, tick: tick, after: after };
})();
