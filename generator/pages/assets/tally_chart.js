// The chart of bunch beginnings by node: a filled dot for this winter with its range as an upright line; other winters are told apart by their
// marks, never by colour.
Guide.page.tallyChart = function (result, others, winter) {
  "use strict";
  const page = Guide.page;
  const WIDE = 360;
  const HIGH = 240;
  const LEFT = 40;
  const RIGHT = 10;
  const TOP = 26;
  const BOTTOM = 50;
  const CAP = 4;
  const APART = 7;
  const rows = result.rows.filter((row) => row.mean_live.ok);
  const winters = others.slice(0, 2);
  const seen = [].concat.apply([], [result].concat(winters.map((one) => one.found)).map((one) => one.rows)).filter((row) => row.mean_live.ok);
  if (rows.length === 0) { return null; }
  const first = Math.min.apply(null, seen.map((row) => row.node));
  const last = Math.max.apply(null, seen.map((row) => row.node));
  const top = Math.ceil(Math.max.apply(null, seen.map((row) => row.mean_live.number))) + 1;

  function x(node) { return LEFT + (node - first + 0.5) * (WIDE - LEFT - RIGHT) / (last - first + 1); }
  function y(number) { return TOP + (top - Math.min(number, top)) * (HIGH - TOP - BOTTOM) / top; }
  function at(left, up) { return { x: Math.round(left * 10) / 10, y: Math.round(up * 10) / 10 }; }
  function line(css, points) { return { kind: "line", css: css, points: points }; }
  function word(said, left, up, anchor) { return { kind: "text", css: "label", points: [at(left, up)], anchor: anchor, label: said }; }
  function number(one) { return Guide.wording.number_text(page.data.catalogue.units, one, "ratio", 2, "si"); }

  const shapes = [word("Bunch beginnings in a living primary", 0, 14, "start"), word("Node", (LEFT + WIDE - RIGHT) / 2, HIGH - 8, "middle")];
  for (let step = 0; step <= top; step++) {
    shapes.push(line("wire", [at(LEFT, y(step)), at(WIDE - RIGHT, y(step))]), word(String(step), LEFT - 8, y(step) + 5, "end"));
  }
  for (let node = first; node <= last; node++) { shapes.push(word(String(node), x(node), HIGH - BOTTOM + 20, "middle")); }

  function whisker(row, left) {
    if (!row.low.ok || !row.high.ok) { return; }
    shapes.push(line("range", [at(left, y(row.high.number)), at(left, y(row.low.number))]), line("range", [at(left - CAP, y(row.low.number)), at(left + CAP, y(row.low.number))]));
    if (row.high.number <= top) { shapes.push(line("range", [at(left - CAP, y(row.high.number)), at(left + CAP, y(row.high.number))])); }
  }

  function open(row, left) { shapes.push({ kind: "circle", css: "open", points: [at(left, y(row.mean_live.number))], radius: CAP }); }
  function cross(row, left) {
    const up = y(row.mean_live.number);
    shapes.push(line("range", [at(left - CAP, up - CAP), at(left + CAP, up + CAP)]), line("range", [at(left - CAP, up + CAP), at(left + CAP, up - CAP)]));
  }

  const beside = winters.length ? APART : 0;
  winters.forEach((one, place) => { one.found.rows.filter((row) => row.mean_live.ok).forEach((row) => { (place ? cross : open)(row, x(row.node) + (place ? APART : 0)); }); });
  rows.forEach((row) => {
    whisker(row, x(row.node) - beside);
    shapes.push({ kind: "circle", css: "node", points: [at(x(row.node) - beside, y(row.mean_live.number))], radius: CAP });
  });

  function told(found) {
    return found.rows.filter((row) => row.mean_live.ok).map((row) => {
      return "node " + row.node + " " + number(row.mean_live.number) + (row.low.ok && row.high.ok ? " (" + number(row.low.number) + " to " + number(row.high.number) + ")" : "");
    }).join("; ") + ".";
  }

  const describe = ["Bunch beginnings in a living primary by node, with the range of each mean. Winter " + winter + ": " + told(result)]
    .concat(winters.map((one) => "Winter " + one.winter + ": " + told(one.found)));
  const figure = page.drawing.figure({ left: 0, top: 0, width: WIDE, height: HIGH, text_mm: 15.5, shapes: shapes, describe: describe }, (said) => said);
  figure.classList.add("chart");
  const marks = winters.map((one, place) => " " + (place ? "Crosses" : "Open dots") + ": winter " + one.winter + ".");
  figure.lastChild.textContent = "Filled dots: winter " + winter + ". The upright line is the range of the mean." + marks.join("") + " The same figures stand in the tables.";
  return figure;
};
