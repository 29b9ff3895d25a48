// A list taken over from a file or pasted: the fields in their fold, and what becomes of the lines. Comes with the sums.
Guide.page.tallyFiles = function (fold) {
  "use strict";
  const page = Guide.page;
  const el = page.el;
  const tally = page.tally;
  const T = Guide.tally;
  const faults = el("div", { "class": "faults", id: "tally-faults", role: "status" }, []);
  const text = el("textarea", { id: "tally-text", rows: "5", "class": "long", spellcheck: "false" }, []);
  const file = el("input", { id: "tally-file", type: "file", accept: ".csv,.txt,text/csv,text/plain" }, []);

  function lines(number) { return number + (number === 1 ? " line" : " lines"); }

  function take(given, name) {
    const read = T.read(given, tally.most);
    // Two lines for one place are two buds of it, and their counts are added. A numbered cane has one bud at a node: there it is told.
    const sums = [];
    const twice = [];
    read.rows.forEach((row) => {
      const there = T.place(sums, row.cane, row.node);
      if (there < 0) { sums.push(row); return; }
      if (row.cane) { twice.push("Cane " + row.cane + ", node " + row.node + " stands in more than one line. The counts were added; if the bud is one and the same, undo."); }
      sums[there] = Object.assign(T.sum([sums[there], row], row.node), { cane: row.cane });
    });
    const told = read.faults.concat(twice.filter((one, at) => twice.indexOf(one) === at));
    if (sums.length) {
      tally.step(sums);
      sums.forEach(tally.put);
      tally.toEmpty();
      text.value = "";
    }
    page.fill(faults, [told.length ? page.show.list("ul", told) : null]);
    tally.changed(lines(read.rows.length) + " taken over" + (name ? " from " + name : "") + ". Faults: " + told.length + "."
      + (sums.length ? " Undo takes it all back." : ""));
  }

  file.addEventListener("change", () => {
    const reader = new FileReader();
    if (!file.files[0]) { return; }
    const name = file.files[0].name;
    reader.onload = function () { take(String(reader.result), name); file.value = ""; };
    reader.onerror = function () { tally.tell("The file could not be read. Copy its text and paste it below."); };
    reader.readAsText(file.files[0]);
  });

  [
    el("p", { "class": "hint" }, [
      "The first line names the columns: " + T.COLUMNS.join(", ") + ". What each means stands below on this page. A bud counted here before is replaced by its line; lines of the file for the same bud are added."
    ]),
    el("label", { "for": "tally-file" }, ["Open a file"]), file,
    el("label", { "for": "tally-text" }, ["Or paste its text"]), text,
    el("div", { "class": "buttons" }, [tally.button("Take the text over", () => { take(text.value, ""); }, { "class": "second", id: "tally-take" })]),
    faults
  ].forEach((part) => { fold.appendChild(part); });
};
