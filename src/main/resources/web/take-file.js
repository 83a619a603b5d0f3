// Reads a chosen file into the text field, so that no file is ever sent as such. Without this script the text is pasted.
"use strict";
(function () {
  const most = 1000000;
  const box = document.getElementById("file-box");
  const file = document.getElementById("file");
  const text = document.getElementById("text");
  const told = document.getElementById("file-told");
  if (!box || !file || !text || !told) {
    return;
  }
  box.hidden = false;
  file.addEventListener("change", async function () {
    const chosen = file.files[0];
    if (!chosen) {
      return;
    }
    if (chosen.size > most) {
      told.textContent = "This file is larger than " + most + " bytes, the most that is read here. Nothing was taken.";
      return;
    }
    text.value = await chosen.text();
    told.textContent = "The file stands in the text below. Look at it, then go on.";
    text.focus();
  });
})();
