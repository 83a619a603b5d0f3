package org.tunica.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.en.Then;
import java.net.URI;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.tunica.fhir.OtherReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What holds for a field wherever it stands. */
public final class FieldSteps {
    private final Looking looking;

    public FieldSteps(Looking looking) {
        this.looking = looking;
    }

    @Then("each {string} is an object")
    public void object(String path) {
        looking.each(path).forEach(one -> assertTrue(one.isObject(), path));
    }

    @Then("each {string} is a text")
    public void text(String path) {
        looking.each(path)
                .forEach(one -> assertTrue(one.isString() && !one.stringValue().isBlank(), path));
    }

    @Then("each {string} has {string}")
    public void has(String path, String field) {
        looking.each(path).forEach(one -> assertTrue(one.has(field), path + " without " + field));
    }

    @Then("none has {string}")
    public void none(String path) {
        assertFalse(looking.documents().isEmpty());
        assertEquals(List.of(), Found.at(looking.documents(), path));
    }

    @Then("each list {string} is one")
    public void list(String path) {
        List<JsonNode> lists = Found.at(looking.documents(), path);
        assertFalse(lists.isEmpty());
        lists.forEach(one -> assertTrue(one.isArray(), path));
    }

    @Then("each list {string} holds one entry")
    public void oneEntry(String path) {
        list(path);
        Found.at(looking.documents(), path).forEach(one -> assertEquals(1, one.size()));
    }

    @Then("each {string} is one of {string}")
    public void oneOf(String path, String words) {
        Set<String> allowed = Set.of(words.split(", "));
        looking.each(path).forEach(one -> assertTrue(allowed.contains(one.stringValue()), one::toString));
    }

    @Then("each {string} is shorter than {int} characters")
    public void shorter(String path, int characters) {
        looking.each(path).forEach(one -> assertTrue(one.stringValue().length() < characters, one::toString));
    }

    @Then("each {string} is a whole web address")
    public void address(String path) {
        looking.each(path).forEach(one -> {
            URI uri = URI.create(one.stringValue());
            assertTrue(uri.isAbsolute() && uri.getScheme().startsWith("http") && uri.getHost() != null, one::toString);
        });
    }

    @Then("each {string} can stand in an address")
    public void inAnAddress(String path) {
        looking.each(path)
                .forEach(one -> assertEquals(
                        "/cds-services/" + one.stringValue(),
                        URI.create("https://x.example/cds-services/" + one.stringValue())
                                .getRawPath()));
    }

    @Then("each {string} is a UUID that stands only once")
    public void uuid(String path) {
        Set<UUID> seen = new HashSet<>();
        looking.each(path).forEach(one -> assertTrue(seen.add(UUID.fromString(one.stringValue())), one::toString));
    }

    @Then("each {string} is a sentence of words")
    public void sentence(String path) {
        looking.each(path).forEach(one -> assertTrue(one.stringValue().matches("[\\w' ]+ [\\w' ]+"), one::toString));
    }

    @Then("each {string} speaks of {string}")
    public void speaksOf(String path, String what) {
        looking.each(path).forEach(one -> assertTrue(one.stringValue().contains(what), path));
    }

    @Then("each {string} has braces only in pairs around tokens")
    public void braces(String path) {
        looking.each(path)
                .forEach(one -> assertFalse(
                        one.stringValue().replaceAll("\\{\\{[A-Za-z.]+}}", "").matches(".*[{}].*"), one::toString));
    }

    @Then("each {string} has only names like {string}")
    public void names(String path, String like) {
        looking.each(path)
                .forEach(one -> one.propertyNames()
                        .forEach(name -> assertEquals(
                                like.substring(0, like.lastIndexOf('.')), name.substring(0, name.lastIndexOf('.')))));
    }

    @Then("each card with {string} has {string}")
    public void together(String one, String other) {
        List<JsonNode> with =
                looking.each("cards").stream().filter(card -> card.has(one)).toList();
        assertFalse(with.isEmpty());
        with.forEach(card -> assertTrue(card.has(other), other));
    }

    @Then("each link {string} has no {string}")
    public void linkWithout(String type, String field) {
        List<JsonNode> links = looking.each("cards.links").stream()
                .filter(link -> link.get("type").stringValue().equals(type))
                .toList();
        assertFalse(links.isEmpty());
        links.forEach(link -> assertFalse(link.has(field), field));
    }

    @Then("each {string} is a resource another reader accepts")
    public void accepted(String path) {
        looking.each(path)
                .forEach(one -> assertFalse(OtherReader.again(one.toString()).isEmpty()));
    }

    @Then("each action {string} carries a resource without an id")
    public void newResource(String type) {
        actions(type).forEach(action -> assertFalse(action.get("resource").has("id")));
    }

    @Then("each action {string} carries the drafted order, whole but for its code")
    public void wholeOrder(String type) {
        ObjectNode draft = (ObjectNode) Wire.call("order-select").at("/context/draftOrders/entry/0/resource");
        actions(type).forEach(action -> {
            ObjectNode changed = (ObjectNode) action.get("resource").deepCopy();
            assertFalse(draft.get("code").equals(changed.get("code")));
            changed.set("code", draft.get("code"));
            assertEquals(draft, changed);
        });
    }

    private List<JsonNode> actions(String type) {
        List<JsonNode> actions = looking.each("cards.suggestions.actions").stream()
                .filter(action -> action.get("type").stringValue().equals(type))
                .toList();
        assertFalse(actions.isEmpty());
        return actions;
    }
}
