// What the device keeps: the facts of a block, apart for what stays with the block and what holds for one winter. Facts that end
// with the day are never kept. A browser may deny or lack room; then the reader is told and everything else goes on.
Guide.page.store = (function () {
  "use strict";
  const PREFIX = "pruning-guide/1/";
  const BLOCK = "this-block";
  const MAY = 4;

  // The winter that belongs to a moment: pruning begun late in a year and ended in spring is one winter, named after the first year.
  function winter(moment) {
    return String(moment.getMonth() < MAY ? moment.getFullYear() - 1 : moment.getFullYear());
  }

  function keys(edition) {
    const own = PREFIX + edition + "/" + BLOCK + "/";
    return { block: own + "block", winter: own + winter(new Date()) };
  }

  // {facts: {id: {text, status}}, denied}.
  function load(edition) {
    const facts = {};
    let denied = false;
    const own = keys(edition);
    [own.block, own.winter].forEach((key) => {
      try {
        const kept = JSON.parse(window.localStorage.getItem(key) || "{}");
        Object.keys(kept.facts || {}).forEach((id) => { facts[id] = kept.facts[id]; });
      } catch (error) { denied = denied || !(error instanceof SyntaxError); }
    });
    return { facts: facts, denied: denied };
  }

  // Keeps facts ({id: {text, status}}, by lifetime) beside those that other pages have kept. Returns "" or why it could not.
  function save(edition, rules, specs, facts) {
    const own = keys(edition);
    try {
      ["block", "winter"].forEach((lifetime) => {
        const kept = JSON.parse(window.localStorage.getItem(own[lifetime]) || "{}").facts || {};
        specs.filter((spec) => spec.lifetime === lifetime).forEach((spec) => {
          delete kept[spec.id];
          if (facts[spec.id]) { kept[spec.id] = facts[spec.id]; }
        });
        window.localStorage.setItem(own[lifetime], JSON.stringify({ rules: rules, facts: kept }));
      });
      return "";
    } catch (error) {
      return error && error.name === "QuotaExceededError" ? "full" : "denied";
    }
  }

  // Forgets every block, winter and edition. Returns false when the browser denies it.
  function clear() {
    try {
      Object.keys(window.localStorage).filter((key) => key.indexOf("pruning-guide/") === 0)
        .forEach((key) => { window.localStorage.removeItem(key); });
      return true;
    } catch (error) { return false; }
  }

  return { load: load, save: save, clear: clear, winter: winter };
})();
