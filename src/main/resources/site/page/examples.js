// Updates the formulas of the page with its own address, for the question in its form or in the fragment of its
// address: /examples#product=beef&indicator=land
import { byId as at } from "./dom.js";
import { frame } from "./frame.js";
import { capital, name } from "./i18n.js";
import { grouped, options, productGroups, vocabulary } from "./vocabulary.js";

const form = at("question");

function formulas({ product, indicator, per, against }, separator) {
  const value = `${location.origin}/v1/value/${indicator}/${product}?per=${per}`;
  const ratio = `${location.origin}/v1/ratio/${indicator}/${product}/${against}?per=${per}`;
  const table = `${location.origin}/v1/table?products=${product},${against}&indicators=${indicator}&per=${per}`;
  const number = (text) => `=NUMBERVALUE(${text}${separator}"."${separator}",")`;
  const web = (url) => `WEBSERVICE("${url}")`;
  const text = (stat) => `=${web(`${value}&stat=${stat}&on_error=200`)}`;
  return {
    number: number(web(`${value}&stat=median`)),
    low: number(web(`${value}&stat=low`)),
    high: number(web(`${value}&stat=high`)),
    ratio: number(web(`${ratio}&stat=median`)),
    field: number(`FILTERXML(${web(`${table}&format=xml`)}${separator}"//row[1]/median")`),
    words: text("text"),
    unit: text("unit"),
    sources: text("sources"),
    references: text("references"),
    import: `=IMPORTDATA("${table}")`,
    importComma: `=IMPORTDATA("${table}&delim=tab&decimal=,")`,
    importNumber: `=IMPORTDATA("${value}&stat=median")`,
    importXml: `=IMPORTXML("${table}&format=xml"${separator}"//row[1]/sources")`,
  };
}

function write() {
  const question = Object.fromEntries([...new FormData(form)].map(([part, value]) => [part, encodeURIComponent(value).replaceAll("%3A", ":")]));
  for (const code of document.querySelectorAll("[data-cell]")) {
    code.textContent = formulas(question, code.closest("[data-separator]").dataset.separator)[code.dataset.cell];
  }
}

/** Takes the question from the fragment; what a menu does not have is added to it, so that a link is never changed silently. */
function read() {
  for (const [part, value] of new URLSearchParams(location.hash.slice(1))) {
    const box = form.elements.namedItem(part);
    if (!box) continue;
    if (![...box.options].some((option) => option.value === value)) box.add(new Option(value, value));
    box.value = value;
  }
  write();
}

async function menus() {
  const { products, indicators, units } = await vocabulary("products", "indicators", "units");
  const { product, against, indicator, per } = form.elements;
  for (const box of [product, against]) grouped(box, productGroups(products), box.value);
  options(indicator, indicators.map(({ id, name: english }) => [id, capital(name("indicator", id, english))]), indicator.value);
  options(per, units.map(({ id, name: english }) => [id, capital(name("per", id, english))]), per.value);
}

frame();
addEventListener("hashchange", read);
for (const event of ["input", "change"]) form.addEventListener(event, write);
form.addEventListener("submit", (event) => event.preventDefault());
read();
// Without the lists the formulas stay as they are.
menus().catch(() => {});
