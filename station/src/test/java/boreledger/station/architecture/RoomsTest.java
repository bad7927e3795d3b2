package boreledger.station.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Which room may know which. */
class RoomsTest {
  private static final JavaClasses PRODUCT =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("boreledger");

  @Test
  void theScanSeesTheWholeProduct() {
    for (String room : new String[] {"calc", "drivers", "station"}) {
      long seen =
          PRODUCT.stream()
              .filter(type -> type.getPackageName().startsWith("boreledger." + room))
              .count();
      assertTrue(seen > 30, "only " + seen + " classes of " + room);
    }
  }

  @Test
  void calcComputesAndNothingElse() {
    classes()
        .that()
        .resideInAPackage("boreledger.calc..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "boreledger.calc..",
            "java.lang..",
            "java.util..",
            "java.math..",
            "org.apache.commons.statistics..")
        .because("a computation that reads a file or a clock cannot be computed again")
        .check(PRODUCT);
    noClasses()
        .that()
        .resideInAPackage("boreledger.calc..")
        .should()
        .dependOnClassesThat()
        .haveNameMatching("java\\.util\\.(concurrent\\.(?!ConcurrentHashMap).*|logging\\..*)")
        .because("threads and logs belong to those who call; a safe map is no thread")
        .check(PRODUCT);
  }

  @Test
  void driversKnowOfCalcOnlyTheRock() {
    noClasses()
        .that()
        .resideInAPackage("boreledger.drivers..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "boreledger.station..",
            "boreledger.calc.bore..",
            "boreledger.calc.ring..",
            "boreledger.calc.decision..",
            "boreledger.calc.uncertainty..",
            "java.sql..",
            "javafx..")
        .because("a gauge knows neither engines nor ledgers nor screens")
        .check(PRODUCT);
  }

  @Test
  void onePackageTouchesTheSerialLibrary() {
    noClasses()
        .that()
        .resideOutsideOfPackage("boreledger.drivers.serial..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("com.fazecast..")
        .because("its traps are walled in where they are known")
        .check(PRODUCT);
  }

  @Test
  void onePackageSpeaksSql() {
    noClasses()
        .that()
        .resideOutsideOfPackage("boreledger.station.ledger..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.sql..", "org.sqlite..")
        .because("what is appended to the ledger goes through one door")
        .check(PRODUCT);
  }

  @Test
  void theLedgerKnowsNoScreenNoSessionAndNoCommand() {
    noClasses()
        .that()
        .resideInAPackage("boreledger.station.ledger..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "boreledger.station.session..",
            "boreledger.station.results..",
            "boreledger.station.gauging..",
            "boreledger.station.app..",
            "boreledger.station.bench..",
            "boreledger.station.cli..",
            "javafx..")
        .because("it must be trusted without them")
        .check(PRODUCT);
  }

  @Test
  void onlyTheBenchKnowsTheToolkit() {
    noClasses()
        .that()
        .resideOutsideOfPackage("boreledger.station.bench..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("javafx..")
        .because("every answer must be there without a display")
        .check(PRODUCT);
  }

  @Test
  void drawingsKnowNeitherScreenNorPaper() {
    noClasses()
        .that()
        .resideInAPackage("boreledger.station.drawing..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "boreledger.station.bench..",
            "boreledger.station.report..",
            "javafx..",
            "java.awt..",
            "org.apache.pdfbox..")
        .because("the same figure is drawn on both")
        .check(PRODUCT);
  }

  @Test
  void onePackageWritesPdf() {
    noClasses()
        .that()
        .resideOutsideOfPackage("boreledger.station.report..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..")
        .because("another kind of paper must not need another kind of sheet")
        .check(PRODUCT);
  }

  @Test
  void onlyTheCommandLineKnowsTheCommandLine() {
    noClasses()
        .that()
        .resideOutsideOfPackage("boreledger.station.cli..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("info.picocli..", "picocli..", "boreledger.station.cli..")
        .because("commands and screens share one layer beneath them")
        .check(PRODUCT);
  }

  @Test
  void packagesFormNoCycle() {
    slices()
        .matching("boreledger.(*).(*)..")
        .should()
        .beFreeOfCycles()
        .because("the way of a reading goes in one direction")
        .check(PRODUCT);
  }

  @Test
  void recordsAndStaticsHoldNoMutableField() {
    fields()
        .that()
        .areStatic()
        .should()
        .haveModifier(JavaModifier.FINAL)
        .because("a value that anybody can exchange is nobody's")
        .check(PRODUCT);
  }
}
