// What the device keeps: the facts of each block, apart for what stays with the block and what holds for one winter, and which block
// was used last. Facts that end with the day are never kept. A browser may deny or lack room; then the reader is told and everything
// else goes on.
Guide.page.store = (function () {
  "use strict";
  const PREFIX = "pruning-guide/1/";
  const NAME = "block_name";
  const MAY = 4;

  // The winter that belongs to a moment: pruning begun late in a year and ended in spring is one winter, named after the first year.
  function winter(moment) {
    return String(moment.getMonth() < MAY ? moment.getFullYear() - 1 : moment.getFullYear());
  }

  // A block's name as part of a key; a block without a name is `block`.
  function slug(name) { return name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "") || "block"; }

  // Under what begins all that is kept of the block used last.
  function here(edition) { return PREFIX + edition + "/" + last(edition) + "/"; }

  function last(edition) { return window.localStorage.getItem(PREFIX + edition + "/last") || slug(""); }

  function keys(edition, block) {
    const own = PREFIX + edition + "/" + block + "/";
    return { block: own + "block", winter: own + winter(new Date()) };
  }

  // The facts under a key; none where another program left something broken.
  function read(key) {
    const text = window.localStorage.getItem(key) || "{}";
    try { return JSON.parse(text).facts || {}; } catch (error) { return {}; }
  }

  function all(edition, block) {
    const own = keys(edition, block);
    return Object.assign({}, read(own.block), read(own.winter));
  }

  // What is kept of the block used last: {facts: {id: {text, status}}, denied}.
  function load(edition) {
    try { return { facts: all(edition, last(edition)), denied: false }; } catch (error) { return { facts: {}, denied: true }; }
  }

  // The facts of another block of this name, when there are any.
  function another(edition, name) {
    try {
      const facts = slug(name) === last(edition) ? {} : all(edition, slug(name));
      return Object.keys(facts).length ? facts : null;
    } catch (error) { return null; }
  }

  // Keeps facts ({id: {text, status}}, by lifetime) beside those that other pages have kept of the block: the one named in the form,
  // or the one used last where the form asks no name. Returns "" or why it could not.
  function save(edition, rules, specs, facts) {
    try {
      const asked = specs.some((spec) => spec.id === NAME);
      const block = asked ? slug(facts[NAME] ? facts[NAME].text : "") : last(edition);
      const own = keys(edition, block);
      ["block", "winter"].forEach((lifetime) => {
        const kept = read(own[lifetime]);
        specs.filter((spec) => spec.lifetime === lifetime).forEach((spec) => {
          delete kept[spec.id];
          if (facts[spec.id]) { kept[spec.id] = facts[spec.id]; }
        });
        window.localStorage.setItem(own[lifetime], JSON.stringify({ rules: rules, facts: kept }));
      });
      window.localStorage.setItem(PREFIX + edition + "/last", block);
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

  return { NAME: NAME, here: here, load: load, another: another, save: save, clear: clear, winter: winter };
})();
