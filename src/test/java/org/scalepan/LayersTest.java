package org.scalepan;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The house has floors, and a floor looks only down. */
@AnalyzeClasses(packages = "org.scalepan", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {
    @ArchTest
    static final ArchRule a_layer_looks_only_down = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("start")
            .definedBy("org.scalepan")
            .layer("web")
            .definedBy("org.scalepan.web..")
            .layer("ask")
            .definedBy("org.scalepan.ask..")
            .layer("literature")
            .definedBy("org.scalepan.literature..")
            .optionalLayer("production")
            .definedBy("org.scalepan.production..")
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
            .whereLayer("sheet")
            .mayOnlyBeAccessedByLayers("web")
            .whereLayer("start")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("web")
            .mayOnlyBeAccessedByLayers("start")
            .whereLayer("ask")
            .mayOnlyBeAccessedByLayers("start", "web")
            .whereLayer("literature")
            .mayOnlyBeAccessedByLayers("start", "web", "ask")
            .whereLayer("production")
            .mayOnlyBeAccessedByLayers("start", "web", "ask")
            .whereLayer("footprint")
            .mayOnlyBeAccessedByLayers("start", "web", "ask", "literature", "production")
            .whereLayer("factors")
            .mayOnlyBeAccessedByLayers("start", "web", "ask", "literature", "production", "footprint")
            .whereLayer("cite")
            .mayOnlyBeAccessedByLayers("start", "web", "ask", "literature", "production", "footprint", "factors")
            .whereLayer("uncertainty")
            .mayOnlyBeAccessedByLayers(
                    "start", "web", "ask", "literature", "production", "footprint", "factors", "cite")
            .whereLayer("quantity")
            .mayOnlyBeAccessedByLayers(
                    "start", "web", "ask", "literature", "production", "footprint", "factors", "cite", "uncertainty");

    @ArchTest
    static final ArchRule no_two_packages_need_each_other =
            slices().matching("org.scalepan.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule nothing_below_web_knows_http = noClasses()
            .that()
            .resideInAnyPackage(
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

    /** One ruler: what a farm feeds and burns is booked without knowing which animals it is for. */
    @ArchTest
    static final ArchRule the_books_of_a_farm_know_no_animals = noClasses()
            .that()
            .resideInAPackage("org.scalepan.production")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.scalepan.production.herd..", "org.scalepan.production.insects..");

    @ArchTest
    static final ArchRule herds_and_insects_do_not_know_each_other =
            slices().matching("org.scalepan.production.(*)..").should().notDependOnEachOther();

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
