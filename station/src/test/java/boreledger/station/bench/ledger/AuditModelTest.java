package boreledger.station.bench.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.audit.AuditedLedger;
import boreledger.station.bench.House;
import boreledger.station.bench.ledger.AuditLine.Kind;
import boreledger.station.seal.KeyFile;
import boreledger.station.seal.Seal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuditModelTest {
  private static final long FIRST_READING = 8;

  @TempDir Path folder;
  private LedgerHouse at;
  private AuditModel model;

  @BeforeEach
  void boresAndGaps() throws Exception {
    at = LedgerHouse.gauged(folder);
    model = model(Runnable::run);
  }

  private AuditModel model(java.util.concurrent.Executor working) {
    return new AuditModel(at.around(working), new KeyFile(folder.resolve("key.pem")));
  }

  @Test
  void anUntouchedLedgerIsIntact() {
    model.audit();

    assertEquals(AuditVerdict.INTACT, model.verdict().get());
    assertTrue(model.saying().get().startsWith("Intact: "), model.saying().get());
    assertFalse(model.running().get());
    assertTrue(model.lines().stream().noneMatch(line -> line.kind() == Kind.FINDING));
  }

  @Test
  void aChangedEntryIsAFindingInWordsAndIsNotSealed() throws Exception {
    AuditedLedger.at(at.house.ledger())
        .exchanged(FIRST_READING, "\"cautions\":[]", "\"cautions\":[\"none\"]");

    model.audit();

    assertEquals(AuditVerdict.FINDINGS, model.verdict().get());
    assertTrue(
        model.lines().stream()
            .anyMatch(line -> line.kind() == Kind.FINDING && line.words().startsWith("entry 8: ")),
        model.lines().toString());

    model.name().set("A. Turner");
    model.seal();

    assertTrue(model.saying().get().startsWith("Not sealed"), model.saying().get());
    assertFalse(Files.exists(folder.resolve("key.pem")));
  }

  @Test
  void aSealIsKeptInTheLedgerAndBesideItAndTheNextAuditFindsItHolds() throws Exception {
    model.name().set(" A. Turner ");

    model.seal();

    assertEquals(AuditVerdict.INTACT, model.verdict().get());
    assertTrue(model.saying().get().startsWith("Sealed up to entry 40"), model.saying().get());
    Path file = Path.of(at.house.ledger() + "-40.seal");
    assertEquals("A. Turner", Seal.parse(Files.readString(file)).name());

    model.audit();

    assertTrue(
        model.lines().stream()
            .anyMatch(
                line ->
                    line.words().startsWith("Sealed by A. Turner")
                        && line.words().contains(": holds, key known")),
        model.lines().toString());
  }

  @Test
  void whoeverSealsHasANameAndNothingIsBeingGauged() {
    model.seal();
    assertTrue(model.saying().get().startsWith("Say who seals"), model.saying().get());

    at.gauging = true;
    model.name().set("A. Turner");
    model.seal();
    assertTrue(model.saying().get().contains("gauged"), model.saying().get());
    assertFalse(Files.exists(folder.resolve("key.pem")));
  }

  @Test
  void aStoppedAuditSaysThatNothingIsKnown() {
    Deque<Runnable> later = new ArrayDeque<>();
    AuditModel slow = model(later::add);
    slow.audit();
    assertTrue(slow.running().get());

    slow.stop();
    later.remove().run();

    assertFalse(slow.running().get());
    assertEquals(AuditVerdict.FAILED, slow.verdict().get());
    assertTrue(slow.saying().get().contains("the ledger is not audited"), slow.saying().get());
    assertEquals(0, slow.lines().size());
  }

  @Test
  void aLedgerThatIsNotThereIsToldInWords() {
    at = new LedgerHouse(House.empty(folder.resolve("nowhere")));
    AuditModel nowhere = model(Runnable::run);

    nowhere.audit();

    assertEquals(AuditVerdict.FAILED, nowhere.verdict().get());
    assertTrue(nowhere.saying().get().contains("house.db"), nowhere.saying().get());
  }
}
