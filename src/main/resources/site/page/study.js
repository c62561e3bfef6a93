// One published result in full: the printed number, its check grade, and its conversion to the comparison basis.
import { select } from "./d3.js";
import { el, english, fill } from "./dom.js";
import { capital, figure, name, share, t, the, unit, written } from "./i18n.js";
import { drawMark } from "./marks.js";

const grades = ["fulltext", "abstract", "secondary", "memory"];

export function glyph(grade) {
  const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  for (const [key, value] of Object.entries({ viewBox: "-8 -8 16 16", width: 16, height: 16, class: "glyph", "aria-hidden": "true" })) {
    svg.setAttribute(key, value);
  }
  drawMark(select(svg).append("g"), grade);
  return svg;
}

/** How to read the chart, while no study is selected. */
export function legend(box, question, reference) {
  fill(box,
    el("h3", { id: "study-title" }, t("study.title")),
    el("ul", { class: "legend" },
      grades.map((grade) => el("li", {}, glyph(grade), el("span", {}, capital(name("grade", grade))))),
      el("li", {}, el("i", { class: "key key-band" }), el("span", {}, t("study.band"))),
      el("li", {}, el("i", { class: "key key-band key-mean" }), el("span", {}, t("study.mean"))),
      el("li", {}, el("i", { class: "key key-hatched" }), el("span", {}, t("modelled.legend"))),
      el("li", {}, el("i", { class: "key key-line" }), el("span", {}, t("study.line", { reference }))),
      el("li", {}, el("i", { class: "key key-flag" }), el("span", {}, t("study.flag"))),
      el("li", {}, el("i", { class: "key key-can" }), el("span", {}, t("study.defensible")))),
    el("p", {}, `${t("study.sizes")}. ${t("study.point")}`));
}

function step(one, label) {
  const by = `${written(Number(one.multiplier.toPrecision(3)))}`;
  const said = one.kind === "unit"
    ? t("study.unit", { from: name("per", one.from), to: name("per", one.to), by })
    : one.kind === "warming-set"
      ? t("study.warming-set", { from: one.from, to: one.to, by })
      : t("study.stages", { by });
  const why = one.by_definition
    ? english(one.by_definition)
    : one.source ? `${t("study.from", { quantity: one.quantity ? name("quantity", one.quantity) : "", source: label(one.source) }).replace(/^, /, "")}` : null;
  return el("li", {}, said, why ? el("span", { class: "why" }, " ", why, one.check ? [" ", glyph(one.check), el("span", { class: "unseen" }, name("grade", one.check))] : null) : null);
}

/** Shows a finding of a side; `labels` knows references and regions. */
export function study(box, finding, side, question, labels, close) {
  const { published } = finding;
  const reference = labels.reference(finding.source);
  const row = (words, ...said) => (said.some(Boolean) ? [el("dt", {}, words), el("dd", {}, said)] : []);
  const spread = published.low !== undefined && published.high !== undefined
    ? ` (${t("study.range", { low: written(published.low), high: written(published.high) })})` : "";
  fill(box,
    el("div", { class: "study-head" },
      el("h3", { id: "study-title" }, labels.label(finding.source)),
      close ? el("button", { type: "button", class: "quiet", onclick: close }, t("study.close")) : null),
    el("p", { class: "big" }, figure(finding.harmonised_median), " ", el("span", {}, unit(question.indicator, question.per))),
    el("dl", {},
      row(t("study.published"), published.value === undefined ? null : written(published.value), spread, " ",
        english(`${published.unit} per ${published.basis.replace(/^kg feed per /, "")}`), ", ", name("boundary", published.boundary)),
      row(t("study.seen"), glyph(finding.check), " ", capital(name("grade", finding.check)), finding.locator ? [t("colon"), english(finding.locator)] : null),
      row(t("study.place"), name("region", finding.region, labels.region(finding.region))),
      row(t("study.scale"), finding.scale && finding.scale !== "not-stated" ? english(finding.scale.replaceAll("-", " ")) : null),
      row(t("study.substrate"), finding.substrate ? english(finding.substrate) : null),
      row(t("study.allocation"), finding.allocation && !["none", "not-stated"].includes(finding.allocation) ? english(finding.allocation.replaceAll("-", " ")) : null),
      row(t("study.weight"), t("study.weight-said", { share: share(finding.weight), product: the("product", side.product, side.name) })),
      row(t("study.notes"), finding.note ? english(finding.note) : null)),
    el("h4", {}, t("study.steps")),
    finding.steps.length === 0
      ? el("p", {}, t("study.none"))
      : el("ol", { class: "steps" }, finding.steps.map((one) => step(one, labels.label))),
    finding.notes.length === 0 ? null : el("ul", { class: "finding-notes" }, finding.notes.map((note) => el("li", {}, note.text))),
    el("p", { class: "source" }, english(reference?.text ?? finding.source)),
    el("p", { class: "ways" },
      reference?.doi ? el("a", { href: `https://doi.org/${reference.doi}`, rel: "noreferrer" }, `doi:${reference.doi}`) : null, " ",
      el("a", { href: `/v1/rows/${finding.result}` }, t("study.row"))));
}
