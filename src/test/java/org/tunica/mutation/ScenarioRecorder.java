package org.tunica.mutation;

import io.cucumber.java.After;
import io.cucumber.java.Scenario;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.tunica.features.Clinic;

/** Hands the claims of each scenario to the recording; glue of the mutation run only. */
public final class ScenarioRecorder {
    private final Clinic clinic;

    public ScenarioRecorder(Clinic clinic) {
        this.clinic = clinic;
    }

    @After
    public void takeDown(Scenario scenario) {
        Set<String> tags = new HashSet<>();
        scenario.getSourceTagNames().forEach(tag -> tags.add(tag.substring(1)));
        String place = Path.of(scenario.getUri().getPath()).getFileName() + ":" + scenario.getLine();
        clinic.claims()
                .forEach(claimed ->
                        Recording.take(new Recording.Expectation(tags, place + " " + scenario.getName(), claimed)));
    }
}
