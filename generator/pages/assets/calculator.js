// A calculator page: the form's facts become the calculator's own record of inputs.
Guide.page.calculator = function () {
  "use strict";
  const page = Guide.page;
  const data = page.data;

  function input(field, facts) {
    if (field.type === "Maybe") { return Guide.facts.maybe(facts, field.id); }
    const number = Guide.facts.number(facts, field.id);
    return field.type === "bool" ? number === 1 : number;
  }

  page.open((all, fragment, headline, rest) => {
    const inputs = {};
    data.inputs.forEach((field) => { inputs[field.id] = input(field, all.facts); });
    let result = null;
    try {
      result = Guide[data.name][data.name](inputs, data.values);
    } catch (error) {
      headline.textContent = "This cannot be worked out: " + error.message + ".";
      page.fill(rest, []);
      return;
    }
    const specs = data.catalogue.facts.filter((spec) => spec.kind !== "text");
    const used = specs.filter((spec) => Guide.facts.known(all.facts, spec.id));
    headline.textContent = page.show.word(result.headline);
    page.fill(rest, page.show.calculator(result, used.map((spec) => Guide.answer.rest(specs, all.facts, spec.id)), fragment));
  });
};
