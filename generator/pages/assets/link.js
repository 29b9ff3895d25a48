// Links that carry facts in the fragment, so that they never reach a server: #v=1&e=<edition>&r=<rules>&<fact>=<value>&...
Guide.page.link = (function () {
  "use strict";
  const VERSION = "1";

  function decoded(text) {
    try { return decodeURIComponent(text.replace(/\+/g, " ")); } catch (error) { return null; }
  }

  // {given: [[name, text]], version, edition, rules, torn: [pieces that could not be read]}; null when the fragment is no such link.
  function parse(fragment) {
    const text = fragment.replace(/^#/, "");
    if (text.indexOf("=") < 0) { return null; }
    const link = { given: [], version: "", edition: "", rules: "", torn: [] };
    const names = { v: "version", e: "edition", r: "rules" };
    text.split("&").forEach((piece) => {
      const at = piece.indexOf("=");
      const name = at > 0 ? decoded(piece.slice(0, at)) : null;
      const value = at > 0 ? decoded(piece.slice(at + 1)) : null;
      if (!name || value === null) {
        if (piece !== "") { link.torn.push(piece); }
      } else if (Object.prototype.hasOwnProperty.call(names, name)) {
        link[names[name]] = value;
      } else {
        link.given.push([name, value]);
      }
    });
    return link;
  }

  // The fragment for [[name, text]] under an edition and a rules version.
  function make(edition, rules, given) {
    const head = [["v", VERSION], ["e", edition], ["r", rules]];
    return "#" + head.concat(given).map((pair) => {
      return encodeURIComponent(pair[0]) + "=" + encodeURIComponent(pair[1]);
    }).join("&");
  }

  return { parse: parse, make: make, VERSION: VERSION };
})();
