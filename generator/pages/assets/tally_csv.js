// The rows of a tally from the text of a CSV file. The command line reads the same files by the same rules (answers/rows_csv.py); a test
// gives both the same odd files.
Guide.tally.read = (function () {
  "use strict";
  const COLUMNS = Guide.tally.COLUMNS;
  const LIVING = Guide.tally.STATES.slice(0, 5);
  const NUMBER = /^-?\d+(\.\d+)?(e[-+]?\d{1,3})?$/;

  // The cells of one line, without the blanks around them. A line is read by itself: a quote left open spoils no other.
  function cells(line, mark) {
    const found = [];
    let cell = "";
    let quoted = false;
    for (let at = 0; at < line.length; at++) {
      const sign = line[at];
      if (quoted) {
        if (sign !== "\"") { cell += sign; } else if (line[at + 1] === "\"") { cell += sign; at += 1; } else { quoted = false; }
      } else if (sign === "\"" && cell === "") {
        quoted = true;
      } else if (sign === mark) {
        found.push(cell.trim());
        cell = "";
      } else {
        cell += sign;
      }
    }
    return found.concat([cell.trim()]);
  }

  // Commas, semicolons (what a spreadsheet writes where the comma is a decimal mark) or tabs (what is copied out of one): the most counts.
  function markOf(head) {
    return [",", ";", "\t"].reduce((best, mark) => head.split(mark).length > head.split(best).length ? mark : best);
  }

  // The column of each place, "" for one that is not read, and what is wrong with the names.
  function columnsOf(head, faults) {
    const names = [];
    head.forEach((cell) => {
      const name = cell.toLowerCase().replace(/[ -]+/g, "_");
      const known = COLUMNS.indexOf(name) >= 0;
      const twice = known && names.indexOf(name) >= 0;
      if (name && !known) { faults.push("“" + cell + "” is no column, and is left out. Allowed are " + COLUMNS.join(", ") + "."); }
      if (twice) { faults.push("the column " + name + " is there twice; the first one counts."); }
      names.push(known && !twice ? name : "");
    });
    return names;
  }

  // A row from the cells of a line, or a sentence that says what is wrong. A column or cell that is not there counts 0.
  function rowOf(names, given, most) {
    const spare = given.slice(names.length).filter(Boolean);
    if (spare.length) { return "“" + spare[0] + "” stands beyond the last column. Allowed are " + names.length + " cells."; }
    const row = Guide.tally.empty(0, 0);
    for (let at = 0; at < names.length; at++) {
      const name = names[at];
      const text = given[at] || "";
      if (name === "node" && text === "") { return "node is missing. Every line needs it."; }
      const number = Number(text);
      if (name && text && !(NUMBER.test(text) && Number.isInteger(number) && number >= 0 && number <= most[name])) {
        return name + " is “" + text + "”. Allowed is a whole number from 0 to " + most[name] + ".";
      }
      if (name) { row[name] = number; }
    }
    return row.secondary_1 + row.secondary_2 > LIVING.reduce((sum, name) => sum + row[name], 0)
      ? "secondary_1 and secondary_2 come to more than the buds with something alive; each such bud has one that counts." : row;
  }

  // {rows, faults}: every line that is good and counts a bud, and a sentence for each that is not good, with its number. most: the
  // largest number by column.
  function read(text, most) {
    const all = text.replace(/^\ufeff/, "").split(/\r\n|\r|\n/).map((line, at) => ({ number: at + 1, text: line })).filter((line) => /[^ \t,;]/.test(line.text));
    const told = (number) => (fault) => "Line " + number + ": " + fault;
    if (all.length === 0) { return { rows: [], faults: [told(1)("nothing is in it. The first line names the columns: " + COLUMNS.join(", ") + ".")] }; }
    const mark = markOf(all[0].text);
    const wrong = [];
    const names = columnsOf(cells(all[0].text, mark), wrong);
    const faults = wrong.map(told(all[0].number));
    if (names.indexOf("node") < 0) { return { rows: [], faults: faults.concat([told(all[0].number)("the column node is missing. Every line needs it.")]) }; }
    const rows = [];
    all.slice(1).forEach((line) => {
      const row = rowOf(names, cells(line.text, mark), most);
      if (typeof row === "string") { faults.push(told(line.number)(row)); } else if (Guide.tally.buds(row)) { rows.push(row); }
    });
    return { rows: rows, faults: faults };
  }

  return read;
})();
