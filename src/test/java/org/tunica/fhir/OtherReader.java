package org.tunica.fhir;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.parser.StrictErrorHandler;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import java.util.List;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.SnapshotGeneratingValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.instance.model.api.IBaseResource;

/** Another reader and validator of FHIR R4, which knows the whole standard and runs without a network. */
public final class OtherReader {
    private static final FhirContext R4 = FhirContext.forR4();
    private static final FhirValidator VALIDATOR = validator();

    private OtherReader() {}

    private static FhirValidator validator() {
        R4.setParserErrorHandler(new StrictErrorHandler());
        ValidationSupportChain chain = new ValidationSupportChain(
                new DefaultProfileValidationSupport(R4),
                new CommonCodeSystemsTerminologyService(R4),
                new InMemoryTerminologyServerValidationSupport(R4),
                new SnapshotGeneratingValidationSupport(R4));
        return R4.newValidator().registerValidatorModule(new FhirInstanceValidator(chain));
    }

    /** The resource as the other reader understands it; anything it does not know is an error. */
    static IBaseResource read(String json) {
        return R4.newJsonParser().parseResource(json);
    }

    /** The resource after reading and writing it. */
    public static String again(String json) {
        return R4.newJsonParser().encodeResourceToString(read(json));
    }

    /** Everything the standard calls an error. */
    public static List<String> errors(String json) {
        return VALIDATOR.validateWithResult(json).getMessages().stream()
                .filter(message -> message.getSeverity().ordinal() >= ResultSeverityEnum.ERROR.ordinal())
                .map(message -> message.getLocationString() + ": " + message.getMessage())
                .toList();
    }
}
