
(function () {
  "use strict";
  var boxes = Array.prototype.slice.call(document.querySelectorAll("input.box"));
  var line = document.getElementById("ticked");
  var count = line.querySelector("span");
  var key = "ticks of " + document.body.getAttribute("data-print");

  function kept() {
    try {
      return (window.localStorage.getItem(key) || "").split(" ");
    } catch (refused) {
      return boxes.filter(ticked).map(name);
    }
  }

  function keep() {
    try {
      window.localStorage.setItem(key, boxes.filter(ticked).map(name).join(" "));
    } catch (refused) {
      // Ticks then last until the page is closed.
    }
    tell();
  }

  function ticked(box) {
    return box.checked;
  }

  function name(box) {
    return box.id;
  }

  function show() {
    var names = kept();
    boxes.forEach(function (box) {
      box.checked = names.indexOf(box.id) >= 0;
    });
    tell();
  }

  function tell() {
    var done = boxes.filter(ticked).length;
    line.hidden = done === 0;
    count.textContent = done + " of " + boxes.length + " boxes ticked, kept on this device.";
  }

  document.addEventListener("change", keep);
  window.addEventListener("storage", show);
  line.querySelector("button").addEventListener("click", function () {
    boxes.forEach(function (box) {
      box.checked = false;
    });
    keep();
    boxes[0].focus();
  });
  show();
})();
