package boreledger.station.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.SmallJob;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CautionsTest {
  private final SmallJob job = SmallJob.standard();

  @Test
  void aWholeSessionAtKnownTemperaturesNeedsNoCaution() {
    Computed computed = Computed.of(job, whole(0));

    assertEquals(List.of(), computed.cautions());
    assertFalse(computed.results().attention());
  }

  @Test
  void aMissingClosingCheckIsTold() {
    Computed computed = Computed.of(job, Sitting.ofBores(job).opening(0).bores(12, 0.01, 0.01));

    assertTrue(computed.warnsOf("No closing check"));
    assertEquals(1, computed.cautions().size());
  }

  @ParameterizedTest
  @CsvSource({"0.0019, false", "0.0021, true", "-0.0019, false", "-0.0021, true"})
  void aDriftBeyondThePermissibleErrorPutsTheWholeSessionUnderACaution(
      double closingMm, boolean beyond) {
    Computed computed = Computed.of(job, whole(closingMm));

    assertEquals(beyond, computed.warnsOf("The zero drifted"));
    assertEquals(beyond, computed.results().attention());
  }

  @ParameterizedTest
  @CsvSource({", 21.0", "20.4,", ","})
  void aTemperatureThatWasNotTakenIsTold(Double settingC, Double blockC) {
    Computed computed = Computed.of(job, whole(0).at(settingC, blockC));

    assertTrue(computed.warnsOf("temperature was not taken"), computed.cautions()::toString);
    // Setting plus reading: 20 °C is assumed where nothing is known.
    if (settingC == null && blockC == null) {
      assertEquals(96.012, computed.diameterMm(0), 1e-9);
    }
  }

  @Test
  void aTemperatureThatWasNotTakenWithTheGapsIsToldByTheRing() {
    Computed computed =
        Computed.of(job, whole(0), Sitting.ofGaps(job).gap(12, 0.5).gap(60, 0.5).at(null, null));

    assertTrue(
        computed.cautions().stream()
            .anyMatch(caution -> caution.contains("temperature") && caution.contains("top")),
        computed.cautions()::toString);
  }

  /** By linear expansion the rail grows by 1.6 mm and its bore by 0.4 mm: more than the gap. */
  @ParameterizedTest
  @CsvSource({"450, true", "150, false"})
  void anOilRailWhoseEndsWouldButtHotSaysSo(double ringC, boolean butts) {
    String running =
        "[running]\nring_temp_c = %.1f\nwall_top_temp_c = 150.0\nwall_bottom_temp_c = 150.0\n";
    SmallJob rail =
        job.with("name = \"top\"", "name = \"top\"\nkind = \"oil\"")
            .with("[setting]", running.formatted(ringC) + "[setting]");
    Sitting gaps = Sitting.ofGaps(rail).gap(12, 0.5).gap(60, 0.5).at(20.0, 20.0);

    Computed computed = Computed.of(rail, whole(0), gaps);

    List<String> butting =
        computed.cautions().stream().filter(each -> each.contains("ends would butt")).toList();
    assertEquals(butts ? 1 : 0, butting.size(), computed.cautions()::toString);
    assertEquals(butts, computed.results().attention());
  }

  @Test
  void openingAndClosingAtOneMomentStillGiveResults() {
    Sitting sitting =
        Sitting.ofBores(job)
            .read(SettingCheck.OPENING, 0, 0.000)
            .read(new Bore(1, 12, "thrust"), 0, 0.010)
            .read(SettingCheck.CLOSING, 0, 0.000);

    Computed computed = Computed.of(job, sitting);

    assertEquals(96.012, computed.diameterMm(0), 1e-9);
    assertFalse(computed.warnsOf("No closing check"));
  }

  @Test
  void whatThePickRuleSaidOfAReadingIsToldWithItsPosition() {
    Sitting sitting =
        Sitting.ofBores(job)
            .opening(0)
            .read(new Bore(1, 12, "thrust"), 20, 0.01, "5 equal frames in quick succession")
            .closing(0);

    assertEquals(
        List.of(
            "cylinder 1, 12 mm below the deck, thrust axis: 5 equal frames in quick succession."),
        Computed.of(job, sitting).cautions());
  }

  private Sitting whole(double closingMm) {
    return Sitting.ofBores(job)
        .opening(0)
        .bores(12, 0.010, 0.010)
        .bores(60, 0.010, 0.010)
        .closing(closingMm);
  }
}
