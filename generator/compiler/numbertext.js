/** Numbers as text, the same as generator/calculators/numbertext.py; written by hand. */
Guide.numbertext = (function () {
  "use strict";

  function fail(text) {
    const error = new Error(text);
    error.name = "ValueError";
    throw error;
  }

  /** x with so many digits after the point; toFixed is exact, halves away from zero. */
  function fixed(x, digits) {
    if (!(Math.abs(x) < 1e21)) fail("a number that cannot be written");
    if (digits < 0 || digits > 20) fail("digits from 0 to 20");
    const parts = Math.abs(x).toFixed(digits).split(".");
    if (parts[0].length > 4) parts[0] = parts[0].replace(/\B(?=(?:\d{3})+$)/g, "\u202f");
    const text = parts.join(".");
    return x < 0 && /[1-9]/.test(text) ? "\u2212" + text : text;
  }

  /** The parts one after another. */
  function join(parts) {
    return parts.join("");
  }

  return { fixed: fixed, join: join };
})();
