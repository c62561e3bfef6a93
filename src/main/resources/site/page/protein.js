// Foods side by side: what they hold, and what a kilogram of their protein costs at the reader's prices.
import { byId as at, calm, el, english, fill } from "./dom.js";
import { foodRows, formOf, parameters, read, write } from "./foods.js";
import { frame } from "./frame.js";
import { capital, figure, has, language, name, spoken, t } from "./i18n.js";
import { rangePicture } from "./ranges.js";
import { address, get, newest, Refusal } from "./service.js";
import { take, today } from "./take.js";
import { sentenceOf, term } from "./terms.js";
import { byId, choices, options, vocabulary } from "./vocabulary.js";

const nutrients = ["protein", "protein-corrected", "fat", "energy", "iron", "zinc", "calcium", "vitamin-b12"];
const bases = ["100g-dry-matter", "100g-edible", "10g-protein", "100kcal"];
const latest = newest();
let question = read(location.search);
let words = null;
let answer = null;
const pictures = {};

const titled = (item) => {
  const form = formOf(item.form ? `${item.product}:${item.form}` : item.product, words.products.get(item.product));
  return form === "fresh" ? name("product", item.product, item.name) : t("contents.formed", { product: name("product", item.product, item.name), form: name("form", form) });
};
const unitOf = (figureOf) => figureOf.unit.replace("ug", "µg").replace(/^(\w{3})\/kg protein$/, "$1");
const found = (item, id) => (id === "price" ? item.price : item.figures.find((one) => one.id === id));
const ranged = (one) => (one.low === undefined ? figure(one.value) : `${figure(one.value)} (${t("interval", { low: figure(one.low), high: figure(one.high) })})`);

function complain(text) {
  at("fault").textContent = text;
  at("fault").hidden = !text;
}

function keep() {
  history.replaceState(history.state, "", write(question, location.search));
  document.dispatchEvent(new Event("statechange"));
}

/** Handles a change of the question; typed prices leave the rows alone, so that the focus stays. */
function change(part, redraw = true) {
  question = { ...question, ...part };
  keep();
  if (redraw) controls();
  else soon();
}

function controls() {
  options(at("nutrient"), nutrients.map((id) => [id, name("content", id)]), question.nutrient);
  options(at("basis"), bases.map((id) => [id, name("basis", id)]), question.basis);
  at("currency").value = question.currency;
  at("others").querySelector("summary").textContent = t("protein.foods-now", { n: question.products.length });
  const plain = question.products.map((id) => id.split(":")[0]);
  choices(at("choices"), [...words.products.values()].filter((product) => words.forms.has(product.id)), {
    chosen: plain, studied: () => true,
    toggle: (id, on) => {
      const rest = question.products.map((one, index) => [one, question.prices[index] ?? "-"]).filter(([one]) => one.split(":")[0] !== id);
      const next = on ? [...rest, [id, "-"]] : rest;
      if (next.length > 0 && next.length <= 20) change({ products: next.map(([one]) => one), prices: next.map(([, price]) => price) });
      else controls();
    },
  });
  foodRows(at("rows"), () => question, words, (part) => change(part, part.products.join() !== question.products.join()));
  ask();
}

async function ask() {
  complain("");
  try {
    const got = await latest((signal) => get("/v1/nutrition", { ...parameters(question), ...spoken }, signal));
    if (!got) return;
    answer = got;
    show();
  } catch (fault) {
    complain(fault instanceof Refusal ? t("fault.refused", { detail: (fault.problem.errors ?? []).map((one) => one.message).join("; ") || fault.message }) : t("fault.network"));
  }
}

const soon = calm(300, ask);

/** The foods with a figure, the highest first. */
const ranked = (id) => answer.items.map((item) => ({ item, of: found(item, id) })).filter(({ of }) => of?.status === "ok" && Number.isFinite(of.value)).sort((one, two) => two.of.value - one.of.value);

