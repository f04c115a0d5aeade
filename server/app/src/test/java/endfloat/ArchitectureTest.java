package endfloat;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which part may know which, and why. */
class ArchitectureTest {
  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("endfloat");

  /** From the bottom up; a package may know those before it, but for the pairs told apart below. */
  private static final String[] CALC_LIB = {
    "endfloat.definition..",
    "endfloat.units..",
    "endfloat.quantities..",
    "endfloat.catalogue..",
    "endfloat.numerics..",
    "endfloat.materials..",
    "endfloat.thermal..",
    "endfloat.fits..",
    "endfloat.gears..",
    "endfloat.shafts..",
    "endfloat.plates..",
    "endfloat.joints..",
    "endfloat.bench..",
    "endfloat.vibration..",
    "endfloat.evidence..",
    "endfloat.formulas.."
  };

  private static final String[] SERVER = {
    "endfloat.record..",
    "endfloat.working..",
    "endfloat.table..",
    "endfloat.engine..",
    "endfloat.review..",
    "endfloat.picture..",
    "endfloat.sheet..",
    "endfloat.report..",
    "endfloat.kernel..",
    "endfloat.http..",
    "endfloat.cli.."
  };

  /** Exact in IEEE 754, so the same on every machine whichever class they come from. */
  private static final Set<String> EXACT =
      Set.of(
          "abs",
          "absExact",
          "addExact",
          "ceil",
          "ceilDiv",
          "copySign",
          "decrementExact",
          "floor",
          "floorDiv",
          "floorMod",
          "fma",
          "getExponent",
          "incrementExact",
          "max",
          "min",
          "multiplyExact",
          "multiplyFull",
          "multiplyHigh",
          "negateExact",
          "nextAfter",
          "nextDown",
          "nextUp",
          "rint",
          "round",
          "scalb",
          "signum",
          "sqrt",
          "subtractExact",
          "toIntExact",
          "ulp");

  @Test
  void calculationsKnowNothingOfTheServer() {
    noClasses()
        .that()
        .resideInAnyPackage(CALC_LIB)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(SERVER)
        .because("calc-lib can be used alone from any Java program")
        .check(MAIN);
  }

  @Test
  void calculationsReachNoFilesNoNetworkAndNoJson() {
    noClasses()
        .that()
        .resideInAnyPackage(CALC_LIB)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.nio.file..", "java.net..", "com.fasterxml..", "io.javalin..", "org.eclipse..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.io\\.(File|RandomAccessFile).*")
        .because(
            "a formula must not reach the file system or the network; tables come as resources of the"
                + " jar")
        .check(MAIN);
  }

  @Test
  void recordsKnowNothingOfWhatComputesOrServesThem() {
    noClasses()
        .that()
        .resideInAPackage("endfloat.record..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "endfloat.working..",
            "endfloat.engine..",
            "endfloat.review..",
            "endfloat.picture..",
            "endfloat.sheet..",
            "endfloat.report..",
            "endfloat.http..",
            "endfloat.cli..",
            "io.javalin..")
        .because("a saved record must be readable and checkable without Endfloat running")
        .allowEmptyShould(true)
        .check(MAIN);
  }

  @Test
  void theWorkingLanguageKnowsNeitherRecordsNorFigures() {
    noClasses()
        .that()
        .resideInAPackage("endfloat.working..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "endfloat.record..",
            "endfloat.engine..",
            "endfloat.review..",
            "endfloat.picture..",
            "endfloat.sheet..",
            "endfloat.report..",
            "endfloat.http..",
            "endfloat.cli..",
            "com.fasterxml..",
            "io.javalin..")
        .because("a line means the same wherever it stands")
        .allowEmptyShould(true)
        .check(MAIN);
  }

  @Test
  void theEngineKnowsNothingOfWhoAsks() {
    noClasses()
        .that()
        .resideInAPackage("endfloat.engine..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "endfloat.review..",
            "endfloat.picture..",
            "endfloat.sheet..",
            "endfloat.report..",
            "endfloat.http..",
            "endfloat.cli..",
            "io.javalin..")
        .because("a figure depends on its record alone")
        .allowEmptyShould(true)
        .check(MAIN);
  }

  @Test
  void sheetsAndReviewsKnowNothingOfPagesOrCommands() {
    noClasses()
        .that()
        .resideInAnyPackage(
            "endfloat.review..", "endfloat.picture..", "endfloat.sheet..", "endfloat.report..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("endfloat.http..", "endfloat.cli..", "io.javalin..", "picocli..")
        .because("edits are ordered and kept alike whether they come over HTTP or from a test")
        .allowEmptyShould(true)
        .check(MAIN);
  }

  @Test
  void theServerKnowsNoCommands() {
    noClasses()
        .that()
        .resideInAPackage("endfloat.http..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("endfloat.cli..", "picocli..")
        .because("the server must start from a test or another program just as well")
        .check(MAIN);
  }

  @Test
  void noTwoPackagesLeanOnEachOther() {
    slices()
        .matching("endfloat.(*)..")
        .should()
        .beFreeOfCycles()
        .because("a cycle makes two packages one that nobody can read by halves")
        .check(MAIN);
  }

  @Test
  void everyFigureIsTheSameOnEveryMachine() {
    noClasses()
        .should()
        .accessTargetWhere(
            new DescribedPredicate<JavaAccess<?>>(
                "a function of java.lang.Math that is not exact") {
              @Override
              public boolean test(JavaAccess<?> access) {
                return access.getTargetOwner().isEquivalentTo(Math.class)
                    && !EXACT.contains(access.getTarget().getName());
              }
            })
        .because(
            "java.lang.Math may differ from machine to machine; StrictMath gives the same bits"
                + " everywhere")
        .check(MAIN);
  }

  @Test
  void onlyCommandsPrint() {
    noClasses()
        .that()
        // the child is a process of its own, whose output is the protocol
        .resideOutsideOfPackages("endfloat.cli..", "endfloat.child..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(Throwable.class, "printStackTrace")
        .because("what others print gets into the output of a command that a program reads")
        .check(MAIN);
  }

  @Test
  void onlyTheCommandLineEndsTheProcess() {
    noClasses()
        .that()
        // the child is a process of its own, whose output is the protocol
        .resideOutsideOfPackages("endfloat.cli..", "endfloat.child..")
        .should()
        .callMethod(System.class, "exit", int.class)
        .because("an ended process loses what others were doing")
        .check(MAIN);
  }

  @Test
  void nothingPrintsInTheLanguageOfTheMachine() {
    noClasses()
        .should()
        .callMethod(String.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(String.class, "formatted", Object[].class)
        .orShould()
        .callMethod(String.class, "toLowerCase")
        .orShould()
        .callMethod(String.class, "toUpperCase")
        .because("a decimal comma or a Turkish i must not depend on who runs it; give a Locale")
        .check(MAIN);
  }
}
