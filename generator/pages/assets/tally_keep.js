// The tallies, or the canes or vines, that a device keeps: one list of rows for each block and winter, saved at every press.
Guide.page.tallies = (function () {
  "use strict";
  const data = Guide.page.data;
  const store = Guide.page.store;
  const NAME = data.columns ? "/" + data.name : "/tally";

  function here() { return store.here(data.edition.id); }

  // A tally as it was kept; null where there is none, or nothing that can be read.
  function load(winter) {
    try {
      const kept = JSON.parse(window.localStorage.getItem(here() + winter + NAME));
      return kept && Array.isArray(kept.rows) ? kept : null;
    } catch (error) { return null; }
  }

  // Keeps a tally. Returns "" or why it could not.
  function save(winter, tally) {
    try {
      window.localStorage.setItem(here() + winter + NAME, JSON.stringify(Object.assign({ rules: data.rules }, tally)));
      return "";
    } catch (error) {
      return error && error.name === "QuotaExceededError" ? "full" : "denied";
    }
  }

  // The winters of this block that have a tally with a bud in it, the latest first.
  function winters() {
    try {
      const own = here();
      return Object.keys(window.localStorage).filter((key) => key.indexOf(own) === 0 && key.slice(-NAME.length) === NAME)
        .map((key) => key.slice(own.length, -NAME.length)).filter((winter) => load(winter) && load(winter).rows.length).sort().reverse();
    } catch (error) { return []; }
  }

  // The block to which all this belongs, as the store writes it; "" where nothing is kept.
  function block() { try { return here().split("/").slice(-2)[0]; } catch (error) { return ""; } }

  return { load: load, save: save, winters: winters, block: block };
})();
