package boreledger.station.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.EntryBody.Document;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a ledger's write-ahead log still tells when its end was lost, as after a power cut.
 *
 * <p>{@code -Dboreledger.cuts.step=1} cuts at every byte of the last frames.
 */
class CutLogTest {
  private static final int STEP = Integer.getInteger("boreledger.cuts.step", 499);
  private static final int APPENDS = 20;
  private static final int LAST_FRAMES = 50;
  // SQLite's file format, section 4.1: a frame is a header of 24 bytes and a page.
  private static final int FRAME_BYTES = 24 + 4096;

  /** The last acknowledged entry by the size that the log had then. */
  private final TreeMap<Long, Long> acknowledged = new TreeMap<>();

  private final List<String> bodies = new ArrayList<>();

  @TempDir Path folder;
  private Path file;
  private byte[] pages;
  private byte[] log;

  @BeforeEach
  void writeALedgerAndKeepItsLog() throws Exception {
    Path source = folder.resolve("source.db");
    try (Ledger ledger = Ledger.openOrCreate(source)) {
      acknowledge(source, ledger);
      for (int i = 0; i < APPENDS; i++) {
        ledger.append(entries(i));
        acknowledge(source, ledger);
      }
      pages = Files.readAllBytes(source);
      log = Files.readAllBytes(log(source));
      bodies.addAll(stored(source));
    }
    file = folder.resolve("cut.db");
    assertTrue(log.length > LAST_FRAMES * FRAME_BYTES, "longer than what is cut");
    assertEquals(acknowledged.lastKey(), log.length, "nothing was written over");
  }

  @Test
  void everyCutLeavesWhatWasAcknowledgedBeforeItAndNothingElse() throws Exception {
    int first = log.length - LAST_FRAMES * FRAME_BYTES;
    TreeSet<Integer> cuts = new TreeSet<>();
    for (int at = first; at < log.length; at += STEP) {
      cuts.add(at);
    }
    for (int frame = first; frame <= log.length; frame += FRAME_BYTES) {
      cuts.addAll(List.of(frame - 1, frame, Math.min(frame + 1, log.length)));
    }
    lay(log);
    for (int cut : cuts.descendingSet()) {
      cutTo(cut);
      assertHolds(acknowledged.floorEntry((long) cut).getValue(), "cut at byte " + cut);
    }
    System.out.printf(
        "log of %d bytes and %d entries cut at %d places of its last %d frames: all hold%n",
        log.length, bodies.size(), cuts.size(), LAST_FRAMES);
    assertTrue(cuts.size() > LAST_FRAMES);
  }

  @Test
  void aLogCutBetweenFramesIsOpenedForWritingAsWell() throws Exception {
    for (int frames = 1; frames <= LAST_FRAMES; frames++) {
      int cut = log.length - frames * FRAME_BYTES;
      lay(Arrays.copyOf(log, cut));
      assertGoesOn(acknowledged.floorEntry((long) cut).getValue(), "cut at byte " + cut);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {512, 4096})
  void aLastSectorOfZerosCostsTheLastCommitAlone(int sectorBytes) throws Exception {
    byte[] damaged = log.clone();
    int sector = (log.length - 1) / sectorBytes * sectorBytes;
    Arrays.fill(damaged, sector, log.length, (byte) 0);
    lay(damaged);

    assertGoesOn(acknowledged.lowerEntry((long) log.length).getValue(), "zeros from " + sector);
  }

  @Test
  void aCutLogIsGoneOnWith() throws Exception {
    lay(Arrays.copyOf(log, log.length - 1));
    try (Ledger ledger = Ledger.open(file)) {
      long last = ledger.headSeq();
      assertEquals(last + 2, ledger.append(entries(0)));
    }

    List<String> now = stored(file);
    long kept = acknowledged.lowerEntry((long) log.length).getValue();
    assertEquals(kept + 2, now.size());
    assertEquals(bodies.subList(0, (int) kept), now.subList(0, (int) kept));
  }

  private void assertHolds(long entries, String where) throws Exception {
    assertEquals(bodies.subList(0, (int) entries), stored(file), where);
  }

  private void assertGoesOn(long entries, String where) throws Exception {
    assertHolds(entries, where);
    try (Ledger ledger = Ledger.open(file)) {
      assertEquals(entries, ledger.headSeq(), where);
    }
    assertEquals(entries, stored(file).size(), where + ", closed again");
  }

  /** The bodies of a ledger whose numbers have no gap and whose chain holds. */
  private static List<String> stored(Path ledger) throws LedgerFault {
    List<String> bodies = new ArrayList<>();
    Bytes[] hash = {Chain.ORIGIN};
    try (LedgerFile opened = LedgerFile.open(ledger)) {
      opened.rows(
          row -> {
            bodies.add(row.body().toHex());
            assertEquals(bodies.size(), row.seq());
            hash[0] = row.link(hash[0]);
            assertEquals(hash[0], row.hash());
            return true;
          });
    }
    return bodies;
  }

  /** One to three entries, of one page or several. */
  private static List<EntryBody> entries(int i) {
    EntryBody small = new Document("job", "small " + i, "00", "a word");
    EntryBody large = new Document("table", "large " + i, "00", "many words ".repeat(900));
    return i % 7 == 3 ? List.of(small, large, small) : List.of(small, small);
  }

  private void acknowledge(Path source, Ledger ledger) throws IOException {
    acknowledged.put(Files.size(log(source)), ledger.headSeq());
  }

  private void lay(byte[] cutLog) throws IOException {
    Files.write(file, pages);
    Files.write(log(file), cutLog);
    Files.deleteIfExists(Path.of(file + "-shm"));
  }

  private void cutTo(long bytes) throws IOException {
    try (FileChannel channel = FileChannel.open(log(file), StandardOpenOption.WRITE)) {
      channel.truncate(bytes);
    }
    Files.deleteIfExists(Path.of(file + "-shm"));
  }

  private static Path log(Path ledger) {
    return Path.of(ledger + "-wal");
  }
}
