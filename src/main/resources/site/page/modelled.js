// Reference farms: figures modelled from published practice, what farm each is of, and what it leaves out. Never a study.
import { el, english, fill } from "./dom.js";
import { capital, figure, interval, name, t, the, unit } from "./i18n.js";

/** The modelled figure of a side of an answer, whichever kind of evidence was asked for; none where there is none. */
export function modelledOf(side, question) {
  const modelled = question.evidence === "modelled" ? side : side.modelled;
  return modelled?.footprint ? modelled : null;
}

/** The figure of a side by the kind of evidence that was not asked for; none where there is none. */
export function besideOf(side, question) {
  const beside = question.evidence === "modelled" ? side.published : side.modelled;
  return beside?.footprint ? beside : null;
}

/** What stands before a figure that is only a bound. */
export const boundWords = (side) => (side.bound === "at-least" ? t("verdict.at-least") : side.bound === "at-most" ? t("verdict.at-most") : "");

/** A figure with its bound: `at least 6.3`. */
export const bounded = (side) => `${boundWords(side)}${figure(side.footprint.median)}`;

/** What is required and nobody published, as one clause. */
export const notCounted = (modelled) => (modelled.not_counted?.length ? t("modelled.not-counted", { what: modelled.not_counted.join(", ") }) : "");

/** The text alternative of a modelled figure. */
export const inWords = (side, modelled, question) => [
  t("modelled.mark", { product: capital(name("product", side.product, side.name)), value: bounded(modelled),
    interval: interval(modelled.footprint.low, modelled.footprint.high), unit: unit(question.indicator, question.per) }),
  notCounted(modelled)].filter(Boolean).join(" ");

/** The pattern of modelled figures: lines, so that they are told from studies in print and without colour. */
export function defineHatching(svg) {
  const pattern = svg.append("defs").append("pattern").attr("id", "hatching").attr("width", 6).attr("height", 6)
    .attr("patternUnits", "userSpaceOnUse").attr("patternTransform", "rotate(45)");
  pattern.append("line").attr("class", "practice-line").attr("x1", 0).attr("x2", 0).attr("y1", 0).attr("y2", 6);
}

/** Check boxes of reference farms. */
export function farmChoices(box, farms, chosen, toggle) {
  fill(box,
    el("p", {}, t("modelled.about")),
    farms.map((farm) => el("label", { class: "choice" },
      el("input", { type: "checkbox", value: farm.id, checked: chosen.includes(farm.id), onchange: (event) => toggle(farm.id, event.target.checked) }),
      " ", english(capital(farm.name)))));
}

/** A choice between the reference farms of a product, where it has several. */
function choice(side, modelled, pick) {
  if (!modelled.others?.length) return null;
  const farms = [{ system: modelled.reference_farm.id, name: modelled.reference_farm.name }, ...modelled.others];
  return el("label", { class: "farm-choice" }, el("span", {}, t("modelled.choice")), " ",
    el("select", { id: `farm-of-${side.product}`, lang: "en", onchange: (event) => pick(event.target.value) },
      farms.map((farm) => el("option", { value: farm.system }, farm.name))));
}

/** Shows the reference farm behind one figure. */
export function modelledFarm(box, side, question, close) {
  const modelled = modelledOf(side, question);
  const farm = modelled.reference_farm;
  fill(box,
    el("div", { class: "study-head" },
      el("h3", { id: "study-title" }, english(capital(farm.name))),
      close ? el("button", { type: "button", class: "quiet", onclick: close }, t("study.close")) : null),
    el("p", {}, el("strong", {}, t("modelled.words"))),
    el("p", { class: "big" }, bounded(modelled), " ", el("span", {}, unit(question.indicator, question.per)), " ",
      el("span", {}, `(${interval(modelled.footprint.low, modelled.footprint.high)})`)),
    el("p", {}, english(farm.sentence)),
    modelled.gaps?.length ? [el("h4", {}, t("modelled.gaps")), el("ul", { class: "finding-notes", lang: "en" }, modelled.gaps.map((gap) =>
      el("li", {}, `${gap.field}: ${gap.why}`)))] : null,
    el("p", { class: "ways" }, el("a", { href: `/v1/reference-farms/${farm.id}` }, t("modelled.inputs"))));
}

/** All reference farms of an answer with what each leaves out, below the picture. */
export function referenceFarms(box, answer, question, pick) {
  const sides = [answer.reference, ...answer.items].filter((side) => modelledOf(side, question));
  const section = box.closest("details");
  section.hidden = sides.length === 0;
  section.querySelector("summary").textContent = `${t("modelled.title")} (${sides.length})`;
  // Where it is all that is known of what is asked, it is read at once.
  const alone = [answer.reference, answer.items[0]].some((side) => !side.footprint && sides.includes(side));
  if (question.evidence === "modelled" || alone) section.open = true;
  fill(box,
    el("p", {}, t("modelled.about")),
    sides.map((side) => {
      const modelled = modelledOf(side, question);
      return el("article", {},
        el("h3", {}, capital(the("product", side.product, side.name))),
        el("p", {}, inWords(side, modelled, question)),
        el("p", { class: "farm-sentence" }, english(modelled.reference_farm.sentence)),
        choice(side, modelled, pick));
    }));
}
