// The form of the plan: each stage's questions fold under its name, with a count of what is answered.
Guide.page.planForm = function () {
  "use strict";
  const page = Guide.page;

  const questions = page.ask.all;
  page.ask.all = function () {
    const made = [];
    questions().forEach((one) => {
      if (one.tagName === "H2") { made.push(fold(one.textContent, made.length === 0)); } else { made[made.length - 1].appendChild(one); }
    });
    return made;
  };

  function fold(title, open) {
    const made = page.el("details", { "class": "stage" }, [page.handle(title)]);
    made.open = open;
    return made;
  }

  // The way to the plan stays in reach at the foot of the window; clearing stands apart from it.
  const form = document.getElementById("form");
  form.classList.add("long");
  form.insertBefore(document.getElementById("clear"), document.getElementById("kept"));

  page.open();
  // Where a link brought the plan, it is what the reader wants to see first.
  if (!document.getElementById("answer").hidden) { Array.from(document.querySelectorAll("details.stage")).forEach((one) => { one.open = false; }); }
};
