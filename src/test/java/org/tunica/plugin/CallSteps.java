package org.tunica.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.nimbusds.jose.JWSAlgorithm;
import io.cucumber.java.AfterAll;
import io.cucumber.java.en.And;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.java.en.When;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.tunica.casefile.FaultyInput;
import org.tunica.web.KeyServer;
import org.tunica.web.Keys;
import org.tunica.web.Served;
import org.tunica.web.Token;
import tools.jackson.databind.JsonNode;

/** What a record system sees that calls a real server over loopback. */
public final class CallSteps {
    private static final String ORIGINS = "  origins: [\"https://records.larkspur.example\"]\n";
    private static final KeyServer KEYS = KeyServer.of(Keys.published(Keys.CURVED));
    private static final Served FETCHING = Served.with("recordSystems:\n  site: knowledge/demo/fhir/site.yaml\n"
            + "  baseAddress: " + Served.BASE + "\n" + ORIGINS + "  callers:\n  - { name: ward-7, issuer: \""
            + Token.ISSUER + "\", keyAddresses: [\"" + KEYS.at("/keys") + "\"] }\n");
    private static final Served KNOWING = Served.with(Served.signed(Keys.published(Keys.CURVED)));

    private final Looking looking;
    private Served served = FETCHING;
    private Runnable start = () -> {};
    private HttpResponse<String> answer;

    public CallSteps(Looking looking) {
        this.looking = looking;
    }

    @AfterAll
    public static void stop() {
        FETCHING.close();
        KNOWING.close();
        KEYS.close();
    }

    @Given("a server that knows a record system")
    public void server() {
        served = FETCHING;
    }

    @Given("a server that knows a record system by keys written in its settings")
    public void knowing() {
        served = KNOWING;
    }

    @Given("a server that others can reach without encryption")
    public void bare() {
        start = () -> Served.reachable("");
    }

    @Given("a server that wants no token and that others can reach")
    public void open() {
        start = () -> Served.reachable(Served.unsigned());
    }

    @Then("it does not start")
    public void doesNotStart() {
        assertThrows(FaultyInput.class, start::run);
    }

    @When("the record system asks for {string}")
    public void asks(String path) {
        answer = served.send(with(served.at(path), sound(path).signed()));
    }

    @When("the record system makes the demo call {word} where discovery says")
    public void calls(String name) {
        asks("/cds-services");
        String id = Wire.read(answer.body()).at("/services/0/id").stringValue();
        callsAt(name, "/cds-services/" + id);
    }

    @When("the record system makes the demo call {word} at {string}")
    public void callsAt(String name, String path) {
        call(path, Wire.call(name));
    }

    @When("the record system makes this call")
    public void makes() {
        call("/cds-services/vein-closure", looking.call());
    }

    private void call(String path, JsonNode call) {
        byte[] json = call.toString().getBytes(StandardCharsets.UTF_8);
        HttpRequest.Builder request =
                served.at(path).header("Content-Type", "application/json").POST(BodyPublishers.ofByteArray(json));
        answer = served.send(with(request, sound(path).signed()));
    }

    @When("somebody without a token asks for {string}")
    public void nobody(String path) {
        answer = served.get(path);
    }

    @When("somebody with another key of the same name asks for {string}")
    public void stranger(String path) {
        answer = served.send(with(
                served.at(path),
                sound(path).by(Keys.STRANGE, JWSAlgorithm.ES384).signed()));
    }

    @When("somebody with a token without a signature asks for {string}")
    public void unsigned(String path) {
        answer = served.send(with(served.at(path), sound(path).withoutSignature()));
    }

    @When("somebody with a token signed with the public key as a shared secret asks for {string}")
    public void sharedSecret(String path) {
        answer = served.send(with(served.at(path), sound(path).sharedSecret()));
    }

    @When("a page of {string} asks whether it may call")
    public void preflight(String origin) {
        answer = served.send(served.at("/cds-services/vein-closure")
                .header("Origin", origin)
                .header("Access-Control-Request-Method", "POST")
                .header("Access-Control-Request-Headers", "authorization,content-type")
                .method("OPTIONS", BodyPublishers.noBody()));
    }

    @Then("the answer has status {int}")
    public void status(int status) {
        assertEquals(status, answer.statusCode(), answer::body);
    }

    @Then("it is refused")
    public void refused() {
        assertEquals(4, answer.statusCode() / 100, answer::body);
    }

    @And("it is JSON")
    public void json() {
        assertEquals(
                "application/json", answer.headers().firstValue("Content-Type").orElse(""));
        assertFalse(Wire.read(answer.body()).isEmpty());
    }

    @And("it is what discovery tells")
    public void discovery() {
        assertEquals(Wire.service().discovery(), Wire.read(answer.body()));
    }

    @And("nothing of the reason is told")
    public void opaque() {
        assertEquals(
                "{\"title\":\"Unauthorized\",\"status\":401,\"detail\":\"a valid token is needed\"}", answer.body());
    }

    @Then("it may")
    public void may() {
        assertEquals(200, answer.statusCode());
        assertEquals(
                "https://records.larkspur.example",
                answer.headers().firstValue("Access-Control-Allow-Origin").orElse(""));
    }

    @Then("it may not")
    public void mayNot() {
        assertEquals(403, answer.statusCode());
        assertFalse(answer.headers().map().keySet().stream()
                .anyMatch(name -> name.toLowerCase().startsWith("access-control-allow")));
    }

    private static Token sound(String path) {
        return Token.sound(Served.BASE + path, Served.NOW);
    }

    private static HttpRequest.Builder with(HttpRequest.Builder request, String token) {
        return request.header("Authorization", "Bearer " + token);
    }
}
