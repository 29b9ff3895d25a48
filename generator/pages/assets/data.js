// What a page is given, made whole: packing.py says what was left out of it. Tables come with the first answer (tables.js).
Guide.page = { data: {} };

Guide.add = (function () {
  "use strict";

  // A list of like records comes as {$: names, _: for each name the list of its values, or the one value that all have}.
  function unpacked(thing) {
    if (thing === null || typeof thing !== "object") { return thing; }
    if (Array.isArray(thing)) { return thing.map(unpacked); }
    const made = {};
    if (!thing.$) { Object.keys(thing).forEach((name) => { made[name] = unpacked(thing[name]); }); return made; }
    const columns = thing._.map(unpacked);
    return columns[0].map((first, row) => {
      const one = {};
      thing.$.forEach((name, place) => { one[name] = Array.isArray(columns[place]) ? columns[place][row] : columns[place]; });
      return one;
    });
  }

  // A text, a number's place from 0, or a word's from -1 downwards.
  function part(one) {
    return typeof one === "string" ? { text: one, number: -1, word: -1 } : { text: "", number: Math.max(one, -1), word: one < 0 ? -1 - one : -1 };
  }

  // Adds a word; returns its id, "" for an empty one.
  function named(catalogue, id, text) {
    if (text) { catalogue.words.push({ id: id, text: text }); }
    return text ? id : "";
  }

  // The id of a choice as a name: pinot_noir is Pinot Noir.
  function spelt(choice) { return choice.split("_").map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join(" "); }

  return function (given) {
    const data = unpacked(given);
    const catalogue = data.catalogue;
    catalogue.forms.forEach((form) => { form.parts = form.parts.map(part); form.one = form.one.map(part); });
    catalogue.facts.forEach((fact) => {
      fact.word = named(catalogue, "fact." + fact.id, fact.label);
      fact.labels = fact.labels.map((label, place) => label || spelt(fact.choices[place]));
      fact.default = Guide.facts.Maybe(fact.default !== null, fact.default || 0);
    });
    if (data.tables) { Guide.wholeTables(data); }
    const before = Guide.page.data.catalogue;
    Object.assign(Guide.page.data, data);
    // What comes with the first answer is added to what the page had from the start.
    if (data.later) {
      ["forms", "words"].forEach((kind) => { before[kind].push.apply(before[kind], catalogue[kind]); });
      Guide.page.data.catalogue = before;
    }
  };
})();
