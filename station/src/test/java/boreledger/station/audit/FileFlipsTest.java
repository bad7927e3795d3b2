package boreledger.station.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.StoredRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Single bits of the SQLite file turned over, wherever they stand.
 *
 * <p>{@code -Dboreledger.file.flips=20000} tries more of them.
 */
class FileFlipsTest {
  private static final int FLIPS = Integer.getInteger("boreledger.file.flips", 150);
  private static final long SEED = 4_006_426;
  // SQLite's file format, section 1.3: the database header has 100 bytes.
  private static final int HEADER_BITS = 800;

  private final Random random = new Random(SEED);
  private final Map<Effect, Integer> seen = new EnumMap<>(Effect.class);

  @TempDir Path folder;
  private AuditedLedger ledger;
  private List<StoredRow> rows;
  private byte[] content;

  private enum Effect {
    FOUND,
    UNREADABLE,
    NONE
  }

  @BeforeEach
  void gauge() throws Exception {
    ledger = AuditedLedger.gauged(folder);
    rows = ledger.rows();
    content = Files.readAllBytes(ledger.file());
  }

  @Test
  void aFlippedBitAnywhereIsFoundOrChangesNoEntry() throws Exception {
    flip("of the file", random.longs(0, 8L * content.length).limit(FLIPS));

    assertEquals(FLIPS, seen.values().stream().mapToInt(Integer::intValue).sum());
    assertTrue(seen.get(Effect.FOUND) > 0, seen::toString);
  }

  @Test
  void aFlippedBitOfTheHeaderIsFoundOrChangesNoEntry() throws Exception {
    flip("of its header", random.longs(0, HEADER_BITS).limit(FLIPS / 3));

    assertEquals(FLIPS / 3, seen.values().stream().mapToInt(Integer::intValue).sum());
    assertTrue(seen.get(Effect.UNREADABLE) > 0, seen::toString);
  }

  private void flip(String where, LongStream bits) throws Exception {
    for (Effect effect : Effect.values()) {
      seen.put(effect, 0);
    }
    for (long bit : bits.toArray()) {
      byte[] flipped = content.clone();
      flipped[(int) (bit / 8)] ^= (byte) (1 << bit % 8);
      write(flipped);
      seen.merge(effect(bit), 1, Integer::sum);
    }
    System.out.printf(
        "single bits %s, %d bytes: found %d, said to be unreadable %d, without effect %d%n",
        where,
        content.length,
        seen.get(Effect.FOUND),
        seen.get(Effect.UNREADABLE),
        seen.get(Effect.NONE));
  }

  private Effect effect(long bit) throws Exception {
    AuditReport report;
    try {
      report = LedgerAudit.of(ledger.file(), Map.of(), Set.of(), (entries, of) -> true);
    } catch (LedgerFault fault) {
      assertTrue(fault.getMessage().startsWith(ledger.file() + ": "), fault::getMessage);
      return Effect.UNREADABLE;
    } catch (RuntimeException | Error e) {
      throw new AssertionError("bit " + bit + ", seed " + SEED, e);
    }
    if (!report.intact()) {
      return Effect.FOUND;
    }
    assertEquals(rows, ledger.rows(), "an entry changed unseen with bit " + bit);
    return Effect.NONE;
  }

  private void write(byte[] flipped) throws IOException {
    Files.write(ledger.file(), flipped);
    for (String beside : List.of("-wal", "-shm", "-journal")) {
      Files.deleteIfExists(Path.of(ledger.file() + beside));
    }
  }
}
