package boreledger.station.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.Chain;
import boreledger.station.ledger.StoredRow;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Single bits of stored entries turned over: of the number, the body or the hash.
 *
 * <p>{@code -Dboreledger.flips=100000} tries more of them, {@code -Dboreledger.flips=0} all.
 */
class BitFlipsTest {
  private static final int FLIPS = Integer.getInteger("boreledger.flips", 20_000);
  private static final int FLIPS_IN_FILES = 40;
  private static final int SURROUNDINGS = 12;
  private static final long SEED = 20_310_506;

  private final Random random = new Random(SEED);

  @TempDir Path folder;

  @Test
  void everyFlippedBitOfAnEntryBreaksTheChainAtThatEntry() throws Exception {
    List<StoredRow> rows = AuditedLedger.demo(folder).rows();
    TreeMap<Long, Integer> rowByFirstBit = new TreeMap<>();
    long bits = 0;
    for (int i = 0; i < rows.size(); i++) {
      rowByFirstBit.put(bits, i);
      bits += bits(rows.get(i));
    }
    LongStream flips = FLIPS == 0 ? LongStream.range(0, bits) : random.longs(0, bits).limit(FLIPS);
    long[] tried = new long[1];
    long[] found = new long[1];
    flips.forEach(
        bit -> {
          Map.Entry<Long, Integer> row = rowByFirstBit.floorEntry(bit);
          tried[0]++;
          found[0] += isFound(rows, row.getValue(), bit - row.getKey()) ? 1 : 0;
        });

    System.out.printf(
        "single bits of the demo's %d entries: %d of %d bits flipped, %d found%n",
        rows.size(), tried[0], bits, found[0]);
    assertEquals(FLIPS == 0 ? bits : FLIPS, tried[0]);
    assertEquals(tried[0], found[0], "seed " + SEED);
  }

  @Test
  void aBitOfAnEntryFlippedInTheFileIsFoundByTheWholeAudit() throws Exception {
    AuditedLedger ledger = AuditedLedger.gauged(folder);
    List<StoredRow> rows = ledger.rows();
    byte[] content = Files.readAllBytes(ledger.file());
    int found = 0;
    while (found < FLIPS_IN_FILES) {
      StoredRow row = rows.get(random.nextInt(rows.size()));
      int at = random.nextInt(row.body().size());
      OptionalInt inFile = place(content, row.body(), at);
      if (inFile.isPresent()) {
        byte[] flipped = content.clone();
        flipped[inFile.getAsInt()] ^= (byte) (1 << random.nextInt(Byte.SIZE));
        Files.write(ledger.file(), flipped);

        List<Remark> findings = ledger.audit().findings();
        assertTrue(
            findings.stream().anyMatch(each -> isOf(row, each) && isBreak(each)),
            "byte " + at + " of entry " + row.seq() + ", seed " + SEED + ": " + findings);
        found++;
      }
    }
    Files.write(ledger.file(), content);
    assertTrue(ledger.audit().intact(), "every bit was put back");
  }

  /** Where a byte of a body stands in the file, if its surroundings stand there only once. */
  private static OptionalInt place(byte[] content, Bytes body, int at) {
    int from = Math.max(0, at - SURROUNDINGS);
    String wanted = latin1(body.slice(from, Math.min(body.size(), at + SURROUNDINGS)).toArray());
    String all = latin1(content);
    int first = all.indexOf(wanted);
    return first < 0 || all.indexOf(wanted, first + 1) >= 0
        ? OptionalInt.empty()
        : OptionalInt.of(first + at - from);
  }

  /** One character for each byte. */
  private static String latin1(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static boolean isFound(List<StoredRow> rows, int index, long bit) {
    StoredRow flipped = flipped(rows.get(index), bit);
    Remarks remarks = new Remarks();
    Bytes before = index == 0 ? Chain.ORIGIN : rows.get(index - 1).hash();
    new ChainWalk(remarks, index, before).accept(flipped);
    return remarks.findings().stream().anyMatch(each -> isOf(flipped, each) && isBreak(each));
  }

  private static boolean isOf(StoredRow row, Remark remark) {
    return Long.valueOf(row.seq()).equals(remark.entry());
  }

  private static boolean isBreak(Remark remark) {
    return remark.what().startsWith("its hash does not follow from its body");
  }

  private static long bits(StoredRow row) {
    return Long.SIZE + 8L * (row.body().size() + row.hash().size());
  }

  /** The row with one bit turned over; bits count through number, body and hash. */
  private static StoredRow flipped(StoredRow row, long bit) {
    long inBody = bit - Long.SIZE;
    long inHash = inBody - 8L * row.body().size();
    if (inBody < 0) {
      return new StoredRow(row.seq() ^ 1L << bit, row.body(), row.hash());
    }
    return inHash < 0
        ? new StoredRow(row.seq(), flipped(row.body(), inBody), row.hash())
        : new StoredRow(row.seq(), row.body(), flipped(row.hash(), inHash));
  }

  private static Bytes flipped(Bytes bytes, long bit) {
    byte[] content = bytes.toArray();
    content[(int) (bit / 8)] ^= (byte) (1 << bit % 8);
    return Bytes.of(content);
  }
}
