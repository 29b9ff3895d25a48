// The ranked layouts on their calculator's page: those that can be built, each with its drawing and reasons; then the others.
Guide.page.ranked = function (result) {
  "use strict";
  const page = Guide.page;
  const el = page.el;
  const show = page.show;

  // A layout in its place: the reasons say what the caption would, so the drawing stands without it (its description stays).
  function built(option, place) {
    const drawing = page.drawing.figure(result.drawings[place], show.word);
    drawing.removeChild(drawing.lastChild);
    return el("div", { "class": "part option" }, [
      el("p", { "class": "says" }, [(place + 1) + ". " + show.word(option.layout.headline)]),
      drawing,
      show.list("ul", option.reasons.map(show.word))
    ]);
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
