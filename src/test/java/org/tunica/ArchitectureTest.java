package org.tunica;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.io.ObjectInputStream;
import java.net.Socket;
import java.net.URLClassLoader;

/** The arrows: imports point only towards the case file, and each library has one home. */
@AnalyzeClasses(packages = "org.tunica", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule imports_point_towards_the_case_file = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("casefile")
            .definedBy("org.tunica.casefile")
            .layer("knowledge")
            .definedBy("org.tunica.knowledge")
            .layer("heat")
            .definedBy("org.tunica.heat")
            .layer("physics")
            .definedBy("org.tunica.physics")
            .layer("rules")
            .definedBy("org.tunica.rules")
            .layer("review")
            .definedBy("org.tunica.review")
            .layer("plan")
            .definedBy("org.tunica.plan")
            .layer("firmness")
            .definedBy("org.tunica.firmness")
            .layer("session")
            .definedBy("org.tunica.session")
            .layer("treatment")
            .definedBy("org.tunica.treatment")
            .layer("picture")
            .definedBy("org.tunica.picture")
            .layer("sheet")
            .definedBy("org.tunica.sheet")
            .layer("paper")
            .definedBy("org.tunica.paper")
            .layer("pastcases")
            .definedBy("org.tunica.pastcases")
            .layer("invented")
            .definedBy("org.tunica.invented")
            .layer("front door")
            .definedBy("org.tunica")
            .layer("cli")
            .definedBy("org.tunica.cli")
            .whereLayer("casefile")
            .mayNotAccessAnyLayer()
            .whereLayer("knowledge")
            .mayOnlyAccessLayers("casefile")
            .whereLayer("heat")
            .mayOnlyAccessLayers("casefile")
            .whereLayer("physics")
            .mayOnlyAccessLayers("casefile", "knowledge", "heat")
            .whereLayer("rules")
            .mayOnlyAccessLayers("casefile", "knowledge", "heat", "physics")
            .whereLayer("review")
            .mayOnlyAccessLayers("casefile", "knowledge", "physics", "rules")
            .whereLayer("plan")
            .mayOnlyAccessLayers("casefile", "knowledge", "heat", "physics", "rules")
            .whereLayer("firmness")
            .mayOnlyAccessLayers("casefile", "knowledge", "heat", "physics", "rules", "plan")
            .whereLayer("session")
            .mayOnlyAccessLayers("casefile", "knowledge", "heat", "physics", "plan")
            .whereLayer("treatment")
            .mayOnlyAccessLayers("casefile", "knowledge", "heat", "physics", "plan", "session", "paper")
            .whereLayer("picture")
            .mayOnlyAccessLayers("casefile", "knowledge", "heat", "physics", "plan")
            .whereLayer("sheet")
            .mayOnlyAccessLayers("casefile", "knowledge", "plan", "paper")
            .whereLayer("paper")
            .mayNotAccessAnyLayer()
            .whereLayer("pastcases")
            .mayOnlyAccessLayers("casefile", "knowledge", "treatment")
            .whereLayer("invented")
            .mayOnlyAccessLayers("casefile", "knowledge", "session", "treatment", "pastcases")
            .whereLayer("front door")
            .mayOnlyAccessLayers(
                    "casefile",
                    "knowledge",
                    "heat",
                    "physics",
                    "rules",
                    "review",
                    "plan",
                    "firmness",
                    "session",
                    "treatment",
                    "pastcases",
                    "invented",
                    "paper",
                    "sheet",
                    "picture")
            .whereLayer("cli")
            .mayOnlyAccessLayers(
                    "front door",
                    "casefile",
                    "knowledge",
                    "heat",
                    "physics",
                    "rules",
                    "review",
                    "plan",
                    "session",
                    "treatment",
                    "pastcases",
                    "invented",
                    "paper",
                    "sheet",
                    "picture");

    @ArchTest
    static final ArchRule every_class_has_a_package_of_the_table = classes()
            .should()
            .resideInAnyPackage(
                    "org.tunica",
                    "org.tunica.casefile",
                    "org.tunica.knowledge",
                    "org.tunica.heat",
                    "org.tunica.physics",
                    "org.tunica.rules",
                    "org.tunica.review",
                    "org.tunica.plan",
                    "org.tunica.firmness",
                    "org.tunica.session",
                    "org.tunica.treatment",
                    "org.tunica.pastcases",
                    "org.tunica.invented",
                    "org.tunica.paper",
                    "org.tunica.sheet",
                    "org.tunica.picture",
                    "org.tunica.cli");

    @ArchTest
    static final ArchRule the_rule_engine_lives_in_rules = onlyIn("org.tunica.rules", "org.drools..", "org.kie..");

    @ArchTest
    static final ArchRule the_constraint_solver_lives_in_session = onlyIn("org.tunica.session", "org.chocosolver..");

    @ArchTest
    static final ArchRule yaml_lives_in_knowledge = onlyIn("org.tunica.knowledge", "tools.jackson.dataformat.yaml..");

    @ArchTest
    static final ArchRule the_command_line_library_lives_in_cli = onlyIn("org.tunica.cli", "picocli..");

    @ArchTest
    static final ArchRule drawing_lives_in_picture =
            onlyIn("org.tunica.picture", "org.jfree..", "org.apache.batik..", "java.awt..", "javax.imageio..");

    @ArchTest
    static final ArchRule pages_are_laid_out_in_paper =
            onlyIn("org.tunica.paper", "com.openhtmltopdf..", "org.apache.pdfbox..");

    @ArchTest
    static final ArchRule the_schema_library_lives_at_the_front_door = onlyIn("org.tunica", "com.github.victools..");

    @ArchTest
    static final ArchRule markdown_lives_in_review = onlyIn("org.tunica.review", "org.commonmark..");

    @ArchTest
    static final ArchRule text_distance_lives_in_casefile = onlyIn("org.tunica.casefile", "org.apache.commons..");

    @ArchTest
    static final ArchRule least_squares_and_bench_tables_live_in_heat =
            onlyIn("org.tunica.heat", "org.hipparchus..", "tools.jackson.dataformat.csv..");

    @ArchTest
    static final ArchRule only_the_command_line_speaks = noClasses()
            .that()
            .resideOutsideOfPackage("org.tunica.cli")
            .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule the_domain_reads_no_clock = noClasses()
            .that()
            .resideOutsideOfPackage("org.tunica.cli")
            .should()
            .callMethodWhere(
                    JavaCall.Predicates.target(HasName.Predicates.nameMatching("now|currentTimeMillis|nanoTime")));

    /** No text of a file can become a process, a class, an object or a connection: nothing here could make it one. */
    @ArchTest
    static final ArchRule nothing_can_run_a_text = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.script..", "javax.naming..", "java.rmi..", "javax.tools..", "java.net.http..")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(
                    ProcessBuilder.class,
                    ObjectInputStream.class,
                    URLClassLoader.class,
                    ClassLoader.class,
                    Socket.class)
            .orShould()
            .callMethodWhere(JavaCall.Predicates.target(HasName.Predicates.nameMatching("exec|forName|openStream")));

    private static ArchRule onlyIn(String home, String... libraries) {
        return noClasses().that(live(home)).should().dependOnClassesThat().resideInAnyPackage(libraries);
    }

    private static DescribedPredicate<JavaClass> live(String home) {
        return DescribedPredicate.describe(
                "live outside " + home, javaClass -> !javaClass.getPackageName().equals(home));
    }
}
