// The claims in circulation, by topic, as a list to click.
import { el, fill } from "./dom.js";
import { t } from "./i18n.js";

const topics = {
  climate: ["ghg"],
  contents: ["protein", "protein-quality", "iron", "calcium", "nutrition-score"],
  land: ["land"],
  feed: ["feed", "feed-dry-matter", "edible-fraction", "protein-conversion"],
  water: ["water", "water-footprint", "energy"],
};

const topicOf = (claim) => Object.keys(topics).find((topic) => topics[topic].includes(claim.indicator[0])) ?? "rest";

/** Fills the box with a list for each topic; `ask` is called with the claim that is chosen. */
export function circulating(box, claims, ask) {
  const found = [...Object.keys(topics), "rest"].map((topic) => [topic, claims.filter((claim) => topicOf(claim) === topic)]).filter(([, some]) => some.length > 0);
  fill(box,
    el("span", {}, t("ask.circulating", { n: claims.length })),
    found.map(([topic, some]) => el("details", { name: "topics", "data-topic": topic },
      el("summary", {}, `${t(`topic.${topic}`)} (${some.length})`),
      el("ul", {}, some.map((claim) => el("li", {},
        el("button", { type: "button", "data-claim": claim.id, onclick: (event) => {
          event.currentTarget.closest("details").open = false;
          ask(claim);
        } }, el("span", { lang: "en" }, claim.claim), el("strong", { class: `is-${claim.verdict}` }, t(`overall.${claim.verdict}`)))))))));
}
