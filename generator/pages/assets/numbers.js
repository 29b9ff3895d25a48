// Text typed by a person -> a number, and back. Decimal comma and point both count; what could be read in two ways is asked about.
Guide.page.numbers = (function () {
  "use strict";
  const SPACES = /[\u0020\u00a0\u2009\u202f]/g;
  const GROUPED_BY_SPACE = /^\d{1,3}([\u0020\u00a0\u2009\u202f]\d{3})+([.,]\d+)?$/;
  const PLAIN = /^\d+$/;
  const DECIMAL = /^(\d*)[.,](\d+)$/;
  const TWO_READINGS = /^[1-9]\d{0,2}[.,]\d{3}$/;
  const COMMA_GROUPS = /^[1-9]\d{0,2}(,\d{3})+\.\d+$|^[1-9]\d{0,2}(,\d{3}){2,}$/;
  const POINT_GROUPS = /^[1-9]\d{0,2}(\.\d{3})+,\d+$|^[1-9]\d{0,2}(\.\d{3}){2,}$/;

  function fault(why, first, second) {
    return { ok: false, number: 0, why: why, readings: first === undefined ? [] : [first, second] };
  }

  // The number that a text without a sign says, as digits with a point; empty when it is none.
  function plain(text) {
    if (PLAIN.test(text)) { return text; }
    if (GROUPED_BY_SPACE.test(text)) { return text.replace(SPACES, "").replace(",", "."); }
    if (COMMA_GROUPS.test(text)) { return text.replace(/,/g, ""); }
    if (POINT_GROUPS.test(text)) { return text.replace(/\./g, "").replace(",", "."); }
    const parts = DECIMAL.exec(text);
    return parts ? (parts[1] || "0") + "." + parts[2] : "";
  }

  // {ok, number} or {ok: false, why: "empty" | "two readings" | "no number", readings: [texts]}.
  function read(text) {
    const trimmed = text.trim();
    if (trimmed === "") { return fault("empty"); }
    const sign = /^[-\u2212]/.test(trimmed) ? "-" : "";
    const body = trimmed.replace(/^[-+\u2212]\s*/, "");
    if (TWO_READINGS.test(body)) {
      const digits = body.replace(/[.,]/, "");
      return fault("two readings", sign + digits, sign + body.replace(",", ".") + "0");
    }
    const digits = plain(body);
    return digits === "" ? fault("no number") : { ok: true, number: Number(sign + digits) + 0, why: "", readings: [] };
  }

  // A number as text for a field: read() gives the same number again.
  function write(number) {
    const text = String(number);
    return TWO_READINGS.test(text.replace("-", "")) ? text + "0" : text;
  }

  // An ISO date -> days since 1970-01-01; NaN when it is none. Reckoned by hand: browsers disagree on dates.
  function days(text) {
    const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
    if (!parts) { return NaN; }
    const month = Number(parts[2]);
    const year = Number(parts[1]) - (month <= 2 ? 1 : 0);
    const fromMarch = month > 2 ? month - 3 : month + 9;
    const day = Number(parts[3]);
    const leap = Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400);
    const found = 365 * year + leap + Math.floor((153 * fromMarch + 2) / 5) + day - 1 - 719468;
    return Guide.wording.date_text(found) === text ? found : NaN;
  }

  return { read: read, write: write, days: days };
})();
