// The ranked layouts on their calculator's page: those that can be built, each with its drawing and reasons; then the others.
Guide.page.ranked = function (result) {
  "use strict";
  const page = Guide.page;
  const el = page.el;
  const show = page.show;

  // A drawing whose caption says what the reasons do not; how it is to be read is said once.
  function drawn(drawing, ids) { return page.drawing.figure(drawing, show.word, ids); }

  function built(option, place) {
    const made = el("div", { "class": "part option" }, [
      el("p", { "class": "says" }, [(place + 1) + ". " + show.word(option.layout.headline)]),
      el("div", { "class": "beside" }, [
        drawn(result.before[place], (place === 0 ? ["drawing.before"] : []).concat(["drawing.describe_cuts", "drawing.assumed", "drawing.behind"])),
        drawn(result.drawings[place], ["drawing.after", "drawing.behind"])
      ]),
      show.list("ul", option.reasons.map(show.word))
    ]);
    made.appendChild(page.fieldCard("Field card", () => [made]));
    return made;
  }

  function other(option) {
    return [el("strong", {}, [show.word(option.layout.headline)]), " " + option.reasons.map(show.word).join(" ")];
  }

  const can = result.options.filter((option) => option.built);
  const cannot = result.options.filter((option) => !option.built);
  return el("section", {}, [
    can.length ? el("h2", {}, ["Layouts that can be built, the best first"]) : null,
    el("div", {}, can.map(built)),
    cannot.length ? el("details", {}, [
      el("summary", {}, ["Layouts that cannot be built, and what is short"]), show.list("ul", cannot.map(other))
    ]) : null
  ]);
};
