// A sentence that somebody heard: asked of the service, and answered by a verdict, by the menus below, or by what can be asked instead.
import { circulating } from "./circulating.js";
import { contentAnswer, overall, severalAnswer } from "./contents.js";
import { byId as at, el, english, fill } from "./dom.js";
import { spoken, t } from "./i18n.js";
import { leads } from "./leads.js";
import { get, newest, Refusal } from "./service.js";

const latest = newest();

/** The claim of an answer as a question of the menus; none where they cannot hold it. */
function forMenus(asked, products) {
  const times = asked.times_less ?? (asked.percent_less ? Number((100 / (100 - asked.percent_less)).toPrecision(3)) : null);
  const known = (id) => products.has(String(id).split(":")[0]);
  if (!times || !known(asked.product) || !known(asked.reference)) return null;
  return { product: asked.product, against: asked.reference, indicator: asked.indicator, times_less: times, per: asked.per, boundary: asked.boundary };
}

/**
 * Lets the form ask.
 *
 * @param words the vocabularies, with `products` by id and `claims`
 * @param see takes a claim of a footprint to the menus, the picture and the verdict
 */
export function asking(words, see) {
  const box = at("answer");

  const show = (...content) => {
    fill(box, content);
    box.hidden = false;
  };

  /** Brings the answer into view, where its beginning is not seen. */
  const there = () => { if (box.getBoundingClientRect().top > innerHeight * 0.6) box.scrollIntoView({ block: "start" }); };

  function close() {
    fill(box);
    box.hidden = true;
  }

  function keep(name, value) {
    const url = new URL(location.href);
    for (const part of ["text", "asked"]) url.searchParams.delete(part);
    if (name) url.searchParams.set(name, value);
    history.replaceState(history.state, "", url);
    document.dispatchEvent(new Event("statechange"));
  }

  /** What is known of a circulating claim, above what is found today. */
  const heard = (claim) => (claim ? [el("p", { class: "read-as" }, t("ask.in-circulation"), " ", el("q", { lang: "en" }, claim.claim)),
    overall(claim.verdict, t("ask.literature")), el("p", {}, english(claim.verdict_text.replace(/^[A-Z ]+(?:: *|$)/, "") || claim.verdict_text)),
    claim.primary_value ? el("p", { class: "footnote" }, english(claim.primary_value)) : null,
    el("p", { class: "footnote" }, el("a", { href: `/v1/rows/${claim.id}` }, t("study.row")))] : []);

  /** One claim of a text that makes several. */
  const part = (one, place) => el("section", { class: "one-claim" }, el("h2", {}, el("q", { lang: "en" }, one.words)),
    one.answer?.contents ? [contentAnswer(one.answer, `answer-sentence-${place}`), leads(one.answer.suggestions, ways)]
      : one.answer ? severalAnswer(one.answer, see)
        : [el("p", { class: "headline is-no-evidence" }, el("span", { class: "sign", "aria-hidden": "true" }, "?"), el("strong", {}, t("ask.not-checked"))),
          el("ul", { class: "footnote", lang: "en" }, one.errors.slice(0, 4).map((error) => el("li", {}, error.message))),
          leads(one.suggestions.slice(0, 3), ways)]);

  function answered(answer, claim) {
    if (answer.claims) {
      show(heard(claim), el("p", { class: "read-as" }, t("ask.several", { n: answer.claims.length })), answer.claims.map(part));
      return;
    }
    if (answer.contents) {
      show(heard(claim), contentAnswer(answer), leads(answer.suggestions, ways));
      return;
    }
    const menus = forMenus(answer.question, words.products);
    if (menus) {
      show(heard(claim), el("p", { class: "read-as" }, t("ask.read-as"), " ", answer.claim, ". ", t("ask.below")));
      see(menus);
      return;
    }
    show(heard(claim), severalAnswer(answer, see));
  }

  function refused(problem, claim) {
    const why = problem.errors ?? [];
    const suggestions = (problem.suggestions ?? []).filter((one) => !claim || one.question !== `/v1/rows/${claim.id}`);
    show(claim ? heard(claim) : el("p", { class: "headline is-no-evidence" }, el("span", { class: "sign", "aria-hidden": "true" }, "?"), el("strong", {}, t("ask.not-checked"))),
      claim ? null : el("ul", { class: "footnote", lang: "en" }, why.slice(0, 4).map((one) => el("li", {}, one.message))),
      suggestions.length ? el("h2", {}, t("ask.instead")) : null, leads(suggestions, ways));
  }

  async function ask(parameters, claim) {
    try {
      const answer = await latest((signal) => get("/v1/claim", { ...Object.fromEntries(parameters), ...spoken }, signal));
      if (answer) answered(answer, claim);
    } catch (fault) {
      if (fault instanceof Refusal) refused(fault.problem, claim);
      else show(el("p", {}, t("fault.network")));
    }
  }

  async function sentence(text) {
    at("asked").value = text;
    keep("text", text);
    const plain = text.trim().toLowerCase();
    await ask([["text", text.slice(0, 600)]], words.claims.find((claim) => claim.claim.toLowerCase() === plain));
  }

  const ways = {
    ask: (parameters) => { keep("asked", parameters.toString()); return ask([...parameters]); },
    hear: (id) => sentence(words.claims.find((claim) => claim.id === id)?.claim ?? id),
  };

  at("ask").addEventListener("submit", (event) => {
    event.preventDefault();
    // Who presses the button first asks the sentence that stands there as an example.
    sentence(at("asked").value.trim() || at("asked").placeholder).then(there);
  });
  circulating(at("circulating"), words.claims, (claim) => sentence(claim.claim).then(there));

  async function begin() {
    const given = new URLSearchParams(location.search);
    if (given.get("text")) await sentence(given.get("text"));
    else if (given.get("asked")) await ask([...new URLSearchParams(given.get("asked"))]);
  }

  return {
    /** The answer to the sentence of the address, if it has one. */
    begin,
    /** After a step through the history: an answer that is no longer in the address goes. */
    again() {
      const given = new URLSearchParams(location.search);
      if (!given.get("text") && !given.get("asked")) close();
    },
    /** Takes the answer away when the reader asks something else by the menus. */
    close() {
      if (box.hidden) return;
      keep(null);
      close();
    },
  };
}
