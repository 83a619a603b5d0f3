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
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tunica.invented.InventedLibrary;
import org.tunica.pastcases.Anonymiser;
import org.tunica.pastcases.Coarsening;
import org.tunica.pastcases.PastCaseReader;
import org.tunica.pastcases.WaitingCase;

/** The arrows: imports point only towards the case file, and each library has one home. */
@AnalyzeClasses(packages = "org.tunica", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** Each package of the table in DEVELOPERS.md and those of ours it may import. */
    private static final Map<String, Set<String>> MAY_IMPORT = new TreeMap<>(Map.ofEntries(
            arrow("casefile"),
            arrow("knowledge", "casefile"),
            arrow("signing", "casefile"),
            arrow("governance", "casefile", "knowledge", "signing"),
            arrow("heat", "casefile"),
            arrow("physics", "casefile", "knowledge", "heat"),
            arrow("rules", "casefile", "knowledge", "heat", "physics"),
            arrow("review", "casefile", "knowledge", "physics", "rules"),
            arrow("plan", "casefile", "knowledge", "heat", "physics", "rules"),
            arrow("firmness", "casefile", "knowledge", "heat", "physics", "rules", "plan"),
            arrow("session", "casefile", "knowledge", "heat", "physics", "plan"),
            arrow("paper"),
            arrow("statistics"),
            arrow("treatment", "casefile", "knowledge", "heat", "physics", "plan", "session", "paper"),
            arrow("sheet", "casefile", "knowledge", "plan", "paper"),
            arrow("picture", "casefile", "knowledge", "heat", "physics", "plan", "statistics"),
            arrow("drawing", "casefile", "knowledge", "plan", "wording"),
            arrow(
                    "pages",
                    "casefile",
                    "knowledge",
                    "heat",
                    "physics",
                    "plan",
                    "session",
                    "treatment",
                    "wording",
                    "drawing"),
            arrow("wording", "casefile", "knowledge", "rules", "plan"),
            arrow("invented", "casefile", "knowledge", "session", "treatment", "pastcases"),
            arrow("proposal", "casefile", "knowledge", "review", "rules", "signing"),
            arrow("watching", "casefile", "knowledge", "rules", "signing", "statistics"),
            arrow(
                    "replay",
                    "casefile",
                    "knowledge",
                    "heat",
                    "physics",
                    "rules",
                    "plan",
                    "pastcases",
                    "invented",
                    "paper"),
            arrow("anonymity"),
            arrow("callers", "casefile"),
            arrow("cluster", "casefile", "knowledge", "physics", "pastcases", "similar"),
            arrow("pastcases", "casefile", "knowledge", "treatment", "anonymity"),
            arrow(
                    "similar",
                    "casefile",
                    "knowledge",
                    "physics",
                    "plan",
                    "session",
                    "treatment",
                    "pastcases",
                    "outcomes"),
            arrow(
                    "outcomes",
                    "casefile",
                    "knowledge",
                    "plan",
                    "treatment",
                    "pastcases",
                    "statistics",
                    "paper",
                    "picture")));

    /** What speaks to people and programs outside; nothing of ours imports it but the command line, which starts it. */
    private static final String WEB = "web";

    /** Packages that ask the front door or keep what comes out of it, and what of ours they may import. */
    private static final Map<String, Set<String>> BEFORE_THE_FRONT_DOOR = new TreeMap<>(Map.ofEntries(
            arrow("fhir", "front door", "casefile", "knowledge", "plan"),
            arrow("store", "casefile"),
            arrow("accounts", "casefile", "store"),
            arrow("archive", "front door", "casefile", "pastcases", "replay", "similar", "treatment", "store"),
            arrow("frame", "front door", "casefile", "plan", "cluster", "store"),
            arrow(
                    "couch",
                    "front door",
                    "archive",
                    "casefile",
                    "knowledge",
                    "cluster",
                    "drawing",
                    "fhir",
                    "heat",
                    "outcomes",
                    "paper",
                    "pastcases",
                    "physics",
                    "picture",
                    "plan",
                    "session",
                    "similar",
                    "treatment",
                    "store",
                    "wording",
                    "pages",
                    "frame"),
            arrow(
                    "library",
                    "front door",
                    "archive",
                    "casefile",
                    "couch",
                    "frame",
                    "invented",
                    "knowledge",
                    "outcomes",
                    "paper",
                    "pastcases",
                    "store"),
            arrow(
                    "meeting",
                    "front door",
                    "casefile",
                    "knowledge",
                    "plan",
                    "paper",
                    "pastcases",
                    "outcomes",
                    "similar",
                    "store",
                    "wording",
                    "couch",
                    "frame"),
            arrow(
                    "releases",
                    "front door",
                    "casefile",
                    "knowledge",
                    "plan",
                    "proposal",
                    "review",
                    "replay",
                    "governance",
                    "signing",
                    "store",
                    "accounts",
                    "watching"),
            arrow(
                    "office",
                    "front door",
                    "casefile",
                    "knowledge",
                    "plan",
                    "rules",
                    "review",
                    "proposal",
                    "replay",
                    "watching",
                    "statistics",
                    "governance",
                    "signing",
                    "releases",
                    "workroom",
                    "store",
                    "frame"),
            arrow(
                    "workroom",
                    "front door",
                    "casefile",
                    "knowledge",
                    "rules",
                    "review",
                    "proposal",
                    "replay",
                    "pastcases",
                    "governance",
                    "releases",
                    "store")));

    /** Where the web framework is known: what puts the server together, and what answers people with pages. */
    private static final String[] WITH_PAGES = {
        "org.tunica.web",
        "org.tunica.frame",
        "org.tunica.couch",
        "org.tunica.meeting",
        "org.tunica.office",
        "org.tunica.library"
    };

    /** What the command line may not touch: it asks the front door. */
    private static final Set<String> BEHIND_THE_FRONT_DOOR = Set.of("firmness");

    private static final String[] OF_DATABASES = {
        "org.springframework.jdbc..",
        "org.springframework.transaction..",
        "org.springframework.dao..",
        "org.springframework.session.jdbc.."
    };

    @ArchTest
    static final ArchRule imports_point_towards_the_case_file = arrows();

    @ArchTest
    static final ArchRule every_class_has_a_package_of_the_table = classes()
            .should()
            .resideInAnyPackage(Stream.of(MAY_IMPORT.keySet(), BEFORE_THE_FRONT_DOOR.keySet(), Set.of("cli", WEB, ""))
                    .flatMap(Set::stream)
                    .map(ArchitectureTest::full)
                    .toArray(String[]::new));

    @ArchTest
    static final ArchRule the_rule_engine_lives_in_rules = onlyIn("org.tunica.rules", "org.drools..", "org.kie..");

    @ArchTest
    static final ArchRule lines_are_compared_in_proposal = onlyIn("org.tunica.proposal", "com.github.difflib..");

    @ArchTest
    static final ArchRule the_constraint_solver_lives_in_session = onlyIn("org.tunica.session", "org.chocosolver..");

    @ArchTest
    static final ArchRule the_web_framework_lives_in_web =
            onlyIn("org.tunica.web", "org.apache.catalina..", "io.micrometer..");

    @ArchTest
    static final ArchRule requests_are_answered_in_web_and_pages = noClasses()
            .that()
            .resideOutsideOfPackages(WITH_PAGES)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("jakarta..", "gg.jte..");

    @ArchTest
    static final ArchRule tokens_are_checked_in_callers = onlyIn("org.tunica.callers", "com.nimbusds..");

    @ArchTest
    static final ArchRule rates_are_counted_in_web = onlyIn("org.tunica.web", "io.github.bucket4j..");

    /** Its part for databases alone is at home in store. */
    @ArchTest
    static final ArchRule its_other_parts_live_in_web = noClasses()
            .that()
            .resideOutsideOfPackages(WITH_PAGES)
            .should()
            .dependOnClassesThat(JavaClass.Predicates.resideInAPackage("org.springframework..")
                    .and(DescribedPredicate.not(JavaClass.Predicates.resideInAnyPackage(OF_DATABASES))));

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
    static final ArchRule the_index_lives_in_similar = onlyIn("org.tunica.similar", "org.apache.lucene..");

    @ArchTest
    static final ArchRule the_search_engine_is_spoken_to_in_cluster =
            onlyIn("org.tunica.cluster", "org.opensearch..", "org.apache.hc..");

    @ArchTest
    static final ArchRule markdown_lives_in_review = onlyIn("org.tunica.review", "org.commonmark..");

    @ArchTest
    static final ArchRule text_distance_lives_in_casefile = onlyIn("org.tunica.casefile", "org.apache.commons..");

    @ArchTest
    static final ArchRule least_squares_and_bench_tables_live_in_heat = onlyIn(
            "org.tunica.heat",
            "org.hipparchus.linear..",
            "org.hipparchus.optim..",
            "org.hipparchus.util..",
            "tools.jackson.dataformat.csv..");

    @ArchTest
    static final ArchRule intervals_of_shares_live_in_statistics =
            onlyIn("org.tunica.statistics", "org.hipparchus.stat..");

    @ArchTest
    static final ArchRule distributions_live_in_heat_and_statistics = noClasses()
            .that()
            .resideOutsideOfPackages("org.tunica.heat", "org.tunica.statistics")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.hipparchus..");

    @ArchTest
    static final ArchRule databases_are_spoken_to_in_store = onlyIn(
            "org.tunica.store",
            "java.sql..",
            "javax.sql..",
            "org.springframework.jdbc..",
            "org.springframework.transaction..",
            "org.springframework.dao..",
            "com.zaxxer..",
            "org.flywaydb..",
            "org.sqlite..",
            "org.postgresql..");

    /**
     * A past case comes from a waiting one, which comes from the anonymiser or is read back by the reader that refuses what
     * could name someone; the invented library names nobody.
     */
    @ArchTest
    static final ArchRule past_cases_come_through_the_anonymiser = noClasses()
            .that()
            .doNotBelongToAnyOf(WaitingCase.class, InventedLibrary.class)
            .should()
            .callConstructorWhere(JavaCall.Predicates.target(
                    HasName.AndFullName.Predicates.fullNameMatching("org\\.tunica\\.pastcases\\.PastCase\\.<init>.*")));

    @ArchTest
    static final ArchRule waiting_cases_are_made_where_the_person_is_taken_out = noClasses()
            .that()
            .doNotBelongToAnyOf(Anonymiser.class, PastCaseReader.class, Coarsening.class)
            .should()
            .callConstructorWhere(JavaCall.Predicates.target(HasName.AndFullName.Predicates.fullNameMatching(
                    "org\\.tunica\\.pastcases\\.WaitingCase\\.<init>.*")));

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

    /**
     * No text of a file can become a process, a class, an object or a connection: nothing here could make it one. Sessions
     * alone are read back as objects, and those by a list of classes.
     */
    @ArchTest
    static final ArchRule nothing_can_run_a_text = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("org.tunica.web.SessionBytes")
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

    private static Map.Entry<String, Set<String>> arrow(String from, String... to) {
        return Map.entry(from, Set.of(to));
    }

    private static String full(String name) {
        return name.isEmpty() ? "org.tunica" : "org.tunica." + name;
    }

    private static ArchRule arrows() {
        Architectures.LayeredArchitecture arrows =
                Architectures.layeredArchitecture().consideringOnlyDependenciesInLayers();
        Map<String, Set<String>> all = new TreeMap<>(MAY_IMPORT);
        all.putAll(BEFORE_THE_FRONT_DOOR);
        for (String name : all.keySet()) {
            arrows = arrows.layer(name).definedBy(full(name));
        }
        arrows = arrows.layer("front door").definedBy(full(""));
        arrows = arrows.layer(WEB).definedBy(full(WEB)).layer("cli").definedBy(full("cli"));
        for (Map.Entry<String, Set<String>> from : all.entrySet()) {
            arrows = only(arrows, from.getKey(), from.getValue());
        }
        arrows = only(arrows, "front door", MAY_IMPORT.keySet());
        Set<String> forCli = new HashSet<>(all.keySet());
        forCli.removeAll(BEHIND_THE_FRONT_DOOR);
        forCli.add("front door");
        arrows = only(arrows, WEB, forCli);
        forCli.add(WEB);
        return only(arrows, "cli", forCli);
    }

    private static Architectures.LayeredArchitecture only(
            Architectures.LayeredArchitecture arrows, String from, Set<String> to) {
        return to.isEmpty()
                ? arrows.whereLayer(from).mayNotAccessAnyLayer()
                : arrows.whereLayer(from).mayOnlyAccessLayers(to.toArray(String[]::new));
    }

    private static ArchRule onlyIn(String home, String... libraries) {
        return noClasses().that(live(home)).should().dependOnClassesThat().resideInAnyPackage(libraries);
    }

    private static DescribedPredicate<JavaClass> live(String home) {
        return DescribedPredicate.describe(
                "live outside " + home, javaClass -> !javaClass.getPackageName().equals(home));
    }
}
