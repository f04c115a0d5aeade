package endfloat.processor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Small definitions, right and wrong, compiled in memory. */
class CalculationProcessorTest {
  private static final String CHECK =
      "id: x\nsource: a handbook\nknowledge: derived\nexpect y = 1\n";

  @TempDir private Path checks;

  @BeforeEach
  void aCheckForTheCalculation() throws IOException {
    check("width_of_gap", CHECK);
  }

  private void check(String calculation, String text) throws IOException {
    Files.writeString(checks.resolve(calculation + ".check"), text);
  }

  private Compiled compile(String members) {
    return Compiled.of(
        List.of("-Aendfloat.checks=" + checks),
        "package endfloat.trial;\n"
            + "import endfloat.definition.*;\nimport endfloat.units.*;\nimport java.util.List;\n"
            + "public final class Gap {\n"
            + members
            + "\n}\n");
  }

  private static String gap(String parameters) {
    return gap("source = \"a handbook\"", parameters);
  }

  private static String gap(String about, String parameters) {
    return "/** Width of a gap. And more of it.\n * @param length L, between the stops\n"
        + " * @return the gap */\n@Calculates("
        + about
        + ")\n@In(\"mm\")\npublic static double widthOfGap("
        + parameters
        + ") {\n  return 1;\n}";
  }

  private static final String LENGTH = "@In(\"mm\") double length";

  @Test
  void writesAnEntryWithEveryTextOfTheDefinition() {
    Compiled compiled =
        compile(
            gap(
                "source = \"a handbook\", cautions = \"Mind \\\"it\\\".\", terms = \"play\"",
                LENGTH
                    + ", @In(\"deg\") @Range(\"> 0 rad .. 0.5 rad\") @Default(\"20 deg\")"
                    + " double angleOfFlank2"));
    assertEquals(List.of(), compiled.errors());
    String entry = compiled.generated("endfloat.catalogue.TrialEntries");
    for (String part :
        List.of(
            "\"width_of_gap\"",
            "\"trial\"",
            "\"Width of a gap.\"",
            "\"And more of it.\"",
            "\"length\", \"L, between the stops\", Parameter.Form.QUANTITY, \"mm\"",
            "\"angle_of_flank_2\"",
            "\"> 0 rad .. 0.5 rad\", 0.0, 0.5, false, true",
            "Optional.of(\"20 deg\")",
            "\"the gap\"",
            "\"a handbook\"",
            "\"Mind \\\"it\\\".\"",
            "endfloat.trial.Gap.widthOfGap((Double) a[0], (Double) a[1])")) {
      assertTrue(entry.contains(part), () -> part + " is not in " + entry);
    }
    assertTrue(
        compiled.generated("endfloat.catalogue.LibraryEntries").contains("TrialEntries.all()"));
  }

  @Test
  void writesPartsChoicesListsAndRecords() {
    Compiled compiled =
        compile(
            """
            public enum Kind { LEFT_OUT, KEPT }
            /** A link. @param size of it */
            @Part public record Link(@In("mm") double size, Kind kind) {}
            /** Both. @param sum of the sizes */
            public record Both(@In("mm") double sum, Kind kind, boolean tight, String why,
                @In("1") Uncertain share, @In("mm") double[] each) {}
            /** Width of a gap. */
            @Calculates(source = "a handbook")
            public static Both widthOfGap(List<Link> links, @In("<x>") double[] list,
                Kind kind, String name, Progress progress) { return null; }
            """);
    assertEquals(List.of(), compiled.errors());
    String entry = compiled.generated("endfloat.catalogue.TrialEntries");
    for (String part :
        List.of(
            "new Part(\"link\"",
            "List.of(\"left out\", \"kept\")",
            "Parameter.Form.LIST, \"<x>\"",
            "Result.Form.UNCERTAIN, \"1\"",
            "Result.Form.TRUTH",
            "Arguments.word(r.kind())",
            ", progress)")) {
      assertTrue(entry.contains(part), () -> part + " is not in " + entry);
    }
  }

  @Test
  void refusesACalculationThatNothingChecks() throws IOException {
    Files.delete(checks.resolve("width_of_gap.check"));
    compile(gap(LENGTH))
        .refusesAt(
            "widthOfGap",
            "calculation width_of_gap has no check file checks/width_of_gap.check; write one with a"
                + " value from outside the project and its source");
    check("width_of_gap", "id: x\nknowledge: derived\nexpect y = 1\n");
    compile(gap(LENGTH)).refusesAt("widthOfGap", "checks/width_of_gap.check lacks a source: line");
    check("width_of_gap", "id: x\nsource: a handbook\nknowledge: derived\ny = 1\n");
    compile(gap(LENGTH)).refusesAt("widthOfGap", "checks/width_of_gap.check lacks an expect line");
    check("width_of_gap", "id: x\nsource: a handbook\nknowledge: hearsay\nexpect y = 1\n");
    compile(gap(LENGTH)).refusesAt("widthOfGap", "lacks a knowledge: line");
  }

