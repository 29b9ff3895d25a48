// Elements without markup in text: el("p", {"class": "quiet"}, ["words", child]); null children are left out.
Guide.page.el = function (tag, attributes, children) {
  "use strict";
  const made = document.createElement(tag);
  Object.keys(attributes).forEach((name) => { made.setAttribute(name, attributes[name]); });
  (children || []).forEach((child) => {
    if (child !== null) { made.appendChild(typeof child === "string" ? document.createTextNode(child) : child); }
  });
  return made;
};

Guide.page.fill = function (place, children) {
  "use strict";
  while (place.firstChild) { place.removeChild(place.firstChild); }
  children.forEach((child) => { if (child !== null) { place.appendChild(child); } });
};

// The handle of a fold of the form, with room for a count of what is filled in.
Guide.page.handle = function (title, id) {
  "use strict";
  const el = Guide.page.el;
  return el("summary", id ? { id: id } : {}, [el("span", {}, [title]), " ", el("span", { "class": "quiet small count" }, [])]);
};

// The least that is shown of an answer: a sentence with its numbers, and a list. What shows whole answers comes with the first one (show.js).
Guide.page.show = (function () {
  "use strict";
  const el = Guide.page.el;

  function word(say) { return Guide.wording.worded(Guide.page.data.catalogue, say, "si"); }
  function list(tag, items) { return el(tag, {}, items.map((item) => el("li", {}, [].concat(item)))); }

  return { word: word, list: list };
})();
