// Sums that are large stand in a file of their own and come with the first answer.
Guide.page.reckon = function (headline, then) {
  "use strict";
  const data = Guide.page.data;
  if (!data.sums || Guide[data.name]) { then(); return; }
  const waiting = document.getElementById("sums");
  const script = waiting || Guide.page.el("script", { src: data.root + data.sums, id: "sums" }, []);
  script.addEventListener("load", then);
  script.addEventListener("error", () => {
    headline.textContent = "The sums of this page did not load. Open the page again where there is a signal.";
    script.remove();
  });
  if (!waiting) { document.head.appendChild(script); }
};
