// Pictures in true size: on paper they are, on a screen after it was set by the edge of a bank card or a ruler. Kept on the device.
(function () {
  "use strict";
  const NAME = "pruning-guide/screen";
  const LOW = 0.5;
  const HIGH = 2.5;
  const pictures = Array.from(document.querySelectorAll(".true svg"));
  const millimetres = pictures.map((one) => [parseFloat(one.getAttribute("width")), parseFloat(one.getAttribute("height"))]);
  let scale = 1;

  // How many times larger than the browser's own millimetres.
  function show(times) {
    pictures.forEach((one, place) => {
      one.setAttribute("width", millimetres[place][0] * times + "mm");
      one.setAttribute("height", millimetres[place][1] * times + "mm");
    });
  }

  function read() { try { return Number(window.localStorage.getItem(NAME)) || 1; } catch (error) { return 1; } }
  function keep() { try { window.localStorage.setItem(NAME, String(scale)); } catch (error) { /* then it is set again next time */ } }

  function made(tag, attributes, text) {
    const one = document.createElement(tag);
    Object.keys(attributes).forEach((name) => { one.setAttribute(name, attributes[name]); });
    one.textContent = text || "";
    return one;
  }

  const slider = made("input", { type: "range", id: "true-size", min: LOW, max: HIGH, step: 0.005 });

  function set(times) {
    scale = Math.min(HIGH, Math.max(LOW, times));
    slider.value = String(scale);
    show(scale);
  }

  function change(times) { set(times); keep(); }

  function button(text, label, by) {
    const one = made("button", { type: "button", "class": "second", "aria-label": label }, text);
    one.addEventListener("click", () => { change(scale + by); });
    return one;
  }

  const row = made("div", { "class": "given" });
  [button("\u2212", "Smaller", -0.005), slider, button("+", "Larger", 0.005)].forEach((one) => { row.appendChild(one); });
  const place = made("div", { "class": "print-not", id: "set-screen" });
  [made("label", { "for": "true-size" }, "Set this screen: hold a bank card upright on the first picture, or a ruler on the second, and move the slider until both are as wide."), row]
    .forEach((one) => { place.appendChild(one); });
  pictures[0].closest(".look").before(place);
  slider.addEventListener("input", () => { change(Number(slider.value)); });
  window.addEventListener("beforeprint", () => { show(1); });
  window.addEventListener("afterprint", () => { show(scale); });
  set(read());
})();
