package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.audit.AuditedLedger;
import boreledger.station.session.SmallJob;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands correct move and correct session. */
class CorrectCommandsTest {
  private static final long THRUST = AuditedLedger.BORE;
  private static final long PIN = THRUST + 1;
  private static final long BORES = 7;
  private static final double SETTING_MM = 96.002;
  private static final double BLOCK_PER_K = 11.0e-6;

  @TempDir Path folder;
  private AuditedLedger ledger;

  @BeforeEach
  void gauge() {
    ledger = AuditedLedger.gauged(folder);
  }

  @Test
  void aReadingIsMovedToAPlaceThatIsFreeAndTheOldPlaceIsEmpty() {
    takeBack(PIN);

    Ran moved = move(THRUST, "Cylinder 1, 12.0 mm, pin").ended(0);

    assertEquals(
        "Moved, as entry 21: entry 9, cylinder 1, 12 mm below the deck, pin axis, +0.0280 mm.",
        moved.out().strip());
    JsonNode results = results();
    assertTrue(position(results, 0).path("diameter_mm").isNull(), results::toPrettyString);
    assertEquals(SETTING_MM + 0.028, position(results, 1).path("diameter_mm").asDouble(), 1e-9);
    assertTrue(
        results
            .path("cautions")
            .toString()
            .contains(
                "cylinder 1, 12 mm below the deck, pin axis: moved here from cylinder 1, 12 mm"
                    + " below the deck, thrust axis by entry 21: mixed up (A. Turner, 20"),
        results::toPrettyString);
  }

  @Test
  void theAuditTellsWhatWasMovedByWhomWhenAndWhy() {
    takeBack(PIN);
    move(THRUST, "cylinder 1, 12 mm below the deck, pin axis").ended(0);

    JsonNode audit = audit();
    JsonNode corrected = audit.at("/corrected/0");
    assertEquals(21, corrected.path("entry").asInt());
    assertEquals(THRUST, corrected.path("corrects").asLong());
    assertEquals(
        "Entry 9 was moved from cylinder 1, 12 mm below the deck, thrust axis to cylinder 1, 12 mm"
            + " below the deck, pin axis.",
        corrected.path("what").asText());
    assertEquals("mixed up", corrected.path("why").asText());
    assertEquals("A. Turner", corrected.path("who").asText());
    assertTrue(corrected.path("wall").asText().matches("\\d{4}-\\d\\d-\\d\\dT.*Z"));
    Ran words = Ran.command("audit", "--ledger", ledger.file()).ended(0);
    assertTrue(words.out().contains("By entry 21: mixed up (A. Turner, 20"), words::toString);
  }

  @Test
  void mixedUpReadingsChangePlacesInFourSteps() {
    takeBack(THRUST);
    move(PIN, "cylinder 1, 12 mm, thrust").ended(0);
    takeBack(THRUST, "--restore");
    move(THRUST, "cylinder 1, 12 mm, pin").ended(0);

    JsonNode results = results();
    assertEquals(SETTING_MM + 0.022, position(results, 0).path("diameter_mm").asDouble(), 1e-9);
    assertEquals(SETTING_MM + 0.028, position(results, 1).path("diameter_mm").asDouble(), 1e-9);
    audit();
  }

  @Test
  void whatCannotBeMovedIsRefusedInOneLine() {
    String taken = "cylinder 1, 12 mm below the deck, pin axis has a reading, entry 10; take it";
    assertTrue(move(THRUST, "cylinder 1, 12 mm, pin").refused(2).err().contains(taken));
    String places = "which has such as \"cylinder 1, 60 mm below the deck, pin axis\"";
    assertTrue(move(THRUST, "cylinder 9, 12 mm, pin").refused(2).err().contains(places));
    move(THRUST, "setting ring, opening check").refused(2);
    move(8, "cylinder 1, 12 mm, pin").refused(2);
    move(14, "cylinder 1, 12 mm, pin").refused(2);
    assertEquals(null, ledger.body(20));
  }

  @Test
  void aGapIsMovedByItsRingAndDepth() {
    takeBack(18);

    move(17, "cylinder 1, top, 60 mm").ended(0);

    assertEquals(0.450, results().at("/cylinders/0/rings/0/gaps/1/measured_mm").asDouble());
    audit();
  }