/** One sentence about a nutrient or a price: who stands first, who last, and whether their ranges are apart. */
function said(id, key) {
  const all = ranked(id);
  if (all.length === 0) return { text: t("protein.nothing", { content: name("content", question.nutrient) }), apart: null };
  const first = all[0];
  const last = all[all.length - 1];
  const values = { first: titled(first.item), high: figure(first.of.value), last: titled(last.item), low: figure(last.of.value), unit: unitOf(first.of),
    content: name("content", question.nutrient), basis: name("basis", question.basis) };
  if (all.length === 1) return { text: capital(t(`protein.${key}-one`, values)), apart: null };
  return { text: capital(t(`protein.${key}`, values)), apart: (first.of.low ?? first.of.value) > (last.of.high ?? last.of.value) };
}

function show() {
  const content = said(question.nutrient, "said");
  const priced = answer.items.some((item) => item.price);
  const price = priced ? said("price", "cost") : null;
  const silent = answer.items.filter((item) => found(item, question.nutrient)?.status !== "ok").map(titled);
  fill(at("said"),
    el("p", { class: "headline" }, content.text),
    content.apart === null ? null : el("p", { class: "fact" }, sentenceOf(content.apart ? "protein.apart" : "protein.overlap", { samples: term(t("protein.samples"), "samples") })),
    silent.length ? el("p", { class: "lower" }, t("protein.silent", { foods: silent.join(", ") })) : null,
    price ? el("p", { class: "headline" }, price.text) : el("p", { class: "footnote" }, t("protein.give-prices")),
    answer.warnings.some((warning) => warning.code === "fresh-beside-dried") ? el("p", { class: "lower" }, sentenceOf("protein.mixed", { dry: term(t("contents.dry"), "dry") })) : null);
  draw("chart", question.nutrient, t("protein.picture", { content: capital(name("content", question.nutrient)), basis: name("basis", question.basis) }), "picture-title");
  at("price-section").hidden = !priced;
  if (priced) draw("price-chart", "price", t("protein.price-picture", { currency: question.currency }), "price-title");
  table();
  notes();
  takeAway([content.text, price?.text].filter(Boolean).join(" "));
  at("library").textContent = t("frame.library", answer.library);
}

function draw(box, id, title, titleBox) {
  at(titleBox).textContent = title;
  pictures[box] ??= rangePicture(at(box), (rows) => `${at(titleBox).textContent}${t("colon")}${rows.map((row) => `${row.name} ${row.said}`).join("; ")}`);
  const unit = answer.items.map((item) => found(item, id)).find((one) => one?.unit);
  pictures[box].show(answer.items.map((item) => {
    const one = found(item, id);
    const insect = words.products.get(item.product)?.group === "insect";
    const row = { name: capital(name("product", item.product, item.name)), under: name("form", item.form), kind: insect ? "" : "other-row" };
    return one?.status === "ok" ? { ...row, value: one.value, low: one.low, high: one.high, said: figure(one.value) } : { ...row, said: t(id !== "price" ? "protein.not-published" : one ? "protein.no-content" : "protein.no-price") };
  }), unit ? `${unitOf(unit)}${id === "price" ? t("protein.per-kg-protein") : ` ${t("protein.in", { basis: name("basis", question.basis) })}`}` : "");
}

