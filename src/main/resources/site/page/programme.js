// What a programme avoids in a year: the form, the answer in one sentence, what it hangs on, and what to take away.
import { byId as at, calm, el, fill } from "./dom.js";
import { flattened } from "./farm-records.js";
import { frame } from "./frame.js";
import { capital, language, name, spoken, t } from "./i18n.js";
import { programmeForm } from "./programme-form.js";
import { changeSaid, drivers, learnNames, rowsOf, swingRows, tables, yearly } from "./programme-said.js";
import { rangePicture } from "./ranges.js";
import { address, fetched, newest, post, Refusal } from "./service.js";
import { save } from "./picture-file.js";
import { take, today } from "./take.js";
import { sentenceOf, term } from "./terms.js";
import { byId, vocabulary } from "./vocabulary.js";

/** Invented programmes. */
const demos = {
  "demo-school": { product: "mealworm", kg_per_year: 12000, unit: "kg-live", "baseline.1.product": "chicken", "baseline.1.share": 0.7, "baseline.1.price_per_kg": 4.2, "baseline.1.imported_share": 0.4,
    "baseline.2.product": "pulses", displacement_rate: 0.5, households: 400, women: 700, men: 500, cost_per_year: 30000, currency: "EUR", years: 3 },
  "demo-hens": { as: "feed", animal: "poultry", product: "mealworm:meal", inclusion_percent: 10, feed_kg_per_year: 50000, "baseline.1.product": "soybean-meal", displacement_rate: 1 },
};
const indicators = ["ghg", "land", "energy", "water", "feed"];

const latest = newest();
let form = null;
let answer = null;
let asked = null;
let shown = "ghg";
const pictures = {};

function complain(text) {
  at("fault").textContent = text;
  at("fault").hidden = !text;
}

async function compute() {
  const { flat, ready, wrong } = form.read();
  complain(wrong ? t("programme.wrong") : "");
  if (!ready) {
    if (!answer) fill(at("said"), el("p", { class: "waiting" }, t("programme.waiting")));
    return;
  }
  asked = { ...form.request(flat), indicators };
  try {
    const got = await latest((signal) => post(address("/v1/substitution", spoken), asked, signal));
    if (!got) return;
    answer = got;
    show(flat);
  } catch (fault) {
    refused(fault);
  }
}

function refused(fault) {
  const errors = fault.problem?.errors ?? [];
  complain(fault instanceof Refusal ? t("fault.refused", { detail: errors.map((one) => one.message).join("; ") || fault.message }) : t("fault.network"));
  for (const { pointer } of errors) {
    const path = (pointer ?? "").slice(1).split("/").map((part) => (/^\d+$/.test(part) ? Number(part) + 1 : part)).join(".");
    at("programme").elements.namedItem(path)?.setAttribute("aria-invalid", "true");
  }
}

function show(flat) {
  const counted = answer.indicators.filter((one) => one.status === "ok");
  const change = counted.find((one) => one.indicator === shown) ?? counted[0];
  at("shown").hidden = !change;
  at("pictures").hidden = !change;
  if (!change) {
    fill(at("said"), el("p", { class: "headline" }, t("programme.nothing")),
      el("ul", {}, answer.indicators.map((one) => el("li", {}, `${capital(name("indicator", one.indicator))}${t("colon")}${one.reason}`))));
    return;
  }
  const said = changeSaid(change);
  fill(at("said"),
    el("p", { class: `headline ${said.saves ? "is-holds" : "is-open"}` }, el("span", { class: "sign", "aria-hidden": "true" }, said.saves ? "✓" : "≈"), el("span", {}, said.text)),
    el("p", { class: "footnote" }, sentenceOf("programme.note", { range: said.range, draws: term(t("verdict.draws"), "draws"), exante: term(t("programme.ex-ante"), "exante"), rate: term(t("programme.rate"), "rate") })),
    el("p", { class: "shown-as" }, counted.map((one) => el("label", { class: "choice" },
      el("input", { type: "radio", name: "indicator-shown", value: one.indicator, checked: one === change, onchange: () => { shown = one.indicator; show(flat); } }), " ", capital(name("indicator", one.indicator))))),
    answer.indicators.length > counted.length ? el("p", { class: "footnote" }, t("programme.silent", { what: answer.indicators.filter((one) => one.status !== "ok").map((one) => name("indicator", one.indicator)).join(", ") })) : null);
  const unit = yearly(change.indicator);
  at("picture-title").textContent = t("programme.picture", { indicator: capital(name("indicator", change.indicator)), unit });
  draw("chart", rowsOf(change), unit);
  const ranked = drivers(change);
  at("drivers-said").textContent = t("programme.drivers-said", Object.fromEntries(ranked.map((one, index) => [["first", "second", "third"][index], one.said])));
  draw("swings", swingRows(change, ranked), t("programme.avoided-unit", { unit }));
  fill(at("tables"), tables(answer, change));
  notes();
  takeAway(flat, said);
  at("library").textContent = t("frame.library", answer.library);
}

