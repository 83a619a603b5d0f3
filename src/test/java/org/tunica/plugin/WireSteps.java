package org.tunica.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import io.cucumber.java.en.And;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.parser.Parser;
import org.tunica.fhir.HookAnswer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What is looked at, and what holds for it as a whole. */
public final class WireSteps {
    private static final Set<String> USER_TOKENS =
            Set.of("userPractitionerId", "userPractitionerRoleId", "userPatientId", "userRelatedPersonId");

    private final Looking looking;

    public WireSteps(Looking looking) {
        this.looking = looking;
    }

    @Given("what discovery tells")
    public void discovery() {
        looking.at(Wire.service().discovery());
    }

    @Given("the answers to the demo calls")
    public void answers() {
        Wire.CALLS.forEach(name -> looking.at(Wire.answered(name)));
    }

    @Given("the answer to the demo call {word}")
    public void answer(String name) {
        looking.onlyAt(Wire.answered(name));
    }

    @Given("the answer to an order-sign for a technique that a rule excludes")
    public void excluded() {
        looking.onlyAt(Wire.answer(Wire.excludedOrder()).body());
    }

    @Given("the demo call {word}")
    public void call(String name) {
        looking.takes(Wire.call(name));
    }

    @And("its prefetch {string} is left out")
    public void without(String key) {
        ((ObjectNode) looking.call().get("prefetch")).remove(key);
    }

    @Then("the answer is that data are missing and names {string}")
    public void missing(String key) {
        HookAnswer answer = Wire.answer(looking.call());
        assertTrue(answer instanceof HookAnswer.MissingData, answer::toString);
        assertEquals("OperationOutcome", answer.body().get("resourceType").stringValue());
        assertTrue(answer.body().findValue("diagnostics").stringValue().contains("prefetch key " + key + " "));
        assertFalse(Wire.answer(Wire.call("patient-view")) instanceof HookAnswer.MissingData);
    }

    @Then("all of it reads as JSON")
    public void readsAsJson() {
        looking.documents()
                .forEach(one ->
                        assertEquals(one.toString(), Wire.read(one.toString()).toString()));
    }

    @Then("nothing in it is null or empty but a list of cards")
    public void nothingEmpty() {
        looking.documents()
                .forEach(one -> one.properties().forEach(entry -> {
                    if (!entry.getKey().equals("cards")) {
                        full(entry.getValue(), entry.getKey());
                    } else {
                        entry.getValue().forEach(card -> full(card, "card"));
                    }
                }));
    }

    private static void full(JsonNode node, String where) {
        assertFalse(node.isNull(), where);
        assertFalse(node.isString() && node.stringValue().isEmpty(), where);
        assertFalse(node.isContainer() && node.isEmpty(), where);
        if (node.isObject()) {
            node.properties().forEach(entry -> full(entry.getValue(), where + "." + entry.getKey()));
        } else {
            node.forEach(element -> full(element, where));
        }
    }

    @Then("it is an object with the list {string}")
    public void objectWithList(String field) {
        looking.documents()
                .forEach(one -> assertTrue(one.isObject() && one.get(field).isArray(), field));
    }

    @Then("the keys to prefetch are those a call is read by")
    public void keys() {
        Set<String> sent =
                new HashSet<>(Wire.call("patient-view").get("prefetch").propertyNames());
        looking.documents()
                .get(0)
                .get("services")
                .forEach(service ->
                        assertEquals(sent, new HashSet<>(service.get("prefetch").propertyNames())));
        HookAnswer without = Wire.answer((JsonNode) Wire.call("patient-view").without("prefetch"));
        assertTrue(without instanceof HookAnswer.MissingData);
    }

    @Then("nothing in the package can open a connection")
    public void noConnection() {
        ArchConfiguration.withThreadLocalScope(configuration -> {
            configuration.setResolveMissingDependenciesFromClassPath(false); // names are enough, and quick
            ArchRuleDefinition.noClasses()
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage("java.net..", "java.nio.channels..", "javax.net..", "org.springframework..")
                    .check(new ClassFileImporter()
                            .withImportOption(new ImportOption.DoNotIncludeTests())
                            .importPackages("org.tunica.fhir"));
        });
    }

    @Then("each {string} has only tokens the standard knows")
    public void knownTokens(String path) {
        tokens(path).forEach(token -> assertTrue(token.startsWith("context.") || USER_TOKENS.contains(token), token));
    }

    @Then("each {string} has only tokens that are plain fields of the context")
    public void plainFields(String path) {
        tokens(path).forEach(token -> {
            JsonNode value = Wire.call("order-sign").get("context").get(token.replace("context.", ""));
            assertTrue(value != null && value.isValueNode(), token);
        });
    }

    @Then("each {string} has only tokens that start with {string}")
    public void tokensStart(String path, String start) {
        tokens(path).forEach(token -> assertTrue(token.startsWith(start), token));
    }

    private List<String> tokens(String path) {
        List<String> tokens = new ArrayList<>();
        looking.each(path).forEach(query -> {
            String[] parts = query.stringValue().split("\\{\\{", -1);
            for (int i = 1; i < parts.length; i++) {
                tokens.add(parts[i].substring(0, parts[i].indexOf("}}")));
            }
        });
        assertFalse(tokens.isEmpty());
        return tokens;
    }

    @Then("each {string} is Markdown without raw HTML")
    public void markdown(String path) {
        looking.each(path)
                .forEach(text -> Parser.builder()
                        .build()
                        .parse(text.stringValue())
                        .accept(new AbstractVisitor() {
                            @Override
                            public void visit(HtmlInline html) {
                                throw new AssertionError(html.getLiteral());
                            }

                            @Override
                            public void visit(HtmlBlock html) {
                                throw new AssertionError(html.getLiteral());
                            }
                        }));
    }

    @Then("all services have one {string} and different {string}")
    public void sameAndDifferent(String same, String different) {
        List<JsonNode> services = looking.each("services");
        assertEquals(1, services.stream().map(one -> one.get(same)).distinct().count());
        assertEquals(
                services.size(),
                services.stream().map(one -> one.get(different)).distinct().count());
        assertTrue(services.size() > 1);
    }
}
