// A question that is asked by node, as one compact group. Only pages that ask one carry this.
Guide.page.series = (function () {
  "use strict";
  const el = Guide.page.el;
  const data = Guide.page.data;
  const ask = Guide.page.ask;

  // "I do not know any of them": the same for each box of the series, as if it had been said there.
  function notKnown(tick) {
    Array.from(tick.closest(".series").querySelectorAll(".node [type=checkbox]")).filter((one) => one.checked !== tick.checked).forEach((one) => {
      one.checked = tick.checked;
      one.dispatchEvent(new Event("change", { bubbles: true }));
    });
  }

  // One box of a series: its node's number above it, its own error below all; "not known" is said once for the series.
  function node(question) {
    const id = question.id;
    return el("div", { "class": "node", "data-fact": id }, [
      el("label", { "for": id }, [el("span", { "class": "only-heard" }, ["Node "]), String(question.node)]),
      el("input", { id: id, type: "text", inputmode: "decimal", autocomplete: "off", "aria-describedby": question.series + "-hint " + id + "-error" }),
      el("input", { type: "checkbox", id: id + "-unknown", hidden: "" })
    ]);
  }

  // A question that is asked by node: one fold with a box for each node, open where an answer is needed.
  function series(questions) {
    const first = questions[0];
    const spec = Guide.specs.spec_of(data.catalogue.facts, first.id);
    const said = ask.hint(spec, first);
    const all = ask.tick("checkbox", first.series + "-unknown", "unknown", "I do not know any of them");
    said.id = first.series + "-hint";
    all.firstChild.addEventListener("change", (event) => { notKnown(event.target); });
    const made = el("details", { "class": "ask series" }, [
      Guide.page.handle(first.ask, first.series + "-ask"), said,
      el("div", { role: "group", "aria-labelledby": first.series + "-ask" }, [
        el("div", { "class": "nodes" }, questions.map(node)),
        el("div", { "class": "given" }, [el("span", { "class": "unit" }, [ask.unit(spec)]), all])
      ])
    ].concat([].concat.apply([], questions.map((question) => ask.after(question).map((line) => {
      line.setAttribute("data-node", "Node " + question.node + ": ");
      return line;
    })))));
    made.open = !first.optional && !data.stages;
    return made;
  }

  return series;
})();