function draw(box, rows, unit) {
  pictures[box] ??= rangePicture(at(box), (all) => `${at(box === "chart" ? "picture-title" : "drivers-title").textContent}${t("colon")}${all.map((row) => `${row.name}, ${row.under ?? ""}: ${row.said}`).join("; ")}`);
  pictures[box].show(rows, unit);
}

function notes() {
  fill(at("notes"),
    el("h3", {}, t("programme.statements")),
    el("ul", { lang: language }, answer.statements.map((one) => el("li", {}, one))),
    el("details", {}, el("summary", {}, `${t("notes.warnings")} (${answer.warnings.length})`), el("ul", { lang: language }, answer.warnings.map((warning) => el("li", {}, warning.text)))),
    answer.cautions.length === 0 ? null : el("details", {}, el("summary", {}, `${t("notes.cautions")} (${answer.cautions.length})`), el("ul", { lang: language }, answer.cautions.map((caution) => el("li", {}, caution.text)))),
    el("details", { class: "references" }, el("summary", {}, `${t("notes.references")} (${answer.references.length})`), el("ol", { lang: "en" }, answer.references.map((reference) => el("li", {}, reference.text)))));
}

/** The address of this view with the programme in its fragment, which browsers never send. */
function link() {
  const address = new URL(location.pathname + location.search, location.href);
  address.hash = new URLSearchParams([...flattened(Object.fromEntries(Object.entries(asked).filter(([part]) => part !== "indicators")))].map(([path, value]) => [path, String(value)])).toString();
  return address.href;
}

function takeAway(flat, said) {
  const { version, digest } = answer.library;
  const file = async (make) => {
    try {
      await make();
    } catch (fault) {
      refused(fault);
    }
  };
  take(at("take"), {
    sentence: `${said.text} ${said.footnote}`,
    paragraph: answer.paragraph,
    link: link(),
    citation: t("take.cite", { version, digest, link: `POST ${new URL("/v1/substitution", location.href).href}`, day: today() }),
    picture: { svg: () => pictures.chart.svg(), title: at("picture-title").textContent, fileName: `scalepan-programme-${shown}`, caption: [said.text, said.footnote, t("take.drawn", { version, digest })] },
    made: [
      [t("take.text"), "save-text", () => file(async () => save(await fetched("/v1/substitution?format=md", asked), "scalepan-programme.md"))],
      [t("take.workbook"), "save-workbook", () => file(async () => save(await fetched(address("/v1/substitution", { format: "xlsx", ...spoken }), asked), "scalepan-programme.xlsx"))],
      [t("programme.save"), "save-programme", () => save(new Blob([JSON.stringify(asked, null, 2)], { type: "application/json" }), "programme.json")],
    ],
  });
}

function carried() {
  const given = new URLSearchParams(location.hash.slice(1));
  if ([...given].length > 0) form.write(given);
}

async function start() {
  frame();
  document.title = t("programme.page");
  const lists = await vocabulary("products", "regions", "composition");
  const forms = new Map();
  for (const { product, form: one } of lists.composition) forms.set(product, [...new Set([...(forms.get(product) ?? []), one])].filter(Boolean));
  learnNames(lists.products);
  form = programmeForm({ sentence: at("sentence"), more: at("more") }, { products: byId(lists.products), regions: byId(lists.regions), forms }, calm(350, compute));
  fill(at("demos"), Object.entries(demos).map(([key, values]) => [el("button", { type: "button", class: "quiet demo", id: key, onclick: () => {
    form.write(Object.entries(values));
    compute();
  } }, t(`programme.${key}`)), " "]));
  addEventListener("hashchange", () => { carried(); compute(); });
  carried();
  await compute();
}

start().catch((fault) => {
  complain(t("fault.network"));
  throw fault;
});
