package boreledger.station.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.bore.BoreProfile;
import boreledger.drivers.line.Line;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** What is written has the same digits wherever the program runs. */
class FormattingTest {
  private static final JavaClasses ALL =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("boreledger");

  @Test
  void theScanSawThreeModules() {
    assertTrue(ALL.size() > 500, "classes seen: " + ALL.size());
    assertTrue(ALL.contain(BoreProfile.class));
    assertTrue(ALL.contain(Line.class));
  }

  @Test
  void nothingIsFormattedByTheSystemsLocale() {
    noClasses()
        .should()
        .callMethod(String.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(String.class, "formatted", Object[].class)
        .because(
            "some locales have digits of their own, which the ledger, its exports and whoever reads"
                + " them must not meet; name Locale.ROOT")
        .check(ALL);
  }
}
