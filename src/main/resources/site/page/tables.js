// The chart as tables, as an alternative for reading and for screen readers.
import { el, fill } from "./dom.js";
import { capital, figure, interval, name, t, the, unit, written } from "./i18n.js";
import { findings } from "./chart.js";
import { besideOf, bounded } from "./modelled.js";
import { glyph } from "./study.js";

function scrolling(label, table) {
  return el("div", { class: "scrolls", tabindex: "0", role: "group", "aria-label": label }, table);
}

/** Explains why a number at or below zero has no mark. */
const below = (value) => (value > 0 ? null : el("small", {}, ` ${t("chart.below")}`));

/** The figure by the other kind of evidence with its interval. */
function besideFigure(side, question) {
  const beside = besideOf(side, question);
  return beside ? `${bounded(beside)} (${interval(beside.footprint.low, beside.footprint.high)})` : t("tables.none");
}

export function tables(box, answer, question, labels) {
  const sides = [answer.reference, ...answer.items];
  const modelled = question.evidence === "modelled";
  const words = unit(question.indicator, question.per);
  const reference = the("product", answer.reference.product, answer.reference.name);
  const head = (...names) => el("thead", {}, el("tr", {}, names.map((one) => el("th", { scope: "col" }, one))));
  fill(box,
    scrolling(t("tables.products"), el("table", { id: "products-table" },
      el("caption", {}, `${t("tables.products")}${t("colon")}${t("chart.title", { indicator: name("indicator", question.indicator),
        boundary: name("boundary", question.boundary), unit: words })}${modelled ? `; ${t("modelled.words")}` : ""}`),
      head(t("tables.product"), `${t("tables.footprint")} (${words})`, t("tables.interval"), t("tables.times", { reference }), t("tables.interval"), t("tables.studies"),
        modelled ? t("modelled.published") : t("modelled.column")),
      el("tbody", {}, sides.map((side, index) => el("tr", {},
        el("th", { scope: "row" }, capital(name("product", side.product, side.name))),
        side.footprint
          ? [el("td", { class: "n" }, bounded(side), below(side.footprint.median)), el("td", { class: "n" }, interval(side.footprint.low, side.footprint.high))]
          : el("td", { colspan: 2 }, t("tables.none")),
        side.times_less?.low > 0
          ? [el("td", { class: "n" }, figure(side.times_less.median)), el("td", { class: "n" }, interval(side.times_less.low, side.times_less.high))]
          : el("td", { colspan: 2 }, index === 0 ? t("tables.reference") : side.times_less ? t("chart.no-times") : ""),
        el("td", { class: "n" }, !modelled ? written(side.studies) : side.footprint ? t("modelled.short") : ""),
        el("td", { class: "n" }, besideFigure(side, question))))))),
    el("details", { class: "results" },
      el("summary", {}, `${t("tables.results")} (${sides.reduce((sum, side) => sum + findings(side).length, 0)})`),
      scrolling(t("tables.results"), el("table", {},
        el("caption", { class: "unseen" }, t("tables.results")),
        head(t("tables.product"), t("tables.study"), `${t("tables.value")} (${words})`, t("tables.printed"), t("tables.place"), t("tables.check"), t("tables.steps")),
        el("tbody", {}, sides.flatMap((side) => findings(side).map((finding) => el("tr", {},
          el("th", { scope: "row" }, capital(name("product", side.product, side.name))),
          el("td", {}, labels.reference(finding.source)?.doi
            ? el("a", { href: `https://doi.org/${labels.reference(finding.source).doi}`, rel: "noreferrer" }, labels.label(finding.source))
            : labels.label(finding.source)),
          el("td", { class: "n" }, figure(finding.harmonised_median), below(finding.harmonised_median)),
          el("td", { lang: "en" }, finding.published.value === undefined ? "" : `${written(finding.published.value)} ${finding.published.unit} per ${finding.published.basis}`),
          el("td", {}, name("region", finding.region, labels.region(finding.region))),
          el("td", {}, glyph(finding.check), " ", name("grade", finding.check)),
          el("td", { class: "n" }, written(finding.steps.length))))))))));
}
