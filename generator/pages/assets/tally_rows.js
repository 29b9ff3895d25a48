// A tally of cut buds: its rows, what one press makes of a bud, and rows as text for other programs (CSV) and back.
// The command line reads the same files by the same rules (answers/tally_file.py); a test gives both the same odd files.
Guide.tally = (function () {
  "use strict";
  const COLUMNS = [
    "cane", "node", "buds_0", "buds_1", "buds_2", "buds_3", "dead_primary", "dead_node", "secondary_1", "secondary_2", "unreadable"
  ];
  // What can be in a bud, by the key that says so: the columns that it counts in, and its words.
  const BUDS = {
    "0": { counts: ["buds_0"], says: "no bunch" },
    "1": { counts: ["buds_1"], says: "1 bunch" },
    "2": { counts: ["buds_2"], says: "2 bunches" },
    "3": { counts: ["buds_3"], says: "3 or more bunches" },
    D0: { counts: ["dead_primary"], says: "primary dead, secondary without a bunch" },
    D1: { counts: ["dead_primary", "secondary_1"], says: "primary dead, secondary with 1 bunch" },
    D2: { counts: ["dead_primary", "secondary_2"], says: "primary dead, secondary with 2 bunches" },
    X: { counts: ["dead_node"], says: "all dead" },
    R: { counts: ["unreadable"], says: "cannot be read" }
  };
  // The states that exclude each other; the secondaries are among the dead primaries.
  const STATES = ["buds_0", "buds_1", "buds_2", "buds_3", "dead_primary", "dead_node", "unreadable"];

  function empty(cane, node) {
    const row = {};
    COLUMNS.forEach((name) => { row[name] = 0; });
    row.cane = cane;
    row.node = node;
    return row;
  }

  function bud(cane, node, key) {
    const row = empty(cane, node);
    BUDS[key].counts.forEach((name) => { row[name] = 1; });
    return row;
  }

  function buds(row) { return STATES.reduce((sum, name) => sum + row[name], 0); }

  // A row in words: what its one bud holds, or how many buds it stands for.
  function says(row) {
    const same = Object.keys(BUDS).filter((key) => {
      const one = bud(row.cane, row.node, key);
      return COLUMNS.every((name) => one[name] === row[name]);
    });
    return same.length ? BUDS[same[0]].says : buds(row) + " buds";
  }

  function sum(rows, node) {
    const total = empty(0, node);
    rows.forEach((row) => { COLUMNS.slice(2).forEach((name) => { total[name] += row[name]; }); });
    return total;
  }

  // The sums at each node that has a bud, the lowest first.
  function byNode(rows) {
    const nodes = rows.map((row) => row.node).filter((node, place, all) => all.indexOf(node) === place).sort((a, b) => a - b);
    return nodes.map((node) => sum(rows.filter((row) => row.node === node), node));
  }

  function place(rows, cane, node) { return rows.findIndex((row) => row.cane === cane && row.node === node); }

  // Rows as lists of numbers for the store, and back; [] where another program left something else.
  function packed(rows) { return rows.map((row) => COLUMNS.map((name) => row[name])); }
  function unpacked(lists) {
    return lists.filter((list) => Array.isArray(list) && list.length === COLUMNS.length && list.every((one) => Number.isInteger(one) && one >= 0)).map((list) => {
      const row = {};
      COLUMNS.forEach((name, at) => { row[name] = list[at]; });
      return row;
    });
  }

  function write(rows) {
    return [COLUMNS].concat(packed(rows)).map((cells) => cells.join(",") + "\r\n").join("");
  }

  // The lines of a text: [{number, cells}], without those that hold nothing. A line's number is where it begins in the file.
  function lines(text, mark) {
    const found = [];
    let cells = [];
    let cell = "";
    let quoted = false;
    let number = 1;
    let began = 1;
    function ended() {
      cells.push(cell.trim());
      if (cells.some((one) => one !== "")) { found.push({ number: began, cells: cells }); }
      cells = [];
      cell = "";
    }
    for (let at = 0; at < text.length; at++) {
      const sign = text[at];
      if (sign === "\n") { number += 1; }
      if (quoted) {
        if (sign !== "\"") { cell += sign; } else if (text[at + 1] === "\"") { cell += sign; at += 1; } else { quoted = false; }
      } else if (sign === "\"" && cell.trim() === "") {
        quoted = true;
        cell = "";
      } else if (sign === mark) {
        cells.push(cell.trim());
        cell = "";
      } else if (sign === "\n") {
        ended();
        began = number;
      } else {
        cell += sign;
      }
    }
    ended();
    return found;
  }

  // Commas, semicolons (what a spreadsheet writes where the comma is a decimal mark) or tabs (what is copied out of one).
  function markOf(text) {
    const first = text.split("\n").filter((line) => line.trim() !== "")[0] || "";
    return ["\t", ";"].filter((mark) => first.indexOf(mark) >= 0)[0] || ",";
  }

  // What is wrong with the names of the columns; "" for nothing.
  function wrongNames(names) {
    const needed = ["cane", "node"].filter((name) => names.indexOf(name) < 0);
    if (needed.length) { return "the first line names the columns, and has no column " + needed.join(" and no column ") + ". Allowed are " + COLUMNS.join(", ") + "."; }
    const strange = names.filter((name) => COLUMNS.indexOf(name) < 0);
    if (strange.length) { return "“" + strange[0] + "” is no column. Allowed are " + COLUMNS.join(", ") + "."; }
    const twice = names.filter((name, at) => names.indexOf(name) !== at);
    return twice.length ? "the column " + twice[0] + " stands there twice. Name each once." : "";
  }

  // A row from the cells of a line, or a sentence that says what is wrong.
  function rowOf(names, cells, most) {
    if (cells.length !== names.length) { return "it has " + cells.length + " cells, and the first line has " + names.length + "."; }
    const row = empty(0, 0);
    for (let at = 0; at < names.length; at++) {
      const name = names[at];
      const needed = name === "node" && cells[at] === "";
      if (needed || !/^\d*$/.test(cells[at]) || Number(cells[at]) > most[name]) {
        return name + " is “" + cells[at] + "”. Allowed is a whole number from 0 to " + most[name] + ".";
      }
      row[name] = Number(cells[at]);
    }
    if (row.secondary_1 + row.secondary_2 > row.dead_primary) {
      return "secondary_1 and secondary_2 come to more than dead_primary. They are counted among the dead primaries.";
    }
    return row;
  }

  // {rows, faults}: every line that is good and counts a bud, and a sentence for each that is not good, with its number. most: the largest number by column.
  function read(text, most) {
    const plain = text.replace(/^\ufeff/, "").replace(/\r\n?/g, "\n");
    const all = lines(plain, markOf(plain));
    if (all.length === 0) { return { rows: [], faults: ["There is nothing in it. The first line names the columns: " + COLUMNS.join(", ") + "."] }; }
    const names = all[0].cells.map((name) => name.toLowerCase());
    const wrong = wrongNames(names);
    if (wrong) { return { rows: [], faults: ["Line " + all[0].number + ": " + wrong] }; }
    const rows = [];
    const faults = [];
    all.slice(1).forEach((line) => {
      const row = rowOf(names, line.cells, most);
      if (typeof row === "string") { faults.push("Line " + line.number + ": " + row); } else if (buds(row)) { rows.push(row); }
    });
    return { rows: rows, faults: faults };
  }

  return {
    COLUMNS: COLUMNS, BUDS: BUDS, bud: bud, buds: buds, says: says, sum: sum, byNode: byNode, place: place, packed: packed, unpacked: unpacked,
    write: write, read: read
  };
})();
