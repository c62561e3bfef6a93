// Export: sentences, cells, links, citations and files.
import { copyButton } from "./copy.js";
import { el, fill } from "./dom.js";
import { language, t } from "./i18n.js";
import { asPng, asSvg, save } from "./picture-file.js";

/** Spreadsheet programs, with the formula by which each fetches an address. */
const programs = {
  calc: (url) => `=NUMBERVALUE(WEBSERVICE("${url}");".";",")`,
  excel: (url) => `=NUMBERVALUE(WEBSERVICE("${url}"),".",",")`,
  sheets: (url) => `=IMPORTDATA("${url}")`,
};

/** The decimal signs of spreadsheets; that of the page's language first. */
const decimals = language === "fr" ? { comma: ",", point: "." } : { point: ".", comma: "," };

export const today = () => new Intl.DateTimeFormat(language, { dateStyle: "long" }).format(new Date());

/** One thing to copy, with its name. A box that scrolls must be focusable. */
function copyable(words, id, text) {
  const shown = el("code", { id, tabindex: id === "take-link" ? 0 : null }, text);
  return el("div", { class: "copyable" }, el("h3", {}, words), shown, copyButton(t("take.copy"), () => shown.textContent, () => shown));
}

/** The same in several ways, one of which is chosen. */
function chosen(words, id, ways, choiceId) {
  const shown = el("code", { id, tabindex: 0 }, ways[Object.keys(ways)[0]]());
  const choice = el("select", { id: choiceId, "aria-label": t("take.formula-for"), onchange: () => {
    shown.textContent = ways[choice.value]();
  } }, Object.keys(ways).map((way) => el("option", { value: way }, t(`take.${way}`))));
  return el("div", { class: "copyable" }, el("h3", {}, words, " ", choice), shown, copyButton(t("take.copy"), () => shown.textContent, () => shown));
}

const each = (choices, of) => Object.fromEntries(Object.entries(choices).map(([way, by]) => [way, () => of(by)]));

/** Buttons that save a picture as a file. */
function pictureButtons({ svg, title, caption, fileName }) {
  const drawn = () => asSvg(svg(), title, caption);
  return [
    [t("take.svg"), "save-svg", () => save(new Blob([drawn().text], { type: "image/svg+xml" }), `${fileName}.svg`)],
    [t("take.png"), "save-png", async () => save(await asPng(drawn()), `${fileName}.png`)],
  ];
}

/**
 * Fills the box.
 *
 * @param things `sentence`, `paragraph`, `cell` (address of one number), `cells` (figures to paste: `name`, and `of` a decimal sign), `link`, `citation`, `picture`
 *   (svg, title, caption, file name), `files` and `pages` (name, address, id), `made` (name, id, a function that creates the file)
 */
export function take(box, { sentence, paragraph, cell, cells, link, citation, picture, files = [], pages = [], made = [] }) {
  fill(box,
    el("div", { class: "copyables" },
      copyable(t("take.sentence"), "take-sentence", sentence),
      paragraph ? copyable(t("take.paragraph"), "take-paragraph", paragraph) : null,
      cell ? chosen(t("take.formula"), "formula", each(programs, (formula) => formula(cell)), "program") : null,
      cells ? chosen(cells.name, "cells", each(decimals, cells.of), "decimal") : null,
      copyable(t("take.link"), "take-link", link),
      copyable(t("take.citation"), "take-citation", citation)),
    el("p", { class: "downloads" },
      [...pictureButtons(picture), ...made].map(([words, id, make]) => el("button", { type: "button", id, onclick: make }, words)),
      files.map(([words, href, id]) => el("a", { href, id, download: true, class: "button" }, words)),
      pages.map(([words, href, id]) => el("a", { href, id, class: "button" }, words)),
      el("button", { type: "button", onclick: () => print() }, t("take.print"))));
}
