// A farm's figure as a table, as a sentence and as cells of a spreadsheet.
import { el } from "./dom.js";
import { capital, figure, interval, name, share, t, the, unit } from "./i18n.js";

/** Whether a figure beside the farm is as published; else it is computed from records by the same rules. */
export const isPublished = (side) => side.origin === "publications";

/** Whether it is a reference farm: published practice by the rules of records. */
export const isPractice = (side) => side.origin === "practice";

/** The kind of a compared side: computed by the same rules, modelled from published practice, or as published. */
export const kind = (side) => (isPublished(side) ? t("farm.published", { n: side.studies ?? 0 }) : isPractice(side) ? t("farm.practice") : t("farm.computed"));
const basisOf = (side) => (isPublished(side) ? "published" : isPractice(side) ? "modelled" : "computed");
const called = (side) => (isPublished(side) ? capital(name("product", side.product, side.name)) : side.system);

/** The ratio of the farm to another as times less or more, with its interval and whether that includes 1; nothing where there is no ratio. */
export function times(side) {
  // A ratio that is a bound is no ratio to be quoted.
  if (side.status !== "ok" || !(side.times_less?.low > 0) || side.times_less.bound !== "exact") return null;
  const { median, low, high } = side.times_less;
  const less = median >= 1;
  return {
    times: t(less ? "farm.less" : "farm.more", { times: figure(less ? median : 1 / median) }),
    interval: (less ? interval(low, high) : interval(1 / high, 1 / low)) + (low < 1 && high > 1 ? t("farm.unclear") : ""),
    product: isPublished(side) ? the("product", side.product, side.name) : side.system,
  };
}

/** The stages with their shares, which are only meaningful where no stage is a credit and nothing required is left out. */
export function stagesOf(found) {
  const stages = found.by_stage ?? [];
  const credited = stages.some((stage) => stage.value < 0);
  return stages.map((stage) => ({ ...stage, said: credited || found.bound !== "exact" || stage.share === undefined ? "" : share(stage.share) }));
}

/** The chart as two tables. */
export function table(found, farm) {
  const words = unit(found.indicator, found.per);
  const head = (...names) => el("thead", {}, el("tr", {}, names.map((one, index) => el("th", { scope: "col", class: index === 1 || index === 2 ? "n" : null }, one))));
  const below = (value) => (value > 0 ? null : el("small", {}, ` ${t("chart.below")}`));
  const row = (label, side, ofKind) => el("tr", {}, el("th", { scope: "row" }, label),
    side.footprint
      ? [el("td", { class: "n" }, side.bound === "at-least" ? t("farm.at-least") : side.bound === "at-most" ? t("farm.at-most") : "", figure(side.footprint.median), below(side.footprint.median)), el("td", { class: "n" }, interval(side.footprint.low, side.footprint.high))]
      : el("td", { colspan: 2 }, t("tables.none")),
    el("td", {}, ofKind));
  return el("details", { class: "results", open: true }, el("summary", {}, t("farm.table")),
    el("div", { class: "scrolls pairs", tabindex: "0", role: "group", "aria-label": t("farm.table") },
      el("table", { id: "stages-table" },
        el("caption", {}, `${t("farm.made")} (${words})`),
        head(t("farm.stage"), t("farm.value"), t("farm.part")),
        el("tbody", {}, stagesOf(found).map((stage) => el("tr", {}, el("th", { scope: "row" }, name("stage", stage.stage, stage.stage)),
          el("td", { class: "n" }, figure(stage.value)), el("td", { class: "n" }, stage.said))))),
      el("table", { id: "beside-table" },
        el("caption", {}, `${t("farm.beside-others")} (${words})`),
        head(t("tables.product"), t("tables.footprint"), t("tables.interval"), t("tables.evidence")),
        el("tbody", {}, row(farm, found, t("farm.computed")), (found.compare ?? []).map((side) => row(called(side), side, kind(side)))))));
}

/** The sentence to write: the figure with its interval, and its ratio to each of the others. */
export function sentence(found, { farm, product, lower, version }) {
  const besides = (found.compare ?? []).filter(times).map((side) => t("farm.sentence-beside", { ...times(side), kind: kind(side) }));
  return [
    t("farm.sentence", { name: farm, product, boundary: name("boundary", found.boundary), value: (found.bound === "at-least" ? t("farm.at-least") : "") + figure(found.footprint.median),
      interval: interval(found.footprint.low, found.footprint.high), unit: unit(found.indicator, found.per) }),
    besides.length ? t("farm.sentence-besides", { besides: besides.join("; ") }) : "",
    lower ? t("farm.sentence-lower", { name: farm }) : "",
    t("farm.sentence-by", { version }),
  ].filter(Boolean).join(" ");
}

const columns = ["part", "indicator", "name", "basis", "studies", "value", "low", "high", "coverage", "share", "unit", "per", "boundary", "gwp", "library_version", "library_digest"];

/**
 * Figures as cells: tab-separated for pasting into a spreadsheet, or as CSV (RFC 4180).
 *
 * @param whole whether to include the stages and lines of each figure
 */
export function cells(footprints, farm, library, { separator = "\t", decimal = ".", whole = false }) {
  const rows = footprints.flatMap((found) => {
    if (!found.footprint) return [];
    const common = { indicator: found.indicator, per: found.per, boundary: found.boundary, gwp: found.gwp, library_version: library.version, library_digest: library.digest };
    const measured = found.footprint.unit;
    const result = (part, who, basis, side) => ({ ...common, part, name: who, basis, studies: side.studies, value: side.footprint.median, low: side.footprint.low,
      high: side.footprint.high, coverage: side.footprint.coverage, unit: measured });
    return [
      result("figure", farm, "computed", found),
      ...(found.compare ?? []).filter((side) => side.footprint).map((side) => result("beside", isPublished(side) ? side.name : side.system, basisOf(side), side)),
      ...(whole ? [
        ...found.by_stage.map((one) => ({ ...common, part: "stage", name: one.stage, basis: "computed", value: one.value, share: one.share, unit: measured })),
        ...(found.by_gas ?? []).map((one) => ({ ...common, part: "gas", name: one.gas, basis: "computed", value: one.value, share: one.share, unit: measured })),
        ...found.lines.map((one) => ({ ...common, gwp: one.gwp ?? found.gwp, part: "line", name: `${one.stage}: ${one.what}`, basis: "computed", value: one.value, unit: measured })),
      ] : []),
    ];
  });
  const cell = (value) => {
    if (value === undefined) return "";
    if (typeof value === "number") return String(value).replace(".", decimal);
    // A name that begins like a formula must stay a name.
    const text = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
    return separator === "\t" ? text.replace(/[\t\r\n]+/g, " ") : /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  };
  return [columns, ...rows.map((row) => columns.map((column) => row[column]))].map((row) => row.map(cell).join(separator)).join(separator === "\t" ? "\n" : "\r\n") + (separator === "\t" ? "" : "\r\n");
}
