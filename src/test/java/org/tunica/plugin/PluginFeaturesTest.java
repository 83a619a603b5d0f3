package org.tunica.plugin;

import static io.cucumber.junit.platform.engine.Constants.FILTER_TAGS_PROPERTY_NAME;
import static io.cucumber.junit.platform.engine.Constants.GLUE_PROPERTY_NAME;

import org.junit.platform.suite.api.ConfigurationParameter;
import org.junit.platform.suite.api.IncludeEngines;
import org.junit.platform.suite.api.SelectDirectories;
import org.junit.platform.suite.api.Suite;

/** Runs the scenarios about what goes over the wire to a record system. */
@Suite
@IncludeEngines("cucumber")
@SelectDirectories("features/plugin")
@ConfigurationParameter(key = FILTER_TAGS_PROPERTY_NAME, value = "@plugin")
@ConfigurationParameter(key = GLUE_PROPERTY_NAME, value = "org.tunica.plugin")
public class PluginFeaturesTest {}
