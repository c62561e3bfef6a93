package org.scalepan;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.base.DescribedPredicate.anyElementThat;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.Source;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Packages are layers, and a layer depends only on those below it. */
@AnalyzeClasses(packages = "org.scalepan", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {
    /** More than a reader looks through; about thirty is the aim. */
    private static final long MOST_FILES = 36;

    private static final String[] QUESTIONS = Stream.of(
                    "compare", "claim", "farm", "programme", "nutrition", "brief", "bulk", "library", "site")
            .map(question -> "org.scalepan.web." + question + "..")
            .toArray(String[]::new);

    @ArchTest
    static final ArchRule a_layer_looks_only_down = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("start")
            .definedBy("org.scalepan")
            .layer("web")
            .definedBy("org.scalepan.web..")
            .layer("exchange")
            .definedBy("org.scalepan.exchange..")
            .layer("ask")
            .definedBy("org.scalepan.ask..")
            .layer("literature")
            .definedBy("org.scalepan.literature..")
            .optionalLayer("production")
            .definedBy("org.scalepan.production..")
            .layer("input")
            .definedBy("org.scalepan.input..")
            .layer("footprint")
            .definedBy("org.scalepan.footprint..")
            .layer("factors")
            .definedBy("org.scalepan.factors..")
            .layer("cite")
            .definedBy("org.scalepan.cite..")
            .layer("uncertainty")
            .definedBy("org.scalepan.uncertainty..")
            .layer("quantity")
            .definedBy("org.scalepan.quantity..")
            .layer("sheet")
            .definedBy("org.scalepan.sheet..")
            .layer("words")
            .definedBy("org.scalepan.words..")
            .whereLayer("words")
            .mayOnlyBeAccessedByLayers(
                    "start",
                    "web",
                    "exchange",
                    "ask",
                    "literature",
                    "production",
                    "input",
                    "footprint",
                    "factors",
                    "uncertainty")
            .whereLayer("sheet")
            .mayOnlyBeAccessedByLayers("web", "exchange")
            .whereLayer("start")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("web")
            .mayOnlyBeAccessedByLayers("start")
            .whereLayer("exchange")
            .mayOnlyBeAccessedByLayers("start", "web")
            .whereLayer("ask")
            .mayOnlyBeAccessedByLayers("start", "web", "exchange")
            .whereLayer("literature")
            .mayOnlyBeAccessedByLayers("start", "web", "exchange", "ask")
            .whereLayer("production")
            .mayOnlyBeAccessedByLayers("start", "web", "exchange", "ask")
            .whereLayer("input")
            .mayOnlyBeAccessedByLayers("start", "web", "exchange", "ask", "production")
            .whereLayer("footprint")
            .mayOnlyBeAccessedByLayers("start", "web", "exchange", "ask", "literature", "production")
            .whereLayer("factors")
            .mayOnlyBeAccessedByLayers(
                    "start", "web", "exchange", "ask", "literature", "production", "input", "footprint")
            .whereLayer("cite")
            .mayOnlyBeAccessedByLayers(
                    "start", "web", "exchange", "ask", "literature", "production", "footprint", "factors")
            .whereLayer("uncertainty")
            .mayOnlyBeAccessedByLayers(
                    "start", "web", "exchange", "ask", "literature", "production", "footprint", "factors", "cite")
            .whereLayer("quantity")
            .mayOnlyBeAccessedByLayers(
                    "start",
                    "web",
                    "exchange",
                    "ask",
                    "literature",
                    "production",
                    "input",
                    "footprint",
                    "factors",
                    "cite",
                    "uncertainty");

    @ArchTest
    static final ArchRule no_two_packages_need_each_other =
            slices().matching("org.scalepan.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule within_a_layer_no_two_packages_need_each_other =
            slices().matching("org.scalepan.(*).(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule what_questions_share_does_not_know_them = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("server")
            .definedBy("org.scalepan.web.server..")
            .layer("questions")
            .definedBy(QUESTIONS)
            .layer("route")
            .definedBy("org.scalepan.web.route..")
            .layer("render")
            .definedBy("org.scalepan.web.render..")
            .layer("http")
            .definedBy("org.scalepan.web.http..")
            .whereLayer("server")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("questions")
            .mayOnlyBeAccessedByLayers("server")
            .whereLayer("route")
            .mayOnlyBeAccessedByLayers("server", "questions")
            .whereLayer("render")
            .mayOnlyBeAccessedByLayers("server", "questions", "route")
            .whereLayer("http")
            .mayOnlyBeAccessedByLayers("server", "questions", "route", "render");

    @ArchTest
    static final ArchRule questions_do_not_know_each_other = slices().matching("org.scalepan.web.(*)..")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(resideOutsideOfPackages(QUESTIONS), alwaysTrue())
            .ignoreDependency(alwaysTrue(), resideOutsideOfPackages(QUESTIONS));

    /** A brief is made of comparisons and claims, a claim of contents of nutrition and claims; no other question of others. */
    @ArchTest
    static final ArchRule below_the_web_too_but_for_the_brief = slices().matching("org.scalepan.ask.(*)..")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(resideInAPackage("org.scalepan.ask.brief.."), resideInAPackage("org.scalepan.ask.."))
            .ignoreDependency(resideInAPackage("org.scalepan.ask.contents.."), resideInAPackage("org.scalepan.ask.."));

    /** False for the copies of records that the compiler writes: each has types of the same names, and nobody reads them. */
    private static boolean written(JavaClass type) {
        return type.getSource()
                .flatMap(Source::getFileName)
                .filter(file -> Files.exists(
                        Path.of("src/main/java", type.getPackageName().replace('.', '/'))
                                .resolve(file)))
                .isPresent();
    }

    @ArchTest
    static void no_two_types_share_a_name(JavaClasses classes) {
        Map<String, List<String>> byName = classes.stream()
                .filter(LayersTest::written)
                .filter(type ->
                        !type.getSimpleName().isEmpty() && !type.getSimpleName().equals("package-info"))
                .collect(groupingBy(JavaClass::getSimpleName, mapping(JavaClass::getName, toList())));
        byName.values().removeIf(types -> types.size() == 1);
        assertEquals(Map.of(), byName);
    }

    @ArchTest
    static void no_package_is_too_full_to_find_anything_in(JavaClasses classes) {
        Map<String, Long> files = classes.stream()
                .filter(LayersTest::written)
                .filter(JavaClass::isTopLevelClass)
                .collect(groupingBy(JavaClass::getPackageName, counting()));
        files.values().removeIf(number -> number <= MOST_FILES);
        assertEquals(Map.of(), files);
    }

    @ArchTest
    static final ArchRule nothing_below_web_knows_http = noClasses()
            .that()
            .resideInAnyPackage(
                    "org.scalepan.exchange..",
                    "org.scalepan.ask..",
                    "org.scalepan.literature..",
                    "org.scalepan.production..",
                    "org.scalepan.footprint..",
                    "org.scalepan.factors..",
                    "org.scalepan.cite..",
                    "org.scalepan.uncertainty..",
                    "org.scalepan.quantity..",
                    "org.scalepan.sheet..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..", "jakarta.servlet..", "org.eclipse.jetty..", "java.net.http..");

    /** What another program takes in: all but the service. */
    @ArchTest
    static final ArchRule the_core_stands_without_the_service = noClasses()
            .that()
            .resideOutsideOfPackage("org.scalepan.web..")
            .and()
            .doNotHaveFullyQualifiedName("org.scalepan.Scalepan")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.scalepan.web..",
                    "io.javalin..",
                    "jakarta.servlet..",
                    "org.eclipse.jetty..",
                    "java.net.http..",
                    "org.commonmark..",
                    "org.slf4j..");

    /** Who uses it in another program sees texts, numbers and lists of ours, and no library of others. */
    @ArchTest
    static final ArchRule what_the_core_offers_is_plain = noMethods()
            .that()
            .arePublic()
            .and()
            .areDeclaredInClassesThat()
            .resideInAPackage("org.scalepan")
            .should()
            .haveRawReturnType(resideOutsideOfPackages("org.scalepan", "java.."))
            .orShould()
            .haveRawParameterTypes(anyElementThat(resideOutsideOfPackages("org.scalepan", "java..")));

    /** What a farm feeds and burns goes into the inventory without knowing which animals it is for. */
    @ArchTest
    static final ArchRule the_inventory_of_a_farm_knows_no_animals = noClasses()
            .that()
            .resideInAPackage("org.scalepan.production")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.scalepan.production.herd..", "org.scalepan.production.insects..");

    @ArchTest
    static final ArchRule herds_and_insects_do_not_know_each_other = slices().matching(
                    "org.scalepan.production.(herd|insects)..")
            .should()
            .notDependOnEachOther();

    @ArchTest
    static final ArchRule climate_and_heat_of_rooms_know_no_animals = noClasses()
            .that()
            .resideInAnyPackage("org.scalepan.production.climate..", "org.scalepan.production.heating..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.scalepan.production.herd..",
                    "org.scalepan.production.insects..",
                    "org.scalepan.production.records..");

    @ArchTest
    static final ArchRule the_ground_knows_no_json = noClasses()
            .that()
            .resideInAnyPackage("org.scalepan.uncertainty..", "org.scalepan.quantity..", "org.scalepan.sheet..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml.jackson..");

    @ArchTest
    static final ArchRule a_class_is_named_for_what_it_is = noClasses()
            .should()
            .haveSimpleNameEndingWith("Util")
            .orShould()
            .haveSimpleNameEndingWith("Utils")
            .orShould()
            .haveSimpleNameEndingWith("Helper")
            .orShould()
            .haveSimpleNameEndingWith("Manager")
            .orShould()
            .haveSimpleNameEndingWith("Service");

    @ArchTest
    static final ArchRule draws_come_from_keyed_streams_alone = noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.Random")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
            .orShould()
            .callMethod(Math.class, "random");

    @ArchTest
    static final ArchRule only_the_start_speaks_to_the_console = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("org.scalepan.Scalepan")
            .and()
            .doNotHaveFullyQualifiedName("org.scalepan.Launcher")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");

    /** An answer is a function of question, library and seed: below the web nobody asks what time it is. */
    @ArchTest
    static final ArchRule answers_do_not_depend_on_the_clock = noClasses()
            .that()
            .resideOutsideOfPackages("org.scalepan", "org.scalepan.web..")
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.time.Clock");
}
