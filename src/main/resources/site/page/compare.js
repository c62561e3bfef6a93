// The compare view: a claim on a comparison basis, the evidence as a chart, the verdict in words.
import { asking } from "./ask.js";
import { copyButton } from "./copy.js";
import { picture } from "./chart.js";
import { byId as at, calm, el, fill } from "./dom.js";
import { along, carry, frame } from "./frame.js";
import { capital, entered, language, name, spoken, t, the, typed, unit } from "./i18n.js";
import { modelledFarm, referenceFarms } from "./modelled.js";
import { comparisonBasis, read, write } from "./question.js";
import { address, get, newest, Refusal } from "./service.js";
import { legend, study } from "./study.js";
import { tables } from "./tables.js";
import { take, today } from "./take.js";
import { sentenceOf, term } from "./terms.js";
import { sayGrid, sayInstead, sayVerdict } from "./verdict.js";
import { byId, choices, grouped, options, productGroups, vocabulary } from "./vocabulary.js";

/** The largest number of products that stay when a sentence is asked. */
const mostBeside = 6;
/** The largest number of products of a brief. */
const briefest = 8;

let question = read(location.search);
let words = null;
let comparison = null;
let said = null;
let view = null;
let asked = null;
const latestComparison = newest();
const latestClaim = newest();

const labels = {
  references: new Map(),
  reference: (id) => labels.references.get(id),
  label: (id) => labels.references.get(id)?.label ?? id,
  region: (id) => words.regions.get(id)?.name ?? id,
};

const product = (id) => words.products.get(id.split(":")[0]);
const isInsect = (id) => product(id)?.group === "insect";
const farmOf = (id) => along(`/farm#product=${id.split(":")[0]}`);
const named = (id) => the("product", id, product(id)?.name);

/** Writes the question into the address: as a history entry, or without one while the flag moves. */
function keep(step) {
  history[step ? "pushState" : "replaceState"](null, "", write(question, location.search) + location.hash);
  document.dispatchEvent(new Event("statechange"));
}

/** Handles a change of the question by the reader. */
function change(part) {
  asked?.close();
  turn(part);
}

function turn(part) {
  question = { ...question, ...part };
  keep(true);
  controls();
  return ask();
}

/** Takes a claim of a footprint, as it was read from a sentence, to menus, picture and verdict. */
const see = ({ product: id, against, indicator, ...rest }) => turn({ ...basisOf(indicator), ...rest, indicator, against,
  products: [id, ...question.products.filter((other) => other !== id && other !== against)].slice(0, mostBeside) });

function controls() {
  const all = [...words.products.values()];
  grouped(at("product"), productGroups(all, the), question.products[0]);
  grouped(at("against"), productGroups(all, the), question.against);
  options(at("indicator"), [...words.indicators.values()].filter(({ id }) => !id.endsWith("-on-farm")).map(({ id, name: english }) => [id, name("indicator", id, english)]), question.indicator);
  options(at("per"), [...words.units.values()].filter(({ id }) => id !== "litre").map(({ id, name: english }) => [id, name("per", id, english)]), question.per);
  options(at("boundary"), [...words.boundaries.values()].map(({ id, name: english }) => [id, name("boundary", id, english)]), question.boundary);
  options(at("gwp"), [...words["warming-sets"].values()].map((set) => [set.id, set.name]), question.gwp);
  options(at("luc"), ["exclude", "include"].map((id) => [id, capital(name("luc", id))]), question.luc);
  options(at("region"), [...words.regions.values()].map((region) => [region.id, name("region", region.id, region.name)]), question.region);
  options(at("grade"), ["fulltext", "abstract", "secondary", "memory"].map((id) => [id, capital(name("grade-choice", id))]), question.grade);
  at("times").value = typed(question.times_less);
  for (const kind of document.getElementsByName("evidence")) kind.checked = kind.value === question.evidence;
  at("basis").querySelector("summary").textContent = t("basis.now", { gwp: gwpName(), luc: name("luc", question.luc),
    region: name("region", question.region, labels.region(question.region)) });
  fill(at("basis-terms"), sentenceOf("basis.terms", Object.fromEntries(["gwp", "luc", "gate", "unit"].map((key) => [key, term(t(`basis.${key}-term`), key)]))));
  at("others").querySelector("summary").textContent = t("others.now", { n: question.products.length - 1 });
  at("verb").textContent = name("verb", question.indicator);
  choose(all);
}

const gwpName = () => words["warming-sets"].get(question.gwp)?.name ?? question.gwp;

function choose(all) {
  choices(at("choices"), all.filter((one) => one.id !== question.against && one.id !== question.products[0]), {
    chosen: question.products,
    studied: (one) => one.evidence?.some((known) => known.indicator === question.indicator),
    toggle,
  });
}

