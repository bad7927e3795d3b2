package boreledger.station.bench.gaps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.House;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.memory.Memory;
import boreledger.station.job.DisplayUnit;
import boreledger.station.ledger.EntryBody.Filed;
import boreledger.station.ledger.EntryBody.Withdrawn;
import boreledger.station.ledger.LedgerView;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilingBenchTest {
  @TempDir Path folder;
  private final Memory memory = new Memory(null);
  private House house;
  private GapsModel model;

  @BeforeEach
  void gauge() throws Exception {
    house = House.gauged(folder, "bore-rocked", "gap-top");
    model = opened();
  }

  private GapsModel opened() {
    Findings findings = new Findings(house.around());
    GapsModel made = new GapsModel(findings, house.around(), memory, house::filing);
    findings.want();
    made.cylinder().set(2);
    return made;
  }

  private FilingBench filing() {
    return model.filing();
  }

  private FilingPage shown() {
    return filing().page().get();
  }

  private void pass(String turns, String gapAfter) {
    filing().turns().set(turns);
    filing().gapAfter().set(gapAfter);
    filing().who().set("A. Turner");
    filing().addPass();
  }

  @Test
  void aPassStandsInTheLedgerAndIsShownAfterTheWindowIsOpenedAnew() throws Exception {
    pass("10", "0.415");

    assertEquals("", filing().problem().get());
    assertEquals("", filing().turns().get());
    Filed kept = (Filed) last();
    assertEquals(2, kept.cylinder());
    assertEquals("top", kept.ring());
    assertEquals("0.415", kept.afterMm());
    model = opened();
    assertEquals(1, shown().record().size());
    assertTrue(shown().record().get(0).startsWith("10 turns: 0."), shown().record()::toString);
    assertTrue(shown().record().get(0).endsWith(" to 0.415 mm (A. Turner)"));
    assertEquals("A. Turner", filing().who().get());
    assertEquals(0.415, shown().gapNowMm());
  }

  @Test
  void theNextPassBeginsWhereTheLastOneEnded() throws Exception {
    pass("10", "0,415");
    pass("5", "0.42");

    assertEquals("0.415", ((Filed) last()).beforeMm());
    assertEquals(2, shown().filed().size());
    assertTrue(shown().advice().contains("File "), shown().advice());
  }

  @Test
  void aPassOfOneRingIsNotThatOfAnother() {
    pass("10", "0.415");

    model.cylinder().set(1);

    assertEquals(0, shown().filed().size());
  }

  @Test
  void inchesAreTypedAndShownWithTheirOwnDigitsAndKeptExactly() throws Exception {
    house.appearance().unit().set(DisplayUnit.IN);

    pass("10", "0.0165");

    // NIST SP 811, appendix B.8: one inch is 25.4 mm exactly, so 0.0165 in is 0.4191 mm.
    assertEquals("0.4191", ((Filed) last()).afterMm());
    assertTrue(
        shown().record().get(0).endsWith(" to 0.0165 in (A. Turner)"), shown().record()::toString);
    assertTrue(shown().advice().matches("0\\.\\d{4} in left\\..*"), shown().advice());

    pass("10", "0.43 mm");

    assertEquals("0.43", ((Filed) last()).afterMm());
  }

  @Test
  void whatIsMissingIsToldAndNothingIsWritten() throws Exception {
    long before = entries();
    pass("", "0.415");
    assertTrue(filing().problem().get().startsWith("Give the turns"), filing().problem().get());
    pass("2.5", "0.415");
    assertTrue(filing().problem().get().startsWith("Give the turns"));
    pass("10", "much");
    assertTrue(filing().problem().get().startsWith("Give the turns"));
    pass("10", "41.5");
    assertTrue(filing().problem().get().contains("41.5000 mm is outside"));
    pass("99999999999", "0.415");
    assertTrue(filing().problem().get().startsWith("Give the turns"));
    filing().who().set(" ");
    filing().turns().set("10");
    filing().gapAfter().set("0.415");
    filing().addPass();
    assertEquals("Say who you are.", filing().problem().get());
    assertEquals(before, entries());
    assertEquals("0.415", filing().gapAfter().get(), "what was typed stays");
  }

  @Test
  void theLastPassIsStruckWithAReasonAndStaysInTheLedger() throws Exception {
    pass("10", "0.415");
    pass("100", "0.42");
    long struck = entries();

    filing().dropPass();
    assertTrue(filing().problem().get().startsWith("Say why"), filing().problem().get());
    filing().why().set("turns miscounted");
    filing().dropPass();

    assertEquals(1, shown().filed().size());
    Withdrawn body = (Withdrawn) last();
    assertEquals(struck, body.entry());
    assertEquals("turns miscounted", body.why());
    assertFalse(filing().busy().get());
  }

  @Test
  void withoutAGaugedGapNothingCanBeNoted() throws Exception {
    house = House.gauged(Files.createDirectory(folder.resolve("bores")), "bore-rocked");
    model = opened();
    long before = entries();

    pass("10", "0.415");

    assertTrue(filing().problem().get().startsWith("Gauge the gap"), filing().problem().get());
    assertEquals(before, entries());
  }

  private long entries() throws Exception {
    try (LedgerView view = LedgerView.open(house.ledger())) {
      return view.entries();
    }
  }

  private Object last() throws Exception {
    try (LedgerView view = LedgerView.open(house.ledger())) {
      return view.entry(view.entries()).orElseThrow().body();
    }
  }
}
