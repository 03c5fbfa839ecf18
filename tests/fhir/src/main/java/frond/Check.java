package frond;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import ca.uhn.fhir.validation.SingleValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.PrePopulatedValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.UnknownCodeSystemWarningValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.r4.model.CodeSystem;
import org.hl7.fhir.r4.model.Enumerations.PublicationStatus;
import org.hl7.fhir.r5.utils.validation.constants.BestPracticeWarningLevel;

/**
 * Validates FHIR R4 files with the HAPI validator: those of one folder must have no error, those of another
 * must have one each, so that it is shown to be able to fail. One line a file, then `N passed, N failed`.
 */
public final class Check {
  private Check() {}

  /** The few codes of LOINC that are used: LOINC itself is not carried along. */
  private static final Map<String, String> LOINC =
      Map.of(
          "72514-3", "Pain severity - 0-10 verbal numeric rating [Score] - Reported",
          "55411-3", "Exercise duration");

  public static void main(String[] args) throws IOException {
    if (args.length != 3) {
      System.err.println("Check CODE-SYSTEM FOLDER-OF-GOOD FOLDER-OF-BROKEN");
      System.exit(2);
    }
    FhirContext context = FhirContext.forR4();
    FhirValidator validator = validator(context, Path.of(args[0]));
    int passed = 0;
    int failed = 0;
    for (Path file : files(Path.of(args[1]))) {
      long began = System.nanoTime();
      List<String> errors = errors(validator, file);
      long millis = (System.nanoTime() - began) / 1_000_000;
      if (errors.isEmpty()) {
        passed++;
        System.out.printf("ok: %s (%d ms)%n", file.getFileName(), millis);
      } else {
        failed++;
        System.out.printf("FAILED: %s has %d errors%n", file.getFileName(), errors.size());
        errors.stream().limit(8).forEach(error -> System.out.println("  " + error));
      }
    }
    for (Path file : files(Path.of(args[2]))) {
      List<String> errors = errors(validator, file);
      if (errors.isEmpty()) {
        failed++;
        System.out.printf("FAILED: %s is broken and passed%n", file.getFileName());
      } else {
        passed++;
        System.out.printf("ok: %s is refused: %s%n", file.getFileName(), errors.get(0));
      }
    }
    System.out.printf("%d passed, %d failed%n", passed, failed);
    System.exit(failed == 0 && passed > 0 ? 0 : 1);
  }

  private static FhirValidator validator(FhirContext context, Path codeSystem) throws IOException {
    PrePopulatedValidationSupport own = new PrePopulatedValidationSupport(context);
    own.addCodeSystem(context.newJsonParser().parseResource(CodeSystem.class, Files.readString(codeSystem)));
    CodeSystem loinc = new CodeSystem();
    loinc.setUrl("http://loinc.org").setStatus(PublicationStatus.ACTIVE);
    loinc.setContent(CodeSystem.CodeSystemContentMode.FRAGMENT);
    LOINC.forEach((code, display) -> loinc.addConcept().setCode(code).setDisplay(display));
    own.addCodeSystem(loinc);
    UnknownCodeSystemWarningValidationSupport unknown = new UnknownCodeSystemWarningValidationSupport(context);
    unknown.setNonExistentCodeSystemSeverity(
        ca.uhn.fhir.context.support.IValidationSupport.IssueSeverity.WARNING);
    ValidationSupportChain chain =
        new ValidationSupportChain(
            new DefaultProfileValidationSupport(context),
            own,
            new CommonCodeSystemsTerminologyService(context),
            new InMemoryTerminologyServerValidationSupport(context),
            unknown);
    FhirInstanceValidator instance = new FhirInstanceValidator(chain);
    instance.setAnyExtensionsAllowed(true);
    instance.setErrorForUnknownProfiles(true);
    // Without it a wrong status, unit or category passes.
    instance.setNoTerminologyChecks(false);
    instance.setBestPracticeWarningLevel(BestPracticeWarningLevel.Ignore);
    return context.newValidator().registerValidatorModule(instance);
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static List<String> errors(FhirValidator validator, Path file) throws IOException {
    List<String> errors = new ArrayList<>();
    for (SingleValidationMessage message : validator.validateWithResult(Files.readString(file)).getMessages()) {
      if (message.getSeverity().ordinal() >= ResultSeverityEnum.ERROR.ordinal()) {
        errors.add(message.getLocationString() + ": " + message.getMessage());
      }
    }
    return errors;
  }
}
