// The plan page: all facts in, the whole plan out, part by part; the same data as the command line prints.
Guide.page.plan = function () {
  "use strict";
  const page = Guide.page;
  const data = page.data;
  data.tables = page.tables(data.tables);
  const el = page.el;
  const show = page.show;
  const specs = data.catalogue.facts.filter((spec) => spec.kind !== "text");

  // Puts its sentence beside every Say, as the command line does.
  function withTexts(thing) {
    if (Array.isArray(thing)) { return thing.map(withTexts); }
    if (thing === null || typeof thing !== "object") { return thing; }
    const made = {};
    Object.keys(thing).forEach((name) => { made[name] = withTexts(thing[name]); });
    if (Object.keys(thing).sort().join() === "id,numbers,words") { made.text = thing.id === "" ? "" : show.word(thing); }
    return made;
  }

  function ask(id) {
    const button = el("button", { type: "button", "class": "second" }, ["Answer this next: " + Guide.specs.spec_of(specs, id).label]);
    button.addEventListener("click", () => { page.form.goTo(id); });
    return button;
  }

  function needs(part) {
    const others = part.needs.filter((id) => id !== part.ask_next).map((id) => Guide.specs.spec_of(specs, id).label);
    return part.ask_next === "" ? [] : [
      el("p", { "class": "print-not" }, [ask(part.ask_next)]),
      others.length ? el("p", { "class": "quiet" }, ["Still to find out: " + others.join("; ") + "."]) : null
    ];
  }

  function rests(part, facts) {
    const lines = part.rests_on.map((id) => show.rest(Guide.answer.rest(specs, facts, id)));
    return lines.length ? [el("h3", {}, ["What it rests on"]), show.list("ul", lines)] : [];
  }

  function one(part, before, facts) {
    const stage = data.stages[part.stage];
    const heading = before && before.stage === part.stage ? null
      : el("h2", {}, [stage.number + ". ", el("a", { href: "s/" + part.stage + ".html" }, [stage.title])]);
    const working = part.lines.map(show.word);
    return el("div", { "class": "part" }, [
      heading,
      el("p", { "class": "says" }, [show.word(part.headline)]),
      part.notes.length ? show.list("ul", part.notes.map(show.word)) : null
    ].concat(needs(part), working.length + part.rests_on.length ? [el("details", {}, [
      el("summary", {}, ["Why, and how it was worked out"]), working.length ? show.list("ol", working) : null
    ].concat(rests(part, facts)))] : []));
  }

  function assumed(plan) {
    return plan.assumed.length ? show.part("Assumed, not asked", [show.list("ul", plan.assumed.map((id) => {
      return [el("span", { "class": "assumed" }, [Guide.specs.spec_of(specs, id).label])];
    }))]) : null;
  }

  function told(text) { document.getElementById("data-told").textContent = text; }

  // The data as a file, as a copy, on paper.
  function offer(text) {
    document.getElementById("data").textContent = text;
    document.getElementById("copy-data").onclick = function () {
      show.copy(text, null).then((done) => { told(done ? "Copied." : "This browser does not copy for you: open “Show the data” and copy it by hand."); });
    };
    document.getElementById("save-data").onclick = function () {
      const file = el("a", { download: "plan.json", href: URL.createObjectURL(new Blob([text], { type: "application/json" })) }, []);
      document.body.appendChild(file);
      file.click();
      document.body.removeChild(file);
    };
    document.getElementById("print").onclick = function () { window.print(); };
  }

  window.addEventListener("beforeprint", () => {
    Array.from(document.querySelectorAll(".part details")).forEach((one) => { one.open = true; });
  });

  page.open((all, fragment, headline, rest) => {
    const plan = Guide.block_plan.block_plan(all.facts, data.values, data.tables);
    headline.textContent = show.word(plan.headline);
    page.fill(rest, [
      all.texts.block_name ? el("p", { "class": "where" }, ["Block: " + all.texts.block_name]) : null,
      plan.ask_next === "" ? null : el("p", { "class": "print-not" }, [ask(plan.ask_next)]),
      page.drawing.figure(plan.drawing, show.word)
    ].concat(plan.parts.map((part, place) => one(part, plan.parts[place - 1], all.facts)), [
      assumed(plan),
      show.care(),
      show.part("Keep or send it", show.link(fragment)),
      show.version()
    ]));
    offer(JSON.stringify(withTexts({
      name: data.name, rules: data.rules, edition: data.edition, texts: all.texts, facts: all.facts, plan: plan
    }), null, 2));
  });
};