function toggle(id, on) {
  change({ products: on ? [...question.products, id] : question.products.filter((other) => other !== id) });
  at("choices").querySelector(`input[value="${CSS.escape(id)}"]`)?.focus();
}

const basisOf = (indicator) => {
  const { default_per: per, default_boundary: boundary } = words.indicators.get(indicator) ?? {};
  return { per: per ?? question.per, boundary: boundary ?? question.boundary };
};

function subject(id) {
  const others = question.products.filter((one) => one !== id);
  const against = id === question.against ? question.products[0] : question.against;
  change({ against, products: [id, ...others.filter((one) => one !== against)] });
}

function listen() {
  at("claim").addEventListener("submit", (event) => event.preventDefault());
  at("product").addEventListener("change", (event) => subject(event.target.value));
  at("against").addEventListener("change", (event) => {
    const against = event.target.value;
    const products = question.products.filter((one) => one !== against);
    change({ against, products: products.length ? products : [question.against] });
  });
  at("indicator").addEventListener("change", (event) => change({ indicator: event.target.value, ...basisOf(event.target.value) }));
  for (const part of ["per", "boundary", "gwp", "luc", "region", "grade"]) {
    at(part).addEventListener("change", (event) => change({ [part]: event.target.value }));
  }
  for (const kind of document.getElementsByName("evidence")) {
    kind.addEventListener("change", () => change({ evidence: kind.value }));
  }
  at("times").addEventListener("input", () => {
    const times = timesOf(at("times").value);
    const wrong = !(times > 0 && times <= 1e5);
    at("times").setAttribute("aria-invalid", String(wrong));
    complain(wrong ? t("claim.wrong") : "");
    if (wrong) return;
    question.times_less = times;
    asked.close();
    view.claim(times);
    keep(false);
    checking();
    check();
  });
  at("times").addEventListener("change", () => {
    // A share is read back as the number that it was read as.
    if (timesOf(at("times").value) > 0 && at("times").value.includes("%")) at("times").value = typed(question.times_less);
  });
  addEventListener("popstate", () => {
    question = read(location.search);
    controls();
    ask();
    asked.again();
  });
}

/** How many times less; `90 %` less is 10 times less. */
function timesOf(text) {
  const [, percent] = /^(.*?)\s*%\s*$/.exec(text) ?? [];
  if (percent === undefined) return entered(text).value;
  const { value } = entered(percent);
  return value > 0 && value < 100 ? Number((100 / (100 - value)).toPrecision(3)) : NaN;
}

function complain(text) {
  at("fault").textContent = text;
  at("fault").hidden = !text;
}

function refused(fault) {
  if (!(fault instanceof Refusal)) {
    complain(t("fault.network"));
    return;
  }
  const close = (fault.problem.errors ?? []).flatMap((error) => error.did_you_mean ?? []);
  complain(`${t("fault.refused", { detail: fault.message })}${close.length ? ` ${t("fault.close", { words: close.join(", ") })}` : ""}`);
}

function compared() {
  return { products: question.products.join(","), against: question.against, ...comparisonBasis(question) };
}

async function ask() {
  complain("");
  checking();
  try {
    const answer = await latestComparison((signal) => get("/v1/comparison", { ...compared(), ...spoken }, signal));
    if (!answer) return;
    comparison = answer;
    answer.items.forEach((side, index) => (side.asked = question.products[index]));
    labels.references = new Map(answer.references.map((reference) => [reference.id, reference]));
    draw();
    await claim();
  } catch (fault) {
    refused(fault);
  }
}

function draw() {
  at("picture-title").textContent = capital(t("chart.title", { indicator: name("indicator", question.indicator),
    boundary: name("boundary", question.boundary), unit: unit(question.indicator, question.per) }));
  view.show(comparison, question);
  showStudy(null);
  referenceFarms(at("farms"), comparison, question, (system) => change({ system }));
  tables(at("tables"), comparison, question, labels);
  notes();
  at("library").textContent = t("frame.library", comparison.library);
}

function showStudy(finding, side, pinned) {
  if (!finding) legend(at("study"), question, named(question.against));
  else study(at("study"), finding, side, question, labels, pinned ? () => { view.release(); } : null);
  if (pinned && matchMedia("(max-width: 60rem)").matches) at("study").scrollIntoView({ block: "nearest" });
}

function showModelled(side, pinned) {
  modelledFarm(at("study"), side, question, pinned ? () => { view.release(); } : null);
  if (pinned && matchMedia("(max-width: 60rem)").matches) at("study").scrollIntoView({ block: "nearest" });
}

