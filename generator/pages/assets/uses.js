// The way of an answer into the pages that go on from it: each opens with what both ask, and with what was worked out here.
Guide.page.uses = function (result, fragment) {
  "use strict";
  const page = Guide.page;
  const data = page.data;
  const el = page.el;

  // What the form says, and what the device keeps of the block: not when the form came from a link, which may be of another block.
  function known() {
    const found = {};
    const kept = document.getElementById("link-told").hidden ? page.store.load(data.edition.id).facts : {};
    Object.keys(kept).forEach((id) => { found[id] = kept[id].text; });
    page.link.parse(fragment).given.forEach((pair) => { found[pair[0]] = pair[1]; });
    return found;
  }

  // The text of an output as a form takes it; "" when it is open.
  function output(id) {
    const one = data.outputs.filter((other) => other.id === id)[0];
    const raw = result[id];
    if (typeof raw === "object") { return raw.ok ? raw.number.toFixed(one.digits) : ""; }
    return raw.toFixed(one.digits);
  }

  function address(use) {
    const all = Object.assign({}, there);
    Object.keys(use.gives).forEach((fact) => {
      all[fact] = output(use.gives[fact]);
    });
    const given = use.asks.filter((id) => all[id]).map((id) => [id, all[id]]);
    return data.root + use.page + page.link.make(data.edition.id, data.rules, given);
  }

  const there = known();
  // A page that is to be given a number is no way on while that is open; one that is for some blocks only is none for others.
  const ready = data.uses.filter((use) => {
    const filled = Object.keys(use.gives);
    const here = !use.where.length || use.where.some((fact) => there[fact] && ["no", "unknown", "0"].indexOf(there[fact]) < 0);
    return here && (!filled.length || filled.some((fact) => output(use.gives[fact]) !== ""));
  });
  return ready.length ? el("section", { "class": "print-not", id: "uses" }, [
    el("h2", {}, ["Go on with these figures"]),
    el("div", { "class": "buttons" }, ready.map((use) => el("a", { "class": "button", href: address(use) }, ["Use in: " + use.title])))
  ]) : null;
};
