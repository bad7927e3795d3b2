package boreledger.station.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.session.SmallJob;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResultsTextTest {
  private final SmallJob job = SmallJob.standard();

  @ParameterizedTest
  @CsvSource({
    "taper, 0.0500",
    "out-of-round, 0.0300",
    "bore-min, 96.0000",
    "bore-max, 96.0500",
    "wear-limit, 96.1500"
  })
  void everyLimitIsSaidBesideItsValue(String check, String limit) {
    String line = line(ResultsText.of(whole().results()), check);

    assertTrue(line.contains("limit " + limit), line);
    assertTrue(line.contains("±"), line);
  }

  @Test
  void aStateIsNeverABareWord() {
    String line = line(ResultsText.of(whole().results()), "bore-max");

    assertTrue(line.contains("within (") && line.contains("% sure to keep it)"), line);
  }

  @Test
  void whatIsNotAllReadYetIsSaidSo() {
    Computed computed =
        Computed.of(job, Sitting.ofBores(job).opening(0).bores(12, 0.01, 0.01).closing(0));

    String text = ResultsText.of(computed.results());

    assertTrue(line(text, "bore-max").contains("not all read yet"), text);
    assertFalse(text.contains("null"), text);
  }

  @Test
  void everyDiameterIsThereWithItsUncertainty() {
    String text = ResultsText.of(whole().results());

    for (String diameter : new String[] {"96.0300", "96.0340", "96.0100", "96.0120"}) {
      assertTrue(text.contains(diameter + " ± 0.00"), text);
    }
  }

  @Test
  void everyCautionIsThere() {
    Computed computed =
        Computed.of(
            job,
            Sitting.ofBores(job).at(null, null).opening(0).bores(12, 0, 0).bores(60, 0, 0),
            Sitting.ofGaps(job).gap(12, 0.52).gap(60, 0.44));

    String text = ResultsText.of(computed.results());

    assertTrue(computed.cautions().size() >= 3, computed.cautions()::toString);
    for (String caution : computed.cautions()) {
      assertTrue(text.contains("Caution: " + caution), () -> caution + " in " + text);
    }
  }

  @Test
  void whatBecameNoReadingIsCounted() {
    Computed computed = Computed.of(job, Sitting.ofBores(job).refused("a").refused("b"));

    assertTrue(ResultsText.of(computed.results()).contains("2 samples became no reading"));
  }

  @Test
  void theMakersDataAreNamedAsWhatDecides() {
    assertTrue(ResultsText.of(whole().results()).contains("makers' data decide"));
  }

  @Test
  void theLedgersHeadIsNamed() {
    Computed computed = whole();

    assertTrue(ResultsText.of(computed.results()).contains("Ledger head " + "00".repeat(32)));
  }

  @Test
  void numbersAreTheSameInEveryLocale() {
    Computed computed = whole();
    String plain = ResultsText.of(computed.results());
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      assertEquals(plain, ResultsText.of(computed.results()));
    } finally {
      Locale.setDefault(before);
    }
  }

  /** Bores of 96.030, 96.034, 96.010 and 96.012 mm. */
  private Computed whole() {
    return Computed.of(
        job,
        Sitting.ofBores(job).opening(0).bores(12, 0.028, 0.032).bores(60, 0.008, 0.010).closing(0));
  }

  private static String line(String text, String check) {
    return text.lines()
        .filter(line -> line.strip().startsWith(check) && line.contains("limit"))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no line about " + check + " in " + text));
  }
}
