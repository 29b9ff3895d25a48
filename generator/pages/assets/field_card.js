// A field card: one side of paper for the hand that holds the shears, made of what the answer shows, with room for row, name and day.
Guide.page.fieldCard = function (title, parts) {
  "use strict";
  const page = Guide.page;
  const el = page.el;

  // What is shown, without what only a screen can use.
  function copied(node) {
    const made = node.cloneNode(true);
    Array.from(made.querySelectorAll("button, details, .print-not")).forEach((one) => { one.remove(); });
    [made].concat(Array.from(made.querySelectorAll("[id]"))).forEach((one) => { one.removeAttribute("id"); one.removeAttribute("role"); });
    return made;
  }

  function cautions() {
    const names = Array.from(document.querySelectorAll(".caution:not([hidden]) strong")).map((one) => one.textContent.replace(/\.$/, ""));
    return names.length ? el("p", {}, [el("strong", {}, ["Take care: "]), names.join(", ") + "."]) : null;
  }

  function print() {
    const blanks = ["Rows", "Name", "Day"].map((name) => el("span", {}, [name]));
    const card = el("section", { "class": "field-card", "aria-label": title }, [el("h2", {}, [title])].concat(parts().map(copied), [cautions(), el("p", { "class": "blanks" }, blanks)]));
    document.querySelector(".page").appendChild(card);
    document.body.classList.add("card-only");
    window.addEventListener("afterprint", () => { card.remove(); document.body.classList.remove("card-only"); }, { once: true });
    window.print();
  }

  const button = el("button", { type: "button", "class": "second" }, ["Print the field card"]);
  button.addEventListener("click", print);
  return el("p", { "class": "print-not" }, [button]);
};
