package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.BenchFolder;
import boreledger.station.session.SmallJob;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportTest {
  /** 96.002 + 0.098 = 96.100 mm, above bore_max_mm = 96.050 by far more than its uncertainty. */
  private static final List<String> TOO_WIDE =
      List.of("+0.000", "+0.098", "+0.022", "+0.010", "+0.006", "+0.000");

  @TempDir Path folder;
  private BenchFolder bench;
  private Path sheet;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
    sheet = folder.resolve("sheet.pdf");
  }

  @Test
  void aSheetIsWrittenAndToldInOneDocument() {
    JsonNode results = gauge(BenchFolder.BORES, "--json").json();

    JsonNode answer = report("--json").ended(0).json();

    assertEquals(sheet.toString(), answer.path("file").asText());
    assertEquals("Small engine", answer.path("job").asText());
    assertEquals(results.path("ledger_head").asText(), answer.path("ledger_head").asText());
    assertEquals("mm", answer.path("unit").asText());
    assertEquals("a4", answer.path("paper").asText());
    assertTrue(answer.path("pages").asInt() >= 2, answer::toString);
    assertFalse(answer.path("attention").asBoolean(), answer::toString);
  }

  @Test
  void withoutJsonTheFileIsNamedInWords() {
    gauge(BenchFolder.BORES);

    Ran words = report().ended(0);

    assertTrue(words.out().contains("sheet.pdf: build sheet of Small engine"), words::toString);
    assertTrue(words(sheet).contains("96.0300 ± 0.00"), () -> words(sheet));
  }

  @Test
  void resultsThatAskForAttentionEndSo() {
    gauge(TOO_WIDE).ended(1);

    Ran written = report("--json").ended(1);

    assertTrue(written.json().path("attention").asBoolean());
    assertTrue(written.json().path("cautions").asInt() >= 1, written::toString);
    assertTrue(words(sheet).contains("is beyond the limit, at most 96.050"), () -> words(sheet));
  }

  @Test
  void theUnitAskedForOverrulesTheJobs() {
    gauge(BenchFolder.BORES);

    JsonNode answer = report("--json", "--unit", "in", "--paper", "letter").ended(0).json();

    assertEquals("in", answer.path("unit").asText());
    assertEquals("letter", answer.path("paper").asText());
    // 96.030 mm / 25.4
    assertTrue(words(sheet).contains("3.78071 ± 0.00"), () -> words(sheet));
  }

  @Test
  void aJobInInchesIsPrintedInInches() {
    bench.job(SmallJob.standard().with("\"mm\"", "\"in\""));
    replay(BenchFolder.BORES).ended(0);

    assertEquals("in", report("--json").ended(0).json().path("unit").asText());
  }

  @Test
  void aFileThatIsThereIsKeptUnlessItMayBeReplaced() throws IOException {
    gauge(BenchFolder.BORES);
    Files.writeString(sheet, "mine");

    Ran refused = report().refused(2);
    assertTrue(refused.err().contains("--replace"), refused::toString);
    assertEquals("mine", Files.readString(sheet));

    report("--replace").ended(0);
    assertTrue(words(sheet).contains("Small engine"));
  }

  @Test
  void theLedgerItselfIsNeverReplaced() throws IOException {
    gauge(BenchFolder.BORES);
    byte[] before = Files.readAllBytes(bench.ledger());

    Ran refused =
        Ran.command("report", "--ledger", bench.ledger(), "--out", bench.ledger(), "--replace")
            .refused(2);

    assertTrue(refused.err().contains("is the ledger itself"), refused::toString);
    assertArrayEquals(before, Files.readAllBytes(bench.ledger()));
  }

  @Test
  void aMissingLedgerIsTold() {
    Ran refused = report().refused(4);

    assertTrue(refused.err().contains("there is no such ledger"), refused::toString);
    assertFalse(Files.exists(sheet));
  }

  @Test
  void anUnknownJobIsToldWithThoseThatAreThere() {
    gauge(BenchFolder.BORES);

    Ran refused = report("--job", "Another").refused(2);

    assertTrue(refused.err().contains("\"Small engine\""), refused::toString);
    assertFalse(Files.exists(sheet));
  }

  @Test
  void paperAndUnitsThatDoNotExistAreRefused() {
    gauge(BenchFolder.BORES);

    assertTrue(report("--paper", "a9").refused(2).err().contains("--paper"));
    assertTrue(report("--unit", "ft").refused(2).err().contains("--unit"));
  }

  @Test
  void aFolderThatIsNotThereIsToldAndNothingIsLeftBehind() throws IOException {
    gauge(BenchFolder.BORES);
    sheet = folder.resolve("nowhere").resolve("sheet.pdf");

    Ran refused = report().refused(2);

    assertTrue(refused.err().contains("cannot be written"), refused::toString);
    try (Stream<Path> files = Files.list(folder)) {
      assertTrue(files.noneMatch(file -> file.toString().endsWith(".part")));
    }
  }

  @Test
  void aFolderInPlaceOfAFileIsRefused() {
    gauge(BenchFolder.BORES);
    sheet = folder;

    assertTrue(report("--replace").refused(2).err().contains("is a folder"));
  }

  @Test
  void whoMakesItIsPrinted() {
    gauge(BenchFolder.BORES);

    report("--by", "A. Turner").ended(0);

    assertTrue(words(sheet).contains("by A. Turner"), () -> words(sheet));
  }

  @Test
  void aReadingThatWasTakenBackIsPrintedWithItsReason() {
    gauge(BenchFolder.BORES);
    Ran.command(
            "take-back",
            "--ledger",
            bench.ledger(),
            "--entry",
            9,
            "--why",
            "the gauge slipped",
            "--who",
            "A. Turner")
        .ended(0);

    report();

    assertTrue(
        words(sheet).contains("was taken back: the gauge slipped (A. Turner)"), () -> words(sheet));
  }

  @Test
  void theLastSealIsPrinted() {
    gauge(BenchFolder.BORES);
    String line =
        Ran.command(
                "seal",
                "--json",
                "--ledger",
                bench.ledger(),
                "--name",
                "A. Turner",
                "--key",
                folder.resolve("own.key"),
                "--out",
                folder.resolve("a.seal"))
            .ended(0)
            .json()
            .path("line")
            .asText();

    report();

    assertTrue(line.startsWith("boreledger-seal/1 "), line);
    String letters = words(sheet).replace(" ", "");
    assertTrue(letters.contains("byA.Turner;" + line.replace(" ", "")), () -> words(sheet));
  }

  private Ran gauge(List<String> lines, Object... more) {
    bench.job();
    return replay(lines, more);
  }

  private Ran replay(List<String> lines, Object... more) {
    Object[] args = {
      "replay",
      "--job",
      folder.resolve("small.job.toml"),
      "--capture",
      bench.bores(lines),
      "--ledger",
      bench.ledger()
    };
    return Ran.command(Stream.concat(Stream.of(args), Stream.of(more)).toArray());
  }

  private Ran report(Object... more) {
    Object[] args = {"report", "--ledger", bench.ledger(), "--out", sheet};
    return Ran.command(Stream.concat(Stream.of(args), Stream.of(more)).toArray());
  }

  private static String words(Path file) {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
