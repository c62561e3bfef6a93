// Where a question of the service is answered on these pages: a suggestion of a refused sentence becomes a link or a button that works.
import { el } from "./dom.js";
import { flattened } from "./farm-records.js";
import { along } from "./frame.js";
import { t } from "./i18n.js";

const pages = { "/v1/comparison": "/", "/v1/nutrition": "/protein" };

/** The parameters of an address, without the library that it is pinned to. */
function parametersOf(address) {
  const query = new URLSearchParams(address.split("?")[1] ?? "");
  query.delete("library");
  return query;
}

/** The page on which a body can be changed and asked again; none where there is no such page. */
function formOf({ route, body }) {
  const asked = JSON.parse(body);
  if (route === "/v1/substitution") return `/programme#${new URLSearchParams([...flattened(asked)].map(([path, value]) => [path, String(value)]))}`;
  const system = asked.system;
  return system?.kind === "insects" ? `/farm#${new URLSearchParams([...flattened(system)].map(([path, value]) => [path, String(value)]))}` : null;
}

/** One suggestion: its text, and what leads on; `ask` takes parameters of a claim, `hear` the id of a circulating claim. */
function lead(suggestion, { ask, hear }) {
  const [path] = suggestion.question.split("?");
  const button = (words, press) => el("button", { type: "button", onclick: press }, words);
  const link = (words, address) => el("a", { class: "button", href: along(address) }, words);
  const said = [];
  if (path === "/v1/claim") said.push(button(t("ask.reading"), () => ask(parametersOf(suggestion.question))));
  else if (suggestion.kind === "circulating-claim") said.push(button(t("ask.more"), () => hear(path.split("/").pop())));
  else if (path in pages) said.push(link(t("ask.see"), `${pages[path]}?${parametersOf(suggestion.question).toString().replaceAll("%2C", ",")}`));
  else said.push(el("a", { class: "button", href: path.startsWith("/guide") ? along(suggestion.question) : suggestion.question }, t("ask.read")));
  const form = suggestion.post ? formOf(suggestion.post) : null;
  if (form) said.push(link(t("ask.own"), form));
  return el("li", {}, el("p", { lang: "en" }, suggestion.text), said);
}

/** All suggestions as a list. */
export const leads = (suggestions, ways) => (suggestions?.length ? el("ul", { class: "steps-on" }, suggestions.map((one) => lead(one, ways))) : null);
