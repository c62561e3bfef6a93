// The vocabularies of questions, from the service.
import { get } from "./service.js";
import { capital, learn, name, t } from "./i18n.js";
import { el, fill } from "./dom.js";

/** The message key of the names of a list. */
const kinds = { products: "product", indicators: "indicator", units: "per", boundaries: "boundary", regions: "region" };

export async function vocabulary(...lists) {
  const answers = await Promise.all(lists.map((list) => get(`/v1/${list}`)));
  lists.forEach((list, index) => learn(kinds[list] ?? list, answers[index].items));
  return Object.fromEntries(lists.map((list, index) => [list, answers[index].items]));
}

/** An index of a list by id. */
export const byId = (items) => new Map(items.map((item) => [item.id, item]));

/** Fills a choice with options; a value missing from the list is added, so that a value of the address is never changed silently. */
export function options(box, choices, value) {
  const all = choices.some(([id]) => id === value) ? choices : [...choices, [value, value]];
  fill(box, all.map(([id, words]) => el("option", { value: id }, words)));
  box.value = value;
}

/** The same in groups. */
export function grouped(box, groups, value) {
  fill(box, groups.map(([words, choices]) => el("optgroup", { label: words }, choices.map(([id, said]) => el("option", { value: id }, said)))));
  if (![...box.options].some((option) => option.value === value)) box.append(el("option", { value }, value));
  box.value = value;
}

/** Products in their groups, named. */
export function productGroups(products, words = name) {
  const groups = [...new Set(products.map((product) => product.group))];
  return groups.map((group) => [
    capital(name("group", group)),
    products.filter((product) => product.group === group).map((product) => [product.id, words("product", product.id, product.name)]),
  ]);
}

/** Product checkboxes, in their groups; those without a study on this basis are marked. */
export function choices(box, products, { chosen, studied, toggle }) {
  const groups = [...new Set(products.map((product) => product.group))];
  fill(box, groups.map((group) => el("fieldset", {},
    el("legend", {}, capital(name("group", group))),
    products.filter((product) => product.group === group).map((product) => el("label", { class: studied(product) ? "choice" : "choice unstudied" },
      el("input", { type: "checkbox", value: product.id, checked: chosen.includes(product.id), onchange: (event) => toggle(product.id, event.target.checked) }),
      " ", capital(name("product", product.id, product.name)), studied(product) ? null : el("small", {}, ` ${t("others.none")}`))))));
}
