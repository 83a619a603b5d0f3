package org.tunica.cli;

import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tunica.fhir.HookAnswer;
import org.tunica.fhir.HookFeedback;
import org.tunica.fhir.HookRequest;
import org.tunica.fhir.HookSchema;
import org.tunica.fhir.HookService;
import org.tunica.plan.Advice;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Answers the call of a hook without a server. */
@Command(
        name = "hook",
        description =
                "Answer the call of a record system (CDS Hooks 2.0) without a server and print the answer. Nothing is fetched"
                        + " and nothing is stored.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class HookCommand implements Callable<Integer> {
    @ArgGroup(multiplicity = "1")
    private What what = new What();

    /** What to print. */
    static final class What {
        @Parameters(paramLabel = "REQUEST.json", description = "The call; - reads standard input.")
        private String request = "";

        @Option(names = "--discovery", description = "Print instead what is offered, and what should be sent along.")
        private boolean discovery;

        @Option(
                names = "--feedback",
                paramLabel = "FEEDBACK.json",
                description = "Print instead this feedback as it is understood.")
        private String feedback = "";

        @Option(
                names = "--schema",
                paramLabel = "WHICH",
                description = "Print instead a JSON Schema: ${COMPLETION-CANDIDATES}.")
        private @Nullable HookSchema schema;
    }

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Mixin
    private SiteFile site = new SiteFile();

    @Spec
    private CommandSpec spec;

    HookCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        if (what.schema != null) {
            spec.commandLine().getOut().print(what.schema.text());
            return 0;
        }
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            HookService service = new HookService(consulted.tunica(), site.read(consulted.tunica()));
            spec.commandLine().getOut().println(text(service));
        }
        return 0;
    }

    private String text(HookService service) {
        if (what.discovery) {
            return service.discovery().toPrettyString();
        }
        if (!what.feedback.isEmpty()) {
            return HookFeedback.read(what.feedback, InputFile.read(what.feedback))
                    .toJson()
                    .toPrettyString();
        }
        HookRequest request = HookRequest.read(what.request, InputFile.readRecord(what.request));
        HookAnswer answer =
                service.answer(request, site.day(), () -> UUID.randomUUID().toString());
        String status = answer instanceof HookAnswer.MissingData ? "412, data missing" : "200";
        spec.commandLine().getErr().println("Status: " + status);
        return answer.body().toPrettyString();
    }
}
