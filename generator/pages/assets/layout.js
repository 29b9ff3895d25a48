// The ranked layouts on their calculator's page: those that can be built, each with its drawing and reasons; then the others.
Guide.page.ranked = function (result) {
  "use strict";
  const page = Guide.page;
  const el = page.el;
  const show = page.show;

  function built(option, place) {
    const drawing = page.drawing.figure(result.drawings[place], show.word);
    return el("li", { "class": "option" }, [
      el("p", { "class": "says" }, [show.word(option.layout.headline)]),
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
    can.length ? el("ol", { "class": "options" }, can.map(built)) : null,
    cannot.length ? el("details", {}, [
      el("summary", {}, ["Layouts that cannot be built, and what is short"]), show.list("ul", cannot.map(other))
    ]) : null
  ]);
};
