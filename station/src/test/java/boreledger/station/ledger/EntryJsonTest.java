package boreledger.station.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.drivers.capture.Measure;
import boreledger.station.ledger.EntryBody.KeptSample;
import boreledger.station.plan.Position;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EntryJsonTest {
  // RFC 3339 section 5.8, first example.
  private static final Instant WALL = Instant.parse("1985-04-12T23:20:50.52Z");

  static Stream<EntryBody> everyKind() {
    KeptSample sample = new KeptSample(1.5, "2b302e3031320d0a", 0.012);
    return Stream.of(
        new EntryBody.LedgerMade(EntryBody.FORMAT, "00ff", WALL),
        new EntryBody.Document("gauge", "a.gauge.toml", "ab", "text \"quoted\"\nµ"),
        new EntryBody.SessionOpened(
            "job",
            "ab",
            "cd",
            List.of("ef"),
            Measure.RING_DEPTH,
            "top",
            WALL,
            20.4,
            null,
            "a line",
            "0.1.0"),
        new EntryBody.SessionResumed(2, 7.25, WALL, 20.5, null, "a line", "0.1.0"),
        reading(new Position.Bore(1, 12.0, "thrust"), sample),
        reading(new Position.Gap(3, "top", 108.5), sample),
        reading(new Position.RingDepth(3, "top", 12, 90), sample),
        reading(Position.SettingCheck.CLOSING, sample),
        new EntryBody.SampleRefused(2, 0.1, WALL, "00", null, "why"),
        new EntryBody.LineBroke(2, 0.1, WALL, "why"),
        new EntryBody.SessionEnded(2, 0.1, WALL));
  }

  @ParameterizedTest
  @MethodSource("everyKind")
  void aBodyReadBackEqualsTheOneWritten(EntryBody body) throws Exception {
    assertEquals(body, EntryJson.read(1, EntryJson.write(body)));
  }

  @Test
  void aReadingIsWrittenAsTheLedgersPageSays() {
    EntryBody body =
        reading(
            new Position.Bore(1, 12.0, "thrust"), new KeptSample(1.5, "2b302e3031320d0a", 0.012));

    assertEquals(
        """
        {"kind":"reading","session":2,\
        "position":{"at":"bore","cylinder":1,"depth_mm":12.0,"axis":"thrust"},\
        "t_s":1.5,"wall":"1985-04-12T23:20:50.520Z","value_mm":0.012,\
        "standard_uncertainty_mm":null,"rule":"press","setting":5,\
        "samples":[{"t_s":1.5,"raw":"2b302e3031320d0a","value_mm":0.012}],\
        "cautions":["a word"]}""",
        EntryJson.write(body));
  }

  @Test
  void aBodyOfAnUnknownKindIsNamedByItsEntry() {
    LedgerFault fault =
        assertThrows(LedgerFault.class, () -> EntryJson.read(7, "{\"kind\":\"gossip\"}"));

    assertEquals("entry 7 of the ledger is not readable: ", fault.getMessage().substring(0, 39));
  }

  private static EntryBody reading(Position position, KeptSample sample) {
    return new EntryBody.ReadingTaken(
        2, position, 1.5, WALL, 0.012, null, "press", 5L, List.of(sample), List.of("a word"));
  }
}
