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
