// One value of a fact as links, block files and the store write it (SI, choice ids, ISO dates, `unknown`) <-> number and status.
Guide.page.border = (function () {
  "use strict";
  const F = Guide.facts;
  // As JSON prints numbers (1e-05, 1e+16); border.py has the same.
  const LINK_NUMBER = /^-?\d+(\.\d+)?(e[-+]?\d{1,3})?$/;
  const UNKNOWN = "unknown";

  // What is wrong with a text that is none of the choices, or no day of the calendar.
  function guardSays(spec) {
    return spec.kind === "date"
      ? { id: "guard.range", numbers: [spec.low, spec.high], words: [spec.word] }
      : { id: "guard.choice", numbers: [], words: [spec.word] };
  }

  // The number of a text that is written as links write it; NaN when it is none.
  function number(spec, text) {
    if (spec.kind === "choice" || spec.kind === "yes_no") {
      const place = spec.choices.indexOf(text);
      return place < 0 ? NaN : place;
    }
    if (spec.kind === "date") { return Guide.page.numbers.days(text); }
    return LINK_NUMBER.test(text) ? Number(text) : NaN;
  }

  // {ok, number, status}, or {ok: false} and what is wrong: `why` in words, or what the guard `says`.
  function read(spec, text, status) {
    if (text === UNKNOWN) { return { ok: true, number: 0, status: F.UNKNOWN }; }
    if (spec.kind === "text") { return text.trim() ? { ok: true, number: 0, status: status } : { ok: false, why: "it is empty." }; }
    const found = number(spec, text);
    if (found !== found) {
      return spec.kind === "number" || spec.kind === "whole" ? { ok: false, why: "it is not a number." } : { ok: false, says: guardSays(spec) };
    }
    const faults = Guide.guard.faults_of(spec, found);
    return faults.length ? { ok: false, says: faults[0].says } : { ok: true, number: found, status: status };
  }

  return { read: read, UNKNOWN: UNKNOWN };
})();
