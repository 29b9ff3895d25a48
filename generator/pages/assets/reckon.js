// What answers stands in files of its own, which come when the form is first touched: the sums, the sentences, and what shows them.
Guide.page.reckon = function (headline, then) {
  "use strict";
  const page = Guide.page;
  const left = page.data.answers;
  const under = page.waiting && page.waiting.length > 0;
  page.waiting = (page.waiting || []).concat([then]);

  // One file after the other, since each needs those before it.
  function next() {
    if (!left.length) {
      page.waiting.splice(0).forEach((one) => { one(); });
      return;
    }
    const script = page.el("script", { src: page.data.root + left[0] }, []);
    script.addEventListener("load", () => { left.shift(); next(); });
    script.addEventListener("error", () => {
      page.waiting = [];
      script.remove();
      headline.textContent = "The answer did not load. Open the page again where there is a signal.";
    });
    document.head.appendChild(script);
  }

  if (!under) { next(); }
};
