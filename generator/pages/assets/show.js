// Answers as elements: what every answer shows, in one order, for decisions, calculators and the plan.
Guide.page.show = (function () {
  "use strict";
  const el = Guide.page.el;
  const data = Guide.page.data;

  function word(say) { return Guide.wording.worded(data.catalogue, say, "si"); }
  function list(tag, items) { return el(tag, {}, items.map((item) => el("li", {}, [].concat(item)))); }
  function part(title, children) { return children.length ? el("section", {}, [el("h2", {}, [title])].concat(children)) : null; }
  function standing(id) { return el("span", { "class": "standing standing-" + id }, [data.standings[id]]); }

  // Copies of what stands under an id elsewhere on the page; nothing when it does not.
  function copyOf(id, selector) {
    const place = document.getElementById(id);
    return place ? Array.from(place.querySelectorAll(selector)).map((node) => node.cloneNode(true)) : [];
  }

  function contents(nodes) {
    return [].concat.apply([], nodes.map((node) => Array.from(node.childNodes)));
  }

  // A row as a reason: its sentence, what it rests on, and the way to it in the table.
  function reason(one) {
    return contents(copyOf(one.row, ".because")).concat([
      el("span", { "class": "small quiet" }, [" Row ", el("a", { href: "#" + one.row }, [one.row]), ", "].concat(contents(copyOf(one.row, ".rests")), ["."]))
    ]);
  }

  function rest(one) {
    const text = word(one.says);
    return one.status === "assumed" ? [el("span", { "class": "assumed" }, [text])] : [text];
  }

  // The cautions of the page move to where the answer is; their own heading goes. With ids only those are shown.
  let cautions = null;
  function care(ids) {
    cautions = cautions || Array.from(document.querySelectorAll(".page > .caution"));
    const heading = document.getElementById("take-care");
    if (heading) { heading.hidden = true; }
    cautions.forEach((one) => { one.hidden = Boolean(ids) && ids.indexOf(one.id.replace("caution-", "")) < 0; });
    return part("Take care", cautions);
  }

  // The link that reproduces the answer, in a field that can be copied by hand where the browser does not let us.
  function link(fragment) {
    const address = window.location.href.split("#")[0] + fragment;
    const field = el("input", { type: "text", readonly: "", value: address, "aria-label": "Link with your answers in it", id: "link" });
    const told = el("span", { role: "status", "class": "small" }, []);
    const button = el("button", { type: "button", "class": "second", id: "copy" }, ["Copy the link"]);
    button.addEventListener("click", () => {
      copy(address, field).then((done) => { told.textContent = done ? "Copied." : "The link is marked: copy it by hand."; });
    });
    return [
      el("p", {}, ["Whoever opens this link sees the same answers. It never reaches a server log: the answers stand after the # sign."]),
      el("div", { "class": "copy" }, [field, button, told])
    ];
  }

  // The same as a part of an answer; on paper a link leads nowhere.
  function keep(fragment) { return el("section", { "class": "print-not" }, [el("h2", {}, ["Keep or send it"])].concat(link(fragment))); }

  // Copies a text; resolves to false when only marking it was possible.
  function copy(text, field) {
    function byHand() {
      if (field) { field.focus(); field.select(); }
      try { return Boolean(field) && document.execCommand("copy"); } catch (error) { return false; }
    }
    if (!navigator.clipboard) { return Promise.resolve(byHand()); }
    return navigator.clipboard.writeText(text).then(() => true, byHand);
  }

  function version() {
    return el("p", { "class": "quiet small" }, ["Rules version " + data.rules + ", edition: " + data.edition.name + "."]);
  }

  // What an outcome means for the work, where the table says it; what has to be done besides stands right after the main thing.
  function outcome(found, also) {
    const besides = also.map((say) => ["Also this winter", Guide.wording.word_text(data.catalogue.words, say.words[0])]);
    const own = found ? [["The aim", found.target], ["How long it takes", found.years]] : [];
    const lines = [["This winter", found && found.action]].concat(besides, own).filter((line) => line[1]);
    const items = [].concat.apply([], lines.map((line) => { return [el("dt", {}, [line[0]]), el("dd", {}, [line[1] + "."])]; }));
    return items.length ? el("dl", {}, items) : null;
  }

  // The reasons of a table that fed this one stand on its own page: its answer, its standing, and the way there with the same facts.
  function step(say, table, reasons, fragment) {
    const own = reasons.filter((one) => one.table === table);
    const rows = own.map((one) => standing(one.standing));
    return [word(say), " "].concat(rows, [" ", el("a", { href: table + ".html" + fragment, "class": "small" }, ["Why"])]);
  }

  // A decision's answer; `later` is where what would change it goes, once that has been reckoned.
  function decision(answer, specs, fragment, later) {
    const asked = answer.ask_next ? Guide.specs.spec_of(specs, answer.ask_next) : null;
    const next = asked ? el("button", { type: "button", "class": "second" }, ["Answer this next: " + asked.label]) : null;
    if (next) { next.addEventListener("click", () => { Guide.page.form.goTo(asked.id); }); }
    const outcomes = answer.possible.map((id) => {
      return Guide.wording.word_text(data.catalogue.words, "outcome." + answer.decision + "." + id);
    });
    const own = answer.reasons.filter((one) => one.table === data.name);
    const steps = answer.steps.filter((say) => say.words[0] !== "decision." + data.name).map((say) => {
      return step(say, say.words[0].replace("decision.", ""), answer.reasons, fragment);
    });
    return [
      next,
      answer.settled ? outcome(data.outcomes[answer.outcome], answer.also) : part("Still possible", [list("ul", outcomes)]),
      part("Why", own.length ? [list("ol", own.map(reason))] : []),
      part("What led to it", steps.length ? [list("ol", steps)] : []),
      part("What it rests on", answer.rests_on.length ? [list("ul", answer.rests_on.map(rest))] : []),
      later,
      care(),
      keep(fragment),
      version()
    ];
  }

  function changes(found) {
    return found.length ? list("ul", found.map((one) => word(one.says))) : el("p", {}, ["No single fact, changed alone, would give another answer."]);
  }

  return {
    word: word, list: list, part: part, standing: standing, rest: rest, care: care, keep: keep, link: link, copy: copy, version: version,
    decision: decision, changes: changes
  };
})();
