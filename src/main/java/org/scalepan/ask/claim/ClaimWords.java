package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.Likelihood;
import org.scalepan.ask.Ruler;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Side;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.literature.Borrowed;
import org.scalepan.literature.PairedStudy;
import org.scalepan.quantity.SignificantFigures;
import org.scalepan.uncertainty.Summary;

/** Says of a checked claim why it comes out as it does, and what can be said instead. */
final class ClaimWords {
    private static final Map<String, String> OF_INDICATOR = Map.of(
            "ghg", "greenhouse gas emissions",
            "land", "land",
            "energy", "energy",
            "water", "fresh water",
            "water-footprint", "water (green, blue and grey)",
            "feed", "feed",
            "feed-dry-matter", "feed dry matter");

    private final Library library;
    private final ClaimQuestion question;
    private final Side side;
    private final List<Cell> cells;
    private final List<PairedFinding> paired;

    ClaimWords(Library library, ClaimQuestion question, Side side, List<Cell> cells, List<PairedFinding> paired) {
        this.library = library;
        this.question = question;
        this.side = side;
        this.cells = cells;
        this.paired = paired;
    }

    /** The claim itself: {@code yellow mealworm causes at least 100 times less greenhouse gas emissions than beef}. */
    static String claim(ClaimQuestion question, String product) {
        String noun = noun(question.ruler());
        boolean many = product.equals(Subject.INSECTS);
        String verb = many ? verb(question.ruler()).replaceFirst("s$", "") : verb(question.ruler());
        if (question.claimed().times().isEmpty()) {
            return product + " " + verb + " no " + noun;
        }
        return product + " " + verb + " " + question.claimed().words() + " " + noun + " than "
                + question.reference().map(Side::words).orElse("");
    }

    private static String noun(Ruler ruler) {
        return OF_INDICATOR.getOrDefault(
                ruler.indicator().id(), ruler.indicator().id());
    }

    private static String verb(Ruler ruler) {
        return ruler.indicator().isWarming() ? "causes" : "needs";
    }

    /** {@code per kg protein, up to the farm gate}. */
    static String basis(Ruler ruler) {
        return "per " + ruler.per().words() + ", " + new Sentences(ruler, 0.9).boundary();
    }

    String reason(Overall overall) {
        List<String> sentences = new ArrayList<>();
        sentences.add(asked());
        sentences.addAll(elsewhere(overall));
        pairedInWords().ifPresent(sentences::add);
        return String.join(" ", sentences);
    }

    private String asked() {
        Cell asked = cells.get(0);
        String where = capital(basis(asked.ruler()));
        if (!asked.speaks()) {
            return where + ", there is no evidence: " + missing(asked) + ".";
        }
        if (question.claimed().times().isEmpty()) {
            Sentences sentences =
                    new Sentences(asked.ruler(), question.sampling().coverage());
            return capital(sentences.boundary()) + ", " + side.words() + " " + verb(asked.ruler()) + " "
                    + asked.product().footprint().map(sentences::footprint).orElse("") + " (" + percent()
                    + " interval; " + asked.product().amount()
                    + "). "
                    + (asked.verdict() == Verdict.FAILS
                            ? "A footprint of none fails on every boundary on which a study has measured one."
                            : "With credits taken off, " + asked.verdict().words() + ".");
        }
        double probability = asked.probability().orElseThrow().value();
        String likelihood = asked.bearsLikelihood()
                ? "; that it is true is " + Likelihood.word(probability) + " (" + Likelihood.SCALE + ")"
                : asked.isThin()
                        ? "; " + Likelihood.WITHHELD + ", are too few for a likelihood: the evidence is thin"
                        : "; no likelihood is told of what leaves something usual out";
        return where + ", " + ratio(asked) + ", and " + (times() == 1 ? "less" : "at least " + said() + " times")
                + " comes out in "
                + Sentences.share(probability) + " of the draws: "
                + asked.verdict().words() + " there (" + amounts(asked)
                + likelihood + ").";
    }

    /** {@code beef has 6.1 (3.2 to 13) times the greenhouse gas emissions of yellow mealworm}. */
    private String ratio(Cell cell) {
        Summary timesLess = cell.timesLess().orElseThrow();
        return referenceWords() + " has " + Sentences.ratio(timesLess) + " times the "
                + new Sentences(cell.ruler(), question.sampling().coverage()).indicator() + " of " + side.words();
    }

