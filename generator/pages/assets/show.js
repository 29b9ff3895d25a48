// Answers as elements: what every answer shows, in one order, for decisions, calculators and the plan.
Guide.page.show = (function () {
  "use strict";
  const el = Guide.page.el;
  const data = Guide.page.data;

  function word(say) { return Guide.wording.worded(data.catalogue, say, "si"); }
  function list(tag, items) { return el(tag, {}, items.map(function (item) { return el("li", {}, [].concat(item)); })); }
  function part(title, children) { return children.length ? el("section", {}, [el("h3", {}, [title])].concat(children)) : null; }
  function standing(id) { return el("span", { "class": "standing standing-" + id }, [data.standings[id]]); }

  // Links to the sources behind ids of evidence or sources, in one line.
  function sources(ids) {
    const found = [];
    ids.forEach(function (id) {
      (data.sources[id] || []).forEach(function (source) {
        found.push(found.length ? "; " : " ", el("a", { href: data.root + source.href }, [source.name]));
      });
    });
    return found;
  }

  function reason(one) {
    const own = one.table === data.name ? "" : data.root + "d/" + one.table + ".html";
    return [word(one.says), " ", standing(one.standing)].concat(sources(one.sources), [
      " ", el("a", { href: own + "#" + one.row, "class": "small" }, ["Row " + one.row])
    ]);
  }

  function rest(one) {
    const text = word(one.says);
    return one.status === "assumed" ? [el("span", { "class": "assumed" }, [text])] : [text];
  }

  function cautions(ids) {
    const seen = ids.filter(function (id, place) { return ids.indexOf(id) === place && data.cautions[id]; });
    return seen.map(function (id) {
      const one = data.cautions[id];
      return el("div", { "class": "caution" }, [
        el("p", {}, [el("strong", {}, [one.label + ". "]), one.text]), el("p", { "class": "quiet" }, [one.defer])
      ]);
    });
  }

  // The link that reproduces the answer, in a field that can be copied by hand where the browser does not let us.
  function link(fragment) {
    const address = window.location.href.split("#")[0] + fragment;
    const field = el("input", { type: "text", readonly: "", value: address, "aria-label": "Link with your answers in it", id: "link" });
    const told = el("span", { role: "status", "class": "small" }, []);
    const button = el("button", { type: "button", "class": "second", id: "copy" }, ["Copy the link"]);
    button.addEventListener("click", function () {
      copy(address, field).then(function (done) { told.textContent = done ? "Copied." : "The link is marked: copy it by hand."; });
    });
    return [
      el("p", {}, ["Whoever opens this link sees the same answers. It never reaches a server log: the answers stand after the # sign."]),
      el("div", { "class": "copy" }, [field, button, told])
    ];
  }

  // Copies a text; resolves to false when only marking it was possible.
  function copy(text, field) {
    function byHand() {
      if (field) { field.focus(); field.select(); }
      try { return Boolean(field) && document.execCommand("copy"); } catch (error) { return false; }
    }
    if (!navigator.clipboard) { return Promise.resolve(byHand()); }
    return navigator.clipboard.writeText(text).then(function () { return true; }, byHand);
  }

  function version() {
    return el("p", { "class": "quiet small" }, ["Rules version " + data.rules + ", edition: " + data.edition.name + "."]);
  }

  // What an outcome means for the work, where the table says it.
  function outcome(found) {
    if (!found) { return null; }
    const lines = [["This winter", found.action], ["The aim", found.target], ["How long it takes", found.years]].filter(function (line) { return line[1]; });
    return el("dl", {}, [].concat.apply([], lines.map(function (line) { return [el("dt", {}, [line[0]]), el("dd", {}, [line[1]])]; })));
  }

  // A decision's answer; `later` is where what would change it goes, once that has been reckoned.
  function decision(answer, specs, fragment, later) {
    const asked = answer.ask_next ? Guide.specs.spec_of(specs, answer.ask_next) : null;
    const next = asked ? el("button", { type: "button", "class": "second" }, ["Answer this next: " + asked.label]) : null;
    if (next) { next.addEventListener("click", function () { Guide.page.form.goTo(asked.id); }); }
    const outcomes = answer.possible.map(function (id) {
      return Guide.wording.word_text(data.catalogue.words, "outcome." + answer.decision + "." + id);
    });
    const ids = data.always.concat([].concat.apply([], answer.reasons.map(function (one) { return one.cautions; })));
    return [
      next,
      outcome(data.outcomes[answer.outcome]),
      answer.settled ? null : part("Still possible", [list("ul", outcomes)]),
      part("Why", answer.reasons.length ? [list("ol", answer.reasons.map(reason))] : []),
      part("What it rests on", answer.rests_on.length ? [list("ul", answer.rests_on.map(rest))] : []),
      later,
      part("How it came about", [list("ol", answer.steps.map(word))]),
      part("Take care", cautions(ids)),
      part("Keep or send it", link(fragment)),
      version()
    ];
  }

  function changes(found) {
    return found.length ? list("ul", found.map(function (one) { return word(one.says); })) : el("p", {}, ["No single fact, changed alone, would give another answer."]);
  }

  function shown(output, result) {
    const raw = result[output.id];
    if (typeof raw === "boolean") { return raw ? "yes" : "no"; }
    const number = typeof raw === "object" ? raw : { ok: true, number: raw };
    return number.ok ? Guide.wording.number_text(data.catalogue.units, number.number, output.unit, output.digits, "si") : "left open";
  }

  function calculator(result, rests, fragment) {
    const outputs = data.outputs.map(function (output) {
      return el("div", {}, [el("dt", {}, [output.label]), el("dd", { id: "output-" + output.id }, [shown(output, result)])]);
    });
    return [
      el("dl", { "class": "outputs" }, outputs),
      part("What to know about it", result.notes.length ? [list("ul", result.notes.map(word))] : []),
      part("The working", [list("ol", result.working.map(word))]),
      part("What it rests on", [list("ul", rests.map(rest))]),
      part("Sources", data.always_sources.length ? [el("p", {}, sources(data.always_sources))] : []),
      part("Take care", cautions(data.always)),
      part("Keep or send it", link(fragment)),
      version()
    ];
  }

  return {
    word: word, list: list, part: part, standing: standing, sources: sources, reason: reason, rest: rest, cautions: cautions,
    link: link, copy: copy, version: version, decision: decision, changes: changes, calculator: calculator
  };
})();
