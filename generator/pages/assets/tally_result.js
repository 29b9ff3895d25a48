// What the tally says: the chart and the tables by node, basal and distal buds, bearers, earlier winters, and the way of the figures
// into the other pages. Comes with the sums, after the first paint.
Guide.page.beside = function (result, fragment, inputs, again) {
  "use strict";
  const page = Guide.page;
  const data = page.data;
  const el = page.el;
  const show = page.show;
  const tally = page.tally;

  function text(number, unit, digits) { return Guide.wording.number_text(data.catalogue.units, number, unit, digits, "si"); }
  function ratio(one) { return one.ok ? text(one.number, "ratio", 2) : "–"; }
  function pct(one) { return one.ok ? text(one.number, "pct", 0) : "–"; }
  // A figure with its range; the unit is said once, and a line breaks before the range, never in it.
  function range(middle, low, high, as) {
    const bare = (one) => text(one.number, "ratio", as === pct ? 0 : 2);
    return middle.ok && low.ok && high.ok ? as(middle) + " (" + [bare(low), "to", bare(high)].join("\u00a0") + ")" : as(middle);
  }

  // A table that stacks on a phone: heads, and rows of texts of which the first names the row.
  function table(label, heads, rows) {
    return el("div", { "class": "wide", role: "region", tabindex: "0", "aria-label": label }, [el("table", { "class": "stack" }, [
      el("thead", {}, [el("tr", {}, heads.map((head, place) => el("th", { scope: "col", "class": place ? "number" : "" }, [head])))]),
      el("tbody", {}, rows.map((cells) => el("tr", {}, cells.map((cell, place) => {
        return place ? el("td", { "class": "number", "data-label": heads[place] + ": " }, [cell]) : el("th", { scope: "row" }, [cell]);
      }))))
    ])]);
  }

  function stretch(one, title) {
    return [
      title, String(one.buds), ratio(one.mean), range(one.mean_live, one.low, one.high, ratio),
      range(one.fruitful_pct, one.fruitful_low_pct, one.fruitful_high_pct, pct), range(one.dead_primary_pct, one.dead_primary_low_pct, one.dead_primary_high_pct, pct),
      pct(one.dead_node_pct)
    ];
  }

  const HEADS = ["Buds read", "Beginnings a bud", "Beginnings a living primary", "Fruitful", "Primary dead, secondary alive", "Nothing alive"];

  function nodes() {
    return show.long("Every node in figures", [table("Fruit by node", ["Node"].concat(HEADS), result.rows.map((one) => stretch(one, one.node ? "Node\u00a0" + one.node : "Base bud (0)")))]);
  }

  function titled(one, place) { return (place ? (place === 1 ? "Basal: nodes " : "Distal: nodes ") : "All: nodes ") + one.node + " to " + one.last_node; }

  function groups() {
    const pairs = result.paired.difference;
    return el("section", {}, [
      el("h2", {}, ["Near the base and further out"]),
      table("Basal and distal buds", ["Nodes"].concat(HEADS), result.groups.map((one, place) => stretch(one, titled(one, place)))),
      el("p", {}, [pairs.middle.ok
        ? "Distal less basal on the same cane, over " + result.paired.canes + " canes: " + range(pairs.middle, pairs.low, pairs.high, ratio) + " bunch beginnings a living primary."
        : "Distal and basal buds of one cane cannot be compared yet."])
    ]);
  }

  // What a bearer's reach means for the crop wanted, by the whole of its range.
  function means(one) {
    const sure = one.reach_low.ok && one.reach_high.ok;
    const low = sure ? one.reach_low.number : one.reach.number;
    const high = sure ? one.reach_high.number : one.reach.number;
    if (!sure) { return (low >= 1 ? "Makes the crop" : "Falls short of the crop") + "; how sure is not known."; }
    if (low >= 1) { return "Makes the crop."; }
    if (high < 1) { return "Falls short of the crop."; }
    const more = one.more_canes.number;
    return one.more_canes.ok ? "The sample cannot tell yet; about " + more + " more " + (more === 1 ? "cane" : "canes") + " would." : "Too close to be told by cutting.";
  }

  function bearers() {
    const named = (one) => (one.on_cane ? "Cane of\u00a0" : "Spur of\u00a0") + one.nodes + (one.nodes === 1 ? "\u00a0node" : "\u00a0nodes");
    const wished = result.bearers.some((one) => one.reach.ok);
    const heads = ["Bearer", "Bunches in spring", "On each node"].concat(wished ? ["Reach (1 is the crop you want)", "In words"] : []);
    return result.bearers.length ? show.long("What each spur and cane would carry", [
      table("Spurs and canes", heads, result.bearers.map((one) => [
        named(one), text(one.bunches, "ratio", 1), range({ ok: true, number: one.per_node }, one.per_node_low, one.per_node_high, ratio)
      ].concat(wished ? [range(one.reach, one.reach_low, one.reach_high, ratio), means(one)] : [])))
    ]) : null;
  }

  // ---- earlier winters

  const others = page.tallies.winters().filter((winter) => winter !== tally.state.winter).map((winter) => {
    try { return { winter: winter, found: again(Guide.tally.unpacked(page.tallies.load(winter).rows)) }; } catch (error) { return null; }
  }).filter(Boolean);

  function history() {
    const all = [{ winter: tally.state.winter, found: result }].concat(others);
    const numbers = [].concat.apply([], all.map((one) => one.found.rows.map((row) => row.node))).filter((node, place, list) => list.indexOf(node) === place).sort((a, b) => a - b);
    const cell = (one, node) => {
      const row = one.found.rows.filter((other) => other.node === node)[0];
      return row ? range(row.mean_live, row.low, row.high, ratio) : "–";
    };
    return others.length ? el("section", {}, [
      el("h2", {}, ["Beside your other winters"]),
      table("Bunch beginnings in a living primary, winter by winter", ["Node"].concat(all.map((one) => "Winter " + one.winter)),
        numbers.map((node) => ["Node " + node].concat(all.map((one) => cell(one, node)))).concat([["All from node 1"].concat(all.map((one) => range(one.found.mean_live, one.found.mean_live_low, one.found.mean_live_high, ratio)))]))
    ]) : null;
  }

  function published() {
    return data.published.length ? el("details", {}, [
      el("summary", {}, ["Where others found the most fruitful nodes: for comparison only"]),
      el("p", {}, ["Other vines in other places. None of it enters a figure on this page."]),
      show.list("ul", data.published.map((one) => [
        one.what + ": node " + one.first + (one.last > one.first ? " to " + one.last : "") + " ", show.standing(one.standing), " ",
        el("a", { href: data.root + one.page }, [one.id])
      ]))
    ]) : null;
  }

  // ---- the figures for other pages

  function texts() {
    const found = {};
    result.facts.forEach((one) => {
      const spec = data.carries.filter((other) => other.id === one.fact)[0];
      found[one.fact] = spec.kind === "yes_no" ? (one.number === 1 ? "yes" : "no") : String(one.number);
    });
    // What the decision asks where no other page works it out for it.
    ["spur_reach_low", "spur_reach_high"].forEach((id) => { if (result[id].ok) { found[id] = String(result[id].number); } });
    if (found.dead_primary_inner_pct && found.dead_primary_outer_pct) {
      found.dead_primary_rise_pct = String(Number(found.dead_primary_outer_pct) - Number(found.dead_primary_inner_pct));
    }
    return found;
  }

  // What the device has of the block and what stands in the form, with the tally's own figures in place of older ones.
  function together() {
    const found = {};
    const kept = page.store.load(data.edition.id).facts;
    Object.keys(kept).forEach((id) => { found[id] = kept[id].text; });
    page.link.parse(fragment).given.forEach((pair) => { found[pair[0]] = pair[1]; });
    data.carries.forEach((spec) => { delete found[spec.id]; });
    return Object.assign(found, texts());
  }

  function keep(told) {
    const facts = {};
    const found = texts();
    Object.keys(found).forEach((id) => { facts[id] = { text: found[id], status: Guide.facts.ENTERED }; });
    const why = page.store.save(data.edition.id, data.rules, data.carries, facts);
    told.textContent = why ? "This browser does not let the page keep them. The links above carry them all the same." : "Kept on this device: every page that asks these figures has them.";
  }

  function takeover() {
    const all = together();
    const told = el("p", { role: "status", id: "taken", "class": "small" }, []);
    return el("section", { "class": "print-not", id: "takeover" }, [
      el("h2", {}, ["Use these figures"]),
      el("p", {}, ["Each page opens with the figures filled in, and with what this device keeps of the block."]),
      result.spur_reach.ok ? null : el("p", {}, [
        "For spur or cane the reach counts: how far spurs go for the crop you want. Give the crop, the bearing vines, the bunch weight and the spacing under the board first."
      ]),
      el("div", { "class": "buttons" }, data.takes.map((one) => {
        const given = Object.keys(all).filter((id) => one.asks.indexOf(id) >= 0).map((id) => [id, all[id]]);
        return el("a", { "class": "button", href: data.root + one.page + page.link.make(data.edition.id, data.rules, given) }, [one.label]);
      })),
      el("div", { "class": "buttons" }, [tally.button("Keep the figures on this device too", () => { keep(told); }, { "class": "second", id: "keep-figures" })]), told
    ]);
  }

  return el("section", { "class": "found" }, [
    el("h2", {}, ["Node by node"]), page.tallyChart(result, others, tally.state.winter),
    el("p", {}, ["Ranges stand in brackets: they hold the true figure in " + text(inputs.confidence_pct, "pct", 0) + " of samples."]), nodes(), groups(), bearers(), takeover(), history(), published()
  ]);
};

// A tally is no part of a link: it goes by file.
Guide.page.show.keep = function () {
  "use strict";
  const el = Guide.page.el;
  return el("section", { "class": "print-not" }, [el("h2", {}, ["Keep or send it"]), el("p", {}, ["A tally is too long for a link. Save it as CSV and send the file: whoever opens it on this page sees the same."])]);
};
