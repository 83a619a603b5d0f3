package org.tunica.releases;

import static io.cucumber.junit.platform.engine.Constants.FILTER_TAGS_PROPERTY_NAME;
import static io.cucumber.junit.platform.engine.Constants.GLUE_PROPERTY_NAME;

import org.junit.platform.suite.api.ConfigurationParameter;
import org.junit.platform.suite.api.IncludeEngines;
import org.junit.platform.suite.api.SelectDirectories;
import org.junit.platform.suite.api.Suite;

/** Runs the scenarios about who lets rules speak, and when. */
@Suite
@IncludeEngines("cucumber")
@SelectDirectories("features/governance")
@ConfigurationParameter(key = FILTER_TAGS_PROPERTY_NAME, value = "@governance")
@ConfigurationParameter(key = GLUE_PROPERTY_NAME, value = "org.tunica.releases")
public class GovernanceFeaturesTest {}
