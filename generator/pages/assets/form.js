// Forms <-> facts. A field is a `.ask` with data-fact; what it holds is read as links write it, with a status.
Guide.page.form = (function () {
  "use strict";
  const F = Guide.facts;
  const border = Guide.page.border;
  const numbers = Guide.page.numbers;

  function holder(id) { return document.querySelector('[data-fact="' + id + '"]'); }
  function part(id, name) { return document.getElementById(id + "-" + name); }
  function radios(id) { return Array.from(holder(id).querySelectorAll('input[type="radio"]')); }
  function byRadio(id) { return holder(id).tagName === "FIELDSET"; }

  // The text in a field as typed; `unknown` where that was said; "" where nothing was.
  function typed(id) {
    if (byRadio(id)) {
      const chosen = radios(id).filter((one) => one.checked)[0];
      return chosen ? chosen.value : "";
    }
    const tick = part(id, "unknown") || holder(id).querySelector('input[type="checkbox"]');
    return tick && tick.checked ? border.UNKNOWN : document.getElementById(id).value.trim();
  }

  // Puts a text (as links write it) into a field.
  function put(spec, text, status) {
    const unknown = text === border.UNKNOWN;
    if (byRadio(spec.id)) {
      radios(spec.id).forEach((one) => { one.checked = one.value === text; });
    } else {
      const field = document.getElementById(spec.id);
      const tick = holder(spec.id).querySelector('input[type="checkbox"]');
      const number = spec.kind === "number" || spec.kind === "whole";
      if (tick) { tick.checked = unknown; field.disabled = unknown; }
      field.value = unknown && tick ? "" : number && text !== "" ? numbers.write(Number(text)) : text;
    }
    allUnknown(spec.id);
    holder(spec.id).setAttribute("data-status", String(status));
    part(spec.id, "state").textContent = status === F.FROM_LINK && text !== "" ? "From the link." : "";
  }

  // A series says once that none of it is known.
  function allUnknown(id) {
    const series = holder(id).closest(".series");
    if (series) {
      series.querySelector(".tick input").checked = Array.from(series.querySelectorAll(".node [type=checkbox]")).every((one) => one.checked);
    }
  }

  // A field's reading: {text (as links write it), number, status, fault (a sentence, or "")}.
  function read(spec, word) {
    const empty = { text: "", number: 0, status: F.NOT_ASKED, fault: "" };
    if (!holder(spec.id)) { return empty; }
    const text = typed(spec.id);
    const status = Number(holder(spec.id).getAttribute("data-status")) || F.ENTERED;
    if (text === "") { return empty; }
    if (spec.kind === "text" && text !== border.UNKNOWN) { return { text: text, number: 0, status: status, fault: "" }; }
    let written = text;
    if ((spec.kind === "number" || spec.kind === "whole") && text !== border.UNKNOWN) {
      const found = numbers.read(text);
      if (!found.ok) { return Object.assign(empty, { fault: typing(text, found) }); }
      const wrong = Guide.guard.faults_of(spec, found.number);
      if (wrong.length) { return Object.assign(empty, { fault: word(wrong[0].says) }); }
      return { text: String(found.number), number: found.number, status: status, fault: "" };
    }
    const found = border.read(spec, written, status);
    return found.ok ? { text: written, number: found.number, status: found.status, fault: "" } : Object.assign(empty, { fault: word(found.says) });
  }

  function typing(text, found) {
    if (found.why === "two readings") {
      return "“" + text + "” can be read in two ways. Write " + found.readings[0] + " or " + found.readings[1] + ".";
    }
    return "“" + text + "” is not a number. Write digits, such as 2.4 or 2,4.";
  }

  // Shows or takes away the error beside a field.
  function tell(id, fault) {
    const field = byRadio(id) ? holder(id) : document.getElementById(id);
    part(id, "error").textContent = fault;
    if (fault) { field.setAttribute("aria-invalid", "true"); } else { field.removeAttribute("aria-invalid"); }
  }

  // All fields at once: {readings: {id: reading}, facts: Facts of those that are numbers, texts: {id: text}, faults: [ids]}.
  // A fact that the form does not ask counts as not asked.
  function readAll(specs, word) {
    const all = { readings: {}, facts: null, texts: {}, faults: [] };
    const numeric = specs.filter((spec) => spec.kind !== "text");
    specs.forEach((spec) => {
      const one = read(spec, word);
      all.readings[spec.id] = one;
      if (one.fault) { all.faults.push(spec.id); }
      if (spec.kind === "text" && one.text !== "" && one.text !== border.UNKNOWN) { all.texts[spec.id] = one.text; }
    });
    const bare = Guide.facts.Facts(
      numeric.map((spec) => spec.id),
      numeric.map((spec) => all.readings[spec.id].number),
      numeric.map((spec) => all.readings[spec.id].status)
    );
    all.facts = Guide.specs.with_defaults(numeric, bare);
    return all;
  }

  // A fold says how much in it is filled in, so that it need not stand open; a stage of the plan also how much there is.
  function count() {
    Array.from(document.querySelectorAll("details:is(.more, .series, .stage)")).forEach((fold) => {
      const fields = Array.from(fold.querySelectorAll("[data-fact]"));
      const filled = fields.filter((field) => typed(field.getAttribute("data-fact")) !== "").length;
      const told = fold.classList.contains("stage") ? filled + " of " + fields.length + " answered" : filled ? filled + " filled in" : "";
      fold.firstChild.querySelector(".count").textContent = told;
    });
  }

  // Goes to a field, and opens what it is folded in.
  function goTo(id) {
    for (let fold = holder(id).closest("details"); fold; fold = fold.parentElement.closest("details")) { fold.open = true; }
    const first = byRadio(id) ? radios(id).filter((one) => one.checked)[0] || radios(id)[0] : document.getElementById(id);
    first.focus();
    holder(id).scrollIntoView({ block: "center" });
  }

  return { holder: holder, put: put, read: read, readAll: readAll, tell: tell, count: count, goTo: goTo };
})();
