// Drawings as SVG: the tree that generator/pages/svg.py makes, and that tree as elements.
Guide.page.drawing = (function () {
  "use strict";
  const SVG = "http://www.w3.org/2000/svg";

  function shape(one, word) {
    const css = "v-" + one.css;
    const at = one.points[0];
    if (one.kind === "line") {
      return ["polyline", { "class": css, points: one.points.map((p) => p.x + "," + p.y).join(" ") }, []];
    }
    if (one.kind === "circle") {
      return ["circle", { "class": css, cx: String(at.x), cy: String(at.y), r: String(one.radius) }, []];
    }
    return ["text", { "class": css, x: String(at.x), y: String(at.y), "text-anchor": one.anchor }, [word(one.label)]];
  }

  function tree(drawing, word) {
    return ["svg", {
      viewBox: [drawing.left, drawing.top, drawing.width, drawing.height].join(" "),
      role: "img",
      "aria-label": drawing.describe.map(word).join(" "),
      "font-size": String(drawing.text_mm)
    }, drawing.shapes.map((one) => shape(one, word))];
  }

  function element(branch) {
    if (typeof branch === "string") { return document.createTextNode(branch); }
    const made = document.createElementNS(SVG, branch[0]);
    Object.keys(branch[1]).forEach((name) => { made.setAttribute(name, branch[1][name]); });
    branch[2].forEach((child) => { made.appendChild(element(child)); });
    return made;
  }

  // The figure of a drawing; null when there is nothing to draw. With ids its caption has those sentences alone; its description has all.
  function figure(drawing, word, ids) {
    if (drawing.shapes.length === 0) { return null; }
    const el = Guide.page.el;
    return el("figure", { "class": "drawing" }, [
      element(tree(drawing, word)),
      el("figcaption", {}, [drawing.describe.filter((say) => !ids || ids.indexOf(say.id) >= 0).map(word).join(" ")])
    ]);
  }

  return { tree: tree, figure: figure };
})();