  @Test
  void anAmendedTemperatureChangesTheDiametersAndIsTold() {
    JsonNode before = position(results(), 0);

    JsonNode answer = amend("--block-temp", "30", "--json").ended(0).json();

    assertEquals("amended", answer.path("done").asText());
    assertEquals(20, answer.path("entry").asInt());
    JsonNode results = results();
    assertEquals(
        before.path("diameter_mm").asDouble() / (1 + BLOCK_PER_K * 10),
        position(results, 0).path("diameter_mm").asDouble(),
        1e-9);
    assertEquals(30, results.at("/gauges/0/block_temp_c").asDouble());
    assertTrue(
        results
            .path("cautions")
            .toString()
            .contains(
                "Session 7 was amended: the block had 30.0 °C, not 20.0 °C (entry 20): mixed up"
                    + " (A. Turner, 20"),
        results::toPrettyString);
    assertEquals(
        "Session 7 was amended: the block had 30.0 °C, not 20.0 °C.",
        audit().at("/corrected/0/what").asText());
  }

  @Test
  void anAmendedTemperatureMayHoldFromAReadingOn() {
    JsonNode before = results();

    amend("--block-temp", "30", "--from-entry", "11").ended(0);

    JsonNode after = results();
    assertEquals(position(before, 1).path("diameter_mm"), position(after, 1).path("diameter_mm"));
    assertTrue(
        position(after, 2).path("diameter_mm").asDouble()
            < position(before, 2).path("diameter_mm").asDouble() - 0.009);
  }

  @Test
  void anAmendedJobGivesItsLimitsToTheResults() throws Exception {
    assertEquals(96.150, wearLimitMm(results()));

    amend("--job", job("wear_limit_mm = 96.150", "wear_limit_mm = 96.100")).ended(0);

    JsonNode results = results();
    assertEquals(96.100, wearLimitMm(results));
    assertTrue(results.path("cautions").toString().contains("the job file "), results::toString);
    JsonNode audit = audit();
    assertEquals(21, audit.at("/corrected/0/entry").asInt(), "the file stands before it");
    assertEquals(21, audit.path("entries").asInt());
  }

  @Test
  void anAmendedJobThatIsKeptAlreadyIsNotKeptTwice() throws Exception {
    amend("--job", job("wear_limit_mm = 96.150", "wear_limit_mm = 96.100")).ended(0);
    amend("--job", job("96.150", "96.150")).ended(0);

    assertEquals(96.150, wearLimitMm(results()));
    assertEquals(22, audit().path("entries").asInt());
  }

  @Test
  void whatCannotBeAmendedIsRefusedInOneLine() throws Exception {
    amend().refused(2);
    amend("--block-temp", "451").refused(2);
    amend("--block-temp", "20").refused(2);
    amend("--block-temp", "30", "--from-entry", "17").refused(2);
    amend("--job", folder.resolve("nowhere.job.toml")).refused(2);
    String plan = "plans other positions than session 7 was gauged at";
    Path other = job("depths_mm = [12.0, 60.0]", "depths_mm = [12.0, 61.0]");
    assertTrue(amend("--job", other).refused(2).err().contains(plan));
    assertTrue(amend("--job", job("Small", "Large")).refused(2).err().contains("is the job"));
    with(new Object[] {"--block-temp", "30"}, "correct", "session", "--session", 9).refused(2);
    assertFalse(Files.exists(folder.resolve("nowhere.db")));
    assertEquals(null, ledger.body(20));
  }

  private Path job(String piece, String instead) throws Exception {
    String text = SmallJob.standard().with(piece, instead).text();
    return Files.writeString(folder.resolve("other.job.toml"), text);
  }

  private static double wearLimitMm(JsonNode results) {
    for (JsonNode check : results.at("/cylinders/0/bore/checks")) {
      if (check.path("check").asText().startsWith("wear")) {
        return check.path("limit_mm").asDouble();
      }
    }
    throw new AssertionError(results.toPrettyString());
  }

  private static JsonNode position(JsonNode results, int at) {
    return results.at("/cylinders/0/bore/positions/" + at);
  }

  private JsonNode results() {
    return Ran.command("results", "--ledger", ledger.file(), "--json").json();
  }

  private JsonNode audit() {
    return Ran.command("audit", "--ledger", ledger.file(), "--json").ended(0).json();
  }

  private void takeBack(long entry, Object... more) {
    with(more, "take-back", "--entry", entry).ended(0);
  }

  private Ran move(long entry, String to) {
    return with(new Object[] {"--to", to}, "correct", "move", "--entry", entry);
  }

  private Ran amend(Object... more) {
    return with(more, "correct", "session", "--session", BORES);
  }

  private Ran with(Object[] more, Object... args) {
    Object[] last = {"--ledger", ledger.file(), "--why", "mixed up", "--who", "A. Turner"};
    Object[] all = Arrays.copyOf(args, args.length + more.length + last.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    System.arraycopy(last, 0, all, args.length + more.length, last.length);
    return Ran.command(all);
  }
}