function notes() {
  fill(at("notes"),
    comparison.warnings.length === 0 ? null : [
      el("h3", {}, t("notes.warnings")),
      el("ul", { class: "warnings", lang: language }, comparison.warnings.map((warning) => el("li", {}, warning.text))),
    ],
    comparison.cautions.length === 0 ? null : el("details", {},
      el("summary", {}, `${t("notes.cautions")} (${comparison.cautions.length})`),
      el("ul", { class: "cautions", lang: language }, comparison.cautions.map((caution) => el("li", {}, caution.text)))),
    el("details", { class: "references" },
      el("summary", {}, `${t("notes.references")} (${comparison.references.length})`),
      el("ol", { lang: "en" }, comparison.references.map((reference) => el("li", {},
        reference.text.replace(/ https:\/\/doi\.org\/\S+$/, ""), " ",
        reference.doi ? el("a", { href: `https://doi.org/${reference.doi}`, rel: "noreferrer" }, `doi:${reference.doi}`) : null)))));
}

function checking() {
  const box = at("verdict");
  if (box.dataset.state === "checking") return;
  box.dataset.state = "checking";
  const headline = box.querySelector(".headline");
  const now = el("p", { class: "checking" }, t("verdict.checking"));
  if (headline) box.append(now);
  else fill(box, now);
}

/** The question with facts about its evidence that only the comparison's answer has. */
function contextOf() {
  const memory = (side) => (side.evidence ?? []).filter((one) => one.findings.some((finding) => finding.check === "memory")).length;
  const [subject] = question.products;
  return { ...question, gwpName: gwpName(), own: isInsect(subject) ? farmOf(subject) : null,
    memory: { product: memory(comparison.items[0]), reference: memory(comparison.reference) } };
}

/** Requests the verdict and fills everything about the claim from its answer. */
async function claim() {
  checking();
  try {
    const answer = await latestClaim((signal) => get("/v1/claim", {
      product: question.products[0], reference: question.against, times_less: question.times_less, ...comparisonBasis(question), ...spoken }, signal));
    if (!answer) return;
    at("verdict").dataset.state = "said";
    const context = contextOf();
    sayVerdict(at("verdict"), answer, context, change);
    said = sayInstead(at("instead"), answer, context, (label, text) => copyButton(label, text, () => at("sentence")));
    sayGrid(at("grid"), answer, context, change);
    const instead = answer.say_instead;
    const here = instead.per === question.per && instead.boundary === question.boundary && (instead.gwp ?? question.gwp) === question.gwp;
    view.defend(here ? instead.times_less ?? null : null);
    takeAway();
  } catch (fault) {
    at("verdict").dataset.state = "said";
    fill(at("verdict"));
    fill(at("instead"));
    refused(fault);
  }
}

const check = calm(250, claim);

function takeAway() {
  const { version, digest } = comparison.library;
  const cell = new URL(address(`/v1/ratio/${question.indicator}/${question.products[0]}/${question.against}`,
    { ...comparisonBasis(question), indicator: "" }), location.href).href;
  const link = new URL(write(question, location.search), location.href).href;
  const permalink = new URL(comparison.permalink, location.href).href;
  const citation = t("take.cite", { version, digest, link: permalink, day: today() });
  take(at("take"), {
    sentence: said.text,
    cell,
    link,
    citation,
    files: [[t("take.csv"), address("/v1/comparison", { ...compared(), format: "csv" }), "save-csv"],
      [t("take.workbook"), address("/v1/comparison", { ...compared(), format: "xlsx", ...spoken }), "save-workbook"]],
    pages: [[t(question.products.length > briefest ? "take.brief-some" : "take.brief", { n: briefest }), address("/v1/brief", { ...compared(), products: question.products.slice(0, briefest).join(","),
      times_less: question.times_less, format: "html" }), "brief"]],
    picture: { svg: () => view.svg(), title: at("picture-title").textContent, fileName: `scalepan-${question.indicator}`,
      caption: [said.text, t("take.drawn", { version, digest }), permalink] },
  });
}

async function start() {
  frame();
  document.title = t("frame.title");
  const lists = await vocabulary("products", "indicators", "units", "boundaries", "warming-sets", "regions", "claims");
  words = Object.fromEntries(Object.entries(lists).map(([list, items]) => [list, list === "claims" ? items : byId(items)]));
  view = picture(at("chart"), {
    claim(times, done) {
      at("times").value = typed(times);
      at("times").setAttribute("aria-invalid", "false");
      keep(false);
      checking();
      check();
      if (done) view.claim(times);
    },
    study: showStudy,
    modelled: showModelled,
    subject,
    basis: (boundary) => change({ boundary }),
    label: labels.label,
    region: labels.region,
    insect: isInsect,
    farm: farmOf,
  });
  listen();
  controls();
  asked = asking(words, see);
  await ask();
  await asked.begin();
  carry();
}

start().catch(refused);