    private List<String> elsewhere(Overall overall) {
        List<Cell> others =
                cells.subList(1, cells.size()).stream().filter(Cell::speaks).toList();
        if (others.isEmpty()) {
            return cells.get(0).speaks()
                    ? List.of("No other basis has evidence.")
                    : List.of("No basis of this library has evidence of all that is compared.");
        }
        if (question.claimed().times().isEmpty()) {
            return measured(others);
        }
        List<String> sentences = new ArrayList<>();
        List<Cell> holding = with(Verdict.HOLDS, others);
        List<Cell> failing = with(Verdict.FAILS, others);
        if (!holding.isEmpty()) {
            String only = overall == Overall.HOLDS_ONLY_FOR ? "On another basis it holds: " : "It also holds ";
            sentences.add(only + String.join("; ", bases(holding, cells)) + "." + animalsOnly(holding));
        } else if (overall != Overall.HOLDS) {
            sentences.add("It holds on no other basis with evidence.");
        }
        if (!failing.isEmpty()) {
            sentences.add("It " + (cells.get(0).verdict() == Verdict.FAILS ? "also fails " : "fails ")
                    + String.join("; ", bases(failing, cells)) + ".");
        }
        return sentences;
    }

    /** What was measured at other boundaries, once for each. */
    private List<String> measured(List<Cell> others) {
        Map<Boundary, Cell> byBoundary = new LinkedHashMap<>();
        others.stream()
                .filter(cell -> cell.ruler().boundary() != question.ruler().boundary())
                .forEach(cell -> byBoundary.merge(cell.ruler().boundary(), cell, ClaimWords::plainer));
        return byBoundary.values().stream()
                .map(cell -> {
                    Sentences sentences =
                            new Sentences(cell.ruler(), question.sampling().coverage());
                    return capital(sentences.boundary()) + ": "
                            + cell.product()
                                    .footprint()
                                    .map(sentences::footprint)
                                    .orElse("") + ".";
                })
                .toList();
    }

    /** Of the animals alone people speak per kg live weight, as it is measured. */
    private static Cell plainer(Cell one, Cell other) {
        return one.ruler().per() != FunctionalUnit.KG_LIVE
                        && other.ruler().boundary() == Boundary.ANIMAL
                        && other.ruler().per() == FunctionalUnit.KG_LIVE
                ? other
                : one;
    }

    private static List<Cell> with(Verdict verdict, List<Cell> cells) {
        return cells.stream().filter(cell -> cell.verdict() == verdict).toList();
    }

