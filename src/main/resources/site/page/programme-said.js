// The answer to a programme in words, as rows of pictures and as tables.
import { el } from "./dom.js";
import { capital, figure, interval, name, share, t, written } from "./i18n.js";

export const yearly = (indicator) => name("yearly", indicator);

/** A number for print that is never rounded in favour of the programme. */
function rounded(value, way) {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 1);
  return Number((way(value / step) * step).toPrecision(2));
}

/** What may be said of a change, in at most 25 words, and the figure behind it. */
export function changeSaid(change) {
  const { low, high, median, bound } = change.avoided;
  const unit = yearly(change.indicator);
  const values = { unit, indicator: name("indicator", change.indicator) };
  const range = t("programme.range", { median: figure(median), interval: interval(low, high), unit });
  const footnote = t("programme.footnote", { range });
  const atMost = bound === "at-most";
  if (low > 0 && !atMost) return { saves: true, range, footnote, text: t("programme.saves", { ...values, least: figure(rounded(low, Math.floor)) }) };
  if (high < 0) return { saves: false, range, footnote, text: t("programme.adds", { ...values, least: figure(rounded(-high, Math.floor)), most: figure(rounded(-low, Math.ceil)) }) };
  return { saves: false, range, footnote, text: atMost ? t("programme.bound", values) : t("programme.unclear", { ...values, more: figure(rounded(-low, Math.ceil)), less: figure(rounded(high, Math.ceil)) }) };
}

const ranged = (of) => `${figure(of.median)} (${interval(of.low, of.high)})`;
const rowOf = (of, label, under, kind) => ({ name: label, under, kind, value: of.median, low: of.low, high: of.high, open: of.bound !== undefined && of.bound !== "exact", said: figure(of.median) });

/** The year in three rows: caused, no longer caused, and the difference. */
export const rowsOf = (change) => [
  rowOf(change.caused_by_product, t("programme.caused"), t("programme.caused-by"), ""),
  rowOf(change.caused_by_displaced, t("programme.no-longer"), t("programme.no-longer-by"), "other-row"),
  rowOf(change.avoided, t("programme.avoided"), t("programme.avoided-by"), "own-row"),
];

/** The inputs that the figure hangs on, the most decisive first, with the span of the median over their settings. */
export function drivers(change) {
  const kinds = [...new Set((change.sensitivity ?? []).map((swing) => swing.driver))];
  return kinds.map((driver) => {
    const swings = change.sensitivity.filter((swing) => swing.driver === driver);
    const medians = [...swings.map((swing) => swing.avoided.median), change.avoided.median];
    const from = Math.min(...medians);
    const to = Math.max(...medians);
    return { driver, swings, span: to - from, said: t("programme.driver-said", { driver: t(`programme.driver.${driver}`), from: figure(from), to: figure(to), unit: yearly(change.indicator) }) };
  }).sort((one, two) => two.span - one.span);
}

const ids = new Map();

/** Learns by which id the service's names of products are known here. */
export const learnNames = (products) => products.forEach((product) => [product.id, product.name].forEach((known) => ids.set(known, product.id)));

const called = (known) => capital(name("product", ids.get(known) ?? known, known.replaceAll("-", " ")));

const setting = (swing) => (swing.driver === "displacement-rate" ? share(Number(swing.setting)) : swing.driver === "product-footprint" ? capital(t(`programme.${swing.setting.startsWith("low") ? "low-end" : "high-end"}`)) : called(swing.setting));

export const swingRows = (change, ranked) => ranked.flatMap(({ driver, swings }) => swings.map((swing) =>
  rowOf(swing.avoided, setting(swing), t(`programme.driver.${driver}`), swing.as_asked === "yes" ? "own-row" : swing.avoided.low > 0 ? "" : "other-row")));

