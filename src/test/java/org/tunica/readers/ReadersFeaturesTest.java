package org.tunica.readers;

import static io.cucumber.junit.platform.engine.Constants.FILTER_TAGS_PROPERTY_NAME;
import static io.cucumber.junit.platform.engine.Constants.GLUE_PROPERTY_NAME;

import org.junit.platform.suite.api.ConfigurationParameter;
import org.junit.platform.suite.api.IncludeEngines;
import org.junit.platform.suite.api.SelectDirectories;
import org.junit.platform.suite.api.Suite;

/** Runs the journeys of specialist, meeting and governance team through the pages of one server over PostgreSQL. */
@Suite
@IncludeEngines("cucumber")
@SelectDirectories("features/pages")
@ConfigurationParameter(key = FILTER_TAGS_PROPERTY_NAME, value = "@pages")
@ConfigurationParameter(key = GLUE_PROPERTY_NAME, value = "org.tunica.readers")
public class ReadersFeaturesTest {}
