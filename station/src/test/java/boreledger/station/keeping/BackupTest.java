package boreledger.station.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.ChainReader;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.SmallJob;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupTest {
  @TempDir Path folder;
  private Shop shop;

  @BeforeEach
  void openTheShop() {
    shop = new Shop(folder);
  }

  @Test
  void aBackupHoldsEveryRowAsItIsStored() throws Exception {
    shop.gauged("a.db", SmallJob.standard());

    Proof proof = backup("a.db", "b.db", false);

    assertEquals(rows("a.db"), rows("b.db"));
    assertEquals(rows("a.db").size(), proof.entries());
    assertEquals(shop.results("a.db", null), shop.results("b.db", null));
  }

  @Test
  void aBackupTakenWhileAWriterAppendsHoldsAPrefixOfTheChain() throws Exception {
    AtomicBoolean enough = new AtomicBoolean();
    CountDownLatch underWay = new CountDownLatch(50);
    Callable<Long> writing =
        () -> {
          try (Ledger ledger = Ledger.openOrCreate(shop.file("a.db"))) {
            long last = 0;
            for (int i = 0; i < 100_000 && !enough.get(); i++) {
              last = ledger.append(new SessionEnded(1, 0.1 * i, Instant.EPOCH.plusMillis(i)));
              underWay.countDown();
            }
            return last;
          }
        };
    FutureTask<Long> writer = new FutureTask<>(writing);
    new Thread(writer, "writer").start();
    underWay.await();
    List<Proof> proofs = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      proofs.add(backup("a.db", "b" + i + ".db", false));
    }
    enough.set(true);
    long last = writer.get();

    List<String> all = rows("a.db");
    assertEquals(last, all.size(), "no append failed meanwhile");
    for (int i = 0; i < 5; i++) {
      int entries = (int) proofs.get(i).entries();
      assertTrue(entries >= 50 && entries <= last, entries + " of " + last);
      assertEquals(all.subList(0, entries), rows("b" + i + ".db"));
    }
  }

  @Test
  void aFileThatIsThereIsNotOverwrittenUnasked() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    Files.writeString(shop.file("b.db"), "mine");

    assertThrows(UsageProblem.class, () -> backup("a.db", "b.db", false));
    assertEquals("mine", Files.readString(shop.file("b.db")));

    backup("a.db", "b.db", true);
    assertEquals(rows("a.db"), rows("b.db"));
  }

  @Test
  void theLedgerItselfIsNeverOverwritten() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    List<String> before = rows("a.db");

    assertThrows(UsageProblem.class, () -> backup("a.db", "a.db", true));

    assertEquals(before, rows("a.db"));
  }

  @Test
  void aStoppedBackupLeavesNothing() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    Backup backup = new Backup(shop.file("a.db"));
    TreeSet<String> before = names();

    backup.stop();

    assertThrows(Stopped.class, () -> backup.into(shop.file("b.db"), false, Progress.UNWATCHED));
    assertEquals(before, names());
  }

  @Test
  void aStoppedExportLeavesNothing() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    TreeSet<String> before = names();
    Progress stopping =
        done -> {
          if (done == 3) {
            throw new Stopped();
          }
        };

    for (Export.Format format : Export.Format.values()) {
      Export export = new Export(shop.file("a.db"), format, Shop.ALL);
      assertThrows(Stopped.class, () -> export.into(shop.file("b"), false, stopping));
    }

    assertEquals(before, names());
  }

  @Test
  void whatIsRestoredIsProvenAndTheSame() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    Proof taken = backup("a.db", "b.db", false);

    Restore.Restored restored = restore("b.db", "new.db", false);

    assertEquals(taken.entries(), restored.restored().entries());
    assertEquals(taken.ledgerHead(), restored.restored().ledgerHead());
    assertEquals(rows("a.db"), rows("new.db"));
    assertEquals(null, restored.kept());
  }

  @Test
  void aLedgerThatIsThereIsKeptBesideWithItsLastEntries() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    backup("a.db", "b.db", false);
    shop.gauged("a.db", SmallJob.standard());
    List<String> old = rows("a.db");

    assertThrows(UsageProblem.class, () -> restore("b.db", "a.db", false));
    assertEquals(old, rows("a.db"));
    Restore.Restored restored = restore("b.db", "a.db", true);

    assertEquals(rows("b.db"), rows("a.db"));
    assertEquals(shop.file("a.db.until-20320101T120000Z").toString(), restored.kept());
    assertEquals(old, rows("a.db.until-20320101T120000Z"));
  }

  @Test
  void theLogOfALedgerThatWasCutOffGoesAsideWithIt() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    backup("a.db", "b.db", false);
    try (Ledger ledger = Ledger.openOrCreate(shop.file("a.db"))) {
      ledger.append(new SessionEnded(1, 1, Instant.EPOCH));
      for (String end : List.of("", "-wal")) {
        Files.copy(Path.of(shop.file("a.db") + end), Path.of(shop.file("killed.db") + end));
      }
    }
    assertEquals(rows("b.db").size() + 1, rows("a.db").size());

    restore("b.db", "killed.db", true);

    assertEquals(rows("b.db"), rows("killed.db"));
    assertEquals(rows("a.db"), rows("killed.db.until-20320101T120000Z"));
  }

  @Test
  void aLedgerThatIsOpenSomewhereIsNotPutAside() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    backup("a.db", "b.db", false);
    try (Ledger ledger = Ledger.openOrCreate(shop.file("a.db"))) {
      ledger.append(new SessionEnded(1, 1, Instant.EPOCH));
      TreeSet<String> before = names();

      LedgerFault refused = assertThrows(LedgerFault.class, () -> restore("b.db", "a.db", true));

      assertTrue(refused.getMessage().contains("has this ledger open"), refused::getMessage);
      assertEquals(before, names());
      ledger.append(new SessionEnded(1, 2, Instant.EPOCH));
    }
    assertEquals(rows("b.db").size() + 2, rows("a.db").size());
  }

  @Test
  void aBackupWithAChangedWordIsRefused() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    backup("a.db", "b.db", false);
    damage("b.db", "Small engine", "Small enginf");

    LedgerFault refused = assertThrows(LedgerFault.class, () -> restore("b.db", "new.db", false));

    assertTrue(refused.getMessage().contains("does not follow"), refused::getMessage);
    assertFalse(refused.getMessage().contains(".part"), refused::getMessage);
    assertEquals(List.of(), names().stream().filter(name -> name.contains("new.db")).toList());
  }

  @Test
  void aBackupThatWasCutShortIsRefused() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    backup("a.db", "b.db", false);
    byte[] whole = Files.readAllBytes(shop.file("b.db"));
    Files.write(shop.file("b.db"), Arrays.copyOf(whole, whole.length / 2));

    assertThrows(LedgerFault.class, () -> restore("b.db", "new.db", false));

    assertEquals(List.of(), names().stream().filter(name -> name.contains("new.db")).toList());
  }

  private Proof backup(String ledger, String out, boolean replace) throws Exception {
    return new Backup(shop.file(ledger)).into(shop.file(out), replace, Progress.UNWATCHED);
  }

  private Restore.Restored restore(String from, String ledger, boolean replace) throws Exception {
    return new Restore(shop.file(from), Shop.NOON)
        .into(shop.file(ledger), replace, Progress.UNWATCHED);
  }

  /** Changes the text wherever it stands; pages may hold old copies in their unused space. */
  private void damage(String name, String from, String to) throws Exception {
    String bytes = Files.readString(shop.file(name), StandardCharsets.ISO_8859_1);
    assertTrue(bytes.contains(from));
    Path draft = shop.file("draft");
    Files.writeString(draft, bytes.replace(from, to), StandardCharsets.ISO_8859_1);
    Files.move(draft, shop.file(name), StandardCopyOption.REPLACE_EXISTING);
  }

  private List<String> rows(String name) throws Exception {
    List<String> rows = new ArrayList<>();
    try (ChainReader chain = ChainReader.open(shop.file(name))) {
      chain.follow(row -> rows.add(row.toString()));
    }
    assertFalse(rows.isEmpty());
    return rows;
  }

  private TreeSet<String> names() throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> !name.endsWith("-shm") && !name.endsWith("-wal"))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }
}
