// The answer to a claim of what foods contain, or of many products at once: a verdict, one sentence, a row for each product.
import { copyButton } from "./copy.js";
import { el } from "./dom.js";
import { along } from "./frame.js";
import { capital, figure, has, interval, name, t, the } from "./i18n.js";
import { sentenceOf, term } from "./terms.js";
import { sign } from "./verdict.js";

const signs = { "holds-only-for": "≈", "not-traceable": "—", partly: "≈", unresolved: "?" };
const nutrients = ["protein", "fat", "energy", "iron", "zinc", "calcium", "vitamin-b12"];

/** A verdict over all bases, as a headline. */
export const overall = (verdict, words) => el("p", { class: `headline is-${verdict}` },
  el("span", { class: "sign", "aria-hidden": "true" }, signs[verdict] ?? sign(verdict)),
  el("span", {}, words, t("colon")), el("strong", {}, t(`overall.${verdict}`)));

/** The cell that answers: the one asked, or the first other one on which both sides have figures. */
const answering = (cells) => cells.find((cell) => cell.asked && cell.times) ?? cells.find((cell) => cell.times && cell.verdict === "holds") ?? cells.find((cell) => cell.times && !cell.decided_by_water) ?? null;

const formed = (product, english, form) => (form && form !== "fresh" ? t("contents.formed", { product: the("product", product, english), form: name("form", form) }) : the("product", product, english));

const contentOf = (cell) => (has(`names.content.${cell.quantity}`) ? name("content", cell.quantity) : cell.quantity.replaceAll("-", " "));

/** The comparison of one product in a sentence of at most 25 words. */
function said(one, cell, reference) {
  const values = { product: formed(one.product, one.name, cell.form), reference: formed(reference, undefined, cell.reference_form), content: contentOf(cell), basis: name("basis", cell.basis) };
  const { low, high } = cell.times;
  const same = figure(low) === figure(high);
  return capital(same ? t("contents.about", { ...values, times: figure(low) }) : t("contents.between", { ...values, low: figure(low), high: figure(high) }));
}

/** A row for each product: verdict, how many times as much, on which basis. */
function table(rows, head) {
  return el("div", { class: "scrolls", tabindex: "0", role: "group", "aria-label": t("contents.each") }, el("table", {},
    el("caption", {}, t("contents.each")),
    el("thead", {}, el("tr", {}, head.map((words) => el("th", { scope: "col" }, words)))),
    el("tbody", {}, rows)));
}

/** The answer to a claim of contents; `id` of its sentence, where there are several answers. */
export function contentAnswer(answer, id = "answer-sentence") {
  const { reference, products = reference, content } = answer.question;
  const single = answer.contents.length === 1;
  const found = answer.contents.map((one) => ({ one, cell: answering(one.cells) }));
  const first = found.find(({ cell }) => cell) ?? null;
  const spoken = first && reference ? said(first.one, first.cell, reference) : null;
  const text = spoken ?? answer.say_instead;
  const silent = [...found.filter(({ cell }) => !cell).map(({ one }) => one.product), ...(answer.without_evidence ?? [])];
  const seen = found.filter(({ cell }) => cell);
  return [
    el("p", { class: "read-as" }, t("ask.read-as"), " ", answer.claim),
    overall(answer.verdict, t("verdict.title")),
    el("blockquote", { id }, text),
    el("p", { class: "footnote" }, sentenceOf("contents.note", {
      samples: term(t("contents.samples"), "samples"), form: term(t("contents.dry"), "dry"), absorbed: term(t("contents.absorbed"), "absorbed") })),
    copyButton(t("verdict.copy"), () => `${text} (${answer.say_instead})`, () => document.getElementById(id)),
    seen.length < 2 ? null : table(seen.map(({ one, cell }) => el("tr", {},
      el("th", { scope: "row" }, capital(formed(one.product, one.name, cell.form))),
      el("td", { class: `is-${cell.verdict}` }, el("span", { class: "said-verdict" }, t(`verdict.${cell.verdict}`))),
      el("td", { class: "n" }, interval(cell.times.low, cell.times.high)),
      el("td", {}, name("basis", cell.basis)))), [t("tables.product"), t("verdict.title"), t("contents.times"), t("contents.basis")]),
    silent.length === 0 ? null : el("p", { class: "footnote" }, t("contents.silent", { products: silent.map((id) => name("product", id)).join(", ") })),
    el("details", {}, el("summary", {}, t("verdict.reasoning")), el("p", {}, answer.reason),
      single || answer.contents.length > 4 ? null : answer.contents.map((one) => el("p", {}, `${capital(one.name)}${t("colon")}${one.reason}`))),
    el("p", { class: "downloads" },
      nutrients.includes(content) ? el("a", { class: "button", href: along(`/protein?nutrient=${content}&products=${[...new Set([...seen.map(({ one }) => one.product).slice(0, 5), products].filter(Boolean))].join(",")}`) }, t("contents.side-by-side")) : null),
  ];
}

/** The answer to a claim of a footprint of several insects, or one without a number: a row for each, and a way to the studies of each. */
export function severalAnswer(answer, see) {
  const { reference, indicator } = answer.question;
  const rows = answer.checks.map((check) => ({ check, cell: check.cells.find((cell) => cell.asked) ?? check.cells[0] }));
  const times = (cell) => {
    if (!cell?.times_less) return "";
    const { low, high, median } = cell.times_less;
    return median >= 1 ? `${t("farm.less", { times: figure(median) })} (${interval(low, high)})` : `${t("farm.more", { times: figure(1 / median) })} (${interval(1 / high, 1 / low)})`;
  };
  return [
    el("p", { class: "read-as" }, t("ask.read-as"), " ", answer.claim),
    overall(answer.verdict, t("verdict.title")),
    el("blockquote", {}, answer.say_instead.sentence.replace(/ \(.*$/s, ".").replace(/\.\.$/, ".")),
    el("details", {}, el("summary", {}, t("verdict.reasoning")), el("p", {}, answer.reason), el("p", {}, answer.say_instead.sentence)),
    rows.length === 0 ? null : table(rows.map(({ check, cell }) => el("tr", {},
      el("th", { scope: "row" }, reference
        ? el("button", { type: "button", class: "in-text", onclick: () => see({ product: check.product, against: reference, indicator }) },
          capital(the("product", check.product, check.name)), el("span", { class: "unseen" }, `${t("colon")}${t("ask.see-studies")}`))
        : capital(the("product", check.product, check.name))),
      el("td", { class: `is-${check.verdict}` }, el("span", { class: "said-verdict" }, t(`overall.${check.verdict}`))),
      el("td", { class: "n" }, times(cell)))),
    [t("tables.product"), t("verdict.title"), reference ? t("contents.less-than", { reference: the("product", reference) }) : ""]),
    answer.without_evidence.length === 0 ? null : el("p", { class: "footnote" }, t("contents.silent", { products: answer.without_evidence.map((id) => name("product", id)).join(", ") })),
  ];
}
