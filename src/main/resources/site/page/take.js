// What the reader takes along: words, a cell, a link, a citation, and files.
import { copyButton } from "./copy.js";
import { el, fill } from "./dom.js";
import { language, t } from "./i18n.js";
import { asPng, asSvg, save } from "./picture-file.js";

/** The programs whose formulas differ, with how each asks an address. */
const programs = {
  calc: (url) => `=NUMBERVALUE(WEBSERVICE("${url}");".";",")`,
  excel: (url) => `=NUMBERVALUE(WEBSERVICE("${url}"),".",",")`,
  sheets: (url) => `=IMPORTDATA("${url}")`,
};

export const today = () => new Intl.DateTimeFormat(language, { dateStyle: "long" }).format(new Date());

/** One thing to copy, with its name. */
function copyable(words, id, text) {
  const shown = el("code", { id }, text);
  return el("div", { class: "copyable" }, el("h3", {}, words), shown, copyButton(t("take.copy"), () => shown.textContent, () => shown));
}

/** A choice of formula. */
function formulas(cell) {
  const shown = el("code", { id: "formula" }, programs.calc(cell));
  const choice = el("select", { id: "program", "aria-label": t("take.formula-for"), onchange: () => {
    shown.textContent = programs[choice.value](cell);
  } }, Object.keys(programs).map((program) => el("option", { value: program }, t(`take.${program}`))));
  return el("div", { class: "copyable" }, el("h3", {}, t("take.formula"), " ", choice), shown,
    copyButton(t("take.copy"), () => shown.textContent, () => shown));
}

/** Buttons that make files of a picture. */
export function pictureButtons(svg, title, caption, fileName) {
  return [
    el("button", { type: "button", id: "save-svg", onclick: () => save(
      new Blob([asSvg(svg(), title, caption).text], { type: "image/svg+xml" }), `${fileName}.svg`) }, t("take.svg")),
    el("button", { type: "button", id: "save-png", onclick: async () => save(await asPng(asSvg(svg(), title, caption)), `${fileName}.png`) },
      t("take.png")),
  ];
}

/**
 * Fills the box.
 *
 * @param things `sentence`, `cell` (address of one number), `link`, `citation`, `files` and `pages` (name, address, id), `picture` (svg, title, caption,
 *   file name)
 */
export function take(box, { sentence, cell, link, citation, files, pages, picture }) {
  fill(box,
    el("div", { class: "copyables" },
      sentence ? copyable(t("take.sentence"), "take-sentence", sentence) : null,
      cell ? formulas(cell) : null,
      link ? copyable(t("take.link"), "take-link", link) : null,
      citation ? copyable(t("take.citation"), "take-citation", citation) : null),
    el("p", { class: "downloads" },
      picture ? pictureButtons(picture.svg, picture.title, picture.caption, picture.fileName) : null,
      (files ?? []).map(([words, href, id]) => el("a", { href, id, download: true, class: "button" }, words)),
      (pages ?? []).map(([words, href, id]) => el("a", { href, id, class: "button" }, words)),
      el("button", { type: "button", onclick: () => print() }, t("take.print"))));
}
