package boreledger.station.bench;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import javafx.application.Platform;
import org.junit.jupiter.api.Test;

class BenchArchitectureTest {
  private static final JavaClasses BENCH =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("boreledger.station.bench");

  @Test
  void theScanSawTheBench() {
    assertTrue(BENCH.size() > 50, "classes seen: " + BENCH.size());
  }

  @Test
  void theModelKnowsNoScreen() {
    noClasses()
        .that()
        .resideInAPackage("..bench.model..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "javafx.scene..",
            "javafx.stage..",
            "javafx.application..",
            "javafx.animation..",
            "..bench.view..")
        .because("it is tested without a display, and the command line could show the same words")
        .check(BENCH);
  }

  @Test
  void onlyOneClassHandsOverToTheScreensThread() {
    noClasses()
        .that()
        .doNotHaveSimpleName("ScreenExecutor")
        .should()
        .callMethod(Platform.class, "runLater", Runnable.class)
        .because("work for another thread goes through an executor that tests can replace")
        .check(BENCH);
  }

  @Test
  void theRoomsKnowNoSqlAndNoLines() {
    noClasses()
        .that()
        .resideInAPackage("boreledger.station.bench.*..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.sql..", "org.sqlite..", "..drivers.line..", "com.fazecast..")
        .because("a screen shows what it is told, and asks for results only")
        .check(BENCH);
  }

  @Test
  void packagesOfTheBenchHaveNoCycles() {
    slices().matching("boreledger.station.bench.(*)..").should().beFreeOfCycles().check(BENCH);
  }

  @Test
  void panesAreNotSeenFromOutside() {
    classes()
        .that()
        .resideInAPackage("..bench.view..")
        .and()
        .doNotHaveSimpleName("BenchRoom")
        .and()
        .areTopLevelClasses()
        .should()
        .notBePublic()
        .because("the room is all that others need")
        .check(BENCH);
  }
}