const scrolling = (label, head, rows, id = null) => el("div", { class: "scrolls", tabindex: "0", role: "group", "aria-label": label }, el("table", { id },
  el("caption", {}, label), el("thead", {}, el("tr", {}, head.map((words, index) => el("th", { scope: "col", class: index ? "n" : null }, words)))), el("tbody", {}, rows)));

const row = (label, ...cells) => el("tr", {}, el("th", { scope: "row" }, label), cells.map((cell) => el("td", { class: "n" }, cell)));

/** The number of people of each group, and what falls to each. */
function reach(programme, change) {
  const { households, beneficiaries, women, men, meals_per_year: meals, years } = programme;
  const unitOf = (of) => of.unit.replace(/ per .*$/, "").replace("CO2e", "CO₂e");
  const per = (of) => (of ? `${ranged(of)} ${unitOf(of)}` : "–");
  const group = (label, number) => (number === undefined ? null : row(label, `${written(number)} (${share(number / beneficiaries)})`, ""));
  const rows = [
    households === undefined ? null : row(t("programme.field.households"), written(households), per(change.per_household)),
    beneficiaries === undefined ? null : row(t("programme.field.beneficiaries"), written(beneficiaries), per(change.per_beneficiary)),
    beneficiaries ? group(t("programme.field.women"), women) : null,
    beneficiaries ? group(t("programme.field.men"), men) : null,
    meals === undefined ? null : row(t("programme.field.meals_per_year"), written(meals), per(change.per_meal)),
    years === undefined ? null : row(t("programme.field.years"), written(years), per(change.over_the_years)),
  ].filter(Boolean);
  return rows.length === 0 ? null : scrolling(t("programme.reach"), [t("programme.group-of"), t("programme.count"), t("programme.each")], rows, "reach-table");
}

function money(side) {
  if (!side) return null;
  const said = (of) => (of ? `${ranged(of)} ${side.currency}` : null);
  const rows = [
    side.value_of_product === undefined ? null : row(t("programme.value-product"), `${written(side.value_of_product)} ${side.currency}`),
    said(side.value_of_displaced) && row(t("programme.value-displaced"), said(side.value_of_displaced)),
    said(side.import_bill_avoided) && row(t("programme.imports"), said(side.import_bill_avoided)),
    said(side.per_tonne_avoided) && row(t("programme.per-tonne"), said(side.per_tonne_avoided)),
  ].filter(Boolean);
  return [rows.length === 0 ? null : scrolling(t("programme.money"), [t("programme.amount"), t("farm.value")], rows, "money-table"), side.no_price_per_tonne ? el("p", {}, side.no_price_per_tonne) : null];
}

/** Everything as tables. */
export function tables(answer, change) {
  const counted = answer.indicators.filter((one) => one.status === "ok");
  return [
    scrolling(t("programme.year"), [t("claim.indicator"), t("programme.caused"), t("programme.no-longer"), t("programme.avoided"), t("programme.share")],
      counted.map((one) => row(`${capital(name("indicator", one.indicator))} (${yearly(one.indicator)})`, ranged(one.caused_by_product), ranged(one.caused_by_displaced), ranged(one.avoided),
        one.share_of_draws_avoids ? share(one.share_of_draws_avoids.value) : "–")), "year-table"),
    scrolling(t("programme.displaced"), [t("programme.field.baseline"), t("programme.field.share"), t("programme.a-year")],
      answer.programme.baseline.map((one) => row(called(one.name), share(one.share), one.displaced ? `${ranged(one.displaced)} kg` : one.reason ?? "")), "displaced-table"),
    reach(answer.programme, change),
    money(answer.money),
    scrolling(t("programme.drivers"), [t("programme.driver-name"), t("programme.setting"), t("programme.avoided-unit", { unit: yearly(change.indicator) })],
      (change.sensitivity ?? []).map((swing) => row(capital(t(`programme.driver.${swing.driver}`)), `${setting(swing)}${swing.as_asked === "yes" ? ` (${t("programme.as-asked")})` : ""}`, ranged(swing.avoided))), "drivers-table"),
  ];
}
