package org.tunica.web;

import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.PropertySource;
import org.tunica.couch.CouchConfiguration;
import org.tunica.frame.OpenCases;
import org.tunica.frame.PageRefusals;
import org.tunica.frame.Pages;
import org.tunica.library.LibraryConfiguration;
import org.tunica.meeting.MeetingConfiguration;
import org.tunica.office.OfficeConfiguration;

/** What the server is made of. */
@Configuration(proxyBeanMethods = false)
@EnableAutoConfiguration(exclude = UserDetailsServiceAutoConfiguration.class)
@PropertySource("classpath:web/server.properties")
@Import({
    AccessRules.class,
    ApiController.class,
    ApiDocumentController.class,
    AuditController.class,
    BodyLimit.class,
    CallerRules.class,
    CasesController.class,
    CouchConfiguration.class,
    MeetingConfiguration.class,
    DocumentsController.class,
    Doors.class,
    ErrorPages.class,
    GovernanceController.class,
    HookController.class,
    LibraryConfiguration.class,
    OfficeConfiguration.class,
    OpenCases.class,
    PageController.class,
    PageRefusals.class,
    Pages.class,
    PasswordController.class,
    Problems.class,
    ProtectedWay.class,
    RecordController.class,
    ReleasesController.class,
    ResultsController.class,
    SessionController.class,
    UsersController.class,
    Watching.class
})
class WebConfiguration {}
