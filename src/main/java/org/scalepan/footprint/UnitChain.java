package org.scalepan.footprint;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.CompositionRow.RowUse;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.uncertainty.Constant;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.SpreadReading;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * The functional-unit chain of one product: live → carcass → edible → dry matter or protein. An impact per kilogram live
 * divided by the yield along the chain is the impact per kilogram of what comes out; all burden rests on the edible product.
 *
 * <p>Factors are the product's own, or those of the broader product that includes it (beef for beef from the dairy herd); a
 * source that states its own factor is converted with that, and so is a farm that states what its animals hold. Nothing is taken from
 * another species.
 */
public final class UnitChain {
    private static final String FRESH = "fresh";

    /** A link of the chain: so many kilograms of {@code to} per kilogram of {@code from}. */
    private record Link(FunctionalUnit from, FunctionalUnit to, String quantity) {}

    private static final List<Link> LINKS = List.of(
            new Link(FunctionalUnit.KG_LIVE, FunctionalUnit.KG_CARCASS, "dressing-fraction"),
            new Link(FunctionalUnit.KG_CARCASS, FunctionalUnit.KG_EDIBLE, "bone-free-fraction"),
            new Link(FunctionalUnit.KG_LIVE, FunctionalUnit.KG_EDIBLE, "edible-fraction"),
            new Link(FunctionalUnit.KG_PRODUCT, FunctionalUnit.KG_EDIBLE, "edible-fraction"),
            new Link(FunctionalUnit.LITRE, FunctionalUnit.KG_PRODUCT, "density"),
            new Link(FunctionalUnit.KG_EDIBLE, FunctionalUnit.KG_DRY_MATTER, "dry-matter"),
            new Link(FunctionalUnit.KG_PRODUCT, FunctionalUnit.KG_DRY_MATTER, "dry-matter"),
            new Link(FunctionalUnit.KG_EDIBLE, FunctionalUnit.KG_PROTEIN, "protein"),
            new Link(FunctionalUnit.KG_PRODUCT, FunctionalUnit.KG_PROTEIN, "protein"),
            new Link(FunctionalUnit.KG_DRY_MATTER, FunctionalUnit.KG_PROTEIN, "protein"),
            new Link(FunctionalUnit.KG_PROTEIN, FunctionalUnit.KG_QUALITY_PROTEIN, "diaas"));

    private final Library library;
    private final Product product;
    private final String form;
    private final String source;
    private final ProteinBasis protein;
    private final boolean qualityCapped;
    private final Grade lowestGrade;
    private final Map<Link, ChainFactor> factors;
    private final StatedContent stated;
    private final Map<ConversionEnds, ChainPath> paths = new ConcurrentHashMap<>();

    private record ConversionEnds(FunctionalUnit from, FunctionalUnit to) {}

    /** The key of a chain; all parts come from closed lists, so there are not many. */
    private record ConversionKey(
            String product, String form, String source, ProteinBasis protein, boolean capped, Grade lowestGrade) {}

    private record ConversionIndex(Map<ConversionKey, UnitChain> chains) {}

