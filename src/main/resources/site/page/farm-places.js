// The places of records in words: `feed/wheat-bran/moisture` is "Feed, wheat bran: water in it".
import { capital, has, name, small, t } from "./i18n.js";

/** What the middle of a place is an id of. */
const vocabularies = ["ingredients", "energy-carriers", "transport-modes", "materials", "processing-steps"];

function label(path) {
  for (const key of [`farm.field.${path}`, `farm.list.${path}`, `farm.group.${path}`]) if (has(key)) return t(key);
  return path.replaceAll("_", " ");
}

/** An id of whatever vocabulary in words. */
function called(id, words) {
  const list = vocabularies.find((one) => words[one]?.has(id));
  if (list) return small(name(list, id, words[list].get(id).name ?? id));
  if (has(`names.indicator.${id}`)) return name("indicator", id);
  return has(`farm.field.${id}`) ? small(t(`farm.field.${id}`)) : id.replaceAll(/[-_]/g, " ");
}

function one(place, words) {
  const [first, ...rest] = place.split("/");
  if (rest.length === 0) return label(first);
  const last = rest[rest.length - 1];
  const field = `farm.field.${first}.${last}`;
  const end = rest.length > 1 && has(field) ? small(t(field)) : called(last, words);
  const middle = rest.slice(0, -1).map((id) => called(id, words));
  return `${[label(first), ...middle].join(", ")}${t("colon")}${end}`;
}

/** A place, or several with commas between. */
export const inWords = (place, words) => capital(place.split(", ").map((each) => one(each, words)).join(", "));

/** What is not counted, such as `feed (pineapple-residue, ghg)`. */
export function missing(what, words) {
  const [, first, inside] = /^([\w-]+) \((.*)\)$/.exec(what) ?? [];
  return first ? `${small(label(first))} (${inside.split(", ").map((id) => called(id, words)).join(", ")})` : what;
}
