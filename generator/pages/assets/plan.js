// The answer of the plan: all facts in, the whole plan out, part by part; the same data as the command line prints.
Guide.page.plan = function () {
  "use strict";
  const CARD = ["choose_system", "node_number", "lay_out"];
  const TELL = ["plan.three_kinds", "plan.tell_apart"];
  const CAPTION = ["drawing.before", "drawing.describe_cuts", "drawing.assumed", "drawing.after", "drawing.behind"];
  const page = Guide.page;
  const data = page.data;
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

  // The facts by id as authors write them, each with its status: not asked is not there, unknown has no value.
  function given(facts) {
    const made = {};
    facts.ids.forEach((id, place) => {
      const status = facts.statuses[place];
      if (status === Guide.facts.NOT_ASKED) { return; }
      made[id] = { status: Guide.answer.STATUS_NAMES[status] };
      if (status !== Guide.facts.UNKNOWN) { made[id].value = written(Guide.specs.spec_of(specs, id), facts.numbers[place]); }
    });
    return made;
  }

  function written(spec, number) {
    if (spec.kind === "choice" || spec.kind === "yes_no") { return spec.choices[number]; }
    return spec.kind === "date" ? Guide.wording.date_text(number) : number;
  }

  // Values, sources and cautions behind the parts, each once, as the command line picks them (behind.py).
  function picked(parts) {
    const all = data.behind;
    const flat = (lists) => [].concat.apply([], lists);
    const uses = flat(parts.map((part) => part.uses)).map((name) => all.uses[name]).filter(Boolean);
    const once = (kind, more) => flat([parts, uses].map((list) => flat(list.map((one) => one[kind])))).concat(more)
      .filter((id, place, ids) => ids.indexOf(id) === place && all[kind][id]).map((id) => all[kind][id]);
    return { values: all.values, sources: once("sources", flat(all.values.map((value) => value.sources))), cautions: once("cautions", []) };
  }

  // The sources of the plan, folded: standing first, then who printed it.
  function sources(found) {
    return found.length ? el("details", {}, [
      el("summary", {}, ["The sources behind it"]),
      show.list("ul", found.map((one) => [show.standing(one.standing), " " + one.by.join("; ") + " (" + one.id + ")"]))
    ]) : null;
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
    return lines.length ? [el("h4", {}, ["What it rests on"]), show.list("ul", lines)] : [];
  }

  function one(part, place, parts, facts, more) {
    const stage = data.stages[part.stage];
    const number = parts.slice(0, place + 1).filter((other, at) => at === 0 || parts[at - 1].stage !== other.stage).length;
    const heading = place > 0 && parts[place - 1].stage === part.stage ? null
      : el("h3", {}, [number + ". ", el("a", { href: "s/" + part.stage + ".html" }, [stage.title])]);
    const working = part.lines.map(show.word);
    return el("div", { "class": "part" }, [
      heading,
      el("p", { "class": "says" }, [show.word(part.headline)]),
      part.notes.length ? show.list("ul", part.notes.map(show.word)) : null,
      part.settled && part.possible.length ? show.onward(part.possible[0]) : null
    ].concat(needs(part), working.length + part.rests_on.length ? [el("details", {}, [
      el("summary", {}, ["Why, and how it was worked out"]), working.length ? show.list("ol", working) : null
    ].concat(rests(part, facts)))] : [], [more]));
  }

  function drawing(title, drawn, ids) {
    const figure = page.drawing.figure(drawn, show.word, ids);
    return figure && el("div", {}, [el("h3", {}, [title]), figure]);
  }

  // What would give another system; its table and those that feed it stand first.
  function changes(facts) {
    const upTo = data.tables.map((table) => table.id).indexOf(data.main) + 1;
    return Guide.changes.would_change(data.tables.slice(0, upTo), specs, facts, data.candidates, data.main);
  }

  // A change as data, as a decision gives it on the command line.
  function change(one) {
    return { fact: one.fact, value: written(Guide.specs.spec_of(specs, one.fact), one.number), outcome: one.outcome, text: show.word(one.says) };
  }

  // The assumed facts, the most influential first; each leads to its question. Those that move nothing are folded.
  function assumed(found) {
    const idle = found.filter((one) => one.flips === "" && one.moves_pct === 0);
    const most = found.filter((one) => idle.indexOf(one) < 0);
    const parts = [el("h3", {}, ["Assumed, not asked"])];
    if (most.length) { parts.push(el("p", { "class": "quiet" }, ["What matters most stands first."]), show.list("ol", most.map(weighed))); }
    if (idle.length) { parts.push(el("details", {}, [el("summary", {}, ["Assumed, and it moves nothing here (" + idle.length + ")"]), show.list("ul", idle.map(weighed))])); }
    return found.length ? parts : [];
  }

  function weighed(one) {
    const button = el("button", { type: "button", "class": "second small print-not" }, ["Answer it"]);
    button.addEventListener("click", () => { page.form.goTo(one.fact); });
    return [el("span", { "class": "assumed" }, [show.word(one.says)]), " ", button];
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

  // For the crew: what to do with the form, how to tell weak and strong vines, and where the nodes go; not why.
  function forCrew(parts) {
    const named = (part) => part.notes.filter((say) => part.stage !== "node_number" || TELL.indexOf(say.id) >= 0);
    return parts.filter((part) => CARD.indexOf(part.stage) >= 0 && (part.stage !== "node_number" || named(part).length)).map((part) => {
      const says = part.stage === "node_number" ? null : el("p", { "class": "says" }, [show.word(part.headline)]);
      return el("div", { "class": "part" }, [says, show.list("ul", named(part).map(show.word))]);
    });
  }

  page.answer = function (all, fragment, headline, rest) {
    const plan = Guide.block_plan.block_plan(all.facts, data.values, data.tables);
    const facts = Guide.plan_fruit.with_fruit(all.facts, data.values, plan.parts.slice(0, 1));
    const found = picked(plan.parts);
    const later = el("details", { hidden: "" }, []);
    const most = el("section", {}, []);
    const where = all.texts.block_name ? el("p", { "class": "where" }, ["Block: " + all.texts.block_name]) : null;
    const vine = (ids) => el("div", { "class": "beside" }, [drawing("Before", plan.before, ids), drawing("After", plan.drawing, ids)]);
    headline.textContent = show.word(plan.headline);
    page.fill(rest, [
      where,
      plan.ask_next === "" ? null : el("p", { "class": "print-not" }, [ask(plan.ask_next)]),
      vine(),
      plan.drawing.shapes.length ? page.fieldCard("Field card", () => [where, headline, vine(CAPTION)].filter(Boolean).concat(forCrew(plan.parts))) : null
    ].concat(plan.parts.map((part, place) => one(part, place, plan.parts, facts, part.uses.indexOf(data.main) < 0 ? null : later)), [
      most,
      sources(found.sources),
      show.care(found.cautions.map((one) => one.id)),
      show.keep(fragment),
      show.version()
    ]));
    document.getElementById("data").textContent = "";
    // What would change it takes many decisions: the plan is on the screen before them.
    window.setTimeout(() => {
      const flips = changes(facts);
      const influences = Guide.plan_influence.influences(plan, specs, all.facts, data.values, data.tables, data.ends, flips);
      page.fill(later, [el("summary", {}, ["What would change it"]), show.changes(flips)]);
      page.fill(most, assumed(influences));
      later.hidden = !plan.parts.some((part) => part.settled && part.uses.indexOf(data.main) >= 0);
      offer(JSON.stringify(withTexts(Object.assign({
        name: data.name, rules: data.rules, edition: data.edition, link: "plan.html" + fragment, texts: all.texts, facts: given(facts), plan: plan,
        would_change: flips.map(change),
        assumed: influences.map((one) => ({ fact: one.fact, flips: one.flips, moves_pct: one.moves_pct, text: show.word(one.says) }))
      }, found)), null, 2));
    }, 0);
  };
};
