// A tally of cut buds: its rows, what one press makes of a bud, and rows as text for other programs (CSV).
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

  return {
    COLUMNS: COLUMNS, STATES: STATES, BUDS: BUDS, empty: empty, bud: bud, buds: buds, says: says, sum: sum, byNode: byNode, place: place, packed: packed,
    unpacked: unpacked, write: write
  };
})();
