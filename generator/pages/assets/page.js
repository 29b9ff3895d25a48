// One page with a form, from opening to answer: the link or the device fills it, every change keeps it and answers again.
// What answers comes later and is page.answer(all, fragment, headline, rest); page.again() answers once more.
Guide.page.open = function () {
  "use strict";
  const F = Guide.facts;
  const page = Guide.page;
  const data = page.data;
  const specs = data.catalogue.facts;
  const form = document.getElementById("form");
  page.fill(document.getElementById("questions"), page.ask.all());
  const asked = specs.filter((one) => page.form.holder(one.id) !== null);
  const kept = document.getElementById("kept");
  const told = document.getElementById("link-told");
  const headline = document.getElementById("headline");
  const state = { fromLink: false, shown: false };

  function spec(id) { return asked.filter((one) => one.id === id)[0]; }
  function label(id) { return "“" + spec(id).label + "”"; }

  function fillAll(texts) {
    asked.forEach((one) => {
      const given = texts[one.id] || { text: "", status: F.ENTERED };
      page.form.put(one, given.text, given.status);
      page.form.tell(one.id, "");
    });
    page.form.count();
  }

  // Fills the form from a link; returns what has to be told about it.
  function fromLink(link) {
    const lines = [];
    const texts = {};
    const strangers = [];
    link.given.forEach((pair) => {
      const one = spec(pair[0]);
      const read = one && one.lifetime !== "today" ? page.border.read(one, pair[1], F.FROM_LINK) : null;
      if (!one) { strangers.push("“" + pair[0] + "”"); return; }
      if (!read) { lines.push(label(one.id) + " holds for one day only and is not taken from a link."); return; }
      if (!read.ok) { lines.push("The link says “" + pair[1] + "” for " + label(one.id) + ", which was left out: " + (read.why || page.show.word(read.says))); return; }
      texts[one.id] = { text: pair[1], status: F.FROM_LINK };
    });
    if (strangers.length) { lines.push("This page does not ask, and left out: " + strangers.join(", ") + "."); }
    link.torn.forEach((piece) => { lines.push("A piece of the link could not be read: “" + piece + "”."); });
    if (link.version && link.version !== page.link.VERSION) { lines.push("The link was made by another version of the guide; what could be read of it was taken."); }
    if (link.edition && link.edition !== data.edition.id) { lines.push("The link was made for the edition “" + link.edition + "”; this is the edition “" + data.edition.id + "”."); }
    if (link.rules && link.rules !== data.rules) { lines.push(["The link was made under rules version " + link.rules + ", this page has " + data.rules + ": the advice may have changed since. ", page.el("a", { href: data.root + "changes.html" }, ["What has changed"])]); }
    fillAll(texts);
    return lines;
  }

  function tellLink(lines) {
    const keep = page.el("button", { type: "button", "class": "second", id: "keep" }, ["Keep these answers on this device"]);
    keep.addEventListener("click", () => { state.fromLink = false; save(); told.hidden = true; kept.scrollIntoView({ block: "center" }); document.getElementById("clear").focus(); });
    page.fill(told, [page.el("p", {}, ["These answers come from a link. What this device keeps is left as it is."])]
      .concat(lines.length ? [page.show.list("ul", lines)] : [], [keep]));
    told.hidden = false;
  }

  function save() {
    if (state.fromLink) { return; }
    const all = page.form.readAll(specs, page.show.word).readings;
    const facts = {};
    asked.forEach((one) => {
      if (all[one.id].text !== "") { facts[one.id] = { text: all[one.id].text, status: all[one.id].status }; }
    });
    tellKept(page.store.save(data.edition.id, data.rules, asked, facts));
  }

  function tellKept(why) {
    const lines = {
      "": "Your answers stay on this device, for this block and this winter.",
      denied: "This browser does not let the page keep anything: your answers are gone when you close it. A link keeps them.",
      full: "This device has no room left to keep your answers: they are gone when you close the page. A link keeps them."
    };
    kept.textContent = lines[why];
  }

  // The fragment that reproduces the form; what ends with the day stays out.
  function fragment(readings) {
    const given = asked.filter((one) => one.lifetime !== "today" && readings[one.id].text !== "")
      .map((one) => [one.id, readings[one.id].text]);
    return page.link.make(data.edition.id, data.rules, given);
  }

  function showErrors(faults) {
    asked.forEach((one) => { page.form.tell(one.id, faults[one.id] || ""); });
  }

  // Reads the form and answers; on the reader's own wish errors are told and the focus goes where it is needed.
  function run(wished) {
    const all = page.form.readAll(specs, page.show.word);
    const faults = {};
    all.faults.forEach((id) => { faults[id] = all.readings[id].fault; });
    if (wished) {
      (data.required || []).forEach((id) => {
        const missing = all.facts.statuses[all.facts.ids.indexOf(id)] < F.ASSUMED;
        if (missing && !faults[id]) { faults[id] = label(id) + " is needed here."; }
      });
      showErrors(faults);
    }
    const place = document.getElementById("answer");
    const wrong = specs.filter((one) => faults[one.id]);
    const ready = wrong.length === 0 && (wished || state.shown);
    if (wished && wrong.length) { page.form.goTo(wrong[0].id); }
    if (!ready) { place.hidden = place.hidden || wrong.length > 0; return; }
    place.hidden = false;
    state.shown = true;
    page.again = function () {
      page.reckon(headline, () => { page.answer(all, fragment(all.readings), headline, document.getElementById("rest")); });
    };
    page.again();
    if (wished) { place.focus(); place.scrollIntoView({ block: "start" }); }
  }

  function open() {
    const link = page.link.parse(window.location.hash);
    state.fromLink = link !== null;
    if (link) {
      // What callers of the calculator name otherwise stands under that name in links, too.
      link.given.forEach((pair) => { pair[0] = (data.also || {})[pair[0]] || pair[0]; });
      tellLink(fromLink(link));
      kept.textContent = "";
      run(true);
    } else {
      const loaded = page.store.load(data.edition.id);
      fillAll(loaded.facts);
      tellKept(loaded.denied ? "denied" : "");
    }
  }

  function changed(event) {
    const box = event.target.closest("[data-fact]");
    if (!box) { return; }
    const one = spec(box.getAttribute("data-fact"));
    const field = document.getElementById(one.id);
    if (event.target.type === "checkbox") { field.disabled = event.target.checked; if (event.target.checked) { field.value = ""; } }
    box.setAttribute("data-status", String(F.ENTERED));
    document.getElementById(one.id + "-state").textContent = "";
    page.form.tell(one.id, page.form.read(one, page.show.word).fault);
    page.form.count();
    const other = one.id === page.store.NAME && !state.fromLink ? page.store.another(data.edition.id, field.value) : null;
    if (other) { fillAll(other); }
    save();
    if (other) { kept.textContent = "The answers kept for this block are back in the form."; }
    run(false);
  }

  function clear() {
    const done = page.store.clear();
    state.fromLink = false;
    state.shown = false;
    fillAll({});
    document.getElementById("answer").hidden = true;
    told.hidden = true;
    kept.textContent = done ? "All answers are cleared, here and on this device." : "The form is empty. This browser does not let the page keep anything anyway.";
  }

  form.hidden = false;
  form.addEventListener("submit", (event) => { event.preventDefault(); run(true); });
  form.addEventListener("change", changed);
  // Whoever begins to fill it in will want an answer: it is fetched meanwhile.
  form.addEventListener("focusin", () => { page.reckon(headline, () => {}); }, { once: true });
  document.getElementById("clear").addEventListener("click", clear);
  // Paper has nothing to unfold.
  window.addEventListener("beforeprint", () => {
    Array.from(document.querySelectorAll(".page > details, .fold, .fold details, .part details")).forEach((one) => { one.open = true; });
  });
  window.addEventListener("hashchange", () => { if (page.link.parse(window.location.hash)) { open(); } });
  open();
};
