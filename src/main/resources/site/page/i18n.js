// One file of messages for each language. English is complete and the fallback of other languages.
import en from "./en.js";

const known = { en: "English", fr: "Français" };
const asked = new URLSearchParams(location.search).get("lang");
export const languages = known;
export const language =
  [asked, ...navigator.languages.map((name) => name.slice(0, 2))].find((name) => name && Object.hasOwn(known, name)) ?? "en";
/** The parameter that asks the service for sentences in this language. */
export const spoken = language === "en" ? {} : { lang: language };
const messages = language === "en" ? en : (await import(`./${language}.js`)).default;
const plural = new Intl.PluralRules(language);

function find(key) {
  const step = (tree) => within(tree, key.split("."));
  return step(messages) ?? step(en);
}

/** Looks a key up in a tree; names in it may have dots themselves. */
function within(tree, parts) {
  for (let taken = parts.length; taken > 0; taken--) {
    const at = tree?.[parts.slice(0, taken).join(".")];
    if (at !== undefined) return taken === parts.length ? at : within(at, parts.slice(taken));
  }
  return undefined;
}

/** A message by its key. `{name}` stands for a value; a message with `one` and `other` is chosen by the value `n`. */
export function t(key, values = {}) {
  let message = find(key);
  if (message && typeof message === "object") message = message[plural.select(values.n)] ?? message.other;
  if (typeof message !== "string") return key;
  return spaced(message).replace(/\{(\w+)\}/g, (whole, name) => (name in values ? values[name] : whole));
}

/** French has a no-break space before double punctuation marks. */
const spaced = (message) => (language === "fr" ? message.replace(/ ([:;!?»])/g, "\u00a0$1").replace(/« /g, "«\u00a0") : message);

/** Whether there is a message under a key. */
export const has = (key) => find(key) !== undefined;

const learned = new Map();

/** Stores the names that the service gives, as the fallback where a language has none. */
export const learn = (kind, items) => learned.set(kind, new Map(items.filter((item) => item.name).map((item) => [item.id, item.name])));

/** The name of an id of the service, as used in a sentence (French: with its article). */
export const the = (kind, id, otherwise = id) =>
  messages.names[kind]?.[id] ?? en.names[kind]?.[id] ?? learned.get(kind)?.get(id) ?? otherwise;

/** The same as used alone. */
export const name = (kind, id, otherwise) => the(kind, id, otherwise).replace(/^(le |la |les |l’)/, "");

export const capital = (text) => text.charAt(0).toLocaleUpperCase(language) + text.slice(1);

/** A name as used within a sentence: without its capital, except for abbreviations such as PET. */
export const small = (text) => (/^\p{Lu}\p{Ll}/u.test(text) ? text.charAt(0).toLocaleLowerCase(language) + text.slice(1) : text);

const two = new Intl.NumberFormat(language, {
  minimumSignificantDigits: 2,
  maximumSignificantDigits: 2,
  useGrouping: "min2",
});
const plain = new Intl.NumberFormat(language, { maximumSignificantDigits: 3, useGrouping: "min2" });
const keyed = new Intl.NumberFormat(language, { maximumSignificantDigits: 15, useGrouping: false });
const exact = new Intl.NumberFormat(language, { maximumSignificantDigits: 15, useGrouping: "min2" });
const percent = new Intl.NumberFormat(language, { style: "percent", maximumFractionDigits: 0 });

/** A computed number for print: two significant figures. */
export const figure = (number) => two.format(number);
/** A number of the reader or of a publication, with all its digits. */
export const written = (number) => exact.format(number);
/** A number as shown in a field: unambiguous, so without thousands separators. */
export const typed = (number) => keyed.format(number);
/**
 * Reads a number as people write it: `2.5`, `2,5`, `1 200`, `1,200.5`. In English one comma before three digits separates thousands;
 * because elsewhere it is a decimal comma, such a number is read back to the reader (`ambiguous`).
 */
export function entered(text) {
  const plain = text.trim().replace(/[\s\u202f\u00a0\u2019'×]/g, "").replace("\u2212", "-");
  const ambiguous = /^[1-9]\d{0,2}[.,]\d{3}$/.test(plain);
  const commas = /^\d{1,3}(,\d{3}){2,}(\.\d+)?$|^\d{1,3}(,\d{3})+\.\d+$/.test(plain) || (ambiguous && language === "en" && plain.includes(","));
  const dots = /^\d{1,3}(\.\d{3}){2,}(,\d+)?$|^\d{1,3}(\.\d{3})+,\d+$/.test(plain);
  const point = (commas ? plain.replaceAll(",", "") : dots ? plain.replaceAll(".", "") : plain).replace(",", ".");
  return { value: /^-?\d+(\.\d+)?$/.test(point) ? Number(point) : NaN, ambiguous };
}
/**
 * Reads a number, or a range such as `400..600` or, with a best guess, `400..500..600`: the numbers, rising; none where it is
 * neither.
 */
export function enteredNumbers(text) {
  const parts = text.split(/\.{2,}|\u2026/).map(entered);
  const numbers = parts.map((part) => part.value);
  const rising = numbers.every((number, at) => number >= (numbers[at - 1] ?? -Infinity)) && (numbers.length === 1 || numbers.at(-1) > numbers[0]);
  return { numbers: rising && numbers.length <= 3 ? numbers : [], ambiguous: parts.some((part) => part.ambiguous) };
}
/** A number or range as `enteredNumbers` reads it. */
export const typedNumbers = (numbers) => numbers.map(typed).join("..");
/** A tick of an axis. */
export const tick = (number) => plain.format(number);
export const interval = (low, high) => t("interval", { low: figure(low), high: figure(high) });
/** A share as whole per cent, or as below 1 or above 99 where rounding would mislead. */
export function share(part) {
  if (part > 0 && part < 0.01) return t("share.below", { percent: percent.format(0.01) });
  if (part > 0.99 && part < 1) return t("share.above", { percent: percent.format(0.99) });
  return percent.format(part);
}

export const unit = (indicator, per) =>
  t("unit", { unit: name("unit", indicator), per: name("per", per) });

/** Fills in the messages at the marked elements of the page. */
export function translate(root = document) {
  document.documentElement.lang = language;
  for (const node of root.querySelectorAll("[data-t]")) node.textContent = t(node.dataset.t);
  for (const node of root.querySelectorAll("[data-t-hint]")) node.setAttribute("placeholder", t(node.dataset.tHint));
  for (const node of root.querySelectorAll("[data-t-label]")) node.setAttribute("aria-label", t(node.dataset.tLabel));
}