    private static String animalsOnly(List<Cell> holding) {
        return holding.stream()
                .map(cell -> new Sentences(cell.ruler(), 0.9).animalsOnly())
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** The verdict on one of many products, in half a sentence. */
    String shortly() {
        Cell asked = cells.get(0);
        List<Cell> holding = with(Verdict.HOLDS, cells.subList(1, cells.size()));
        List<Cell> failing = with(Verdict.FAILS, cells.subList(1, cells.size()));
        StringBuilder text = new StringBuilder(side.words()).append(": ");
        if (!asked.speaks()) {
            text.append("not measured on the basis asked");
        } else if (question.claimed().times().isEmpty()) {
            Sentences sentences =
                    new Sentences(asked.ruler(), question.sampling().coverage());
            text.append(asked.product().footprint().map(sentences::footprint).orElse(""))
                    .append(", ")
                    .append(asked.verdict().words());
        } else {
            text.append(ratio(asked)).append(", ").append(asked.verdict().words());
        }
        if (!holding.isEmpty()) {
            text.append(", it holds ").append(String.join(" and ", bases(holding, cells)));
        }
        if (!asked.speaks() && !failing.isEmpty()) {
            text.append(", it fails ").append(String.join(" and ", bases(failing, cells)));
        }
        return text.toString();
    }

    /**
     * Bases in words: the boundaries with their units, and the warming sets where not all of the grid say the same.
     *
     * @param chosen the cells to be told
     * @param grid all cells
     */
    static List<String> bases(List<Cell> chosen, List<Cell> grid) {
        Map<Boundary, List<Cell>> byBoundary = chosen.stream()
                .collect(Collectors.groupingBy(
                        cell -> cell.ruler().boundary(), LinkedHashMap::new, Collectors.toList()));
        return byBoundary.entrySet().stream()
                .map(entry -> base(
                        entry.getValue(),
                        grid.stream()
                                .filter(cell -> cell.speaks() && cell.ruler().boundary() == entry.getKey())
                                .toList()))
                .toList();
    }

    private static String base(List<Cell> chosen, List<Cell> atBoundary) {
        Ruler ruler = chosen.get(0).ruler();
        List<FunctionalUnit> units = units(chosen);
        boolean all = units.size() > 1 && units.size() == units(atBoundary).size();
        FunctionalUnit first = ruler.boundary() == Boundary.ANIMAL && units.contains(FunctionalUnit.KG_LIVE)
                ? FunctionalUnit.KG_LIVE
                : units.get(0);
        String per = all
                ? first.words() + " and on every other unit checked"
                : units.stream().map(FunctionalUnit::words).collect(Collectors.joining(", "));
        List<String> sets = sets(chosen);
        boolean everySet = !ruler.indicator().isWarming()
                || sets.size() == sets(atBoundary).size();
        return new Sentences(ruler, 0.9).boundary() + " per " + per
                + (everySet ? "" : " (under " + String.join(", ", sets) + ")");
    }

    private static List<FunctionalUnit> units(List<Cell> cells) {
        return cells.stream().map(cell -> cell.ruler().per()).distinct().toList();
    }

    private static List<String> sets(List<Cell> cells) {
        return cells.stream().map(cell -> cell.ruler().gwp().name()).distinct().toList();
    }

    /** {@code 0 of 1 ratio out of one paper reaches 100 times: 5.5 to 13 in Oonincx & de Boer 2012.} */
    private Optional<String> pairedInWords() {
        if (paired.isEmpty() || question.claimed().times().isEmpty()) {
            return Optional.empty();
        }
        long agreeing = paired.stream()
                .filter(one -> one.reaches(times()) == PairedFinding.Reach.YES)
                .count();
        long straddling = paired.stream()
                .filter(one -> one.reaches(times()) == PairedFinding.Reach.STRADDLES)
                .count();
        String found = paired.stream().map(this::found).collect(Collectors.joining("; "));
        return Optional.of(agreeing + " of " + paired.size() + (paired.size() == 1 ? " ratio" : " ratios")
                + " out of one paper " + (paired.size() == 1 ? "is" : "are")
                + (times() == 1 ? " above 1" : " at least " + said() + " times")
                + (straddling > 0 ? ", " + straddling + " lies about it" : "") + ": "
                + found + ".");
    }

    private String found(PairedFinding one) {
        String said = one.band() + " times " + basis(one.ruler());
        // What is computed here is not the paper's own sentence, and must not be quoted as if it were.
        return one.study().origin() == PairedStudy.Origin.PRINTED
                ? said + " in " + label(one.study().study()) + " (printed" + borrowed(one, "; ") + ")"
                : said + ", computed here from two results of "
                        + label(one.study().study()) + " with their spreads" + borrowed(one, ", ");
    }

    /** Which side the paper did not measure itself: {@code its beef is that of de Vries & de Boer 2010}. */
    private String borrowed(PairedFinding one, String before) {
        if (one.study().borrowed().isGathered()) {
            return before + "both out of the literature";
        }
        return Stream.concat(
                        one.study().borrowed().product().map(from -> takenFrom(side.words(), from)).stream(),
                        one.study().borrowed().reference().map(from -> takenFrom(referenceWords(), from)).stream())
                .map(text -> before + text)
                .collect(Collectors.joining());
    }

    private String takenFrom(String words, String from) {
        return "its " + words + " is "
                + (from.equals(Borrowed.LITERATURE) ? "out of the literature" : "that of " + label(from));
    }

    private String label(String source) {
        return library.reference(source).map(reference -> reference.label()).orElse(source);
    }

    /** The strongest sentence: on the basis asked, or on the nearest to it that has evidence. */
    Instead instead() {
        Optional<Cell> cell = cells.stream()
                .filter(one -> question.reference().isPresent()
                        ? one.bounds().isPresent()
                        : one.product().leastCaused().isPresent())
                .min(Comparator.comparingInt(this::remoteness));
        if (cell.isEmpty()) {
            return new Instead(
                    "Nothing can be said of " + side.words()
                            + question.reference()
                                    .map(other -> " against " + other.words())
                                    .orElse("")
                            + " from this library; if you have a farm's records, send them as a system.",
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of());
        }
        return question.reference().isPresent() ? instead(cell.get()) : caused(cell.get());
    }

    private int remoteness(Cell cell) {
        Ruler ruler = cell.ruler();
        Ruler asked = question.ruler();
        int boundary = ruler.boundary() == asked.boundary() ? 0 : ruler.boundary() == Boundary.ANIMAL ? 8 : 4;
        return boundary
                + (ruler.per() == asked.per() ? 0 : 2)
                + (ruler.gwp().id().equals(asked.gwp().id()) ? 0 : 1);
    }

    private Instead instead(Cell cell) {
        Cell.Bounds bounds = cell.bounds().orElseThrow();
        String where = elsewhereThanAsked(cell) + capital(basis(cell.ruler())) + ", ";
        String behind = odds(cell) + " (" + amounts(cell) + warmingSet(cell) + ")" + thin(cell);
        if (bounds.less()) {
            return new Instead(
                    where + side.words() + " " + verb(cell.ruler()) + " at least " + number(bounds.least())
                            + " times less " + noun(cell.ruler()) + " than " + referenceWords() + ", " + behind,
                    Optional.of(cell.ruler()),
                    OptionalDouble.of(bounds.least()),
                    OptionalDouble.empty(),
                    sources(cell));
        }
        if (bounds.more()) {
            return new Instead(
                    where + side.words() + " " + verb(cell.ruler()) + " more " + noun(cell.ruler()) + " than "
                            + referenceWords() + ": at least " + number(bounds.reverseLeast()) + " times as much, "
                            + behind,
                    Optional.of(cell.ruler()),
                    OptionalDouble.empty(),
                    OptionalDouble.of(bounds.reverseLeast()),
                    sources(cell));
        }
        return new Instead(
                where + "no reduction can be defended " + odds(cell) + ": " + ratio(cell) + " (" + percent()
                        + " interval; " + amounts(cell) + warmingSet(cell) + ")" + thin(cell),
                Optional.of(cell.ruler()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                sources(cell));
    }

    /** A sentence on another boundary must not pass for one on the boundary asked. */
    private String elsewhereThanAsked(Cell cell) {
        return cell.ruler().boundary() == question.ruler().boundary()
                ? ""
                : "Nothing can be said " + new Sentences(question.ruler(), 0.9).boundary()
                        + "; on another boundary only: ";
    }

    /** Without a reference: what the product causes at least. */
    private Instead caused(Cell cell) {
        Ruler ruler = cell.ruler();
        return new Instead(
                capital(new Sentences(ruler, 0.9).boundary()) + ", " + side.words() + " " + verb(ruler)
                        + " at least "
                        + number(cell.product().leastCaused().getAsDouble()) + " "
                        + new Sentences(ruler, 0.9).unit() + ", " + odds(cell) + " ("
                        + cell.product().amount() + warmingSet(cell) + ")" + thin(cell),
                Optional.of(ruler),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                sources(cell));
    }

    /** Draws about too few studies are no statement about farms at large, so that they bear a share of draws and no probability. */
    private static String odds(Cell cell) {
        return cell.bearsLikelihood() ? "with 90 % probability" : "in 90 % of the draws";
    }

    private static String thin(Cell cell) {
        String animals = new Sentences(cell.ruler(), 0.9).animalsOnly();
        if (!cell.isThin()) {
            return "." + animals + leftOut(cell);
        }
        List<String> single = Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .filter(one -> one.studies() == 1)
                .map(one -> "one study of " + one.words())
                .toList();
        return ". "
                + (single.isEmpty()
                        ? capital(Likelihood.WITHHELD) + ": the evidence is thin."
                        : "It rests on " + String.join(" and ", single)
                                + ": how far another study would lie is not in the draws, and the evidence is thin.")
                + animals
                + leftOut(cell);
    }

    /** What was computed from records that leave something usual open is more in truth; whoever quotes a ratio must say so. */
    private static String leftOut(Cell cell) {
        boolean ofReference =
                cell.reference().filter(Cell.Evidenced::lowerBound).isPresent();
        if (cell.product().lowerBound()) {
            return " Something usual is not counted for " + cell.product().words()
                    + (ofReference
                            ? " and " + cell.reference().orElseThrow().words() + ": both true figures are higher."
                            : ": its true figure is higher, and its advantage smaller than this.");
        }
        return ofReference
                ? " Something usual is not counted for "
                        + cell.reference().orElseThrow().words() + ": its true figure is higher."
                : "";
    }

    private static List<String> sources(Cell cell) {
        return Stream.concat(
                        cell.product().results().stream(),
                        cell.reference().stream().flatMap(other -> other.results().stream()))
                .map(result -> result.cited().source())
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .toList();
    }

    private static String amounts(Cell cell) {
        return cell.product().amount()
                + cell.reference().map(other -> ", " + other.amount()).orElse("");
    }

    private static String missing(Cell cell) {
        return Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .flatMap(one -> one.missing().stream())
                .findFirst()
                .orElse("a footprint with credits may not be above zero, and then no ratio can be made");
    }

    private static String warmingSet(Cell cell) {
        if (!cell.ruler().indicator().isWarming()) {
            return "";
        }
        boolean kept = Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .anyMatch(Cell.Evidenced::keepsOtherSets);
        return "; " + cell.ruler().gwp().name() + (kept ? " where studies could be converted" : "");
    }

    /** The claimed ratio as it was said: 1, 12 or 1.25. */
    private String said() {
        return Claimed.number(times());
    }

    private double times() {
        return question.claimed().times().orElseThrow();
    }

    private String referenceWords() {
        return question.reference().map(Side::words).orElse("");
    }

    private String percent() {
        return Math.round(question.sampling().coverage() * 100) + " %";
    }

    /** A number that is rounded already. */
    private static String number(double rounded) {
        return SignificantFigures.text(rounded, 2);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
