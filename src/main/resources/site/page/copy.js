import { el } from "./dom.js";
import { t } from "./i18n.js";

/** A button that copies a text and confirms it; where the browser refuses, the text is selected for copying by hand. */
export function copyButton(words, text, beside) {
  const said = el("span", { class: "copied", role: "status" });
  const button = el("button", { type: "button", class: "copy", onclick: async () => {
    try {
      await navigator.clipboard.writeText(text());
      said.textContent = t("take.copied");
    } catch {
      const range = document.createRange();
      const shown = typeof beside === "function" ? beside() : button.previousElementSibling ?? button;
      range.selectNodeContents(shown);
      getSelection().removeAllRanges();
      getSelection().addRange(range);
      said.textContent = t("take.cannot");
    }
    setTimeout(() => (said.textContent = ""), 4000);
  } }, words);
  return el("span", { class: "copying" }, button, said);
}