    private UnitChain(
            Library library,
            Product product,
            String form,
            String source,
            ProteinBasis protein,
            boolean qualityCapped,
            Grade lowestGrade,
            Optional<Map<Link, ChainFactor>> known,
            StatedContent stated) {
        this.library = library;
        this.product = product;
        this.form = form;
        this.source = source;
        this.protein = protein;
        this.qualityCapped = qualityCapped;
        this.lowestGrade = lowestGrade;
        this.stated = stated;
        this.factors = known.orElseGet(() -> LINKS.stream()
                .flatMap(link -> published(link).map(factor -> Map.entry(link, factor)).stream())
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    /**
     * The chain of a product in a form, with every path through it found once.
     *
     * @param source id of the source whose result is converted; its own factors come first
     * @param protein how the protein asked for is counted
     * @param qualityCapped whether a protein quality above 1 counts as 1
     * @param lowestGrade lowest check grade of an eligible factor
     */
    public static UnitChain of(
            Library library,
            Product product,
            String form,
            String source,
            ProteinBasis protein,
            boolean qualityCapped,
            Grade lowestGrade) {
        if (product.isOfRecords()) {
            // Nothing is published of it, and there is no end to the names that people give.
            return new UnitChain(
                    library,
                    product,
                    form,
                    source,
                    protein,
                    qualityCapped,
                    lowestGrade,
                    Optional.of(Map.of()),
                    StatedContent.NONE);
        }
        return library.view(ConversionIndex.class, unused -> new ConversionIndex(new ConcurrentHashMap<>()))
                .chains()
                .computeIfAbsent(
                        new ConversionKey(product.id(), form, source, protein, qualityCapped, lowestGrade),
                        key -> new UnitChain(
                                library,
                                product,
                                form,
                                source,
                                protein,
                                qualityCapped,
                                lowestGrade,
                                Optional.empty(),
                                StatedContent.NONE));
    }

    /** The same for animals of which a farm states what they hold; what it sells dried or milled holds something else. */
    public UnitChain stating(StatedContent content) {
        return content.isEmpty() || !form.equals(FRESH)
                ? this
                : new UnitChain(
                        library,
                        product,
                        form,
                        source,
                        protein,
                        qualityCapped,
                        lowestGrade,
                        Optional.of(factors),
                        content);
    }

    /** The shortest path from one unit to another, or the name of the factor that is missing. */
    public ChainPath path(FunctionalUnit from, FunctionalUnit to) {
        return paths.computeIfAbsent(new ConversionEnds(from, to), ends -> find(from, to));
    }

    private ChainPath find(FunctionalUnit from, FunctionalUnit to) {
        Optional<List<ChainStep>> steps = byStatement(from, to).or(() -> shortest(from, to));
        if (steps.isEmpty()) {
            return new ChainPath.MissingConversion(product.label(), form, from, to, missing(from, to));
        }
        if (!to.countsProtein() || protein == ProteinBasis.CRUDE) {
            return new ChainPath.FoundPath(steps.get());
        }
        Optional<CompositionRow> factor = nitrogenFactor();
        if (factor.isEmpty()) {
            return new ChainPath.MissingConversion(
                    product.label(), form, from, to, ofGrade(Message.of("missing.nitrogen-factor")));
        }
        List<ChainStep> corrected = new ArrayList<>(steps.get());
        corrected.add(correction(to, factor.get()));
        return new ChainPath.FoundPath(corrected);
    }

    /** From crude protein (N × 6.25) to protein by the product's own factor: 6.25 ÷ k more impact per kilogram. */
    private ChainStep correction(FunctionalUnit unit, CompositionRow row) {
        Distribution k =
                SpreadReading.read(row.printed(), library.spreadDefaults().composition());
        ChainFactor factor = new ChainFactor(row, k, 1 / ProteinBasis.CRUDE_FACTOR, Double.POSITIVE_INFINITY);
        return new ChainStep.PublishedStep(unit, unit, factor, false);
    }

    /** By what the farm states, from the fresh animals as they are harvested or sold to what they hold, or back. */
    private Optional<List<ChainStep>> byStatement(FunctionalUnit from, FunctionalUnit to) {
        return isWhole(from)
                ? holding(to)
                        .flatMap(part -> shortest(part.unit(), to)
                                .map(rest -> joined(
                                        List.of(new ChainStep.StatedStep(from, part.unit(), part.share(), false)),
                                        rest)))
                : isWhole(to)
                        ? holding(from)
                                .flatMap(part -> shortest(from, part.unit())
                                        .map(first -> joined(
                                                first,
                                                List.of(new ChainStep.StatedStep(
                                                        part.unit(), to, part.share(), true)))))
                        : Optional.empty();
    }

    private static boolean isWhole(FunctionalUnit unit) {
        return unit == FunctionalUnit.KG_LIVE || unit == FunctionalUnit.KG_PRODUCT;
    }

    /** A part of the animals that was stated. */
    private record StatedPart(FunctionalUnit unit, StatedContent.StatedShare share) {}

    /** What is stated that a unit counts. */
    private Optional<StatedPart> holding(FunctionalUnit unit) {
        return unit.countsProtein()
                ? stated.protein().map(share -> new StatedPart(FunctionalUnit.KG_PROTEIN, share))
                : stated.dryMatter()
                        .filter(share -> unit == FunctionalUnit.KG_DRY_MATTER)
                        .map(share -> new StatedPart(unit, share));
    }

    private static List<ChainStep> joined(List<ChainStep> first, List<ChainStep> then) {
        List<ChainStep> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }

    private Optional<List<ChainStep>> shortest(FunctionalUnit from, FunctionalUnit to) {
        Map<FunctionalUnit, List<ChainStep>> reached = new EnumMap<>(FunctionalUnit.class);
        reached.put(from, List.of());
        Deque<FunctionalUnit> next = new ArrayDeque<>(List.of(from));
        while (!next.isEmpty()) {
            FunctionalUnit at = next.removeFirst();
            for (ChainStep step : steps(at)) {
                List<ChainStep> way = new ArrayList<>(reached.getOrDefault(at, List.of()));
                way.add(step);
                List<ChainStep> known = reached.get(step.to());
                if (known == null || published(way) < published(known)) {
                    reached.put(step.to(), way);
                    next.addLast(step.to());
                }
            }
        }
        return Optional.ofNullable(reached.get(to));
    }

    /** Length of a path: only steps that rest on a published factor count, because only they can be wrong. */
    private static long published(List<ChainStep> way) {
        return way.stream().filter(ChainStep.PublishedStep.class::isInstance).count();
    }

    private List<ChainStep> steps(FunctionalUnit at) {
        List<ChainStep> steps = new ArrayList<>(exact(at));
        for (Link link : LINKS) {
            if (link.from() == at || link.to() == at) {
                factor(link)
                        .ifPresent(factor -> steps.add(
                                link.from() == at
                                        ? new ChainStep.PublishedStep(link.from(), link.to(), factor, false)
                                        : new ChainStep.PublishedStep(link.to(), link.from(), factor, true)));
            }
        }
        return steps;
    }

    private List<ChainStep> exact(FunctionalUnit at) {
        List<ChainStep> steps = new ArrayList<>();
        if (at == FunctionalUnit.KG_PROTEIN) {
            steps.add(new ChainStep.Exact(at, FunctionalUnit.HUNDRED_G_PROTEIN, 0.1, "1 kg is 10 times 100 g"));
        } else if (at == FunctionalUnit.HUNDRED_G_PROTEIN) {
            steps.add(new ChainStep.Exact(at, FunctionalUnit.KG_PROTEIN, 10, "1 kg is 10 times 100 g"));
        }
        Optional<FunctionalUnit> sold = soldAs();
        if (sold.isPresent()) {
            String why = product.name() + " (" + form + ") is sold by the "
                    + sold.get().words();
            if (at == FunctionalUnit.KG_PRODUCT) {
                steps.add(new ChainStep.Exact(at, sold.get(), 1, why));
            } else if (at == sold.get()) {
                steps.add(new ChainStep.Exact(at, FunctionalUnit.KG_PRODUCT, 1, why));
            }
        }
        return steps;
    }

    /** Dried products and meals are eaten or fed as they are sold. */
    private Optional<FunctionalUnit> soldAs() {
        return form.equals(FRESH)
                ? product.soldAs().flatMap(FunctionalUnit::of)
                : Optional.of(FunctionalUnit.KG_EDIBLE);
    }

    private Optional<ChainFactor> factor(Link link) {
        return Optional.ofNullable(factors.get(link));
    }

    private Optional<ChainFactor> published(Link link) {
        return best(row -> row.form().equals(form)
                        && row.quantity().equals(link.quantity())
                        && row.per().equals(link.from().id()))
                .map(row -> read(link, row));
    }

    private ChainFactor read(Link link, CompositionRow row) {
        boolean studysOwn = row.cited().source().equals(source);
        double gsd = library.spreadDefaults().composition();
        boolean fraction =
                !link.quantity().equals("density") && !link.quantity().equals("diaas");
        Distribution published =
                fraction ? SpreadReading.readFraction(row.printed(), gsd) : SpreadReading.read(row.printed(), gsd);
        // A study's own factor is a parameter of that study: inverting it, as printed, adds no uncertainty to the
        // study's
        // result.
        Distribution reading = studysOwn ? new Constant(row.printed().value().orElseGet(published::median)) : published;
        double scale = link.quantity().equals("protein")
                ? ProteinBasis.CRUDE_FACTOR / row.nitrogenFactor().orElse(ProteinBasis.CRUDE_FACTOR)
                : 1;
        double cap = link.quantity().equals("diaas") && qualityCapped ? 1 : Double.POSITIVE_INFINITY;
        return new ChainFactor(row, reading, scale, cap);
    }

    private Optional<CompositionRow> nitrogenFactor() {
        Optional<CompositionRow> sameForm =
                best(row -> row.form().equals(form) && row.quantity().equals("nitrogen-factor"));
        return sameForm.isPresent() ? sameForm : best(row -> row.quantity().equals("nitrogen-factor"));
    }

    /** The study's own row before the product's default, and the product's own before the broader product's. */
    private Optional<CompositionRow> best(Predicate<CompositionRow> wanted) {
        return Stream.concat(Stream.of(product.id()), product.broader().stream())
                .flatMap(id -> library.composition().stream()
                        .filter(row -> row.product().equals(id))
                        .filter(wanted)
                        .filter(this::mayServe)
                        .sorted(Comparator.comparing(
                                row -> !row.cited().source().equals(source)))
                        .limit(1))
                .min(Comparator.comparing(row -> !row.cited().source().equals(source)));
    }

    private boolean mayServe(CompositionRow row) {
        boolean meant = row.use() == RowUse.DEFAULT
                || (row.use() == RowUse.STUDY && row.cited().source().equals(source));
        return meant && row.cited().check().isAtLeast(lowestGrade);
    }

    /** Names the factor that this product lacks: any one that would complete a path, or else all on the path that lacks fewest. */
    private Message missing(FunctionalUnit from, FunctionalUnit to) {
        if (product.group().equals("insect")
                && (to == FunctionalUnit.KG_CARCASS || from == FunctionalUnit.KG_CARCASS)) {
            return Message.of("missing.carcass");
        }
        if (product.isOfRecords()) {
            return Message.of("missing.of-records");
        }
        List<Message> anyOneOf = LINKS.stream()
                .filter(link -> factor(link).isEmpty())
                .filter(link -> leadsTo(link, from, to))
                .map(UnitChain::named)
                .distinct()
                .toList();
        Object which = anyOneOf.isEmpty()
                ? lackingOn(from, to).stream()
                        .reduce((one, other) -> Message.of("missing.both", "one", one, "other", other))
                        .orElse(Message.verbatim(""))
                : Listing.or(anyOneOf);
        return ofGrade(Message.of("missing.factor", "which", which));
    }

    private static Message named(Link link) {
        String key = "link." + link.quantity() + (link.from() == FunctionalUnit.KG_DRY_MATTER ? ".of-dry-matter" : "");
        return Message.of(
                "link",
                "words",
                Message.of(key),
                "quantity",
                link.quantity(),
                "unit",
                link.from().id());
    }

    /** The missing factors on the path that lacks fewest, in its order: where no single one would complete a path, all are named. */
    private List<Message> lackingOn(FunctionalUnit from, FunctionalUnit to) {
        Map<FunctionalUnit, List<Link>> lacking = new EnumMap<>(FunctionalUnit.class);
        lacking.put(from, List.of());
        Deque<FunctionalUnit> next = new ArrayDeque<>(List.of(from));
        while (!next.isEmpty()) {
            FunctionalUnit at = next.removeFirst();
            List<Link> before = lacking.getOrDefault(at, List.of());
            exact(at).forEach(step -> reach(step.to(), before, lacking, next));
            for (Link link : LINKS) {
                if (link.from() == at || link.to() == at) {
                    List<Link> way = new ArrayList<>(before);
                    if (factor(link).isEmpty()) {
                        way.add(link);
                    }
                    reach(link.from() == at ? link.to() : link.from(), way, lacking, next);
                }
            }
        }
        return lacking.getOrDefault(to, List.of()).stream()
                .map(UnitChain::named)
                .toList();
    }

    private static void reach(
            FunctionalUnit unit, List<Link> way, Map<FunctionalUnit, List<Link>> lacking, Deque<FunctionalUnit> next) {
        List<Link> known = lacking.get(unit);
        if (known == null || way.size() < known.size()) {
            lacking.put(unit, way);
            next.addLast(unit);
        }
    }

    private Message ofGrade(Message lacking) {
        return lowestGrade == Grade.MEMORY
                ? lacking
                : Message.of("missing.of-grade", "why", lacking, "grade", lowestGrade.id());
    }

    /** True when supplying this one missing link would complete a path. */
    private boolean leadsTo(Link link, FunctionalUnit from, FunctionalUnit to) {
        return (connected(from, link.from()) && connected(link.to(), to))
                || (connected(from, link.to()) && connected(link.from(), to));
    }

    private boolean connected(FunctionalUnit from, FunctionalUnit to) {
        return from == to || shortest(from, to).isPresent();
    }
}
