// What can be said of a claim: one short sentence to speak, and everything that belongs to it as a footnote.
import { capital, figure, language, name, t, the, written } from "./i18n.js";

/** A sentence of the service, in either language: what is claimed, in how many draws, and in brackets on what it rests. */
const parts = /^.*?, ((?:in|dans) \d+\s% (?:of the draws|des tirages)) \((.*)\)\.\s*(.*)$/s;

/** Fewer than 3 studies on a side, as the service counts them: under grade=memory those from memory do not count. */
export const isThin = (asked, question) => question.evidence !== "modelled"
  && Math.min(asked.product.studies - question.memory.product, (asked.reference?.studies ?? 0) - question.memory.reference) < 3;

/** How many studies stand on each side, and how many of them are from memory. */
export function studies(check, question) {
  if (question.evidence === "modelled") return t("modelled.both");
  const asked = check.cells.find((cell) => cell.asked);
  const of = (count, product, memory) => t("verdict.studies", { n: count, product }) + (memory > 0 ? t("verdict.memory", { n: memory }) : "");
  return [
    of(asked.product.studies, the("product", check.product, check.name), question.memory.product),
    of(asked.reference?.studies ?? 0, the("product", question.against), question.memory.reference),
  ].join(", ");
}

/** The service's sentence without what is spoken already. */
function rest(sentence) {
  const [, draws, within, after] = parts.exec(sentence) ?? [];
  return within ? `${capital(draws)}${language === "fr" ? "\u00a0" : ""}; ${within}. ${after}`.trim() : sentence;
}

function words(check, question) {
  const instead = check.say_instead;
  const asked = check.cells.find((cell) => cell.asked);
  const sides = { product: the("product", check.product, check.name), reference: the("product", question.against), indicator: name("indicator", question.indicator) };
  const basis = (cell) => ({ per: name("per", cell.per), boundary: name("boundary", cell.boundary), verb: name("verb", question.indicator) });
  if (instead.times_less) return t(question.evidence === "modelled" ? "spoken.modelled" : "spoken.less", { ...sides, ...basis(instead), times: figure(instead.times_less), percent: written(instead.percent_less) });
  if (instead.paper) return t("spoken.paper", sides);
  if (asked?.times_less) return t("spoken.no-saving", { ...sides, ...basis(asked) });
  return t(asked && asked.verdict !== "no-evidence" ? "spoken.undecided" : "spoken.nothing", sides);
}

/**
 * The sentence to speak (at most 25 words), and as its footnote the rest of the service's sentence, so that together they contain no less.
 */
export function spoken(answer, question) {
  const [check] = answer.checks;
  return check ? { text: capital(words(check, question)), note: [rest(check.say_instead.sentence), check.say_instead.caveat].filter(Boolean).join(" ") } : { text: answer.say_instead.sentence, note: "" };
}
