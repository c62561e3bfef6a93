// Words of the trade, each with its meaning at hand: a button that opens a note, for keyboard, touch and screen reader alike.
import { el } from "./dom.js";
import { t } from "./i18n.js";

let made = 0;

/** A word that says what it means when it is pressed. */
export function term(words, key) {
  const id = `meaning-${++made}`;
  return el("span", {},
    el("button", { type: "button", class: "term", popovertarget: id }, words),
    el("span", { id, class: "meaning", popover: true }, t(`term.${key}`)));
}

/** A message in which `{name}` stands for a node, such as a term. */
export const sentenceOf = (key, nodes) => t(key).split(/\{(\w+)\}/).map((part, index) => (index % 2 ? nodes[part] : part));
