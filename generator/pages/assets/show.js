// Answers as elements: what every answer shows, in one order, for decisions, calculators and the plan.
(function () {
  "use strict";
  const el = Guide.page.el;
  const data = Guide.page.data;
  const show = Guide.page.show;

  function part(title, children) { return children.length ? el("section", {}, [el("h2", {}, [title])].concat(children)) : null; }
  // The same folded: what backs an answer, for those who ask. It opens by itself on paper.
  function folded(title, children) {
    return children.length ? el("details", { "class": "fold" }, [el("summary", {}, [el("h2", {}, [title])])].concat(children)) : null;
  }

  // What is long on a phone and folded there; elsewhere it stands open.
  function long(title, children) {
    const made = folded(title, children);
    if (made) { made.open = window.matchMedia("(min-width: 40.01rem)").matches; }
    return made;
  }

  function standing(id) { return el("span", { "class": "standing standing-" + id }, [data.standings[id]]); }

  // What an answer rests on; of what is assumed also how sure that is, and the way to why.
  function rest(one) {
    const text = show.word(one.says);
    if (one.status !== "assumed") { return [text]; }
    const asked = [].concat.apply([], data.groups.map((group) => group.questions)).filter((question) => question.id === one.fact)[0];
    return [el("span", { "class": "assumed" }, [text])].concat(asked ? [
      " ", el("span", { "class": "standing" }, [asked.standing]), " ",
      el("a", { "class": "small", href: data.root + "f/" + (asked.series || asked.id) + ".html" }, ["Why so"])
    ] : []);
  }

  // The cautions of the page move to where the answer is; their own heading goes. With ids only those are shown.
  let cautions = null;
  function care(ids) {
    cautions = cautions || Array.from(document.querySelectorAll(".page > .caution"));
    const heading = document.getElementById("take-care");
    if (heading) { heading.hidden = true; }
    cautions.forEach((one) => { one.hidden = Boolean(ids) && ids.indexOf(one.id.replace("caution-", "")) < 0; });
    return part("Take care", cautions);
  }

  // The link that reproduces the answer, in a field that can be copied by hand where the browser does not let us.
  function link(fragment) {
    const address = window.location.href.split("#")[0] + fragment;
    const field = el("input", { type: "text", readonly: "", value: address, "aria-label": "Link with your answers in it", id: "link" });
    const told = el("span", { role: "status", "class": "small" }, []);
    const button = el("button", { type: "button", "class": "second", id: "copy" }, ["Copy the link"]);
    button.addEventListener("click", () => {
      copy(address, field).then((done) => { told.textContent = done ? "Copied." : "The link is marked: copy it by hand."; });
    });
    return [
      el("p", {}, ["Whoever opens this link sees the same answers. It never reaches a server log: the answers stand after the # sign."]),
      el("div", { "class": "copy" }, [field, button, told])
    ];
  }

  // The same as a part of an answer; on paper a link leads nowhere.
  function keep(fragment) { return el("section", { "class": "print-not" }, [el("h2", {}, ["Keep or send it"])].concat(link(fragment))); }

  // Copies a text; resolves to false when only marking it was possible.
  function copy(text, field) {
    function byHand() {
      if (field) { field.focus(); field.select(); }
      try { return Boolean(field) && document.execCommand("copy"); } catch (error) { return false; }
    }
    if (!navigator.clipboard) { return Promise.resolve(byHand()); }
    return navigator.clipboard.writeText(text).then(() => true, byHand);
  }

  // The way to the page that goes on from an outcome.
  function onward(outcome) {
    const links = data.onward.filter((one) => one.outcomes.indexOf(outcome) >= 0)
      .map((one) => el("a", { "class": "button", href: one.page }, ["Go on: " + one.title]));
    return links.length ? el("p", { "class": "print-not" }, links) : null;
  }

  function version() {
    return el("p", { "class": "quiet small" }, ["Rules version " + data.rules + ", edition: " + data.edition.name + "."]);
  }

  function changes(found) {
    return found.length ? show.list("ul", found.map((one) => show.word(one.says))) : el("p", {}, ["No single fact, changed alone, would give another answer."]);
  }

  Object.assign(show, {
    part: part, folded: folded, long: long, standing: standing, rest: rest, care: care, onward: onward, keep: keep, link: link, copy: copy, version: version, changes: changes
  });
})();
