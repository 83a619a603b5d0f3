package org.tunica.features;

import static io.cucumber.junit.platform.engine.Constants.FILTER_TAGS_PROPERTY_NAME;
import static io.cucumber.junit.platform.engine.Constants.GLUE_PROPERTY_NAME;
import static io.cucumber.junit.platform.engine.Constants.PLUGIN_PROPERTY_NAME;

import org.junit.platform.suite.api.ConfigurationParameter;
import org.junit.platform.suite.api.IncludeEngines;
import org.junit.platform.suite.api.SelectDirectories;
import org.junit.platform.suite.api.Suite;

/** Runs every scenario under features/ that is about a case, and the invariants after each. */
@Suite
@IncludeEngines("cucumber")
@SelectDirectories("features")
@ConfigurationParameter(key = FILTER_TAGS_PROPERTY_NAME, value = FeaturesTest.ABOUT_A_CASE)
@ConfigurationParameter(key = GLUE_PROPERTY_NAME, value = "org.tunica.features,org.tunica.invariants")
@ConfigurationParameter(key = PLUGIN_PROPERTY_NAME, value = "html:target/features.html")
public class FeaturesTest {
    /** What the other folders tell of has runners and steps of its own. */
    public static final String ABOUT_A_CASE = "not @plugin and not @governance and not @pages";
}