  @Test
  void refusesToGoWithoutItsChecks() {
    Compiled compiled =
        Compiled.of(
            List.of(),
            "package endfloat.trial;\nimport endfloat.definition.*;\npublic final class Gap {\n"
                + gap(LENGTH)
                + "\n}\n");
    compiled.refusesAt("widthOfGap", "-Aendfloat.checks=FOLDER");
  }

  @Test
  void refusesAUnitThatTheTableDoesNotKnow() {
    compile(gap("@In(\"mn\") double length")).refusesAt("length", "@In(\"mn\"): ");
    compile(gap("double length")).refusesAt("length", "length carries no @In: say its unit");
    compile(gap("@In(\"mm\") int length")).refusesAt("length", "length is a int");
  }

  @Test
  void refusesARangeThatCannotBeRead() {
    compile(gap(LENGTH.replace("double", "@Range(\"> 0 deg\") double")))
        .refusesAt("length", "@Range(\"> 0 deg\"): 0 deg is no size in mm");
    compile(gap(LENGTH.replace("double", "@Range(\"1 mm to 2 mm\") double")))
        .refusesAt("length", "a range is written low .. high");
    compile(gap(LENGTH.replace("double", "@Range(\"2 mm .. 1 mm\") double")))
        .refusesAt("length", "the range 2 mm .. 1 mm is empty");
  }

  @Test
  void refusesADefaultThatItsParameterWouldRefuse() {
    compile(gap(LENGTH.replace("double", "@Default(\"20 deg\") double")))
        .refusesAt("length", "@Default(\"20 deg\"): 20 deg is no size in mm");
    compile(gap(LENGTH.replace("double", "@Range(\"> 0 mm\") @Default(\"0 mm\") double")))
        .refusesAt("length", "@Default(\"0 mm\"): it lies outside > 0 mm");
    compile(gap("@Default(\"plain\") String length"))
        .refusesAt("length", "a text stands in quotes");
    compile("public enum Kind { A, B }\n" + gap("@Default(\"\\\"c\\\"\") Kind length"))
        .refusesAt("length", "it is none of a, b");
  }

  @Test
  void refusesACompanionThatIsMissingOrHasOtherParameters() {
    String about = "source = \"a handbook\", partials = \"slopes\"";
    String missing =
        "there is no public static double[][] slopes with the parameters of widthOfGap";
    compile(gap(about, LENGTH)).refusesAt("widthOfGap", missing);
    compile(
            gap(about, LENGTH)
                + "public static double[][] slopes(double a, double b) { return null; }")
        .refusesAt("widthOfGap", missing);
    compile(gap(about, LENGTH) + "public static double slopes(double a) { return 0; }")
        .refusesAt("widthOfGap", missing);
    assertEquals(
        List.of(),
        compile(gap(about, LENGTH) + "public static double[][] slopes(double a) { return null; }")
            .errors());
    compile(gap("source = \"a handbook\", modelError = \"error\"", LENGTH))
        .refusesAt("widthOfGap", "there is no public static double error");
  }

  @Test
  void refusesAResultWhoseUnitNothingFixes() {
    compile(gap(LENGTH).replace("@In(\"mm\")\npublic", "@In(\"<x>\")\npublic"))
        .refusesAt("widthOfGap", "no argument is in <x>");
  }

  @Test
  void refusesWhatIsNotAPublicStaticMethodWithASourceAndAJavadoc() {
    compile(gap(LENGTH).replace("public static", "static"))
        .refusesAt("widthOfGap", "a calculation is a public static method");
    compile(gap("source = \" \"", LENGTH))
        .refusesAt("widthOfGap", "a calculation names its source");
    compile(gap(LENGTH).replaceAll("(?s)/\\*\\*.*?\\*/", ""))
        .refusesAt("widthOfGap", "a calculation says in its Javadoc what it gives");
  }

  @Test
  void refusesTwoCalculationsOfOneName() {
    compile(gap(LENGTH) + gap(LENGTH + ", " + LENGTH.replace("length", "other")))
        .refusesAt("widthOfGap", "two calculations are named width_of_gap");
  }
}