/** Every figure of every food: a row for each content, a column for each food, with what is missing named below. */
function table() {
  const quality = [...new Set(answer.items.flatMap((item) => item.protein_quality.map((one) => one.id)))];
  const score = (item) => item.amino_acid_score?.text;
  const measured = (item, id) => item.protein_quality.filter((one) => one.id === id).map((one) => (one.value === undefined ? t("interval", { low: figure(one.low), high: figure(one.high) }) : figure(one.value))).join(", ");
  const row = (label, cell) => el("tr", {}, el("th", { scope: "row" }, label), answer.items.map((item) => el("td", { class: "n" }, cell(item) || "–")));
  const ids = [...nutrients.filter((id) => id !== "energy"), "energy"].filter((id) => answer.items.some((item) => found(item, id)?.status === "ok"));
  const unit = (id) => { const one = answer.items.map((item) => found(item, id)).find((known) => known?.unit); return one ? `, ${unitOf(one)}` : ""; };
  fill(at("tables"),
    el("div", { class: "scrolls", tabindex: "0", role: "group", "aria-label": t("protein.table") }, el("table", { id: "contents-table" },
      el("caption", {}, t("protein.caption", { basis: name("basis", question.basis) })),
      el("thead", {}, el("tr", {}, el("th", { scope: "col" }, t("protein.nutrient")), answer.items.map((item) => el("th", { scope: "col", class: "n" }, capital(titled(item)))))),
      el("tbody", {},
        ids.map((id) => row(`${capital(name("content", id))}${unit(id)}`, (item) => { const one = found(item, id); return one?.status === "ok" ? ranged(one) : ""; })),
        row(t("protein.score"), score),
        quality.map((id) => row(id.toUpperCase(), (item) => measured(item, id))),
        answer.items.some((item) => item.price) ? row(t("protein.price-row", { currency: question.currency }), (item) => (item.price?.status === "ok" ? ranged(item.price) : "")) : null))),
    el("p", { class: "footnote" }, sentenceOf("protein.quality", { score: term(t("protein.score-word"), "score"), quality: term("DIAAS, PDCAAS", "quality") })),
    el("details", { class: "results" }, el("summary", {}, t("protein.missing")),
      el("ul", { lang: language }, answer.items.flatMap((item) => [...item.figures.filter((one) => one.status !== "ok").map((one) => [one.id, one.reason]), ...item.not_measured.map((one) => [one.id, one.reason])]
        .map(([id, reason]) => el("li", {}, el("strong", {}, `${capital(item.name)}, ${has(`names.content.${id}`) ? name("content", id) : id.replaceAll("-", " ")}`), `${t("colon")}${reason}`))))));
}

function notes() {
  fill(at("notes"),
    el("ul", { class: "warnings", lang: language }, answer.warnings.map((warning) => el("li", {}, warning.text))),
    answer.cautions.length === 0 ? null : el("details", {}, el("summary", {}, `${t("notes.cautions")} (${answer.cautions.length})`),
      el("ul", { lang: language }, answer.cautions.map((caution) => el("li", {}, caution.text)))),
    el("details", { class: "references" }, el("summary", {}, `${t("notes.references")} (${answer.references.length})`),
      el("ol", {}, answer.references.map((reference) => el("li", {}, english(reference.text.replace(/ https:\/\/doi\.org\/\S+$/, "")), " ",
        reference.doi ? el("a", { href: `https://doi.org/${reference.doi}`, rel: "noreferrer" }, `doi:${reference.doi}`) : null)))));
}

function takeAway(text) {
  const { version, digest } = answer.library;
  const asked = (format) => address("/v1/nutrition", { ...parameters(question), format, ...(format === "xlsx" ? spoken : {}) });
  take(at("take"), {
    sentence: `${text} ${t("protein.by")}`,
    link: new URL(write(question, location.search), location.href).href,
    citation: t("take.cite", { version, digest, link: new URL(answer.permalink, location.href).href, day: today() }),
    picture: { svg: () => pictures.chart.svg(), title: at("picture-title").textContent, fileName: `scalepan-${question.nutrient}`, caption: [text, t("take.drawn", { version, digest })] },
    files: [[t("take.csv"), asked("csv"), "save-csv"], [t("take.workbook"), asked("xlsx"), "save-workbook"]],
    pages: [[t("take.text"), asked("md"), "as-text"]],
  });
}

async function start() {
  frame();
  document.title = t("protein.page");
  const lists = await vocabulary("products", "composition");
  const forms = new Map();
  for (const { product, form } of lists.composition) forms.set(product, [...new Set([...(forms.get(product) ?? []), form])].filter(Boolean));
  words = { products: byId(lists.products), forms };
  at("foods").addEventListener("submit", (event) => event.preventDefault());
  at("nutrient").addEventListener("change", (event) => change({ nutrient: event.target.value }));
  at("basis").addEventListener("change", (event) => change({ basis: event.target.value }));
  at("currency").addEventListener("input", (event) => {
    const currency = event.target.value.trim().toUpperCase();
    event.target.setAttribute("aria-invalid", String(!/^[A-Z]{3}$/.test(currency)));
    if (/^[A-Z]{3}$/.test(currency)) change({ currency }, false);
  });
  controls();
}

start().catch(() => complain(t("fault.network")));
